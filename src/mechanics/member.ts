/**
 * A bone as a member: sections cut from its mesh across its long axis, hollowed by the canal and cortex of the inputs.
 * y dorsal, z lateral of the bone axis, mm.
 */
import { fromBone, inBone, sliceMesh } from '../anatomy';
import { integralsOf, type Point2 } from '../anatomy/inside/polygon';
import type { BoneAxis, Mesh } from '../anatomy/types';
import { type Canal, sectionOf } from './section';
import type { SectionProperties } from './types';

export interface Outline {
  readonly sMm: number;
  readonly points: readonly Point2[];
  /** Greatest extent, up-down or across. */
  readonly depthMm: number;
}

/** Wall and canal of the whole bone, lengths in mm, shares of the bone's length. */
export interface Hollow {
  readonly canalAcrossMm: number;
  readonly canalUpDownMm: number;
  readonly cortexMetaphysisMm: number;
  readonly canalAtShare: number;
  readonly canalFromShare: number;
  readonly canalToShare: number;
}

export interface MemberSection {
  readonly outline: Outline;
  readonly section: SectionProperties;
}

const extent = (points: readonly Point2[], i: 0 | 1): readonly [low: number, high: number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of points) {
    low = Math.min(low, p[i]);
    high = Math.max(high, p[i]);
  }
  return [low, high];
};

/** The outer contour at a station: the largest loop, where a plane cuts more than one. */
export const outlineAt = (mesh: Mesh, axis: BoneAxis, sMm: number): Outline => {
  const loops = sliceMesh(mesh, fromBone(axis, sMm), axis.axis).map((loop) =>
    loop.map((p): Point2 => {
      const { dorsalMm, lateralMm } = inBone(axis, p);
      return [dorsalMm, lateralMm];
    }),
  );
  const points = loops.reduce<Point2[]>((a, b) => (integralsOf([b]).area > integralsOf([a]).area ? b : a), []);
  if (points.length === 0) throw new RangeError(`the bone has no section at ${sMm} mm`);
  const [y0, y1] = extent(points, 0);
  const [z0, z1] = extent(points, 1);
  return { sMm, points, depthMm: Math.max(y1 - y0, z1 - z0) };
};

interface Wall {
  readonly upDown: number;
  readonly across: number;
}

/** The wall that leaves the measured canal in the section where it was measured. */
const shaftWall = (at: Outline, hollow: Hollow): Wall => {
  const [y0, y1] = extent(at.points, 0);
  const [z0, z1] = extent(at.points, 1);
  const wall = (outer: number, inner: number) => Math.max((outer - inner) / 2, hollow.cortexMetaphysisMm);
  return { upDown: wall(y1 - y0, hollow.canalUpDownMm), across: wall(z1 - z0, hollow.canalAcrossMm) };
};

/** Wall at a station: the shaft's between the canal's ends, thinning to the metaphyseal cortex within one depth beyond them. */
const wallAt = (sMm: number, lengthMm: number, depthMm: number, shaft: Wall, hollow: Hollow): Wall => {
  const beyond = Math.max(hollow.canalFromShare * lengthMm - sMm, sMm - hollow.canalToShare * lengthMm, 0);
  const t = Math.min(beyond / depthMm, 1);
  const thin = (w: number) => w + (Math.min(hollow.cortexMetaphysisMm, w) - w) * t;
  return { upDown: thin(shaft.upDown), across: thin(shaft.across) };
};

/** The canal that leaves `wall`, drawn in until it leaves it everywhere round an outline that is no ellipse; null when none fits. */
const canalIn = (points: readonly Point2[], wall: Wall): Canal | null => {
  const [y0, y1] = extent(points, 0);
  const [z0, z1] = extent(points, 1);
  const [cy, cz] = [(y0 + y1) / 2, (z0 + z1) / 2];
  const [outerY, outerZ] = [(y1 - y0) / 2, (z1 - z0) / 2];
  // How far inside the ellipse of the extents the outline comes: 1 for an ellipse.
  let inside = 1;
  points.forEach(([ya, za], i) => {
    const [yb, zb] = points[(i + 1) % points.length] ?? [ya, za];
    for (const [y, z] of [
      [ya, za],
      [(ya + yb) / 2, (za + zb) / 2],
    ] as const) {
      inside = Math.min(inside, Math.hypot((y - cy) / outerY, (z - cz) / outerZ));
    }
  });
  const semiDorsalMm = outerY * inside - wall.upDown;
  const semiLateralMm = outerZ * inside - wall.across;
  return semiDorsalMm > 0 && semiLateralMm > 0 ? { centre: [cy, cz], semiDorsalMm, semiLateralMm } : null;
};

/** Every outline hollowed. The shaft's wall comes from the outline nearest to where the canal was measured. */
export const hollowOut = (outlines: readonly Outline[], lengthMm: number, hollow: Hollow): MemberSection[] => {
  const measured = hollow.canalAtShare * lengthMm;
  const at = outlines.reduce((a, b) => (Math.abs(b.sMm - measured) < Math.abs(a.sMm - measured) ? b : a));
  const shaft = shaftWall(at, hollow);
  return outlines.map((outline) => {
    const wall = wallAt(outline.sMm, lengthMm, outline.depthMm, shaft, hollow);
    return { outline, section: sectionOf(outline.points, canalIn(outline.points, wall)) };
  });
};
