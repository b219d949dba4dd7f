/** Film measures do not hang on how finely a surface is cut, can be taken in every pose, and follow the shape of the foot. */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  buildBone,
  DEFAULT_FOOT,
  type Foot,
  type FootParameters,
  type PoseName,
  prepareAnatomy,
} from '../../../../src/anatomy';
import {
  type AngleId,
  calcanealPitch,
  halluxValgus,
  hindfootAlignment,
  meary,
  metatarsusAdductus,
  protrusion,
  radiographicAngles,
} from '../../../../src/anatomy/angles';
import type { BoneId } from '../../../../src/ids';
import { builtFoot, shape } from '../../../tools/built-foot';
import { LONG } from '../../../tools/long';
import { tubeFoot } from '../../../tools/tubes';

beforeAll(prepareAnatomy);

const valuesOf = (foot: Foot) => new Map(radiographicAngles(foot).map(({ id, value }) => [id, value]));

describe('the drawn surface and the fine one give the same', () => {
  /** deg, unless a measure is read from few facets of the drawn mesh. */
  const USUAL = 1.5;
  const WIDER: Partial<Record<AngleId, number>> = {
    // The rounded upper border of the drawn calcaneus is half a dozen facets.
    boehler: 3.5,
    // The corner is some three facets of the drawn calcaneus long. Readers of films agree on it as little.
    gissaneChordal: 8,
    // Axes of tarsal bones of two hundred facets; readers of films are further apart (standing-angles.test.ts).
    talocalcanealDorsoplantar: 2.5,
    talusSecondMetatarsal: 2.5,
    talonavicularCoverage: 2.5,
    // Rests on four corners of tarsal bones of a few facets each.
    metatarsusAdductus: 2.5,
    // Three centimetres of heel and two of tibia.
    hindfootAlignment: 2.5,
  };

  /**
   * Not compared: the walls of the drawn corner are a facet or two each, and their slopes jump by twenty degrees when any value of the
   * bone changes by a hundredth. What is told is measured on the fine surface.
   */
  const ONLY_FINE: AngleId = 'gissaneTangent';

  test.each(['standing', 'asScanned'] as const)('%s', (pose) => {
    const drawn = valuesOf(builtFoot({}, pose));
    for (const [id, fine] of valuesOf(builtFoot({}, pose, 'fine'))) {
      if (id === ONLY_FINE) continue;
      const apart = Math.abs((drawn.get(id) ?? Number.NaN) - fine);
      expect(apart, id).toBeLessThan(WIDER[id] ?? USUAL);
    }
  });
});

test('every pose of the content can be measured', () => {
  for (const { id } of shape.pose.poses) {
    for (const { id: angle, value } of radiographicAngles(builtFoot({}, id as PoseName))) {
      expect(Number.isFinite(value), `${id} ${angle}`).toBe(true);
    }
  }
});

describe('a measure of the shape of the foot is seen on the film that is taken for it', () => {
  const RAYS: readonly BoneId[] = ['metatarsal1', 'metatarsal2', 'talus', 'navicular', 'calcaneus', 'cuboid'];
  /** A standing foot with no more than the bones that are measured. */
  const partOf = (form: Partial<FootParameters>, bones: readonly BoneId[], leg = false): Foot => {
    const parameters = { ...DEFAULT_FOOT, ...form };
    return {
      ...tubeFoot(),
      parameters,
      bones: new Map(bones.map((bone) => [bone, buildBone(shape, parameters, bone, 'standing')])),
      leg: leg ? new Map([['tibia', buildBone(shape, parameters, 'tibia', 'standing')]]) : new Map(),
    };
  };
  const rising = (values: readonly number[], least: number): void => {
    for (const [i, value] of values.entries()) {
      if (i > 0) expect(value - (values[i - 1] ?? Number.NaN), values.join(' ')).toBeGreaterThan(least);
    }
  };

  test('arch: pitch rises and the bend between talus and first metatarsal turns upwards', () => {
    const arches = LONG ? [-1, -0.5, 0, 0.5, 1] : [-1, 0, 1];
    const feet = arches.map((arch) => partOf({ arch }, ['calcaneus', 'talus', 'metatarsal1']));
    rising(
      feet.map((foot) => calcanealPitch(foot).value),
      1,
    );
    rising(
      feet.map((foot) => -meary(foot).value),
      1,
    );
  });

  test('hindfoot', () => {
    const feet = [-8, 0, 8].map((hindfootDeg) => partOf({ hindfootDeg }, ['calcaneus'], true));
    rising(
      feet.map((foot) => hindfootAlignment(foot).value),
      4,
    );
  });

  test('adductus', () => {
    const feet = [0, 10, 20].map((adductusDeg) => partOf({ adductusDeg }, [...RAYS, 'cuneiformMedial', 'metatarsal4']));
    rising(
      feet.map((foot) => metatarsusAdductus(foot).value),
      7,
    );
  });

  test('hallux', () => {
    const feet = [0, 10, 20].map((halluxDeg) => partOf({ halluxDeg }, ['metatarsal1', 'phalanxProximal1']));
    rising(
      feet.map((foot) => halluxValgus(foot).value),
      7,
    );
  });

  test('first ray', () => {
    const feet = [-4, 0, 4].map((firstRayMm) => partOf({ firstRayMm }, [...RAYS, 'cuneiformMedial', 'metatarsal4']));
    rising(
      feet.map((foot) => protrusion(foot, 1)[0].value),
      2,
    );
  });
});
