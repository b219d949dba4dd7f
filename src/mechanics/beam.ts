/**
 * The fifth metatarsal as a tapered hollow beam. Outer sections are cut from the mesh on the stage, canal and cortex come from the
 * inputs, the head is pushed by the load case, fibularis brevis pulls at its footprint.
 *
 * Support: facets and ligaments hold the base from the proximal edge of the cuboid's facet to the distal edge of the facet for the
 * fourth metatarsal, and share the reaction linearly over that stretch (see `heldBy`). Chosen because it needs no stiffness that
 * nobody has measured. Published supports differ (clamped base, simply supported, indeterminate foot), and the moment at the base
 * with them by more than a factor of two. A whole-foot frame replaces `heldBy` by the end forces it computes; the rest stays.
 *
 * Outside beam theory: everything held, one depth of the bone beyond it, and the head. Forces resolve along the bone's straight
 * axis; its bow enters through the centroids of the sections. mm, N, MPa; body weights become newtons here.
 */
import { boneAxis, CUBOID_MT5, facetStretch, inBone, MT5, meshOf, regionsOf, zonesOf } from '../anatomy';
import type { Point2 } from '../anatomy/inside/polygon';
import type { BoneAxis, Foot, Zone } from '../anatomy/types';
import { dot, STANDARD_GRAVITY, type Vec3 } from '../units';
import { heldBy, type PointLoad } from './forces';
import { type Hollow, hollowOut, type Outline, outlineAt } from './member';
import { peakWithBand, stationsOf } from './stations';
import type { Station, StationTable } from './types';

