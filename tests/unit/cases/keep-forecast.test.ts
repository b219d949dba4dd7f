/** What the core forecasts can be kept as it is: the case file admits every forecast that the core can come to. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkCaseFile, emptyCase, type KeptForecast, readCase, withForecast, writeCase } from '../../../src/cases';
import { type InjuryId, idOf, type OptionId, type StudyId } from '../../../src/ids';
import { chanceBy, type Forecast, knownProblem, notThereAt } from '../../../src/recovery';

const anyTime = fc.record({
  mu: fc.double({ min: 0, max: 5, noNaN: true }),
  sigma: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
});

/** As the core gives them: no chance is exactly 0 or 1 before something is known. */
const anyForecast: fc.Arbitrary<Forecast<'match play'>> = fc
  .record({
    notReturned: fc.double({ min: 0.001, max: 0.9, noNaN: true }),
    problem: fc.double({ min: 0.001, max: 0.9, noNaN: true }),
    time: anyTime,
    after: fc.option(anyTime),
  })
  .map(({ notReturned, problem, time, after }) => ({
    endpoint: 'match play',
    option: idOf<OptionId>('screw'),
    branches: [
      { name: 'uneventful', chance: (1 - notReturned) * (1 - problem), time },
      { name: 'problem', chance: (1 - notReturned) * problem, time: after },
      { name: 'notReturned', chance: notReturned, time: null },
    ],
    afterWeek: 0,
  }));

const about = {
  injury: idOf<InjuryId>('mt5-metaphyseal'),
  madeOn: null,
  start: null,
  studies: [idOf<StudyId>('a-study')],
};
const keptFrom = ({ endpoint, option, branches, afterWeek }: Forecast): KeptForecast => ({
  ...about,
  endpoint,
  option,
  branches,
  atWeek: afterWeek,
});

test('at the start, at any later week, and after a healing problem; read back it gives the same chances', () => {
  const weeks = fc.array(fc.integer({ min: 0, max: 300 }), { maxLength: 4 });
  fc.assert(
    fc.property(anyForecast, weeks, fc.boolean(), (given, seen, problem) => {
      const waited = seen.reduce((forecast, week) => notThereAt(forecast, week), given);
      const forecast = problem ? knownProblem(waited) : waited;
      const file = withForecast(emptyCase(idOf('a-case')), keptFrom(forecast));
      expect(checkCaseFile(file)).toEqual([]);
      const read = readCase(writeCase(file));
      const kept = read.ok ? read.file.forecasts[0] : undefined;
      if (kept === undefined) throw new Error('not read back');
      const again: Forecast = { ...kept, afterWeek: kept.atWeek };
      for (const week of [1, 6, 14.6, 52, 400]) expect(chanceBy(again, week)).toBe(chanceBy(forecast, week));
    }),
  );
});
