import { describe, expect, test } from 'vitest';
import type { StudyLike } from '../../../src/recovery';
import { countingRows, notReturnedCounts, problemCounts } from '../../../src/recovery/counts';
import { countRow, rowOf, SPORT, timeOf } from './rows';

const problems = (rows: readonly StudyLike[]) => problemCounts(rows).map(({ count, of }) => [count, of]);
const missing = (rows: readonly StudyLike[]) => notReturnedCounts(rows).map(({ count, of }) => [count, of]);
const sameTrial = { trial: 't' };

describe('healing problems, trial by trial', () => {
  test('what a study called failure goes before its parts', () => {
    const parts = countRow('b', 'nonunion', 5, 18, sameTrial);
    expect(problems([parts, countRow('a', 'failure', 8, 18, sameTrial)])).toEqual([[8, 18]]);
  });

  test('nonunion, delayed union and refracture of the same people are added, each kind once', () => {
    const row = countRow('a', 'nonunion', 1, 20, {
      ...sameTrial,
      events: [
        { what: 'delayed union', count: 2, of: 20 },
        { what: 'refracture', count: 3, of: 20 },
      ],
    });
    // The same refractures stand again with another endpoint of the trial.
    expect(problems([row, countRow('b', 'refracture', 3, 20, sameTrial)])).toEqual([[6, 20]]);
  });

  test('never more people than there were', () => {
    const row = countRow('a', 'nonunion', 3, 4, { events: [{ what: 'refracture', count: 3, of: 4 }] });
    expect(problems([row])).toEqual([[4, 4]]);
  });

  test('other people of the same trial are added to its people, and stay one trial', () => {
    const early = countRow('a', 'nonunion', 1, 20, { ...sameTrial, population: 'loaded early' });
    const late = countRow('b', 'nonunion', 2, 21, { ...sameTrial, population: 'loaded late' });
    expect(problems([early, late])).toEqual([[3, 41]]);
  });

  test('a trial that counted breaks says so, whatever else it counted', () => {
    const breaks = { what: 'nonunion', count: 8, of: 40, unit: 'breaks' } as const;
    const row = { ...countRow('a', 'nonunion', 8, 40), event: breaks };
    expect(problemCounts([row]).map(({ unit }) => unit)).toEqual(['breaks']);
    expect(problemCounts([countRow('a', 'nonunion', 8, 40)]).map(({ unit }) => unit)).toEqual(['people']);
    const back = {
      ...countRow('b', 'returned', 20, 21),
      event: { ...breaks, what: 'returned', count: 20, of: 21 } as const,
    };
    expect(notReturnedCounts([back]).map(({ count, of, unit }) => [count, of, unit])).toEqual([[1, 21, 'breaks']]);
  });

  test('two trials are two entries, named', () => {
    const counted = problemCounts([countRow('a', 'failure', 1, 19), countRow('b', 'refracture', 0, 24)]);
    expect(counted.map((c) => c.id)).toEqual(['a', 'b']);
  });

  test('a percentage without a count, union and return are no count of problems', () => {
    const percentOnly = rowOf('p', { event: { what: 'nonunion', count: null, of: 475 } });
    expect(problems([percentOnly, countRow('u', 'union', 9, 9), countRow('r', 'returned', 9, 9)])).toEqual([]);
  });
});

describe('who did not return', () => {
  test('those who did, taken from all', () => {
    expect(missing([countRow('a', 'returned', 22, 26)])).toEqual([[4, 26]]);
  });

  test('counted as such goes first', () => {
    const row = countRow('a', 'returned', 20, 26, { events: [{ what: 'not returned', count: 3, of: 26 }] });
    expect(missing([row])).toEqual([[3, 26]]);
  });
});

describe('whose counts may speak', () => {
  test.each<[string, Partial<StudyLike>, number]>([
    ['seen', {}, 1],
    ['weak', { mark: 'weak' }, 0],
    ['from memory', { mark: 'from memory' }, 0],
    ['second-hand', { read: 'secondary' }, 0],
    ['a review of other studies', { design: 'pooled' }, 0],
    ['people picked because healing failed', { time: timeOf({ branch: 'problem' }) }, 0],
    ['weeks since a second treatment', { time: { ...timeOf(), since: 'second treatment' } }, 0],
    ['another option', { option: SPORT.injury as unknown as StudyLike['option'] }, 0],
    ['another injury', { injuries: [] }, 0],
  ])('%s', (_, change, rows) => {
    expect(countingRows([countRow('a', 'failure', 1, 9, change)], SPORT)).toHaveLength(rows);
  });
});
