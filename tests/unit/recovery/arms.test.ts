import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENDPOINTS, type InjuryId, idOf, LEVELS, type OptionId, type SourceId, type StudyId } from '../../../src/ids';
import { armsFor, rangeOf, type StudyLike, type TimedArm } from '../../../src/recovery';

const NO_SPREAD = { sdWeeks: null, rangeWeeks: null, quartilesWeeks: null, branch: 'all' } as const;
const INJURY = idOf<InjuryId>('zone-2');
const SCREW = idOf<OptionId>('screw');
const BOOT = idOf<OptionId>('boot');

const study = (
  change: Partial<StudyLike> & { readonly weeks?: number; readonly endpoint?: 'sport' | 'work' } = {},
): StudyLike => {
  const { weeks = 8, endpoint = 'sport', ...rest } = change;
  return {
    id: idOf<StudyId>(`s-${weeks}`),
    source: idOf<SourceId>('a-2001'),
    mark: 'seen',
    read: 'abstract',
    injuries: [INJURY],
    option: SCREW,
    trial: 'a-2001',
    design: 'series',
    population: 'people',
    level: 'recreational',
    n: 10,
    time: { endpoint, centreWeeks: weeks, centre: 'mean', ...NO_SPREAD },
    event: null,
    events: [],
    ...rest,
  };
};
const filter = { injury: INJURY, option: SCREW, endpoint: 'sport' } as const;

describe('which arms may speak', () => {
  test.each<[string, StudyLike, number]>([
    ['seen in an abstract', study(), 1],
    ['read in full', study({ read: 'read' }), 1],
    ['read second-hand', study({ read: 'secondary' }), 0],
    ['weak', study({ mark: 'weak' }), 0],
    ['from memory', study({ mark: 'from memory' }), 0],
    ['common practice', study({ mark: 'common practice' }), 0],
    ['another injury', study({ injuries: [idOf<InjuryId>('zone-1')] }), 0],
    ['another option', study({ option: BOOT }), 0],
    ['another endpoint', study({ endpoint: 'work' }), 0],
    ['no time', study({ time: null }), 0],
    ['mixed with another injury', study({ injuries: [INJURY, idOf<InjuryId>('zone-1')] }), 0],
    ['of one class, where that of the case is not known', study({ classes: ['stage-1'] }), 0],
  ])('%s', (_, row, count) => {
    expect(armsFor([row], filter)).toHaveLength(count);
  });

  test('of a case of a known class only people of that class speak, and those whose class nobody stated', () => {
    const rows = [study({ classes: ['one'], weeks: 4 }), study({ classes: ['two'], weeks: 9 }), study({ weeks: 12 })];
    expect(armsFor(rows, { ...filter, classes: ['two'] }).map((a) => a.centreWeeks)).toEqual([9, 12]);
    expect(armsFor(rows, { ...filter, classes: ['three'] }).map((a) => a.centreWeeks)).toEqual([12]);
    expect(armsFor(rows, filter).map((a) => a.centreWeeks)).toEqual([12]);
  });

  test('a level is asked for and found, in the arm itself or among its further levels', () => {
    const rows = [
      study({ level: 'professional' }),
      study({ level: 'competitive', alsoLevels: ['recreational'], weeks: 7 }),
    ];
    expect(armsFor(rows, { ...filter, level: 'recreational' }).map((a) => a.centreWeeks)).toEqual([7]);
    expect(armsFor(rows, { ...filter, level: 'everyday' })).toEqual([]);
    expect(armsFor(rows, filter)).toHaveLength(2);
  });

  test('the printed range is kept as a pair', () => {
    const pairs = { rangeWeeks: [1.4, 12], quartilesWeeks: [5, 9] } as const;
    const time = { endpoint: 'sport', centreWeeks: 7.5, centre: 'mean', ...NO_SPREAD, ...pairs } as const;
    expect(armsFor([study({ time })], filter)[0]).toMatchObject(pairs);
  });
});

