/**
 * Every measure of a foot's shape moves the angle it is known by, always the same way, over its whole range: read on the meshes by
 * the definitions of films. Standing, drawn surfaces; deg, mm.
 */
import { beforeAll, expect, test } from 'vitest';
import { FORM_BOUNDS, type FootForm, prepareAnatomy } from '../../../src/anatomy';
import { type AngleId, radiographicAngles } from '../../../src/anatomy/angles';
import { builtFoot } from '../../tools/built-foot';
import { LONG } from '../../tools/long';

beforeAll(prepareAnatomy);

type Angles = ReadonlyMap<AngleId, number>;
const known = new Map<string, Angles>();
const anglesOf = (measure: keyof FootForm, value: number): Angles => {
  const key = value === 0 ? 'default' : `${measure} ${value}`;
  const found =
    known.get(key) ?? new Map(radiographicAngles(builtFoot({ [measure]: value })).map((a) => [a.id, a.value]));
  known.set(key, found);
  return found;
};

/**
 * Five even steps over the bounds, one of them exactly 0 where the bounds reach to both sides alike; in the short run of all but the
 * arch, which moves six angles, both ends and the middle.
 */
const stepsOf = (measure: keyof FootForm): number[] => {
  const [low, high] = FORM_BOUNDS[measure];
  const ofFour = LONG || measure === 'arch' ? [0, 1, 2, 3, 4] : [0, 2, 4];
  return ofFour.map((i) => low + ((high - low) * i) / 4);
};

/** What the drawn surface's facets may hide of a step; a share is one of the length of the foot. */
const LEAST_STEP = { deg: 0.3, mm: 0.3, share: 0.002 } as const;

/** measure, angle, +1 where it rises with it; where the two are the same thing, the share of the range that must be seen on the film. */
const ROWS: readonly (readonly [keyof FootForm, AngleId, 1 | -1, keyof typeof LEAST_STEP, number?])[] = [
  ['arch', 'calcanealPitch', 1, 'deg'],
  ['arch', 'meary', -1, 'deg'],
  ['arch', 'talarDeclination', -1, 'deg'],
  ['arch', 'metatarsalDeclination1', 1, 'deg'],
  ['arch', 'calcaneusFirstMetatarsal', -1, 'deg'],
  ['arch', 'normalisedNavicularHeight', 1, 'share'],
  ['hindfootDeg', 'hindfootAlignment', 1, 'deg', 0.7],
  ['adductusDeg', 'metatarsusAdductus', 1, 'deg', 0.7],
  ['halluxDeg', 'halluxValgus', 1, 'deg', 0.7],
  ['firstRayMm', 'protrusion1', 1, 'mm', 0.7],
];

for (const [measure, angle, way, unit, seen = 0] of ROWS) {
  test(`${measure} moves ${angle}, at every step the same way`, () => {
    const steps = stepsOf(measure);
    const values = steps.map((value) => anglesOf(measure, value).get(angle) ?? Number.NaN);
    const told = values.map((value) => value.toFixed(2)).join(', ');
    for (const [i, value] of values.entries()) {
      if (i > 0) expect(way * (value - (values[i - 1] ?? Number.NaN)), told).toBeGreaterThan(LEAST_STEP[unit]);
    }
    const whole = (all: readonly number[]): number => (all.at(-1) ?? Number.NaN) - (all[0] ?? Number.NaN);
    expect(way * whole(values), told).toBeGreaterThan(seen * whole(steps));
  }, 60_000);
}

test('a measure leaves the angles of the others nearly alone', () => {
  const usual = anglesOf('arch', 0);
  const change = (measure: keyof FootForm, value: number, angle: AngleId): number =>
    Math.abs((anglesOf(measure, value).get(angle) ?? Number.NaN) - (usual.get(angle) ?? Number.NaN));
  expect(change('halluxDeg', 30, 'calcanealPitch')).toBeLessThan(0.5);
  expect(change('halluxDeg', 30, 'metatarsusAdductus')).toBeLessThan(1.5);
  expect(change('adductusDeg', 25, 'calcanealPitch')).toBeLessThan(0.5);
  expect(change('adductusDeg', 25, 'hindfootAlignment')).toBeLessThan(0.5);
  // A heel in varus does not lie flatter, as tilting it about the foot's length alone would have it.
  expect(anglesOf('hindfootDeg', 10).get('calcanealPitch')).toBeGreaterThan(
    anglesOf('hindfootDeg', -10).get('calcanealPitch') ?? Number.NaN,
  );
  expect(change('firstRayMm', 5, 'halluxValgus')).toBeLessThan(1.5);
  expect(change('firstRayMm', 5, 'calcanealPitch')).toBeLessThan(0.5);
});
