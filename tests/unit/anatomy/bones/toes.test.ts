/** Phalanges and sesamoids: what an anatomist names them by, measured on the built surfaces. As scanned, mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import { meshCentroid, meshVolume, prepareAnatomy } from '../../../../src/anatomy';
import { frameOfJoint } from '../../../../src/anatomy/joint-surface';
import { verticesOf } from '../../../../src/anatomy/mesh';
import type { BoneId } from '../../../../src/ids';
import { add, cross, dot, scale, subtract, type Vec3 } from '../../../../src/units';
import { type BuiltBone, builtBone, builtJoint, stations } from '../../../tools/built-bone';
import { shape } from '../../../tools/built-foot';
import { closestOn, isInside } from '../../../tools/surface';

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

const LESSER = [2, 3, 4, 5] as const;
const built = new Map<BoneId, BuiltBone>();
const bone = (id: BoneId): BuiltBone => built.get(id) as BuiltBone;
const between = (id: BoneId, behind: string, ahead: string): void => {
  built.set(id, builtBone(id, subtract(builtJoint(ahead), builtJoint(behind))));
};
/** A distal phalanx runs from its joint through its middle. */
const distal = (id: BoneId, behind: string): void => {
  built.set(id, builtBone(id, subtract(meshCentroid(builtBone(id).mesh), builtJoint(behind))));
};
beforeAll(async () => {
  await prepareAnatomy();
  between('phalanxProximal1', 'metatarsal1-phalanxProximal1', 'phalanxProximal1-phalanxDistal1');
  distal('phalanxDistal1', 'phalanxProximal1-phalanxDistal1');
  for (const k of LESSER) {
    const [back, front] = [`phalanxProximal${k}-phalanxMiddle${k}`, `phalanxMiddle${k}-phalanxDistal${k}`];
    between(`phalanxProximal${k}`, `metatarsal${k}-phalanxProximal${k}`, back);
    between(`phalanxMiddle${k}`, back, front);
    distal(`phalanxDistal${k}`, front);
  }
  for (const id of ['sesamoidMedial', 'sesamoidLateral'] as const) built.set(id, builtBone(id, [0, 0, 1]));
}, 60_000);

const long = (id: BoneId): number => bone(id).axis.lengthMm;
const widest = (id: BoneId, from: number, to: number): number =>
  Math.max(...stations(from, to, 12).map((t) => bone(id).at(t).width));
const narrowest = (id: BoneId, from: number, to: number): number =>
  Math.min(...stations(from, to, 12).map((t) => bone(id).at(t).width));

/** How far the bone reaches along a line through its head or base, `aside` mm outwards and `up` mm upwards of the axis. */
const reach = ({ axis, mesh }: BuiltBone, end: 'head' | 'base', aside: number, up = 0): number => {
  const at = (s: number): Vec3 =>
    add(axis.origin, add(scale(axis.axis, s), add(scale(axis.lateral, aside), scale(axis.dorsal, up))));
  const step = end === 'head' ? -0.1 : 0.1;
  let s = end === 'head' ? axis.lengthMm + 1 : -1;
  while (!isInside(mesh, at(s))) {
    s += step;
    if (s < -2 || s > axis.lengthMm + 2) throw new Error('the line misses the bone');
  }
  return s;
};

/** The facet of a joint on its second bone: `out` points away from that bone. */
const facetOn = (id: string) => {
  const joint = shape.joints.find((each) => each.id === id);
  if (!joint) throw new RangeError(`no joint ${id}`);
  const { u, v, w } = frameOfJoint(joint);
  return { centre: joint.centre, out: scale(w, -1), major: u, minor: v, extents: joint.extents };
};

const PULLEYS: readonly BoneId[] = ['phalanxProximal1', ...LESSER.map((k) => `phalanxProximal${k}` as const)];

