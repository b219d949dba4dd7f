/**
 * What an anatomist names the bones of the tarsus by, measured on the built fine surfaces: each measure falls to nothing when its
 * feature goes. As scanned, mm. Leg, metatarsals and toes have tests of their own beside this one; here is only what they leave out.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { buildBone, DEFAULT_FOOT, prepareAnatomy, sliceMesh } from '../../../../src/anatomy';
import { patchesOf } from '../../../../src/anatomy/angles/patches';
import { integralsOf, type Point2 } from '../../../../src/anatomy/inside/polygon';
import { centreOfCurvature, frameOfJoint } from '../../../../src/anatomy/joint-surface';
import { verticesOf } from '../../../../src/anatomy/mesh';
import type { JointShape } from '../../../../src/anatomy/shape';
import type { Mesh } from '../../../../src/anatomy/types';
import type { BoneId } from '../../../../src/ids';
import { add, cross, dot, length, normalize, radians, scale, subtract, type Vec3 } from '../../../../src/units';
import { shape } from '../../../tools/built-foot';
import { firstMet } from '../../../tools/triangles';

beforeAll(prepareAnatomy);

const built = new Map<BoneId, Mesh>();
const bone = (id: BoneId): Mesh => {
  const mesh = built.get(id) ?? buildBone(shape, DEFAULT_FOOT, id, 'asScanned', 'fine');
  built.set(id, mesh);
  return mesh;
};
const joint = (id: string): JointShape => {
  const found = shape.joints.find((j) => j.id === id);
  if (!found) throw new Error(id);
  return found;
};
const met = (mesh: Mesh, from: Vec3, way: Vec3): Vec3 => {
  const at = firstMet(mesh, from, way);
  if (!at) throw new RangeError(`nothing is met from ${from.map((x) => x.toFixed(1))}`);
  return at;
};
const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The largest contour of a section at a share of the way between two joints: [up, inwards] about the line between them. */
const sectionBetween = (mesh: Mesh, from: Vec3, to: Vec3, share: number): Point2[] => {
  const along = normalize(subtract(to, from));
  const at = add(from, scale(subtract(to, from), share));
  const side = normalize(cross([0, 1, 0], along));
  const top = cross(along, side);
  return sliceMesh(mesh, at, along)
    .map((loop) => loop.map((p): Point2 => [dot(subtract(p, at), top), dot(subtract(p, at), side)]))
    .reduce<Point2[]>((a, b) => (integralsOf([b]).area > integralsOf([a]).area ? b : a), []);
};

describe('calcaneus', () => {
  test('the shelf for the talus overhangs the inner wall by more than 8 mm', () => {
    const shelf = joint('talus-calcaneus-middleAnterior').centre;
    const overhang = [-10, -6, -2, 0].map((forwards) => {
      const section = sliceMesh(bone('calcaneus'), [0, 0, shelf[2] + forwards], [0, 0, 1]).flat();
      const innermost = (low: number, high: number): number =>
        Math.max(...section.filter((p) => p[1] > shelf[1] + low && p[1] < shelf[1] + high).map((p) => p[0]));
      return innermost(-9, 0) - innermost(-26, -16);
    });
    expect(Math.max(...overhang)).toBeGreaterThan(8);
  });

  test('and is a stout shelf, not a plank: 6 mm thick and more near its edge', () => {
    const shelf = joint('talus-calcaneus-middleAnterior').centre;
    const thick = [-10, -8, -6].map((forwards) => {
      const at = (y: number): Vec3 => [16.5, y, shelf[2] + forwards];
      return met(bone('calcaneus'), at(80), [0, -1, 0])[1] - met(bone('calcaneus'), at(30), [0, 1, 0])[1];
    });
    expect(Math.max(...thick)).toBeGreaterThan(6);
    expect(Math.max(...thick)).toBeLessThan(14);
  });

  /** The upper or lower border seen from the side, so far in front of the hindmost point of the reference foot. */
  const border = (z: number, end: 'top' | 'sole'): number => {
    const heights = sliceMesh(bone('calcaneus'), [0, 0, z], [0, 0, 1])
      .flat()
      .map((p) => p[1]);
    return end === 'top' ? Math.max(...heights) : Math.min(...heights);
  };
  /** How far the border between two places lies above the straight line over them, at most. */
  const above = (from: number, to: number, end: 'top' | 'sole', sign: 1 | -1): number => {
    const [low, high] = [border(from, end), border(to, end)];
    return Math.max(
      ...Array.from({ length: 15 }, (_, i) => (i + 1) / 16).map(
        (t) => sign * (border(from + t * (to - from), end) - low - t * (high - low)),
      ),
    );
  };

  test('its upper border is a saddle between tuberosity and posterior facet', () => {
    expect(above(6, 34, 'top', -1)).toBeGreaterThan(1.5);
  });

  test('its sole runs nearly straight from the medial process to the anterior tubercle', () => {
    expect(above(16, 61, 'sole', 1)).toBeLessThan(5);
    expect(above(16, 61, 'sole', 1)).toBeGreaterThan(1);
  });
});

