/** From what people say to what can be meant: spoken searches with slips, taps; and what holds of every search. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finderOf } from '../../../../src/explain/find';
import type { BoneId, RegionId } from '../../../../src/ids';
import { BONE_IDS, idOf } from '../../../../src/ids';
import { content, find } from './finding';

const asked = (words: string, bone: BoneId | null = null, part: string | null = null) =>
  find({ words, bone, parts: part === null ? [] : [idOf<RegionId>(part)], lying: [] });
const idsOf = (words: string, bone: BoneId | null = null): string[] =>
  asked(words, bone).candidates.map(({ ref }) => ref.id);

/**
 * As people put it, and what a clinician would think of: one of these comes first. Of the fifth metatarsal any of its base may.
 */
const BASE = ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-proximal-shaft'];
const SPOKEN: readonly (readonly [words: string, first: readonly string[]])[] = [
  ['outside of the foot, after a twist', ['mt5-tuberosity']],
  ['rolled my ankle, pain at the outer edge of the foot', ['mt5-tuberosity', 'calcaneus-anterior-process']],
  ['jones fracure', ['mt5-metaphyseal']],
  ['Jones fracture', ['mt5-metaphyseal']],
  ['psuedo jones', ['mt5-tuberosity']],
  ['zone 2', ['mt5-metaphyseal']],
  ['zone 3 5th metatarsal', ['mt5-proximal-shaft']],
  ['tuberosity avulsion', ['mt5-tuberosity']],
  ['dancers fracture', ['mt5-spiral-shaft']],
  ['dancer rolled over outer edge', ['mt5-spiral-shaft', 'mt5-tuberosity']],
  ['stress fracture of the fifth metatarsal, months of running', ['mt5-proximal-shaft']],
  ['little toe side', [...BASE, 'mt5-spiral-shaft']],
  ['5th metatarsal', [...BASE, 'mt5-spiral-shaft']],
  ['iselin', ['mt5-apophysis']],
  ['11 year old footballer, bump on the outer edge is sore', ['mt5-apophysis']],
  ['heel pain 11 year old boy football', ['calcaneus-apophysis']],
  ['severs', ['calcaneus-apophysis']],
  ['heel hurts when you squeeze it, recruit, marching', ['calcaneus-stress']],
  ['stress fracture of the calcanues', ['calcaneus-stress']],
  ['anterior process of the calcaneus', ['calcaneus-anterior-process']],
  ['beak fracture', ['calcaneus-avulsion']],
  ['snowboarder ankle sprain that does not get better', ['talar-lateral-process']],
  ['lateral proces of talus', ['talar-lateral-process']],
  ['talar neck', ['talar-neck']],
  ['hawkins', ['talar-neck']],
  ['foot jammed on the brake pedal in a car accident, front of the ankle', ['talar-neck']],
  ['dome of the talus', ['talar-body']],
  ['pain behind the ankle in ballet', ['os-trigonum', 'talar-posterior-process']],
  ['shepherd fracture', ['talar-posterior-process']],
  ['nut cracker fracture', ['cuboid']],
  ['cubiod', ['cuboid']],
  ['cuniform', ['cuneiforms']],
  ['turf toe', ['first-mtp-plantar-plate']],
  ['toe bent upwards in a tackle, ball of the foot', ['first-mtp-plantar-plate']],
  ['pain under the big toe when running', ['sesamoids']],
  ['sesamoditis', ['sesamoids']],
  ['bipartite sesamoid', ['bipartite-sesamoid']],
  ['stubbed the big toe', ['hallux']],
  ['great toe fracture', ['hallux']],
  ['pinky toe stubbed on the bed post', ['lesser-toes']],
  ['freibergs', ['second-head-osteochondrosis']],
  ['extra bone on the inside of the foot', ['accessory-navicular']],
  ['os peroneum', ['extra-bones-outer-edge']],
  ['os vesalianum', ['extra-bones-outer-edge']],
  ['metatarsal neck fracture', ['lesser-metatarsal-neck']],
  ['dropped a weight behind the toes, forefoot', ['lesser-metatarsal-neck']],
  ['first metatarsal', ['first-metatarsal']],
  ['fleck sign', ['lisfranc-fleck']],
];