describe('phalanges', () => {
  test.each(PULLEYS)('%s: waisted, broadest at its base', (id) => {
    const [base, waist, head] = [widest(id, 0.05, 0.3), narrowest(id, 0.4, 0.8), widest(id, 0.8, 0.97)];
    expect(waist / base).toBeLessThan(0.72);
    expect(waist / head).toBeLessThan(0.85);
    expect(base).toBeGreaterThan(head);
  });

  test.each([...PULLEYS, 'phalanxMiddle2', 'phalanxMiddle3'] as const)(
    '%s: a pulley of two condyles in front',
    (id) => {
      // 2 mm behind the joint: a share of the shortest would lie in its very tip.
      const head = bone(id).at(1 - 2 / long(id));
      const [middle, half] = [head.centre[1], head.width / 2];
      const ahead = (share: number): number => reach(bone(id), 'head', middle + share * half, head.centre[0]);
      expect((ahead(-0.55) + ahead(0.55)) / 2 - ahead(0)).toBeGreaterThan(0.25);
    },
  );

  // Square to the facet and from its middle: the base stands aslant on the shaft, and that of the first toe reaches inwards.
  test.each(PULLEYS)('%s: base an oval hollow for the head behind it', (id) => {
    const joint = id.replace('phalanxProximal', 'metatarsal');
    const { mesh } = bone(id);
    const { centre, out, major, minor, extents } = facetOn(`${joint}-${id}`);
    const behind = (alongMajor: number, alongMinor: number): number => {
      const aside = add(scale(major, (alongMajor * extents[0]) / 2), scale(minor, (alongMinor * extents[1]) / 2));
      const at = add(centre, add(aside, scale(out, 6)));
      return dot(out, subtract(closestAlong(mesh, at, scale(out, -1)), centre));
    };
    const rim = [behind(0.85, 0), behind(-0.85, 0), behind(0, 0.85), behind(0, -0.85)];
    const depth = rim.map((each) => each - behind(0, 0));
    expect(Math.min(...depth)).toBeGreaterThan(0.45);
    expect(depth.reduce((sum, d) => sum + d, 0) / 4).toBeGreaterThan(0.07 * Math.min(...extents));
  });

  test.each(PULLEYS)('%s: hollow along the sole, not along the back of the toe', (id) => {
    const edge = (t: number, pick: 'min' | 'max'): number =>
      Math[pick](
        ...bone(id)
          .at(t)
          .points.map((p) => p[0]),
      );
    const hollow = edge(0.55, 'min') - (edge(0.15, 'min') + edge(0.9, 'min')) / 2;
    const dip = (edge(0.15, 'max') + edge(0.9, 'max')) / 2 - edge(0.55, 'max');
    expect(hollow).toBeGreaterThan(0.8);
    expect(hollow).toBeGreaterThan(dip + 0.3);
  });

  test('middle ones are short, the shorter the further out; those of the first toe are the stoutest', () => {
    for (const k of LESSER) expect(long(`phalanxMiddle${k}`) / long(`phalanxProximal${k}`)).toBeLessThan(0.5);
    const middle = LESSER.map((k) => long(`phalanxMiddle${k}`));
    expect(middle).toEqual([...middle].sort((a, b) => b - a));
    for (const k of LESSER) {
      expect(meshVolume(bone('phalanxProximal1').mesh)).toBeGreaterThan(
        2 * meshVolume(bone(`phalanxProximal${k}`).mesh),
      );
    }
  });

  test.each(['phalanxDistal1', 'phalanxDistal2', 'phalanxDistal3', 'phalanxDistal4', 'phalanxDistal5'] as const)(
    '%s: ends in a spade broader than its waist, lower than its base',
    (id) => {
      expect(widest(id, 0.72, 0.97) / narrowest(id, 0.4, 0.72)).toBeGreaterThan(1.1);
      expect(bone(id).at(0.85).height / bone(id).at(0.15).height).toBeLessThan(0.9);
      const tuft = bone(id).at(0.85);
      expect(tuft.width / tuft.height).toBeGreaterThan(1.3);
    },
  );
});

describe('sesamoids', () => {
  const extents = (id: BoneId): { length: number; width: number } => ({
    length: long(id),
    width: widest(id, 0.2, 0.8),
  });

  test('the medial is the longer and slimmer, the lateral the rounder', () => {
    const [medial, lateral] = [extents('sesamoidMedial'), extents('sesamoidLateral')];
    expect(medial.length).toBeGreaterThan(lateral.length);
    expect(medial.length / medial.width).toBeGreaterThan((1.1 * lateral.length) / lateral.width);
  });

  test.each(['sesamoidMedial', 'sesamoidLateral'] as const)('%s: flat under the head, round at the sole', (id) => {
    const { mesh, axis } = bone(id);
    const joint = builtJoint(`metatarsal1-${id}`);
    const centre = meshCentroid(mesh);
    const up = subtract(joint, centre);
    const way = scale(up, 1 / Math.hypot(...up));
    const across = cross(axis.axis, way);
    // How much lower the surface lies 3.5 mm before and behind its middle, above and below: of five lines, for one line alone moves by
    // a tenth of a millimetre with where an edge between two facets happens to run.
    const fall = (side: 1 | -1): number => {
      const depth = (ahead: number): number =>
        mean(
          [-1, -0.5, 0, 0.5, 1].map((beside) => {
            const off = add(scale(axis.axis, ahead), scale(across, beside));
            const far = add(centre, add(scale(way, 8 * side), off));
            return dot(scale(way, side), subtract(closestAlong(mesh, far, scale(way, -side)), centre));
          }),
        );
      return depth(0) - (depth(3.5) + depth(-3.5)) / 2;
    };
    expect(fall(-1)).toBeGreaterThan(0.9);
    expect(fall(1)).toBeLessThan(fall(-1) - 0.7);
  });

  test('they lie either side of the crista, under the head', () => {
    const head = builtBone('metatarsal1').mesh;
    const low = verticesOf(head).filter((p) => p[2] > 149 && p[2] < 158);
    const crista = low.reduce((a, b) => (b[1] < a[1] ? b : a));
    const x = (id: BoneId): readonly number[] => verticesOf(bone(id).mesh).map((p) => p[0]);
    expect(crista[0]).toBeLessThan(Math.min(...x('sesamoidMedial')));
    expect(crista[0]).toBeGreaterThan(Math.max(...x('sesamoidLateral')));
    const tops = (['sesamoidMedial', 'sesamoidLateral'] as const).map((id) =>
      Math.max(...verticesOf(bone(id).mesh).map((p) => p[1])),
    );
    expect(crista[1]).toBeLessThan(Math.max(...tops));
    for (const id of ['sesamoidMedial', 'sesamoidLateral'] as const) {
      expect(meshCentroid(bone(id).mesh)[1]).toBeLessThan(crista[1]);
    }
  });
});

/** The first point of the surface on the way from a point outside. */
const closestAlong = (mesh: BuiltBone['mesh'], from: Vec3, way: Vec3): Vec3 => {
  for (let s = 0; s < 16; s += 0.05) {
    const p = add(from, scale(way, s));
    if (isInside(mesh, p)) return closestOn(mesh, p);
  }
  throw new Error('the line misses the bone');
};
