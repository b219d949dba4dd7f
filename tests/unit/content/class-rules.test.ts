/** Classes by rule: within one scheme no two fit at once, and what falls on a border belongs to the class that begins there. */
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { classBreaches, overlap } from '../../../src/content/rules-classes';
import type { ClassRule, Injury } from '../../../src/content/schema';
import { injury as injurySchema } from '../../../src/content/schema-injuries';

const content = readContent();
type Classified = Injury['classification'][number];

/** What a film and an examination may say of one foot; a measure that is absent was not taken. */
interface Found {
  readonly region: string;
  readonly displaced: boolean;
  readonly measures: Readonly<Record<string, number | undefined>>;
}

/** Written here anew, so that the rules are held against another reading of them. */
const holds = (rule: ClassRule, found: Found): boolean => {
  switch (rule.by) {
    case 'place':
      return rule.region === found.region;
    case 'displaced':
      return rule.displaced === found.displaced;
    case 'measure': {
      const value = found.measures[rule.what];
      if (value === undefined) return rule.orNotStated === true || (rule.orDisplaced === true && found.displaced);
      return value >= (rule.from ?? -Infinity) && value < (rule.below ?? Infinity);
    }
  }
};
const fits = ({ rules }: Classified, found: Found): boolean => rules?.every((rule) => holds(rule, found)) ?? false;

const schemesOf = (injury: Injury): ReadonlyMap<string, readonly Classified[]> => {
  const schemes = new Map<string, Classified[]>();
  for (const each of injury.classification) schemes.set(each.scheme, [...(schemes.get(each.scheme) ?? []), each]);
  return schemes;
};
const schemes = content.injuries.flatMap((injury) =>
  [...schemesOf(injury)]
    .filter(([, classes]) => classes.some(({ rules }) => rules !== undefined))
    .map(([scheme, classes]) => [injury.id, scheme, classes] as const),
);
const bordersOf = (classes: readonly Classified[], what: string): readonly number[] =>
  classes
    .flatMap(({ rules }) =>
      (rules ?? []).flatMap((rule) => (rule.by === 'measure' && rule.what === what ? [rule.from, rule.below] : [])),
    )
    .filter((border) => border !== undefined);
const measuresOf = (classes: readonly Classified[]): readonly string[] => [
  ...new Set(
    classes.flatMap(({ rules }) => (rules ?? []).flatMap((rule) => (rule.by === 'measure' ? [rule.what] : []))),
  ),
];

describe.each(schemes)('%s: %s', (_id, _scheme, classes) => {
  const borders = measuresOf(classes).flatMap((what) => bordersOf(classes, what));
  const value = fc.oneof(
    fc.double({ min: -20, max: 120, noNaN: true }),
    ...(borders.length === 0 ? [] : [fc.constantFrom(...borders)]),
  );
  const found: fc.Arbitrary<Found> = fc.record({
    region: fc.constantFrom(...content.regions.map((r) => r.id as string)),
    displaced: fc.boolean(),
    measures: fc.record(Object.fromEntries(measuresOf(classes).map((what) => [what, value])), { requiredKeys: [] }),
  });

  it('never fits twice, on a border or beside it, stated or not', () => {
    fc.assert(fc.property(found, (each) => classes.filter((c) => fits(c, each)).length <= 1));
  });

  /** Which classes fit with one measure as given, whatever the others are: not stated, on a border or beside it. */
  const fittingAt = (what: string, v: number): ReadonlySet<string> => {
    let others: Found['measures'][] = [{ [what]: v }];
    for (const other of measuresOf(classes).filter((each) => each !== what))
      others = others.flatMap((m) => [
        m,
        ...bordersOf(classes, other).flatMap((edge) =>
          [edge - 0.5, edge, edge + 0.5].map((o) => ({ ...m, [other]: o })),
        ),
      ]);
    return new Set(
      others.flatMap((measures) =>
        [true, false].flatMap((displaced) =>
          classes.filter((c) => fits(c, { region: '', displaced, measures })).map(({ id }) => id),
        ),
      ),
    );
  };

  it('has a class that begins at each border, and the one below ends there', () => {
    for (const what of measuresOf(classes))
      for (const border of new Set(bordersOf(classes, what))) {
        const bound = (side: 'from' | 'below') =>
          classes.filter(({ rules }) =>
            rules?.some((r) => r.by === 'measure' && r.what === what && r[side] === border),
          );
        const told = fittingAt(what, border);
        for (const { id } of bound('from')) expect(told).toContain(id);
        for (const { id } of bound('below')) {
          expect(told).not.toContain(id);
          expect(fittingAt(what, border - 1e-6)).toContain(id);
        }
      }
  });
});