/** These are searches for a place: what lies there is among the first few. */
const AMONG: readonly (readonly [words: string, some: readonly string[]])[] = [
  ['team says midfoot', ['navicular-body', 'cuboid', 'cuneiforms']],
  ['lis frank', ['lisfranc']],
  ['navicuar', ['navicular-body', 'accessory-navicular']],
  ['ball of the foot', ['sesamoids', 'second-head-osteochondrosis', 'lesser-metatarsal-neck']],
  ['fell off a ladder onto the heel', ['calcaneus-avulsion', 'calcaneus-stress']],
  ['nondisplaced transverse fracture at the base of the fifth metatarsal', BASE],
];

describe('spoken searches', () => {
  test.each(SPOKEN)('%s', (words, first) => {
    expect(first).toContain(idsOf(words)[0]);
  });

  test.each(AMONG)('%s', (words, some) => {
    expect(idsOf(words).slice(0, 7)).toEqual(expect.arrayContaining([...some]));
  });

  test('there are at least forty, and each injury and card that is here is the first answer to one, or a tap away', () => {
    expect(SPOKEN.length).toBeGreaterThanOrEqual(40);
    const firsts = new Set(SPOKEN.flatMap(([, first]) => first));
    const reached = [...content.cards].filter(({ id, bones }) => firsts.has(id) || idsOf('', bones[0]).includes(id));
    expect(reached).toHaveLength(content.cards.length);
  });

  test('every injury and card is among the answers to its own names', () => {
    for (const { id, term, plain, synonyms } of [...content.injuries, ...content.cards])
      for (const name of [term, plain, ...synonyms]) expect(idsOf(name), name).toContain(id);
  });

  test('why: the words as typed, and what they met', () => {
    const [first] = asked('outside of the foot, after a twist').candidates;
    expect(first?.matched).toEqual(
      expect.arrayContaining([
        { by: 'place', said: 'outside', word: 'outer-side' },
        { by: 'event', said: 'twist', word: 'rolled' },
      ]),
    );
    const [jones] = asked('jones fracure').candidates;
    expect(jones?.matched).toContainEqual({ by: 'name', said: 'jones', text: 'Jones fracture' });
  });

  test('the little toe side is no toe, and the big toe is not all toes', () => {
    expect(idsOf('little toe side')).not.toContain('lesser-toes');
    expect(idsOf('dropped it on the big toe')).not.toContain('lesser-toes');
  });

  test('words that tell nothing apart find nothing, and nonsense is said to be not understood', () => {
    expect(asked('the player is out with an injury of the foot')).toMatchObject({
      candidates: [],
      apart: [],
      unknown: [],
    });
    expect(asked('zzyzx')).toMatchObject({ candidates: [], apart: [], unknown: ['zzyzx'] });
    expect(asked('heel zzyzx').unknown).toEqual(['zzyzx']);
  });
});

describe('a tap on the foot', () => {
  test.each(BONE_IDS)('%s: what is told of it comes first', (bone) => {
    const told = [
      ...content.injuries.map((i) => [i.id, i.bone, i.alsoBones] as const),
      ...content.cards.map((c) => [c.id, c.bones[0], c.bones] as const),
    ];
    const there = told.filter(([, own, others]) => own === bone || others.includes(bone)).map(([id]) => id as string);
    const { candidates } = asked('', bone);
    expect(candidates.map(({ ref }) => ref.id as string).sort()).toEqual(there.sort());
    const own = told.filter(([, first]) => first === bone).map(([id]) => id as string);
    expect(
      candidates
        .slice(0, own.length)
        .map(({ ref }) => ref.id as string)
        .sort(),
    ).toEqual(own.sort());
  });

  test('a part that was tapped goes before the rest of its bone', () => {
    expect(asked('', 'talus', 'talus-lateral-process').candidates[0]).toMatchObject({
      ref: { id: 'talar-lateral-process' },
      matched: [{ by: 'tap', bone: 'talus', region: 'talus-lateral-process' }],
    });
  });

  test('words and a tap count together', () => {
    expect(idsOf('twist', 'calcaneus')[0]).toBe('calcaneus-anterior-process');
    expect(idsOf('growing child', 'calcaneus')[0]).toBe('calcaneus-apophysis');
  });
});

