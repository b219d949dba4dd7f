/**
 * How the bones fit: gaps and facing areas at every joint of the table, and overlap of any two bones. Measured on the meshes as
 * they are, by the definition the joint table was measured with: a point of one bone faces the other when it lies nearer than 3.2 mm
 * (or 1.6 mm more than the least gap) and the two surfaces look at each other (dot of outward directions below -0.55). mm, mm2.
 */
import type { SkeletonId } from '../../ids';
import type { JointShape, Shape } from '../shape';
import { STILL } from '../stance/motion';
import { joined, motionsOf } from '../stance/stance';
import type { Foot, Mesh } from '../types';
import { overlapDepth } from './overlap';
import { samplesOf, WIDTH } from './samples';
import { type SurfaceIndex, surfaceIndex } from './surface-index';

/** Points are set this far apart on a surface, mm: closer ones move no share by more than 0.02 and no percentile by 0.03 mm. */
const SPACING = 0.8;
const NEAR = { mm: 3.2, beyondLeast: 1.6 } as const;
/** Between talus and calcaneus, whose facets lie close to each other, the table was measured with narrower limits; nowhere else. */
const NEAR_SUBTALAR = { mm: 2.4, beyondLeast: 1.2 } as const;
const SUBTALAR: readonly SkeletonId[] = ['talus', 'calcaneus'];
const FACING = -0.55;
const REACH = 6;

export interface JointFit {
  readonly joint: string;
  readonly articular: boolean;
  /** Bone to bone: mean, 5th and 95th percentile by area; NaN where no point faces the other bone. */
  readonly meanMm: number;
  readonly p5Mm: number;
  readonly p95Mm: number;
  /** Mean of both sides. */
  readonly areaMm2: number;
  /** Of the tabled area at this foot's size; null where the table has none. */
  readonly areaShare: number | null;
}

export interface Overlap {
  readonly bones: readonly [SkeletonId, SkeletonId];
  readonly depthMm: number;
}

export interface Fit {
  /** A joint whose bones are nowhere within reach of each other has no row. */
  readonly joints: readonly JointFit[];
  /** Pairs that overlap at all, deepest first. */
  readonly overlaps: readonly Overlap[];
}

interface Facing {
  readonly at: readonly [number, number, number];
  readonly areaMm2: number;
  readonly gapMm: number;
}

interface Part {
  readonly id: SkeletonId;
  readonly mesh: Mesh;
  readonly samples: Float64Array;
  readonly index: SurfaceIndex;
}

const AXES = [0, 1, 2] as const;

const apart = (a: SurfaceIndex, b: SurfaceIndex): boolean =>
  AXES.some((k) => a.low[k] > b.high[k] + REACH || b.low[k] > a.high[k] + REACH);

/** The points of one bone that look at another from outside it, within reach. */
const facingOf = ({ samples }: Part, { index }: Part): Facing[] => {
  const { low, high } = index;
  const facing: Facing[] = [];
  for (let o = 0; o < samples.length; o += WIDTH) {
    const [x, y, z] = [samples[o] as number, samples[o + 1] as number, samples[o + 2] as number];
    if (x < low[0] - REACH || y < low[1] - REACH || z < low[2] - REACH) continue;
    if (x > high[0] + REACH || y > high[1] + REACH || z > high[2] + REACH) continue;
    const hit = index.nearest(x, y, z, REACH);
    if (hit === null || hit.inside) continue;
    const [nx, ny, nz] = hit.way;
    const turned = nx * (samples[o + 3] as number) + ny * (samples[o + 4] as number) + nz * (samples[o + 5] as number);
    if (turned < FACING) facing.push({ at: [x, y, z], areaMm2: samples[o + 6] as number, gapMm: hit.distanceMm });
  }
  return facing;
};

const areaOf = (facing: readonly Facing[]): number => facing.reduce((sum, f) => sum + f.areaMm2, 0);

const percentile = (sorted: readonly Facing[], share: number): number => {
  const wanted = share * areaOf(sorted);
  let sum = 0;
  for (const f of sorted) {
    sum += f.areaMm2;
    if (sum >= wanted) return f.gapMm;
  }
  return Number.NaN;
};

type Sides = readonly [readonly Facing[], readonly Facing[]];

/** `tabled`: mm2 at this foot's size. */
const jointFit = ({ id, articular, first, second }: JointShape, sides: Sides, tabled: number | null): JointFit => {
  const least = sides.flat().reduce((low, f) => Math.min(low, f.gapMm), Number.POSITIVE_INFINITY);
  const subtalar = SUBTALAR.includes(first) && SUBTALAR.includes(second);
  const { mm, beyondLeast } = subtalar ? NEAR_SUBTALAR : NEAR;
  const limit = Math.max(mm, least + beyondLeast);
  const facing = sides
    .flat()
    .filter((f) => f.gapMm < limit)
    .sort((a, b) => a.gapMm - b.gapMm);
  const area = areaOf(facing);
  return {
    joint: id,
    articular,
    meanMm: facing.reduce((sum, f) => sum + f.gapMm * f.areaMm2, 0) / area,
    p5Mm: percentile(facing, 0.05),
    p95Mm: percentile(facing, 0.95),
    areaMm2: area / 2,
    areaShare: tabled === null ? null : area / 2 / tabled,
  };
};

/** Fit of a foot, right or left, in any pose: of all pairs of its bones and the ends of the leg. */
export const fitOf = (shape: Shape, foot: Foot): Fit => {
  const k = foot.parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  const motions = motionsOf(shape, foot.parameters, foot.pose);
  const mirror = foot.side === 'left' ? -1 : 1;
  const parts: Part[] = [...foot.bones, ...foot.leg].map(([id, mesh]) => ({
    id,
    mesh,
    samples: samplesOf(mesh, SPACING),
    index: surfaceIndex(mesh),
  }));

  /** How far a point lies from a joint, in the facet's own measure. */
  const rank = ({ at: [x, y, z] }: Facing, { centre, extents }: JointShape): number =>
    Math.hypot((mirror * x) / k - centre[0], y / k - centre[1], z / k - centre[2]) / extents[0];

  const jointsBetween = (a: Part, b: Part): JointFit[] => {
    const rows = shape.joints
      .filter((j) => (j.first === a.id && j.second === b.id) || (j.first === b.id && j.second === a.id))
      .map((j) => joined(j, motions.get(j.first) ?? STILL, motions.get(j.second) ?? STILL));
    if (rows.length === 0) return [];
    const [ab, ba] = [facingOf(a, b), facingOf(b, a)];
    return rows.map((j) => {
      // Two joints between the same bones: a point belongs to the one it lies nearer to.
      const mine = (f: Facing): boolean => rows.every((other) => rank(f, j) <= rank(f, other));
      const tabled = j.area === undefined ? null : j.area * k * k;
      return jointFit(j, [ab.filter(mine), ba.filter(mine)], tabled);
    });
  };

  const joints: JointFit[] = [];
  const overlaps: Overlap[] = [];
  parts.forEach((a, i) => {
    for (const b of parts.slice(i + 1)) {
      if (apart(a.index, b.index)) continue;
      const depthMm = overlapDepth(a, b);
      if (depthMm > 0) overlaps.push({ bones: [a.id, b.id], depthMm });
      joints.push(...jointsBetween(a, b));
    }
  });
  return { joints, overlaps: overlaps.sort((a, b) => b.depthMm - a.depthMm) };
};
