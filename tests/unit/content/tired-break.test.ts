/** One plain word for one thing: what came bit by bit is a tired break to whoever does not study, in every telling and name. */
import { expect, it } from 'vitest';
import { peopleOfStudy, wordingTemplates } from '../../../src/wording';
import { content } from '../../tools/explained';

const OTHER_WORDS = /\b(slow|stress|fatigue|overuse|worn) (break|crack|fracture)s?\b/i;

it('tells people of studies, injuries and screens of tired breaks by no second word', () => {
  const told = [
    ...content.studies.map(({ id }) => peopleOfStudy(content, id, 'patient')),
    ...content.rates.map(({ plain }) => plain.group),
    ...content.injuries.map(({ plain }) => plain),
    ...content.cards.map(({ plain }) => plain),
    ...Object.values(content.words),
  ];
  expect(told.filter((text) => /tired break/.test(text)).length).toBeGreaterThan(10);
  expect(told.filter((text) => OTHER_WORDS.test(text))).toEqual([]);
});

it('names no study, and no odds, by "that" alone', () => {
  const told = wordingTemplates().filter(({ where }) => /\/(patient|broadcast)$/.test(where));
  expect(told.length).toBeGreaterThan(100);
  expect(told.filter(({ text }) => /in that study|odds for that\b/.test(text))).toEqual([]);
});