describe('what tells them apart', () => {
  test('only between two of the first, each pair once, as content has it', () => {
    const { candidates, apart } = asked('heel');
    const first = candidates.slice(0, 6).map(({ ref }) => ref.id as string);
    expect(apart.length).toBeGreaterThan(0);
    const pairs = apart.map(({ one, from }) => {
      const other = from.is === 'card' ? from.card : from.is === 'injury' ? from.injury : '';
      expect(first).toContain(one.id);
      expect(first).toContain(other);
      return [one.id, other].sort().join();
    });
    expect(new Set(pairs).size).toBe(pairs.length);
    expect(pairs).toContain('calcaneus-apophysis,calcaneus-stress');
  });
});

describe('of every search', () => {
  const vocabulary = [
    ...SPOKEN.flatMap(([words]) => words.split(' ')),
    ...content.findWords.flatMap(({ words }) => words),
    'S92.3',
    'M84.37',
    'ſ',
    '𝔥eel',
    'ñ',
    '0',
    '-',
    '“',
    '\u0301',
  ];
  const words = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.array(fc.constantFrom(...vocabulary), { maxLength: 12 }).map((list) => list.join(' ')),
  );
  const bone = fc.constantFrom(null, ...BONE_IDS);
  const again = finderOf(content);

  test('it never throws, its scores are finite and fall, each candidate has a reason, and the same search has the same answer', () => {
    fc.assert(
      fc.property(words, bone, (typed, tapped) => {
        const found = asked(typed, tapped);
        const scores = found.candidates.map(({ score }) => score);
        expect(scores.every((score) => Number.isFinite(score) && score > 0)).toBe(true);
        expect([...scores].sort((a, b) => b - a)).toEqual(scores);
        expect(
          found.candidates.every((each) => each.matched.length + each.asked.length + each.earlier.length > 0),
        ).toBe(true);
        const ids = found.candidates.map(({ ref }) => ref.id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(again({ words: typed, bone: tapped, parts: [], lying: [] })).toEqual(found);
      }),
      { numRuns: 60 },
    );
  });

  test('case, accents and the order of marks do not matter', () => {
    expect(idsOf('NAVICULAR')).toEqual(idsOf('navicular'));
    expect(idsOf('návicular!')).toEqual(idsOf('navicular'));
  });

  test('a very long text is answered', () => {
    expect(() => asked('outside of the foot '.repeat(5000))).not.toThrow();
  });
});

test('no words of a candidate tell a reader that they have it', () => {
  const texts = JSON.stringify([
    content.cards,
    content.findWords,
    content.injuries.map(({ term, plain, synonyms, tellApart, findBy }) => [term, plain, synonyms, tellApart, findBy]),
    Object.entries(content.words).filter(([key]) => /^(seek|card|find)\./.test(key)),
  ]);
  expect(texts).not.toMatch(/you(’|')?(ve| have| may have| might have| probably have)|your (break|fracture|injury)/i);
});

test('no line of the words people use is left without its sense by words that tell nothing apart', () => {
  const fillers = new Set(content.findWords.filter(({ is }) => is === 'filler').flatMap(({ words }) => words));
  const seen = new Map<string, string>();
  for (const { id, is, words } of content.findWords) {
    if (is !== 'place' && is !== 'event' && is !== 'who') continue;
    for (const line of words) {
      const left = line
        .split(/[ -]/)
        .filter((word) => !fillers.has(word))
        .join(' ');
      expect(left, line).not.toBe('');
      expect([undefined, id], `${line}, as in ${seen.get(left)}`).toContain(seen.get(left));
      seen.set(left, id);
    }
  }
});
