/** Injuries told in short: enough of them, each with a place that is there, a danger sign and sources; and never more than a card. */
import { readFileSync } from 'node:fs';
import { safeParse } from 'valibot';
import { expect, test } from 'vitest';
import { checkContent } from '../../../src/checks/check-content';
import { readContent } from '../../../src/cli/read-content';
import { readShape } from '../../../src/cli/read-shape';
import { KINDS, type Kind } from '../../../src/content/kinds';
import { regionsOfCard } from '../../../src/content/look-up';
import { type Card, card as cardSchema } from '../../../src/content/schema';
import { modelFoot } from '../../tools/model-foot';
import { textFiles } from '../../tools/tracked';

const content = readContent();
const { cards } = content;
const each = (check: (card: Card) => void): void => {
  expect(cards.length).toBeGreaterThanOrEqual(20);
  for (const card of cards) check(card);
};

/** Roots of what the list of injuries to be told in short names, each met by some card. */
test.each([
  ['fifth-metatarsal apophysis', /growth plate of the fifth metatarsal/],
  ['first metatarsal', /fracture of the first metatarsal/],
  ['navicular body', /body of the navicular/],
  ['talar neck', /neck of the talus/],
  ['talar body', /body or dome of the talus/],
  ['talar lateral process', /lateral process of the talus/],
  ['calcaneal anterior process', /anterior process of the calcaneus/],
  ['calcaneal stress', /stress fracture of the calcaneus/],
  ['calcaneal apophysis', /growth plate of the calcaneus/],
  ['cuboid', /cuboid/],
  ['cuneiforms', /cuneiform/],
  ['sesamoids', /hallux sesamoid/],
  ['hallux', /phalanx of the hallux/],
  ['lesser toes', /phalanx of a lesser toe/],
  ['plantar plate', /plantar plate/],
  ['second-head osteochondrosis', /osteochondrosis of the second metatarsal head/],
  ['accessory bones', /^accessory bones/],
])('%s is told', (_, term) => {
  expect(cards.some((card) => term.test(card.term))).toBe(true);
});

test('each part in which a card lies is on a bone of it, the first on the bone that is looked at', () => {
  each((card) => {
    const on = regionsOfCard(card).map((region) => content.regions.find((r) => r.id === region)?.bone);
    for (const bone of on) expect(card.bones, card.id).toContain(bone);
    if (card.place.is === 'regions') expect(on[0], card.id).toBe(card.bones[0]);
  });
});

test('those of which no part is meant more than another say so, and no other does', () => {
  const whole = cards.filter(({ place }) => place.is === 'bones').map(({ id }) => id);
  expect(whole.sort()).toEqual(
    ['bipartite-sesamoid', 'cuboid', 'cuneiforms', 'first-metatarsal', 'hallux', 'lesser-toes', 'sesamoids'].sort(),
  );
});

test.each([
  ['no place', undefined, false],
  ['no part', { is: 'regions', regions: [] }, false],
  ['a part beside whole bones', { is: 'bones', regions: ['cuboid-spot-dorsal'] }, false],
  ['whole bones', { is: 'bones' }, true],
  ['two parts', { is: 'regions', regions: ['mt2-head', 'mt3-head'] }, true],
])('the form of a place: %s', (_, place, accepted) => {
  const [first] = cards;
  expect(safeParse(cardSchema, { ...first, place }).success).toBe(accepted);
});

test('a place on a bone that is none of the card is told by the check of content against the foot', () => {
  const moved = cards.map((card) => (card.id === 'navicular-body' ? { ...card, bones: ['cuboid' as const] } : card));
  const faults = (of: readonly Card[]) =>
    checkContent({ ...content, cards: [...of] }, modelFoot()).filter(({ where }) => where.startsWith('cards '));
  expect(faults(cards)).toEqual([]);
  expect(faults(moved)).toEqual([
    { where: 'cards navicular-body', expected: 'a place on cuboid', got: 'navicular-body of navicular' },
  ]);
});

test('a card is told from something, never from itself, and a look-alike that it names is drawn on the foot', () => {
  const drawn = new Set<string>(readShape().lookAlikes.map(({ id }) => id));
  each(({ id, tellApart }) => {
    expect(tellApart.length, id).toBeGreaterThan(0);
    for (const { from } of tellApart) {
      if (from.is === 'card') expect(from.card).not.toBe(id);
      if (from.is === 'lookAlike') expect(drawn, id).toContain(from.id);
    }
  });
});

test('a card has words to find it by, and no text of a look-alike a second time', () => {
  const told = new Set(
    readShape().lookAlikes.flatMap(({ differs, where }) => [...Object.values(differs), ...Object.values(where)]),
  );
  each((card) => {
    expect(card.findBy.length, card.id).toBeGreaterThan(2);
    for (const { how } of card.tellApart)
      for (const text of Object.values(how)) expect(told.has(text), text).toBe(false);
  });
});

test('a card holds no forecast, no stage, no option and no load: its shape has no place for them', () => {
  expect(Object.keys(cardSchema.entries).sort()).toEqual(
    [
      'bones',
      'codes',
      'danger',
      'evidence',
      'findBy',
      'id',
      'plain',
      'place',
      'strands',
      'synonyms',
      'tellApart',
      'term',
      'view',
      'what',
      'where',
    ].sort(),
  );
});

/** What speaks of a card: how often something was counted, sources that disagree, and other cards or injuries as look-alikes. */
const MAY_NAME_CARDS: readonly Kind[] = ['cards', 'injuries', 'rates', 'contradictions'];

test('no study, option, stage or factor can name a card', () => {
  const ids = new Set<string>(cards.map(({ id }) => id));
  for (const { id } of content.injuries) expect(ids, 'an injury of the same id').not.toContain(id);
  const kinds = (Object.keys(KINDS) as Kind[]).filter((kind) => !MAY_NAME_CARDS.includes(kind));
  for (const kind of kinds) {
    const keys = JSON.stringify(content[kind]).match(/"(cards?|injuries)":("[^"]*"|\[[^\]]*\])/g) ?? [];
    for (const key of keys)
      for (const [, id] of key.matchAll(/"([\w-]+)"(?=[,\]])/g)) expect(ids, kind).not.toContain(id);
    expect(Object.keys((KINDS[kind].schema as { entries?: object }).entries ?? {}), kind).not.toContain('cards');
  }
});

test('what reckons knows of no card: forecasts, loads, blood, stages and the explanation never read them', () => {
  const reads = textFiles().filter(
    ({ path, text }) =>
      /^src\/(mechanics|recovery|perfusion|explain|anatomy|telling|render|study|cases)\//.test(path) &&
      /\bcards?\b/i.test(text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
  );
  // The search alone reads them, to name them. What groups counted may be of the people of a card: by its id, never by its record.
  const others = reads.filter(({ path }) => !path.startsWith('src/explain/find/'));
  expect(others.map(({ path }) => path)).toEqual(['src/explain/trouble-counts.ts']);
  for (const { text } of others) expect(text).not.toMatch(/content\.cards|\bCard\b/);
  const importers = textFiles().filter(
    ({ path, text }) => /^src\/explain\/(?!find\/)/.test(path) && /from '\.\/find/.test(text),
  );
  expect(importers.map(({ path }) => path)).toEqual([]);
  // The check can fail: the search does read them.
  expect(readFileSync('src/explain/find/phrases.ts', 'utf8')).toMatch(/\bcards\b/);
});
