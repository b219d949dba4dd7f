/** Codes as somebody types them, in part or whole: what they find, what they say by themselves, and what is no code of these. */
import { describe, expect, test } from 'vitest';
import { content, idsFor, search } from './finding';

const withCode = (code: string) =>
  [...content.injuries, ...content.cards].filter(({ codes }) => codes.some((id) => id === code)).map(({ id }) => id);

test.each([
  ['S92.351A', 's92-35'],
  ['s92351a', 's92-35'],
  ['S92351A', 's92-35'],
  ['S92.35', 's92-35'],
  ['s92.35', 's92-35'],
  ['s9235', 's92-35'],
  ['S92.115D', 's92-11'],
  ['M84.374', 'm84-37-foot'],
  ['M84.375', 'm84-37-foot'],
  ['m84.375g', 'm84-37-foot'],
  ['M84.377A', 'm84-37-toe'],
  ['S93.522A', 's93-52-great-toe'],
  ['coded as S92.254K today', 's92-25'],
  ['S92.351A.', 's92-35'],
])('%s', (typed, code) => {
  expect(idsFor(typed).sort()).toEqual(withCode(code).sort());
  expect(search(typed)).toMatchObject({ unknown: [], unknownCodes: [] });
});

describe('codes of a growth plate lead to the injuries whose record names them', () => {
  const naming = (code: string) => content.injuries.filter((each) => each.codeOfGrowing === code).map(({ id }) => id);

  test.each([
    ['S99.101A', 's99-10', { side: 'right', visit: 'firstClosed', growing: 'notStated' }],
    ['S99.10', 's99-10', { side: null, visit: null, growing: 'notStated' }],
    ['s99.1', 's99-10', { side: null, visit: null, growing: 'notStated' }],
    ['S99.122K', 's99-10', { side: 'left', visit: 'nonunion', growing: 'II' }],
    ['S99.199', 's99-10', { side: null, visit: null, growing: 'other' }],
    ['S99.002A', 's99-00', { side: 'left', visit: 'firstClosed', growing: 'notStated' }],
    ['S99.04', 's99-00', { side: null, visit: null, growing: 'IV' }],
  ])('%s', (typed, code, says) => {
    expect(naming(code).length).toBeGreaterThan(0);
    expect(idsFor(typed).sort()).toEqual(naming(code).sort());
    expect(search(typed)).toMatchObject({ unknown: [], unknownCodes: [] });
    for (const { matched } of search(typed).candidates)
      expect(matched).toEqual([{ by: 'code', said: typed, code, displaced: null, ...says }]);
  });

  test.each(['S99.151A', 'S99.103A', 'S99.201A', 'S99.101Z'])('%s is none of them', (typed) => {
    expect(search(typed)).toMatchObject({ candidates: [], unknownCodes: [typed] });
  });

  test('another code says nothing of a growth plate', () => {
    expect(search('S92.351A').candidates[0]?.matched).toMatchObject([{ by: 'code', growing: null }]);
  });
});

test('the beginning of a code finds all that it may become', () => {
  const talus = idsFor('S92.1');
  expect(talus).toEqual(expect.arrayContaining(withCode('s92-11')));
  expect(talus).toEqual(expect.arrayContaining(withCode('s92-19')));
  expect(talus).not.toContain('cuboid');
});

describe('a code in pieces', () => {
  test.each(['S92 354 A', 'S92,354A', 'S92 354A', 'S92.35 4A', 's92.354 a', 'S92 354'])('%s', (typed) => {
    expect(idsFor(typed).sort()).toEqual(withCode('s92-35').sort());
    expect(search(typed)).toMatchObject({ unknown: [], unknownCodes: [] });
  });

  test.each(['S92 12 days ago', 'S92, 35 years old', 'S92 4 weeks'])('is none before a count: %s', (typed) => {
    expect(idsFor(typed)).toEqual(expect.arrayContaining(idsFor('S92')));
  });
});

describe('what a code says', () => {
  const read = (typed: string) => search(typed).candidates[0]?.matched.find(({ by }) => by === 'code');

  test.each([
    ['S92.351A', { side: 'right', displaced: true, visit: 'firstClosed' }],
    ['s92351b', { side: 'right', displaced: true, visit: 'firstOpen' }],
    ['S92.355D', { side: 'left', displaced: false, visit: 'usualHealing' }],
    ['S92.355', { side: 'left', displaced: false, visit: null }],
    ['S92.35', { side: null, displaced: null, visit: null }],
    ['M84.374A', { side: 'right', displaced: null, visit: 'first' }],
    ['M84.376K', { side: null, displaced: null, visit: 'nonunion' }],
    ['S93.621D', { side: 'right', displaced: null, visit: 'later' }],
    ['M92.71', { side: 'right', displaced: null, visit: null }],
  ])('%s', (typed, says) => {
    expect(read(typed)).toMatchObject({ said: typed, ...says });
  });
});

describe('what is no code of these says so', () => {
  test.each([
    ['another chapter', 'J45.901'],
    ['a side that the list has not', 'S92.358'],
    ['a visit that the list has not', 'S92.351Z'],
    ['a letter for open breaks where there are none', 'M84.374B'],
    ['a visit where the code has none', 'M92.71A'],
    ['without its point', 'j45901'],
  ])('%s', (_, typed) => {
    expect(search(typed)).toMatchObject({ candidates: [], unknownCodes: [typed], unknown: [] });
  });

  test('beside words it takes nothing from them', () => {
    expect(search('J45.901, heel').unknownCodes).toEqual(['J45.901']);
    expect(idsFor('J45.901, heel')).toEqual(idsFor('heel'));
  });

  test('words of three characters are words, such as a team of the under-19s', () => {
    expect(search('U19 heel').unknownCodes).toEqual([]);
  });

  test('longer than a code is no code', () => {
    expect(idsFor('S92.359Z9')).toEqual([]);
  });
});