describe('calcaneus from below', () => {
  /** The sole of the tuberosity, mm above the ground, so far inwards, 18 mm in front of its back. */
  const soleAt = (x: number): number => met(bone('calcaneus'), [x, -40, 18], [0, 1, 0])[1];

  test('a large medial and a small lateral process with a notch between', () => {
    const lowest = (from: number, to: number): number =>
      Math.min(...Array.from({ length: to - from + 1 }, (_, i) => soleAt(from + i)));
    const [lateral, medial] = [lowest(-15, -11), lowest(2, 9)];
    const notch = Math.max(...[-9, -8, -7, -6, -5].map(soleAt));
    expect(notch - lateral).toBeGreaterThan(2);
    expect(notch - medial).toBeGreaterThan(5);
    expect(lateral - medial).toBeGreaterThan(2);
  });

  test('the sole rises from the processes to an anterior tubercle, not up again in front of it', () => {
    const cuboid = joint('calcaneus-cuboid').centre;
    const height = (z: number): number => met(bone('calcaneus'), [cuboid[0] + 4, -40, z], [0, 1, 0])[1];
    expect(height(58) - height(30)).toBeLessThan(11);
    expect(height(58) - height(30)).toBeGreaterThan(4);
  });
});

describe('talus', () => {
  test('the trochlea is wider in front than behind', () => {
    const dome = joint('tibia-talus');
    const { u: medial, v: front, w: down } = frameOfJoint(dome);
    const axis = centreOfCurvature(dome, dome.major) as Vec3;
    const DEPTH = 3;
    const radius = Math.abs(dome.radii[1]) - DEPTH;
    const width = (deg: number): number => {
      const turn = radians(deg);
      const at = add(axis, add(scale(down, -radius * Math.cos(turn)), scale(front, radius * Math.sin(turn))));
      return length(subtract(met(bone('talus'), at, medial), met(bone('talus'), at, scale(medial, -1))));
    };
    // 3 mm under the dome, between its two sides, as far to the front and to the back of its top.
    for (const deg of [20, 30, 40]) expect(width(deg) - width(-deg), `${deg} deg`).toBeGreaterThan(1.5);
  });

  test('the trochlea is a pulley: its two rims stand higher over the axis than the groove between', () => {
    const dome = joint('tibia-talus');
    const { u: medial, v: front, w: down } = frameOfJoint(dome);
    const axis = centreOfCurvature(dome, dome.major) as Vec3;
    for (const deg of [-40, -20, 0, 20, 40]) {
      const turn = radians(deg);
      const way = add(scale(down, -Math.cos(turn)), scale(front, Math.sin(turn)));
      const high = (across: number): number => {
        const from = add(axis, scale(medial, across));
        return length(subtract(met(bone('talus'), from, way), from));
      };
      for (const rim of [9, -9]) expect(high(rim) - high(0), `${deg} deg, ${rim} mm inwards`).toBeGreaterThan(0.25);
    }
  });

  test('its neck is narrower than the head in front and the body behind', () => {
    // Seen from above at the height of the head's middle, below the overhanging front of the trochlea.
    const [body, head] = [joint('talus-calcaneus-posterior').centre, joint('talus-navicular').centre];
    const level = sliceMesh(bone('talus'), [0, head[1], 0], [0, 1, 0]);
    const wide = (share: number): number => {
      const z = body[2] + share * (head[2] - body[2]);
      const across = level.flatMap((loop) =>
        loop.flatMap((p, i) => {
          const q = loop[(i + 1) % loop.length] ?? p;
          return p[2] > z === q[2] > z ? [] : [p[0] + ((q[0] - p[0]) * (z - p[2])) / (q[2] - p[2])];
        }),
      );
      return range(across);
    };
    const neck = Math.min(...[0.4, 0.5, 0.6].map(wide));
    expect(wide(0) - neck).toBeGreaterThan(6);
    expect(wide(0.8) - neck).toBeGreaterThan(4);
  });
});

