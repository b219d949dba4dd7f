/**
 * How the bones fit: gaps and facing areas at every joint of the table, and overlap of any two bones. Measured on the meshes as
 * they are, by the definition the joint table was measured with: a point of one bone faces the other when it lies nearer than 3.2 mm
 * (or 1.6 mm more than the least gap) and the two surfaces look at each other (dot of normals below -0.55). mm, mm2.
 */
import type { SkeletonId } from '../../ids';
import type { Shape } from '../shape';
import { STILL } from '../stance/motion';
import { joined, motionsOf } from '../stance/stance';
import type { Foot, Mesh } from '../types';
import { type SurfaceIndex, surfaceIndex } from './surface-index';

/** Points are set this far apart on a surface, mm. */
const SPACING = 1.6;
const NEAR = { mm: 3.2, beyondLeast: 1.6 } as const;
/** Two facets of one pair of bones lie so close that only what really touches counts (as for the subtalar joint in the table). */
const NEAR_SPLIT = { mm: 2.4, beyondLeast: 1.2 } as const;
const FACING = -0.55;
const REACH = 6;

interface Sample {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly n: readonly [number, number, number];
  readonly areaMm2: number;
}

/** Points spread over a surface, each standing for its share of it. */
const samplesOf = (mesh: Mesh): Sample[] => {
  const out: Sample[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((e) => {
      const i = 3 * (mesh.indices[t + e] ?? 0);
      return [mesh.positions[i] ?? 0, mesh.positions[i + 1] ?? 0, mesh.positions[i + 2] ?? 0] as const;
    }) as unknown as [readonly number[], readonly number[], readonly number[]];
    const [u, v] = [b, c].map((q) => q.map((x, k) => x - (a[k] ?? 0))) as [number[], number[]];
    const [ux = 0, uy = 0, uz = 0] = u;
    const [vx = 0, vy = 0, vz = 0] = v;
    const w = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const twice = Math.hypot(...w) || 1e-9;
    const n = w.map((x) => x / twice) as [number, number, number];
    const cuts = Math.max(1, Math.ceil(Math.max(Math.hypot(ux, uy, uz), Math.hypot(vx, vy, vz)) / SPACING));
    const areaMm2 = twice / 2 / (cuts * cuts);
    // The middles of the cuts^2 small triangles.
    for (let i = 0; i < cuts; i++)
      for (let j = 0; j < cuts - i; j++)
        for (const third of j < cuts - i - 1 ? [1 / 3, 2 / 3] : [1 / 3]) {
          const [s, r] = [(i + third) / cuts, (j + third) / cuts];
          const at = (k: number): number => (a[k] ?? 0) + s * (u[k] ?? 0) + r * (v[k] ?? 0);
          out.push({ x: at(0), y: at(1), z: at(2), n, areaMm2 });
        }
  }
  return out;
};

export interface JointFit {
  readonly joint: string;
  readonly articular: boolean;
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
  readonly joints: readonly JointFit[];
  /** Pairs that overlap at all, deepest first. */
  readonly overlaps: readonly Overlap[];
}

interface Facing {
  readonly sample: Sample;
  readonly gapMm: number;
}

interface Part {
  readonly id: SkeletonId;
  readonly samples: readonly Sample[];
  readonly index: SurfaceIndex;
}

const apart = (a: SurfaceIndex, b: SurfaceIndex): boolean =>
  [0, 1, 2].some((k) => (a.low[k] ?? 0) > (b.high[k] ?? 0) + REACH || (b.low[k] ?? 0) > (a.high[k] ?? 0) + REACH);