test('the zones of the fifth metatarsal are decided by place, each by its own', () => {
  const byPlace = content.injuries.flatMap(({ id, classification }) =>
    classification.flatMap(({ rules }) =>
      (rules ?? []).flatMap((rule) => (rule.by === 'place' ? [[id, rule.region] as const] : [])),
    ),
  );
  expect(byPlace).toEqual([
    ['mt5-tuberosity', 'mt5-zone-1'],
    ['mt5-metaphyseal', 'mt5-zone-2'],
    ['mt5-proximal-shaft', 'mt5-zone-3'],
    ['mt5-spiral-shaft', 'mt5-shaft'],
  ]);
});

describe('overlap', () => {
  const measure = (from: number | undefined, below: number | undefined): ClassRule => ({
    by: 'measure',
    what: 'gap',
    ...(from === undefined ? {} : { from }),
    ...(below === undefined ? {} : { below }),
  });
  it('is none where bounds touch, and is one where they cross', () => {
    expect(overlap({ rules: [measure(undefined, 1)] }, { rules: [measure(1, 5)] })).toBe(false);
    expect(overlap({ rules: [measure(undefined, 1.1)] }, { rules: [measure(1, 5)] })).toBe(true);
  });
  it('is none where one rule of several keeps them apart, and is one across different measures', () => {
    const displaced = (is: boolean): ClassRule => ({ by: 'displaced', displaced: is });
    expect(overlap({ rules: [displaced(true), measure(1, 5)] }, { rules: [displaced(false)] })).toBe(false);
    expect(overlap({ rules: [displaced(true)] }, { rules: [measure(1, 5)] })).toBe(true);
  });
  it('is one where only a measure that nobody stated would keep two apart', () => {
    const taken = (from: number | undefined, below: number | undefined): ClassRule =>
      ({ ...measure(from, below), orNotStated: true }) as ClassRule;
    expect(overlap({ rules: [taken(undefined, 1)] }, { rules: [measure(1, undefined)] })).toBe(false);
    expect(overlap({ rules: [taken(undefined, 1)] }, { rules: [taken(1, undefined)] })).toBe(true);
  });
  it('is one where a displaced break makes one hold unmeasured and the other holds unmeasured too', () => {
    const through = { ...measure(100, undefined), orDisplaced: true } as ClassRule;
    const taken = { ...measure(undefined, 1), orNotStated: true } as ClassRule;
    expect(overlap({ rules: [through] }, { rules: [measure(1, 100)] })).toBe(false);
    expect(overlap({ rules: [through] }, { rules: [taken] })).toBe(true);
  });
  it('is told as a breach with its place, within one scheme only', () => {
    const [first] = content.injuries[0]?.classification ?? [];
    if (first === undefined) throw new Error('no class');
    const one = { ...first, id: 'one', scheme: 'a', rules: [measure(0, 2)] };
    const two = { ...first, id: 'two', scheme: 'a', rules: [measure(1, 3)] };
    expect(classBreaches({ classification: [one, two] }).map(({ path }) => path)).toEqual([
      ['classification', 1, 'rules'],
    ]);
    expect(classBreaches({ classification: [one, { ...two, scheme: 'b' }] })).toEqual([]);
  });
});

/** The form of a rule that a displaced break can fulfil: a measure of a film with a from and nothing else. */
test.each([
  [{ what: 'line depth', from: 100 }, true],
  [{ what: 'line depth', from: 1, below: 100 }, false],
  [{ what: 'line depth', below: 1 }, false],
  [{ what: 'line depth', from: 100, orNotStated: true }, false],
  [{ what: 'displacement', from: 3 }, false],
])('orDisplaced on %j is accepted: %s', (rule, accepted) => {
  const [navicular] = content.injuries.filter(({ id }) => id === 'navicular-stress');
  const [first] = navicular?.classification ?? [];
  const classification = [{ ...first, rules: [{ by: 'measure', ...rule, orDisplaced: true }] }];
  expect(v.safeParse(injurySchema, { ...navicular, classification }).success).toBe(accepted);
});