describe('navicular', () => {
  test('is hollow behind: the middle of its back lies in front of the rim', () => {
    const j = joint('talus-navicular');
    const { u, v, w: forwards } = frameOfJoint(j);
    const depth = (a: number, b: number): number => {
      const from = add(j.centre, add(add(scale(u, a), scale(v, b)), scale(forwards, -15)));
      return dot(subtract(met(bone('navicular'), from, forwards), j.centre), forwards);
    };
    const rim = [0, 45, 90, 135, 180, 225, 270, 315].map((deg) =>
      depth(0.4 * j.extents[0] * Math.cos(radians(deg)), 0.4 * j.extents[1] * Math.sin(radians(deg))),
    );
    expect(depth(0, 0) - rim.reduce((a, b) => a + b, 0) / rim.length).toBeGreaterThan(1.5);
    for (const at of rim) expect(depth(0, 0) - at).toBeGreaterThan(0.5);
  });

  test('its front is three facets that turn away from each other at two ridges', () => {
    const facets = ['navicular-cuneiformMedial', 'navicular-cuneiformIntermediate', 'navicular-cuneiformLateral'].map(
      joint,
    );
    const ahead = normalize(facets.reduce<Vec3>((sum, { normal }) => add(sum, normal), [0, 0, 0]));
    const front = (at: Vec3): Vec3 => met(bone('navicular'), add(at, scale(ahead, 25)), scale(ahead, -1));
    const [a, b, c] = facets.map(({ centre }) => front(centre)) as [Vec3, Vec3, Vec3];
    for (const [from, to] of [
      [a, b],
      [b, c],
    ] as const) {
      const chord = scale(add(from, to), 0.5);
      expect(dot(subtract(front(chord), chord), ahead)).toBeGreaterThan(0.6);
    }
  });

  test('its tuberosity hangs down at the inner end', () => {
    const points = verticesOf(bone('navicular'));
    const inner = points.reduce((a, b) => (b[0] > a[0] ? b : a));
    const outer = points.reduce((a, b) => (b[0] < a[0] ? b : a));
    expect(outer[1] - inner[1]).toBeGreaterThan(4);
    expect(inner[0] - joint('talus-navicular').centre[0]).toBeGreaterThan(18);
  });
});

describe('cuboid', () => {
  test('its inner border is longer than its outer one', () => {
    // 33.4 against 19.7 mm on 60 dry bones (Moitra S, J Clin Diagn Res): well over by half as much again.
    const front = scale(add(joint('cuboid-metatarsal4').centre, joint('cuboid-metatarsal5').centre), 0.5);
    const along = normalize(subtract(front, joint('calcaneus-cuboid').centre));
    const inwards = normalize(cross([0, 1, 0], along));
    const border = (way: 1 | -1): number =>
      range(
        patchesOf(bone('cuboid'))
          .filter(({ normal }) => way * dot(normal, inwards) > 0.6)
          .map(({ at }) => dot(at, along)),
      );
    expect(border(1) / border(-1)).toBeGreaterThan(1.3);
  });

  test('a shallow groove crosses the sole in front of a ridge', () => {
    const back = joint('calcaneus-cuboid').centre;
    const front = scale(add(joint('cuboid-metatarsal4').centre, joint('cuboid-metatarsal5').centre), 0.5);
    const along = normalize(subtract(front, back));
    const up = normalize(subtract([0, 1, 0], scale(along, along[1])));
    const low = (share: number): number => {
      const from = add(add(back, scale(subtract(front, back), share)), scale(up, -30));
      return dot(subtract(met(bone('cuboid'), from, up), back), up);
    };
    const ridge = Math.min(...[0.3, 0.4, 0.5].map(low));
    const groove = Math.max(...[0.6, 0.65, 0.7, 0.75, 0.8].map(low));
    const lip = Math.min(...[0.85, 0.9, 0.95].map(low));
    expect(groove - ridge).toBeGreaterThan(2);
    expect(groove - ridge).toBeLessThan(7);
    expect(groove - lip).toBeGreaterThan(0.5);
  });
});

