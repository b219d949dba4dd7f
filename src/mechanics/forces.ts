/**
 * Internal forces along a member from the forces on it, by equilibrium of the part distal to the cut. Coordinates of the bone:
 * s along, y dorsal, z lateral of its axis (mm); forces along the same three (N). Any free member will do: a stretch that holds it
 * turns its reactions into loads first (`heldBy`), a frame would hand over end forces as point loads.
 */
import type { Point2 } from '../anatomy/inside/polygon';

export interface PointLoad {
  readonly sMm: number;
  readonly at: Point2;
  readonly alongN: number;
  readonly dorsalN: number;
  readonly lateralN: number;
}

/**
 * Forces spread over a stretch: evenly along the axis, linearly across it (`mean` plus `slope` per mm from the middle), acting on
 * a line parallel to the axis at `at`, with an even twist. N per mm, N mm per mm.
 */
export interface SpreadLoad {
  readonly fromMm: number;
  readonly toMm: number;
  readonly at: Point2;
  readonly along: number;
  readonly dorsal: { readonly mean: number; readonly slope: number };
  readonly lateral: { readonly mean: number; readonly slope: number };
  readonly twist: number;
}

export interface MemberLoads {
  readonly points: readonly PointLoad[];
  readonly spread: SpreadLoad | null;
}

/** Force on the cut and its moments about a point of the cut: Mz > 0 stretches plantar, My > 0 stretches lateral. */
export interface InternalForces {
  readonly axialN: number;
  readonly shearDorsalN: number;
  readonly shearLateralN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
  readonly torsionNmm: number;
}

/** Force and moment of a point load about (s, about). */
const partOf = (load: PointLoad, s: number, [y, z]: Point2): InternalForces => {
  const [dx, dy, dz] = [load.sMm - s, load.at[0] - y, load.at[1] - z];
  return {
    axialN: load.alongN,
    shearDorsalN: load.dorsalN,
    shearLateralN: load.lateralN,
    bendingUpDownNmm: dx * load.dorsalN - dy * load.alongN,
    bendingSidewaysNmm: dz * load.alongN - dx * load.lateralN,
    torsionNmm: dy * load.lateralN - dz * load.dorsalN,
  };
};

const sum = (parts: readonly InternalForces[]): InternalForces =>
  parts.reduce(
    (a, b) => ({
      axialN: a.axialN + b.axialN,
      shearDorsalN: a.shearDorsalN + b.shearDorsalN,
      shearLateralN: a.shearLateralN + b.shearLateralN,
      bendingUpDownNmm: a.bendingUpDownNmm + b.bendingUpDownNmm,
      bendingSidewaysNmm: a.bendingSidewaysNmm + b.bendingSidewaysNmm,
      torsionNmm: a.torsionNmm + b.torsionNmm,
    }),
    {
      axialN: 0,
      shearDorsalN: 0,
      shearLateralN: 0,
      bendingUpDownNmm: 0,
      bendingSidewaysNmm: 0,
      torsionNmm: 0,
    },
  );

/** The part of a spread load distal to `s`, about (s, about): integrals of a linear density in closed form. */
const spreadPart = (load: SpreadLoad, s: number, about: Point2): InternalForces => {
  const from = Math.max(s, load.fromMm);
  const span = load.toMm - from;
  if (span <= 0) return sum([]);
  const middle = (load.fromMm + load.toMm) / 2;
  const centre = (from + load.toMm) / 2;
  /** Resultant of a linear density over what is left, and its moment about the cut. */
  const over = ({ mean, slope }: { mean: number; slope: number }): [force: number, moment: number] => {
    const force = span * (mean + slope * (centre - middle));
    return [force, force * (centre - s) + (slope * span ** 3) / 12];
  };
  const [dorsalN, dorsalMoment] = over(load.dorsal);
  const [lateralN, lateralMoment] = over(load.lateral);
  const atCut = partOf({ sMm: s, at: load.at, alongN: load.along * span, dorsalN, lateralN }, s, about);
  return {
    ...atCut,
    bendingUpDownNmm: atCut.bendingUpDownNmm + dorsalMoment,
    bendingSidewaysNmm: atCut.bendingSidewaysNmm - lateralMoment,
    torsionNmm: atCut.torsionNmm + load.twist * span,
  };
};

export const internalForcesAt = (loads: MemberLoads, s: number, about: Point2): InternalForces =>
  sum([
    ...loads.points.filter((p) => p.sMm > s).map((p) => partOf(p, s, about)),
    ...(loads.spread ? [spreadPart(loads.spread, s, about)] : []),
  ]);

/**
 * Reactions of a stretch that holds the member against everything else: spread linearly across it, evenly along and in twist.
 * That is what a bed of equal springs under a member stiff against it gives, and needs no stiffness.
 */
export const heldBy = (points: readonly PointLoad[], fromMm: number, toMm: number, at: Point2): MemberLoads => {
  const span = toMm - fromMm;
  if (!(span > 0)) throw new RangeError(`a member cannot be held from ${fromMm} to ${toMm} mm`);
  const total = sum(points.map((p) => partOf(p, (fromMm + toMm) / 2, at)));
  const spread: SpreadLoad = {
    fromMm,
    toMm,
    at,
    along: -total.axialN / span,
    dorsal: { mean: -total.shearDorsalN / span, slope: (-12 * total.bendingUpDownNmm) / span ** 3 },
    lateral: { mean: -total.shearLateralN / span, slope: (12 * total.bendingSidewaysNmm) / span ** 3 },
    twist: -total.torsionNmm / span,
  };
  return { points, spread };
};