/** A figure of the content: a value and, where it has one, its band. */
export interface FigureLike {
  readonly value: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

export interface BeamInputsLike extends Readonly<Record<keyof Hollow, FigureLike>> {
  readonly brevisMedial: FigureLike;
  readonly brevisUp: FigureLike;
  readonly brevisBack: FigureLike;
}

/** Forces on the head and the pull of fibularis brevis, in body weights. */
export interface LoadCaseLike {
  readonly headUp: FigureLike;
  readonly headMedial: FigureLike;
  readonly headAlong: FigureLike;
  readonly brevisPull: FigureLike;
}

export interface BeamOptions {
  /** Moves the distal end of the held stretch to this share of the bone's length, by hand. */
  readonly heldToShare?: number;
}

type End = 'value' | 'low' | 'high';
const at = (figure: FigureLike, end: End): number => figure[end] ?? figure.value;

const STATIONS = 41;
/** The first and last cut stay this far inside the bone's tips, where a plane still meets a full section, as a share. */
const TIP_SHARE = 0.02;

interface Bone {
  readonly foot: Foot;
  readonly axis: BoneAxis;
  readonly zones: readonly Zone[];
  readonly outlines: readonly Outline[];
  readonly heldMm: readonly [from: number, to: number];
  /** Where the ground pushes on the head, and where the tendon pulls. */
  readonly contact: Place;
  readonly brevis: Place;
}

interface Place {
  readonly sMm: number;
  readonly at: Point2;
}

const heldStretch = (
  foot: Foot,
  axis: BoneAxis,
  zones: readonly Zone[],
  share: number | undefined,
): [number, number] => {
  const [proximal] = facetStretch(foot, CUBOID_MT5);
  const to = share === undefined ? (zones[1]?.toMm ?? 0) : share * axis.lengthMm;
  if (!(to > 0 && to < axis.lengthMm)) throw new RangeError(`the bone cannot be held to ${to} mm of ${axis.lengthMm}`);
  return [Math.max(0, Math.min(proximal, to / 2)), to];
};

/** Where the ground meets the head: the lowest point of the middle of the head, as the bone lies in its own axes. */
const headContact = (outline: Outline): Place => ({
  sMm: outline.sMm,
  at: outline.points.reduce((a, b) => (b[0] < a[0] ? b : a)),
});

const footprint = (foot: Foot, axis: BoneAxis): Place => {
  const region = regionsOf(foot).find((r) => r.id === MT5.brevis);
  if (!region) throw new RangeError('fibularis brevis has no footprint');
  const { sMm, dorsalMm, lateralMm } = inBone(axis, region.centre);
  return { sMm, at: [dorsalMm, lateralMm] };
};

const boneOf = (foot: Foot, options: BeamOptions): Bone => {
  const axis = boneAxis(foot, 'metatarsal5');
  const mesh = meshOf(foot, 'metatarsal5');
  const zones = zonesOf(foot);
  const heldMm = heldStretch(foot, axis, zones, options.heldToShare);
  const step = (1 - 2 * TIP_SHARE) / (STATIONS - 1);
  const outlines = Array.from({ length: STATIONS }, (_, i) =>
    outlineAt(mesh, axis, (TIP_SHARE + i * step) * axis.lengthMm),
  );
  const head = zones.at(-1);
  const middle = head ? (head.fromMm + head.toMm) / 2 : axis.lengthMm;
  return {
    foot,
    axis,
    zones,
    outlines,
    heldMm,
    contact: headContact(outlineAt(mesh, axis, middle)),
    brevis: footprint(foot, axis),
  };
};

const brevisLoad = ({ foot, axis, brevis }: Bone, inputs: BeamInputsLike, pullN: number): PointLoad => {
  const medial = foot.side === 'right' ? 1 : -1;
  const pull: Vec3 = [
    medial * at(inputs.brevisMedial, 'value') * pullN,
    at(inputs.brevisUp, 'value') * pullN,
    -at(inputs.brevisBack, 'value') * pullN,
  ];
  return {
    ...brevis,
    alongN: dot(pull, axis.axis),
    dorsalN: dot(pull, axis.dorsal),
    lateralN: dot(pull, axis.lateral),
  };
};

const loadsOf = (bone: Bone, inputs: BeamInputsLike, load: LoadCaseLike, weightN: number, end: End): PointLoad[] => [
  {
    ...bone.contact,
    alongN: -at(load.headAlong, end) * weightN,
    dorsalN: at(load.headUp, end) * weightN,
    lateralN: -at(load.headMedial, end) * weightN,
  },
  brevisLoad(bone, inputs, at(load.brevisPull, end) * weightN),
];

/** The bone as strong (`low` stress) or as weak (`high` stress) as the bands allow. */
const hollowAt = (inputs: BeamInputsLike, stress: End): Hollow => {
  const thin: End = stress === 'high' ? 'low' : stress === 'low' ? 'high' : 'value';
  return {
    canalAcrossMm: at(inputs.canalAcrossMm, stress),
    canalUpDownMm: at(inputs.canalUpDownMm, stress),
    cortexMetaphysisMm: at(inputs.cortexMetaphysisMm, thin),
    canalAtShare: at(inputs.canalAtShare, 'value'),
    canalFromShare: at(inputs.canalFromShare, stress),
    canalToShare: at(inputs.canalToShare, thin),
  };
};

const run = (bone: Bone, inputs: BeamInputsLike, points: readonly PointLoad[], stress: End): Station[] => {
  const { axis, outlines, heldMm, zones } = bone;
  const sections = hollowOut(outlines, axis.lengthMm, hollowAt(inputs, stress));
  const nearest = sections.reduce((a, b) =>
    Math.abs(b.outline.sMm - heldMm[1]) < Math.abs(a.outline.sMm - heldMm[1]) ? b : a,
  );
  const head = zones.at(-1)?.fromMm ?? axis.lengthMm;
  const outside = (s: number) => s < heldMm[1] + nearest.outline.depthMm || s >= head;
  return stationsOf(sections, heldBy(points, heldMm[0], heldMm[1], nearest.section.centroidMm), outside);
};

/**
 * Stations of the fifth metatarsal under a load case. Bands: canal and cortex at the strong and weak end of theirs, each with the
 * loads at the low, base and high end of theirs. Throws RangeError for a mass or share that no bone can have.
 */
export const fifthMetatarsalBeam = (
  foot: Foot,
  inputs: BeamInputsLike,
  load: LoadCaseLike,
  massKg: number,
  options: BeamOptions = {},
): StationTable => {
  if (!(massKg > 0 && Number.isFinite(massKg))) throw new RangeError(`a body of ${massKg} kg`);
  const bone = boneOf(foot, options);
  const weightN = massKg * STANDARD_GRAVITY;
  const cases = (['low', 'value', 'high'] as const).map((end) => loadsOf(bone, inputs, load, weightN, end));
  const base = run(bone, inputs, loadsOf(bone, inputs, load, weightN, 'value'), 'value');
  const runs = (['low', 'high'] as const).flatMap((stress) => cases.map((points) => run(bone, inputs, points, stress)));
  return {
    bone: 'metatarsal5',
    stations: base,
    peakTension: peakWithBand(base, runs, 'tensionMPa'),
    peakCompression: peakWithBand(base, runs, 'compressionMPa'),
    heldMm: bone.heldMm,
  };
};
