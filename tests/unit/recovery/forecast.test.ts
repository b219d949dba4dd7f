import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENDPOINTS, type InjuryId, idOf } from '../../../src/ids';
import { type Forecast, forecastFor, type StudyLike } from '../../../src/recovery';
import { anyRows, anyTimed, countRow, meanRow, pooledOf, RATES, rowOf, SPORT, timeOf } from './rows';

const ALIKE = [meanRow('a', 8, 2, 20), meanRow('b', 8, 2, 20), meanRow('c', 8, 2, 20)];

describe('when there is a curve', () => {
  test('by hand: three alike studies, two rates of one trial each', () => {
    // ln variance of 8 +- 2: ln(1 + 1/16) = 0.0606246; mu = ln 8 - half of it = 2.0491292. Error^2 = 0.0606246 / 60,
    // widened for three studies by (1.885618 / 1.281552)^2 = 2.164885.
    // Problem (6 + 0.5) / 61 = 0.1065574, not back (1 + 0.5) / 41 = 0.0365854.
    // Uneventful 0.9634146 * 0.8934426 = 0.8607557, problem 0.9634146 * 0.1065574 = 0.1026589.
    const { forecast, between } = pooledOf([...ALIKE, ...RATES]);
    const [uneventful, problem, notReturned] = forecast.branches;
    expect(between).toBe(0);
    expect(uneventful.time?.mu).toBeCloseTo(2.0491292, 6);
    expect((uneventful.time?.sigma ?? 0) ** 2).toBeCloseTo(0.0606246 + (2.164885 * 0.0606246) / 60, 6);
    expect(uneventful.chance).toBeCloseTo(0.8607557, 6);
    expect(problem.chance).toBeCloseTo(0.1026589, 6);
    expect(notReturned.chance).toBeCloseTo(0.0365854, 6);
    expect(problem.time).toBeNull();
    expect(notReturned.time).toBeNull();
    expect(forecast.afterWeek).toBe(0);
  });

  test('who is in it, and who stands aside', () => {
    const aside = [
      rowOf('no-spread', { time: timeOf() }),
      meanRow('review', 9, 2, 200, { design: 'pooled' }),
      meanRow('early-problem', 7, 2, 9, { time: timeOf({ centreWeeks: 7, sdWeeks: 2, branch: 'problem' }) }),
    ];
    const pooled = pooledOf([...ALIKE, ...RATES, ...aside]);
    expect(pooled.arms.map((a) => a.id)).toEqual(['a', 'b', 'c']);
    expect(pooled.aside.map((a) => a.id)).toEqual(['no-spread', 'review', 'early-problem']);
    expect(pooled.problemArms).toEqual([]);
  });

  test('time after a healing problem: weighed by people, with the spread of the uneventful way', () => {
    const slow = (id: string, mean: number, n: number) =>
      rowOf(id, { n, time: timeOf({ centreWeeks: mean, sdWeeks: mean / 4, branch: 'problem' }) });
    const pooled = pooledOf([...ALIKE, ...RATES, slow('x', 16, 10), slow('y', 32, 30)]);
    const [uneventful, problem] = pooled.forecast.branches;
    // (10 ln 16 + 30 ln 32) / 40 = 4.75 ln 2, less half the variance 0.0606246
    expect(problem.time?.mu).toBeCloseTo(4.75 * Math.LN2 - 0.0606246 / 2, 6);
    expect(problem.time?.sigma).toBe(uneventful.time?.sigma);
    expect(pooled.problemArms.map((a) => a.id)).toEqual(['x', 'y']);
  });
});

describe('when there is none, it says why', () => {
  test('no study at all', () => {
    expect(forecastFor([], SPORT)).toEqual({ kind: 'none' });
    expect(forecastFor([...ALIKE, ...RATES], { ...SPORT, injury: idOf<InjuryId>('elsewhere') })).toEqual({
      kind: 'none',
    });
  });

  test('three groups of one study are one study: what lies between studies cannot be seen in them', () => {
    const [a] = ALIKE;
    const one = ALIKE.map((row) => ({ ...row, source: a?.source ?? row.source }));
    expect(forecastFor([...one, ...RATES], SPORT)).toMatchObject({ kind: 'sideBySide', why: 'tooFew' });
  });

  test('two arms with a spread: side by side with those that have none', () => {
    const rows = [...ALIKE.slice(0, 2), ...RATES, rowOf('bare', { time: timeOf() })];
    expect(forecastFor(rows, SPORT)).toMatchObject({ kind: 'sideBySide', why: 'tooFew', arms: { length: 3 } });
  });

  test.each<[string, readonly StudyLike[]]>([
    ['nobody counted healing problems', [countRow('back', 'returned', 39, 40)]],
    ['nobody counted who returned', [countRow('problem', 'failure', 6, 60)]],
    ['a percentage alone', [...RATES.slice(0, 1), rowOf('p', { event: { what: 'returned', count: null, of: null } })]],
    ['counts of another option', RATES.map((r) => ({ ...r, option: idOf<StudyLike['option']>('boot') }))],
  ])('%s', (_, rates) => {
    expect(forecastFor([...ALIKE, ...rates], SPORT)).toMatchObject({ kind: 'sideBySide', why: 'noRate' });
  });
});

