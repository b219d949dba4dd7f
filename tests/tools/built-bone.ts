/** One bone of the reference foot as scanned, fine level, and its sections across its long axis. mm. */
import { boneAxis, buildBone, DEFAULT_FOOT } from '../../src/anatomy';
import { integralsOf, type Point2 } from '../../src/anatomy/inside/polygon';
import { meshCentroid, verticesOf } from '../../src/anatomy/mesh';
import type { BoneAxis, Mesh } from '../../src/anatomy/types';
import type { BoneId } from '../../src/ids';
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../../src/units';
import { shape } from './built-foot';
import { footOf } from './inside-material';
import { outlineAt } from './outline';

export interface BuiltSection {
  /** [dorsal, lateral] of the axis. */
  readonly points: readonly Point2[];
  readonly area: number;
  readonly centre: Point2;
  readonly width: number;
  readonly height: number;
}
export interface BuiltBone {
  readonly mesh: Mesh;
  readonly axis: BoneAxis;
  /** The section at a share of the length, from the base. */
  readonly at: (share: number) => BuiltSection;
}

/** Where a joint is in the same foot. */
export const builtJoint = (id: string): Vec3 => {
  const joint = shape.joints.find((each) => each.id === id);
  if (!joint) throw new RangeError(`no joint ${id}`);
  return joint.centre;
};

const DORSAL: Vec3 = [0, 1, 0];

/** The axis of a bone along a given way, from its hindmost to its foremost point. */
export const axisAlong = (mesh: Mesh, way: Vec3): BoneAxis => {
  const axis = normalize(way);
  const dorsal = normalize(subtract(DORSAL, scale(axis, dot(DORSAL, axis))));
  const stations = verticesOf(mesh).map((p) => dot(p, axis));
  const low = stations.reduce((a, b) => Math.min(a, b));
  const centroid = meshCentroid(mesh);
  return {
    origin: add(centroid, scale(axis, low - dot(centroid, axis))),
    axis,
    dorsal,
    lateral: cross(axis, dorsal),
    lengthMm: stations.reduce((a, b) => Math.max(a, b)) - low,
  };
};

/** `along`: the way from base to head, for bones as broad as long; else the long axis. Await `prepareAnatomy` before. */
export const builtBone = (bone: BoneId, along?: Vec3): BuiltBone => {
  const mesh = buildBone(shape, DEFAULT_FOOT, bone, 'asScanned', 'fine');
  const foot = footOf(mesh);
  const axis = along ? axisAlong(mesh, along) : boneAxis({ ...foot, bones: new Map([[bone, mesh]]) }, bone);
  return {
    mesh,
    axis,
    at: (share) => {
      const points = outlineAt(mesh, axis, share * axis.lengthMm);
      const { area, a, b } = integralsOf([points]);
      const range = (i: 0 | 1): number => Math.max(...points.map((p) => p[i])) - Math.min(...points.map((p) => p[i]));
      return { points, area, centre: [a / area, b / area], width: range(1), height: range(0) };
    },
  };
};

/** Stations from one share to another, both ends included. */
export const stations = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** Where a section's outline crosses a line: its lowest and highest `[dorsal, lateral][of]` where the other is `at`. */
export const acrossSection = (
  { points }: BuiltSection,
  of: 0 | 1,
  at: number,
): readonly [low: number, high: number] => {
  const hits = points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length] ?? p;
    const [a, b] = [p[1 - of] ?? 0, q[1 - of] ?? 0];
    return a > at === b > at ? [] : [p[of] + ((q[of] - p[of]) * (at - a)) / (b - a)];
  });
  if (hits.length === 0) throw new RangeError(`the section does not reach ${at}`);
  return [Math.min(...hits), Math.max(...hits)];
};
