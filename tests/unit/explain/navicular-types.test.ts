/** Types of the navicular's stress fracture by how deep its line goes: borders, what displacement says, and what cannot both hold. */
import { beforeAll, describe, expect, test } from 'vitest';
import { prepareAnatomy } from '../../../src/anatomy';
import type { Said } from '../../../src/cases';
import { type BoneId, type InjuryId, idOf, READERS } from '../../../src/ids';
import { findingsFor, plainText, wordFinding } from '../../../src/wording';
import {
  CONFIRMED,
  caseOf,
  content,
  explained,
  findingNamed,
  findingsOf,
  REPORTED,
  type Stated,
} from '../../tools/explained';

const injury: Stated = ['injury', idOf<InjuryId>('navicular-stress')];
const depth = (value: number): Stated => ['measure', { what: 'line depth', value }];
const moved = (displaced: boolean): Stated => ['displacement', { displaced }];
const partWay: Stated = ['direction', 'incomplete'];
const record = content.injuries.find(({ id }) => id === 'navicular-stress');

const classed = (...stated: readonly Stated[]) => {
  const explanation = explained(caseOf(injury, ...stated));
  const clash = findingNamed(explanation, 'where.throughAgainstWord');
  const classes = findingsOf(explanation, 'where').flatMap((finding) => {
    if (finding.message.id !== 'computedClass') return [];
    const { index, ...args } = finding.message.args;
    const told = READERS.map((reader) => plainText(wordFinding(content, explanation, finding, reader)));
    return [{ ...args, id: record?.classification[index]?.id, told, finding }];
  });
  return { explanation, clash, classes };
};
const ids = (...stated: readonly Stated[]) => classed(...stated).classes.map(({ id }) => id);

beforeAll(prepareAnatomy);

describe('types by depth', () => {
  test.each([
    [0, 'type-1'],
    [1, 'type-2'],
    [2, 'type-2'],
    [50, 'type-2'],
    [99, 'type-2'],
    [100, 'type-3'],
  ])('%s percent deep: %s', (deep, type) => {
    expect(ids(depth(deep))).toEqual([type]);
  });

  test.each([
    [1, true],
    [2, false],
    [99, false],
    [100, true],
  ])('%s percent: on the border at which its class begins: %s', (deep, onBorder) => {
    expect(classed(depth(deep)).classes).toMatchObject([{ onBorder, byDisplacement: false, assumed: [] }]);
  });

  test('every whole percent has exactly one type', () => {
    for (let deep = 0; deep <= 100; deep += 1) expect(ids(depth(deep)), `${deep}`).toHaveLength(1);
  });

  test('it is no other on the other foot, or on a foot of another shape', () => {
    for (const side of ['right', 'left'] as const)
      for (const shape of ['neutral', 'high', 'low'] as const)
        for (const [deep, type] of [
          [0, 'type-1'],
          [1, 'type-2'],
          [100, 'type-3'],
        ] as const)
          expect(ids(['side', side], ['footShape', shape], depth(deep))).toEqual([type]);
  });

  test('not stated, disputed or ruled out, it decides nothing', () => {
    expect(ids()).toEqual([]);
    expect(ids(depth(0), ['measure', { what: 'line depth', value: 40 }, REPORTED])).toEqual([]);
  });

  test('every reader gets the depth as it was given, and what the type means', () => {
    const { explanation } = classed(depth(40));
    for (const reader of READERS) {
      const lines = findingsFor(explanation, 'where', reader).map((f) =>
        plainText(wordFinding(content, explanation, f, reader)),
      );
      expect(lines.join('\n')).toMatch(/depth of the (crack|line) .*40 %/);
      expect(lines.join('\n')).toMatch(/(runs )?into the body/);
    }
  });
});

test('a type from a depth that is only reported is told under that condition, from a confirmed one without', () => {
  for (const said of [REPORTED, CONFIRMED]) {
    const stated: Stated = ['measure', { what: 'line depth', value: 40 }, said];
    const { explanation } = classed(stated);
    for (const reader of READERS) {
      const line = findingsFor(explanation, 'where', reader)
        .filter(
          (f) => f.message.id === 'contentText' && f.message.args.at.kind === 'classification' && f.message.args.as,
        )
        .map((f) => plainText(wordFinding(content, explanation, f, reader)));
      expect(line).toHaveLength(1);
      expect(/^(If the reports? (is|are) right|Given the reported facts)/.test(line[0] ?? '')).toBe(said === REPORTED);
    }
  }
});