describe('the range of what was printed', () => {
  test('no arm, no range', () => {
    expect(rangeOf(armsFor([], filter))).toBeNull();
  });

  test('one arm gives its own centre twice', () => {
    expect(rangeOf(armsFor([study()], filter))).toMatchObject({
      endpoint: 'sport',
      option: SCREW,
      lowWeeks: 8,
      highWeeks: 8,
    });
  });

  test('people whose bone did not heal as planned first are no part of it', () => {
    const late = { endpoint: 'sport', centreWeeks: 30, centre: 'mean', ...NO_SPREAD, branch: 'problem' } as const;
    const problem = armsFor([study({ time: late })], filter);
    expect(problem).toHaveLength(1);
    expect(rangeOf(problem)).toBeNull();
    expect(rangeOf([...problem, ...armsFor([study()], filter)])).toMatchObject({ lowWeeks: 8, highWeeks: 8 });
  });

  test('weeks since a second treatment never speak: they run on another clock', () => {
    const time = { endpoint: 'sport', centreWeeks: 12, centre: 'mean', ...NO_SPREAD } as const;
    expect(armsFor([study({ time: { ...time, since: 'second treatment' } })], filter)).toEqual([]);
    expect(armsFor([study({ time: { ...time, since: 'first treatment' } })], filter)).toHaveLength(1);
  });

  test('it spans the centres and does not depend on their order', () => {
    const centres = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(centres, (weeks) => {
        const arms = armsFor(
          weeks.map((w) => study({ weeks: w })),
          filter,
        );
        const range = rangeOf(arms);
        expect(range?.lowWeeks).toBe(Math.min(...weeks));
        expect(range?.highWeeks).toBe(Math.max(...weeks));
        expect(rangeOf(arms.toReversed())).toMatchObject({ lowWeeks: range?.lowWeeks, highWeeks: range?.highWeeks });
      }),
    );
  });

  test('rows that may not speak never move it', () => {
    const silent = fc.record({
      weeks: fc.integer({ min: 1, max: 99 }),
      level: fc.constantFrom(...LEVELS),
      ...{ mark: fc.constantFrom('weak', 'from memory', 'common practice') },
    });
    fc.assert(
      fc.property(fc.array(silent, { maxLength: 6 }), (rows) => {
        const noise = rows.map((r) => study(r));
        expect(rangeOf(armsFor([study(), ...noise], filter))).toEqual(rangeOf(armsFor([study()], filter)));
      }),
    );
  });
});

describe('endpoints never mix', () => {
  const sport: TimedArm<'sport'>[] = armsFor([study()], filter);
  const work: TimedArm<'work'>[] = armsFor([study({ endpoint: 'work', weeks: 2 })], { ...filter, endpoint: 'work' });

  test('two named endpoints do not compile, and throw where types are not looked at', () => {
    // @ts-expect-error arms to sport and to work are no list of arms to one endpoint
    expect(() => rangeOf([...sport, ...work])).toThrow('different endpoints');
  });

  test('an arm to work is no arm to sport', () => {
    // @ts-expect-error the endpoint is part of the type
    const wrong: TimedArm<'sport'>[] = work;
    expect(wrong[0]?.endpoint).toBe('work');
  });

  test('the range carries the endpoint in its type', () => {
    const range = rangeOf(sport);
    // @ts-expect-error a range to sport is never a range to work
    const wrong: 'work' | undefined = range?.endpoint;
    expect(wrong).toBe('sport');
  });

  test('an endpoint only known when it runs is allowed one at a time', () => {
    for (const endpoint of ENDPOINTS) {
      const range = rangeOf(armsFor([study()], { ...filter, endpoint }));
      expect(range?.endpoint ?? null).toBe(endpoint === 'sport' ? 'sport' : null);
    }
  });

  test('two options are not compared in one range', () => {
    const boot = armsFor([study({ option: BOOT })], { ...filter, option: BOOT });
    expect(() => rangeOf([...sport, ...boot])).toThrow('different options');
  });
});