describe('levels', () => {
  const pro = (row: StudyLike): StudyLike => ({
    ...row,
    id: idOf<StudyLike['id']>(`pro-${row.id}`),
    trial: `pro-${row.trial}`,
    level: 'professional',
    time: row.time && { ...row.time, centreWeeks: 14 },
  });
  const PROS = ALIKE.map(pro);
  const asked = (rows: readonly StudyLike[]) => forecastFor(rows, { ...SPORT, level: 'professional' });

  test('three arms of the level asked for are enough, and no other level is in the curve', () => {
    const outcome = asked([...ALIKE, ...PROS, ...RATES]);
    expect(outcome).toMatchObject({ kind: 'pooled', problem: { levels: 'mixed' } });
    expect(outcome.kind === 'pooled' && outcome.arms.map(({ id }) => id)).toEqual(['pro-a', 'pro-b', 'pro-c']);
    expect(outcome.kind === 'pooled' && outcome.aside.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(outcome).toEqual(asked([...PROS, ...RATES, ...ALIKE]));
  });

  test('with two of them there is no curve: levels are not mixed, and that is why', () => {
    expect(asked([...ALIKE, ...PROS.slice(1), ...RATES])).toMatchObject({
      kind: 'sideBySide',
      why: 'levels',
      arms: { length: 5 },
      fitted: { length: 5 },
    });
    // Too few of all levels together is another reason.
    expect(asked([...ALIKE.slice(2), ...PROS.slice(2), ...RATES])).toMatchObject({ kind: 'sideBySide', why: 'tooFew' });
  });

  test('nobody said the level: a curve only where all studied the same', () => {
    expect(forecastFor([...ALIKE, ...RATES], SPORT).kind).toBe('pooled');
    expect(forecastFor([...ALIKE, ...PROS, ...RATES], SPORT)).toMatchObject({ kind: 'sideBySide', why: 'levels' });
    const both = ALIKE.map((row) => ({ ...row, alsoLevels: ['professional'] as const }));
    expect(forecastFor([...both, ...PROS, ...RATES], SPORT)).toMatchObject({ kind: 'pooled', arms: { length: 6 } });
  });

  test('the time after a problem is of the same level too', () => {
    const slow = pro(meanRow('slow', 30, 6, 9, { time: timeOf({ centreWeeks: 30, sdWeeks: 6, branch: 'problem' }) }));
    expect(pooledOf([...ALIKE, ...RATES, slow]).problemArms).toEqual([]);
    expect(asked([...PROS, ...RATES, { ...slow, time: slow.time && { ...slow.time, centreWeeks: 30 } }])).toMatchObject(
      {
        problemArms: [{ id: 'pro-slow' }],
      },
    );
  });

  test('rates are of the level where three trials of it counted, else of all, and that is said', () => {
    const counted = ['x', 'y', 'z'].map((id) => countRow(id, 'failure', 3, 10, { level: 'professional' }));
    const outcome = asked([...PROS, ...RATES, ...counted]);
    expect(outcome).toMatchObject({
      problem: { levels: 'own', arms: { length: 3 } },
      notReturned: { levels: 'mixed' },
    });
  });
});

describe('what never changes a forecast', () => {
  const silent = fc.constantFrom(
    { mark: 'weak' },
    { mark: 'from memory' },
    { mark: 'common practice' },
    { read: 'secondary' },
  );
  const noise = fc.array(
    fc.tuple(anyTimed, silent, fc.constantFrom('failure', 'returned'), fc.constantFrom('all', 'problem')),
    { minLength: 1, maxLength: 5 },
  );

  test('rows that are weak, from memory or read second-hand', () => {
    fc.assert(
      fc.property(anyRows, noise, (rows, extra) => {
        const more = extra.map(([row, quiet, what, branch], i) => ({
          ...row,
          ...quiet,
          trial: `arm-${i}`,
          event: { what, count: 2, of: 3 } as const,
          time: row.time && { ...row.time, branch },
        }));
        expect(pooledOf([...more, ...rows])).toEqual(pooledOf(rows));
      }),
    );
  });

  test('times to another endpoint', () => {
    const other = fc.constantFrom(...ENDPOINTS.filter((e) => e !== SPORT.endpoint));
    fc.assert(
      fc.property(anyRows, fc.array(fc.tuple(anyTimed, other), { minLength: 1, maxLength: 9 }), (rows, others) => {
        const elsewhere = others.map(([row, endpoint]) => ({ ...row, time: row.time && { ...row.time, endpoint } }));
        expect(pooledOf([...elsewhere, ...rows])).toEqual(pooledOf(rows));
      }),
    );
  });

  test('the order of the rows', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const [one, two] = [pooledOf(rows).forecast, pooledOf(rows.toReversed()).forecast];
        one.branches.forEach((b, i) => {
          expect(two.branches[i]?.chance).toBeCloseTo(b.chance, 9);
          expect(two.branches[i]?.time?.mu ?? 0).toBeCloseTo(b.time?.mu ?? 0, 9);
        });
      }),
    );
  });
});

describe('endpoints', () => {
  const forecast: Forecast<'sport'> = pooledOf([...ALIKE, ...RATES]).forecast;

  test('a forecast to one is no forecast to another', () => {
    // @ts-expect-error the endpoint is part of the type
    const wrong: Forecast<'work'> = forecast;
    expect(wrong.endpoint).toBe('sport');
  });

  test('two named endpoints are no endpoint to ask for', () => {
    const either = { ...SPORT, endpoint: 'work' as 'sport' | 'work' };
    // @ts-expect-error one endpoint at a time
    expect(forecastFor(ALIKE, either).kind).toBe('none');
  });

  test('an endpoint only known when it runs is allowed, one at a time', () => {
    for (const endpoint of ENDPOINTS)
      expect(forecastFor([...ALIKE, ...RATES], { ...SPORT, endpoint }).kind).toBe(
        endpoint === 'sport' ? 'pooled' : 'none',
      );
  });

  test('a forecast survives being written and read', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const { forecast } = pooledOf(rows);
        expect(JSON.parse(JSON.stringify(forecast))).toEqual(forecast);
      }),
    );
  });
});