/** Points of one bone near another: how far, and how deep inside. */
const near = (from: Part, to: Part): { readonly facing: Facing[]; readonly depthMm: number } => {
  const facing: Facing[] = [];
  let depthMm = 0;
  for (const s of from.samples) {
    if ([s.x, s.y, s.z].some((c, k) => c < (to.index.low[k] ?? 0) - REACH || c > (to.index.high[k] ?? 0) + REACH))
      continue;
    const hit = to.index.nearest(s.x, s.y, s.z, ...s.n, REACH);
    if (hit === null) continue;
    if (hit.inside) depthMm = Math.max(depthMm, hit.distanceMm);
    else if (hit.facing < FACING) facing.push({ sample: s, gapMm: hit.distanceMm });
  }
  return { facing, depthMm };
};

const percentile = (sorted: readonly Facing[], share: number): number => {
  const total = sorted.reduce((sum, f) => sum + f.sample.areaMm2, 0);
  let sum = 0;
  for (const f of sorted) {
    sum += f.sample.areaMm2;
    if (sum >= share * total) return f.gapMm;
  }
  return sorted.at(-1)?.gapMm ?? Number.NaN;
};

const jointFit = (
  id: string,
  articular: boolean,
  sides: readonly (readonly Facing[])[],
  tabled: number | null,
  split: boolean,
): JointFit => {
  const all = sides.flat();
  const least = Math.min(...all.map((f) => f.gapMm));
  const { mm, beyondLeast } = split ? NEAR_SPLIT : NEAR;
  const limit = Math.max(mm, least + beyondLeast);
  const [one = 0, two = 0] = sides.map((side) =>
    side.filter((f) => f.gapMm < limit).reduce((sum, f) => sum + f.sample.areaMm2, 0),
  );
  const facing = all.filter((f) => f.gapMm < limit).sort((a, b) => a.gapMm - b.gapMm);
  const area = facing.reduce((sum, f) => sum + f.sample.areaMm2, 0);
  return {
    joint: id,
    articular,
    meanMm: facing.reduce((sum, f) => sum + f.gapMm * f.sample.areaMm2, 0) / area,
    p5Mm: percentile(facing, 0.05),
    p95Mm: percentile(facing, 0.95),
    areaMm2: (one + two) / 2,
    areaShare: tabled === null ? null : (one + two) / 2 / tabled,
  };
};

export const fitOf = (shape: Shape, foot: Foot): Fit => {
  const k = foot.parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  const motions = motionsOf(shape, foot.parameters, foot.pose);
  const parts: Part[] = [...foot.bones, ...foot.leg].map(([id, mesh]) => ({
    id,
    samples: samplesOf(mesh),
    index: surfaceIndex(mesh),
  }));
  const joints: JointFit[] = [];
  const overlaps: Overlap[] = [];
  parts.forEach((a, i) => {
    for (const b of parts.slice(i + 1)) {
      if (apart(a.index, b.index)) continue;
      const [ab, ba] = [near(a, b), near(b, a)];
      const depthMm = Math.max(ab.depthMm, ba.depthMm);
      if (depthMm > 0) overlaps.push({ bones: [a.id, b.id], depthMm });
      const rows = shape.joints.filter(
        (j) => (j.first === a.id && j.second === b.id) || (j.first === b.id && j.second === a.id),
      );
      // Two joints between the same bones: a point belongs to the one it lies nearer to, in the facet's own measure.
      const here = rows.map((j) => joined(j, motions.get(j.first) ?? STILL, motions.get(j.second) ?? STILL));
      const rankOf = (s: Sample, n: number): number => {
        const j = here[n];
        return j
          ? Math.hypot(s.x / k - j.centre[0], s.y / k - j.centre[1], s.z / k - j.centre[2]) / j.extents[0]
          : Number.POSITIVE_INFINITY;
      };
      rows.forEach((j, n) => {
        const mine = (f: Facing): boolean => rows.every((_, m) => rankOf(f.sample, n) <= rankOf(f.sample, m));
        const sides = [ab.facing.filter(mine), ba.facing.filter(mine)];
        joints.push(jointFit(j.id, j.articular, sides, j.area === undefined ? null : j.area * k * k, rows.length > 1));
      });
    }
  });
  return { joints, overlaps: overlaps.sort((a, b) => b.depthMm - a.depthMm) };
};