describe('cuneiforms', () => {
  const ENDS = {
    cuneiformMedial: ['navicular-cuneiformMedial', 'cuneiformMedial-metatarsal1'],
    cuneiformIntermediate: ['navicular-cuneiformIntermediate', 'cuneiformIntermediate-metatarsal2'],
    cuneiformLateral: ['navicular-cuneiformLateral', 'cuneiformLateral-metatarsal3'],
  } as const;
  /** Width at a share of the height of the section at mid length, height being the section's own long way, from sole to back. */
  const widths = (id: keyof typeof ENDS, shares: readonly number[]): number[] => {
    const [behind, ahead] = ENDS[id];
    const points = sectionBetween(bone(id), joint(behind).centre, joint(ahead).centre, 0.5);
    const { area, a, b, aa, bb, ab } = integralsOf([points]);
    const [x, y] = [a / area, b / area];
    const turn = Math.atan2(2 * (ab / area - x * y), aa / area - x * x - (bb / area - y * y)) / 2;
    const own = points.map(
      ([p, q]): Point2 => [
        (p - x) * Math.cos(turn) + (q - y) * Math.sin(turn),
        (q - y) * Math.cos(turn) - (p - x) * Math.sin(turn),
      ],
    );
    const [low, high] = [Math.min(...own.map((p) => p[0])), Math.max(...own.map((p) => p[0]))];
    return shares.map((share) => {
      const at = low + share * (high - low);
      return range(
        own.flatMap((p, i) => {
          const q = own[(i + 1) % own.length] ?? p;
          return p[0] > at === q[0] > at ? [] : [p[1] + ((q[1] - p[1]) * (at - p[0])) / (q[0] - p[0])];
        }),
      );
    });
  };

  test.each(['cuneiformIntermediate', 'cuneiformLateral'] as const)(
    '%s: broad at the back, an edge at the sole',
    (id) => {
      const [sole = 0, back = 0] = widths(id, [0.2, 0.8]);
      expect(back / sole).toBeGreaterThan(1.5);
    },
  );
  /** How far the side that faces the other wedge lies towards it, so far in front of the middle of their facet and a little below. */
  const sideOf = (id: 'cuneiformIntermediate' | 'cuneiformLateral', forwards: number): number => {
    const facet = joint('cuneiformIntermediate-cuneiformLateral');
    const towards = scale(normalize(facet.normal), id === facet.first ? 1 : -1);
    const ahead = normalize(subtract(joint(ENDS[id][1]).centre, joint(ENDS[id][0]).centre));
    const at = add(facet.centre, add(scale(ahead, forwards), scale([0, -1, 0], 4)));
    return dot(subtract(met(bone(id), add(at, scale(towards, 20)), scale(towards, -1)), at), towards);
  };
  test('between the two wedges the intermediate one falls away in front of its facet', () => {
    expect(sideOf('cuneiformIntermediate', -2) - sideOf('cuneiformIntermediate', 5)).toBeGreaterThan(1);
  });
  test('and the lateral one is hollow between its facets for it and for the second metatarsal', () => {
    const edges = (sideOf('cuneiformLateral', -2) + sideOf('cuneiformLateral', 8)) / 2;
    expect(edges - sideOf('cuneiformLateral', 3)).toBeGreaterThan(0.3);
  });
  test('the medial one the other way round', () => {
    const [sole = 0, back = 0] = widths('cuneiformMedial', [0.2, 0.8]);
    expect(sole / back).toBeGreaterThan(1.3);
  });
  test('the medial one is the largest, the intermediate one the shortest', () => {
    const long = (id: keyof typeof ENDS): number => range(verticesOf(bone(id)).map((p) => p[2]));
    expect(long('cuneiformMedial')).toBeGreaterThan(long('cuneiformLateral'));
    expect(long('cuneiformLateral') - long('cuneiformIntermediate')).toBeGreaterThan(1.5);
  });
});

describe('toes', () => {
  /** Areas of a middle phalanx across the way from joint to joint, at shares of it. */
  const areasOf = (id: BoneId): ((...shares: readonly number[]) => number[]) => {
    const behind = shape.joints.find(({ second, articular }) => articular && second === id);
    const ahead = shape.joints.find(({ first, articular }) => articular && first === id);
    if (!behind || !ahead) throw new Error(id);
    return (...shares) =>
      shares.map((share) => integralsOf([sectionBetween(bone(id), behind.centre, ahead.centre, share)]).area);
  };

  test.each(['phalanxMiddle2', 'phalanxMiddle3'] as const)('%s: a waist between base and pulley', (id) => {
    const areas = areasOf(id);
    const waist = Math.min(...areas(0.4, 0.5, 0.6, 0.7));
    expect(Math.max(...areas(0.1, 0.2, 0.3)) / waist, 'base').toBeGreaterThan(1.15);
    expect(Math.max(...areas(0.75, 0.8, 0.85, 0.9)) / waist, 'pulley').toBeGreaterThan(1.15);
  });

  // As wide as long or nearly: a base and a pulley with a neck between them would be a mushroom.
  test.each(['phalanxMiddle4', 'phalanxMiddle5'] as const)('%s: one plump block without a neck', (id) => {
    const areas = areasOf(id);
    expect(Math.min(...areas(0.3, 0.4, 0.5, 0.6)) / Math.max(...areas(0.2, 0.3))).toBeGreaterThan(0.8);
    const points = verticesOf(bone(id));
    expect(range(points.map((p) => p[0])) / range(points.map((p) => p[2]))).toBeGreaterThan(0.9);
  });
});