describe('a displaced break whose depth nobody stated', () => {
  test('is through, says why, and was confirmed by nobody', () => {
    const { classes } = classed(moved(true));
    expect(classes).toMatchObject([{ id: 'type-3', byDisplacement: true, claim: { status: 'inferred' } }]);
    const [found] = classes;
    for (const text of found?.told ?? []) expect(text).toMatch(/moved apart.*through|displaced.*another cortex/);
    expect(found?.finding.confidence.level).toBe('uncertain');
    expect(found?.finding.basis.claims).toHaveLength(1);
  });

  test('the patient hears why, and the criterion of the type is not told as found', () => {
    const { explanation } = classed(moved(true));
    const lines = findingsFor(explanation, 'where', 'patient').map((f) =>
      plainText(wordFinding(content, explanation, f, 'patient')),
    );
    expect(lines.filter((line) => /type III/.test(line))).toEqual([
      'Nobody has confirmed it, but it seems that it counts as type III, through a second cortex. The pieces have moved apart, so the crack must run right through.',
    ]);
  });

  test('in line, it says nothing of the depth; measured, the depth decides', () => {
    expect(ids(moved(false))).toEqual([]);
    expect(ids(moved(false), depth(0))).toEqual(['type-1']);
    expect(ids(moved(false), depth(100))).toEqual(['type-3']);
    expect(classed(moved(true), depth(100)).classes).toMatchObject([{ id: 'type-3', byDisplacement: false }]);
  });

  test('decides nothing where claims differ on the depth', () => {
    expect(ids(moved(true), depth(100), ['measure', { what: 'line depth', value: 40 }, REPORTED])).toEqual([]);
  });
});

describe('what cannot both hold is told as a clash, and no type with it', () => {
  test.each([
    ['displaced, not through', [moved(true), depth(99)], 2],
    ['displaced, only in the cortex', [moved(true), depth(0)], 2],
    ['part of the way, through', [partWay, depth(100)], 2],
    ['part of the way, displaced', [partWay, moved(true)], 2],
    ['part of the way and not through, displaced', [partWay, depth(40), moved(true)], 3],
  ] as const)('%s', (_, stated, sides) => {
    const { explanation, clash, classes } = classed(...stated);
    expect(classes).toEqual([]);
    expect(clash?.confidence.level).toBe('uncertain');
    expect(clash?.basis.claims).toHaveLength(sides);
    if (clash === undefined) throw new Error('no clash');
    for (const reader of READERS)
      expect(plainText(wordFinding(content, explanation, clash, reader)).split('; ')).toHaveLength(sides);
  });

  test.each([
    ['part of the way, not through', [partWay, depth(40)], ['type-2']],
    ['displaced and through', [moved(true), depth(100)], ['type-3']],
    ['part of the way alone', [partWay], []],
  ] as const)('%s: no clash', (_, stated, types) => {
    const { clash, classes } = classed(...stated);
    expect(clash).toBeUndefined();
    expect(classes.map(({ id }) => id)).toEqual(types);
  });

  test('a break of which no class asks for the depth does not clash with itself', () => {
    const other = explained(caseOf(['injury', idOf<InjuryId>('mt5-proximal-shaft')], partWay, moved(true)));
    expect(findingNamed(other, 'where.throughAgainstWord')).toBeUndefined();
  });
});

test('stated of another bone, the depth is told to be of the navicular and left out', () => {
  const of = (bone: BoneId) => findingNamed(explained(caseOf(['bone', bone], depth(40))), 'where.measureOfOther.1');
  expect(of('metatarsal5')).toBeDefined();
  expect(of('navicular')).toBeUndefined();
});

test('a mere report that it moved apart takes back no depth that is confirmed, and is told as a clash', () => {
  const typed = (depth: Said, displaced: Said): readonly string[] => {
    const explanation = explained(
      caseOf(
        ['injury', idOf<InjuryId>('navicular-stress'), CONFIRMED],
        ['measure', { what: 'line depth', value: 50 }, depth],
        ['displacement', { displaced: true }, displaced],
      ),
    );
    return findingsOf(explanation, 'where').map(({ message }) => message.id);
  };
  expect(typed(CONFIRMED, REPORTED)).toEqual(expect.arrayContaining(['computedClass', 'contradiction']));
  expect(typed(REPORTED, CONFIRMED)).toContain('computedClass');
  expect(typed(CONFIRMED, CONFIRMED)).not.toContain('computedClass');
  expect(typed(REPORTED, REPORTED)).not.toContain('computedClass');
});
