/** The words and norms beside the measures, and the table of motions, fit the code and each other. */

import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { prepareAnatomy } from '../../../../src/anatomy';
import { radiographicAngles } from '../../../../src/anatomy/angles';
import { motionsSchema } from '../../../../src/anatomy/angles/motions-schema';
import { anglesSchema, type Norm, verdictOn } from '../../../../src/anatomy/angles/schema';
import { builtFoot, shape } from '../../../tools/built-foot';

await prepareAnatomy();
const measures = v.parse(anglesSchema, shape.angles);

test('every measure of the code has its entry, with the same view and unit', () => {
  expect(measures.map(({ id, view, unit }) => ({ id, view, unit }))).toEqual(
    radiographicAngles(builtFoot()).map(({ id, view, unit }) => ({ id, view, unit })),
  );
});

test('an entry that is missing or out of order is found', () => {
  expect(v.safeParse(anglesSchema, measures.slice(1)).success).toBe(false);
  expect(v.safeParse(anglesSchema, [...measures].reverse()).success).toBe(false);
});

test('a norm is a mean or a range, and a spread needs its mean', () => {
  const withNorm = (norm: object) =>
    v.safeParse(
      anglesSchema,
      measures.map((m, i) =>
        i === 0 ? { ...m, norms: [{ of: 'adults', source: 'a book', how: 'read', ...norm }] } : m,
      ),
    ).success;
  expect(withNorm({ mean: 20, sd: 3 })).toBe(true);
  expect(withNorm({ high: 15 })).toBe(true);
  expect(withNorm({})).toBe(false);
  expect(withNorm({ mean: 20, low: 18 })).toBe(false);
  expect(withNorm({ low: 18, sd: 3 })).toBe(false);
  expect(withNorm({ mean: 20, how: 'heard' })).toBe(false);
});

const norm = (figures: object): Norm => ({ of: 'adults', source: 'a book', how: 'read', ...figures });
test.each([
  ['in the middle', 20, norm({ mean: 21, sd: 3 }), 'inside'],
  ['between one and two sd', 26, norm({ mean: 21, sd: 3 }), 'inside two sd'],
  ['beyond two sd', 28, norm({ mean: 21, sd: 3 }), 'outside'],
  ['a mean alone', 20, norm({ mean: 21 }), 'no spread known'],
  ['below an upper limit', 14, norm({ high: 15 }), 'inside'],
  ['above an upper limit', 16, norm({ high: 15 }), 'outside'],
  ['below a range', -5, norm({ low: -4, high: 4 }), 'outside'],
  ['nothing known', 1, undefined, 'no norm known'],
])('a value %s', (_, value, against, verdict) => {
  expect(verdictOn(value, against)).toBe(verdict);
});

describe('motions', () => {
  const motions = v.parse(motionsSchema, shape.motions);
  const articular = new Set(shape.joints.filter((j) => j.articular).map((j) => j.id));

  test('are of joints that exist', () => {
    expect(motions.joints.flatMap(({ joints }) => joints).filter((id) => !articular.has(id))).toEqual([]);
  });

  test('are known for every kind of joint that poses move', () => {
    const known = new Set(motions.joints.flatMap(({ joints }) => joints));
    const needed = [
      'tibia-talus',
      'talus-calcaneus-posterior',
      'talus-navicular',
      'calcaneus-cuboid',
      'navicular-cuneiformMedial',
      'cuneiformMedial-metatarsal1',
      'cuneiformIntermediate-metatarsal2',
      'cuneiformLateral-metatarsal3',
      'cuboid-metatarsal4',
      'cuboid-metatarsal5',
      ...[1, 2, 3, 4, 5].map((ray) => `metatarsal${ray}-phalanxProximal${ray}`),
      'phalanxProximal1-phalanxDistal1',
    ];
    expect(needed.filter((id) => !known.has(id))).toEqual([]);
  });
});
