/**
 * What the frame of the foot hands over: plain data that survive JSON. Places are told on the standing right foot, each with the bone
 * it goes along with. Newtons, millimetres, MPa, radians; tension positive.
 */
import type { BoneId, SkeletonId } from '../../ids';
import type { Vec3 } from '../../units';
import type { StationTable } from '../types';
import type { Ray } from './landmarks';

/** A place on a bone of the standing right foot, mm. */
export interface PathPoint {
  readonly bone: SkeletonId;
  readonly at: Vec3;
}

/**
 * One part of the way of the load. `joint`: bones pressed (or pulled apart) at a facet, drawn from bone to bone through it; `bone`: a
 * metatarsal along its length; `tie`: fascia or ligament; `tendon`: a muscle's pull; `ground`: what the ground presses at a pad, from the sole upwards;
 * `leg`: what the tibia presses on the talus, from above.
 */
export interface PathPart {
  readonly id: string;
  readonly kind: 'joint' | 'bone' | 'tie' | 'tendon' | 'ground' | 'leg';
  /** `sheared`: a joint whose bones are pushed past each other more than together or apart. */
  readonly sense: 'pressed' | 'pulled' | 'sheared';
  readonly forceN: number;
  readonly points: readonly PathPoint[];
}

/** A joint's force: pressed negative along its normal, and across it; spread over the facet as measured. */
export interface JointLoad {
  readonly id: string;
  readonly bones: readonly [BoneId, BoneId];
  readonly normalN: number;
  readonly shearN: number;
  /** Extents' ellipse of the facet, mm2; null where bones only lie near each other. */
  readonly facetMm2: number | null;
}

/** Where the answer is more than small-displacement theory, or tissue, can bear: such a case is kept to ranking. */
export type LoadFlag = 'fasciaAboveStrength' | 'largeTurns' | 'slips';

/** Turns beyond this are too large for small-displacement theory to be more than a ranking: a lever is 2 % short there (chosen). */
export const LARGE_TURN_DEG = 12;

/** Flags beyond which only more and less may be said, no size. */
const RANKING: readonly LoadFlag[] = ['fasciaAboveStrength', 'largeTurns'];
export const ranksOnly = (flags: readonly LoadFlag[]): boolean => flags.some((flag) => RANKING.includes(flag));

export interface FootLoads {
  readonly weightN: number;
  /** Five metatarsals, first to fifth. */
  readonly tables: readonly StationTable[];
  readonly path: readonly PathPart[];
  readonly joints: readonly JointLoad[];
  readonly fasciaN: number;
  readonly achillesN: number;
  readonly tibiaN: number;
  /** What the bones of the leg hold level at the ankle. */
  readonly legAlongN: number;
  /** Moment by which the leg holds the foot from turning out (positive) or in, N mm. */
  readonly legFrontalNmm: number;
  /** Ground's push along the ground over its push across it: horizontal over vertical where it is level. */
  readonly sidewaysShare: number;
  readonly largestTurnRad: number;
  readonly flags: readonly LoadFlag[];
  /** How well it was solved: balance as a share of the largest load, smallest pivot over its diagonal, passes and pivots made. */
  readonly solved: {
    readonly residual: number;
    readonly smallestPivotRatio: number;
    readonly passes: number;
    readonly pivots: number;
  };
}

/** A number over all draws: as told, and where the inner eight in ten lie. */
export interface Spread {
  readonly told: number;
  readonly low: number;
  readonly high: number;
}

/**
 * One part of the way of the load over the draws, by the name it has in the path. `ground`: all pads together; what one of them
 * carries is told of none.
 */
export interface PartBand {
  readonly id: string;
  readonly forceN: Spread;
  /** Whether it is pressed, pulled or sheared in the draws as it is told. */
  readonly sense: Agreement;
}

/** A statement that each draw affirms or denies. Below `enough` the page says that the model cannot tell. */
export interface Agreement {
  readonly holds: boolean;
  /** Share of the draws that say the same as the told values. */
  readonly share: number;
  /** Share that say the contrary: with `share` all but those without an answer. */
  readonly against: number;
}
export const ENOUGH_AGREEMENT = 0.8;

/** What a station carries: along the bone, across it up and outwards, bending up and down and sideways, twist. */
export const STATION_FORCES = ['axial', 'shearUp', 'shearSide', 'bendUp', 'bendSide', 'torsion'] as const;
export type StationForce = (typeof STATION_FORCES)[number];
/** Largest pull and largest push on its surface. */
export const STATION_STRESSES = ['tension', 'compression'] as const;
export type StationStress = (typeof STATION_STRESSES)[number];

/** A spread, and the share of the draws in which it has the sign of the told value. */
export interface SignedSpread extends Spread {
  readonly share: number;
}

/** One station of the bone in question over the draws. */
export interface StationBand {
  readonly sMm: number;
  /** N and N mm. Told only where forces of the task may be told as sizes. */
  readonly forces: Readonly<Record<StationForce, SignedSpread>>;
  /** Over the largest pull in the bone in the reference task, draw by draw: as a stress is told where sizes may be told. */
  readonly ofReference: Readonly<Record<StationStress, SignedSpread>>;
  /** Over the largest pull in the bone in the task itself: as it is told where only more and less may be. */
  readonly ofMost: Readonly<Record<StationStress, SignedSpread>>;
}

/** Whether enough draws agree on which way it acts. */
export const signMayBeTold = ({ share }: Pick<SignedSpread, 'share'>): boolean => share >= ENOUGH_AGREEMENT;

/** A bone that is hardly pulled in the reference has no measure for its stress to be told in, MPa. */
export const LEAST_REFERENCE_MPA = 1;

/** With a change or without it, whether a size may be stated at all. */
export interface BeyondTheory {
  /** The told run is beyond what the theory may state as a size. */
  readonly ranks: boolean;
  /** Share of the draws that are. */
  readonly beyond: number;
}

/** What a change does to where the bone is pulled: the middle of its plateau along the bone. */
export interface PlateauShift {
  /** Towards the head positive, towards the proximal tip negative. */
  readonly mm: Spread;
  /** Share of the draws that move it towards the head, and towards the tip. */
  readonly toHead: number;
  readonly toTip: number;
  /** Share of the draws that move it by no more than is told of any (`LEAST_SHIFT_MM`). */
  readonly still: number;
}

/** One thing that may raise the load: what it does to the largest pull in the bone. */
export interface Contributor extends BeyondTheory {
  readonly id: ContributorId;
  /** Largest pull with it over that without, in the same draw. */
  readonly ratio: Spread;
  /** Whether it raises (holds true) or lowers the pull, and how many draws say so. */
  readonly raises: Agreement;
  readonly shift: PlateauShift;
}

export const CONTRIBUTORS = [
  'bodyMass',
  'load',
  'sideways',
  'twistIn',
  'twistOut',
  'tilt',
  'tiredMuscles',
  'stiffSole',
  'adductus',
  'highArch',
  'lowArch',
  'varus',
] as const;
export type ContributorId = (typeof CONTRIBUTORS)[number];

/** What may take load off the bone from outside, against pushing off barefoot. */
export const SUPPORTS = ['boot', 'stiffSole', 'outerWedge', 'innerWedge'] as const;
export type SupportId = (typeof SUPPORTS)[number];
export interface Support extends BeyondTheory {
  readonly id: SupportId;
  readonly ratio: Spread;
  readonly raises: Agreement;
}

/** How a share of body weight may come on the foot: still on a scale, rolling over the ball in a soft shoe, in a boot, on a stiff sole. */
export const SHARE_WAYS = ['standing', 'shoe', 'boot', 'stiffSole'] as const;
export type ShareWay = (typeof SHARE_WAYS)[number];
export interface ShareLoad extends BeyondTheory {
  readonly id: ShareWay;
  /** Of body weight, on the foot. */
  readonly share: number;
  /** What is told: the pull at the break, or, where beam theory may state none there, the largest in the bone. */
  readonly at: 'break' | 'bone';
  /** That pull over the one of pushing off in walking, in the same draw. */
  readonly ratio: Spread;
  /** Whether it is less (holds true), and how many draws say so. */
  readonly less: Agreement;
}

export interface FigureShare {
  readonly figure: string;
  /** Of the spread of the ratio, by squared rank correlation with this figure alone. */
  readonly share: number;
  /** More than chance shows, in all draws and in either half of them; the share of any other is not told. */
  readonly standsOut: boolean;
}

/** Where one draw pulls on the bone, mm from the tip: its largest pull, and the stretch that carries nine tenths of it. */
export interface PullPlace {
  readonly peakMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

export interface LoadBands {
  readonly draws: number;
  readonly seed: number;
  /** Sets of figures drawn to keep these; the others lengthen in the press as the calibrated foot does not. */
  readonly tried: number;
  readonly ray: Ray;
  /** Largest pull in the bone over the same bone's in the reference activity. */
  readonly ratio: Spread;
  /** That it is more than in the reference. */
  readonly more: Agreement;
  /** Where the largest pull lies, from the tip, mm. */
  readonly peakAtMm: Spread;
  /** Direction round the bone of the largest pull, rad from dorsal towards lateral, and whether it keeps to its quarter. */
  readonly direction: Agreement & { readonly rad: number };
  /** The same of the largest push. */
  readonly pressed: Agreement & { readonly rad: number };
  /** The bone is the most stretched of the five. */
  readonly mostOfFive: Agreement;
  /** Ends of the stretch that carries nine tenths of the largest pull. */
  readonly plateauMm: readonly [from: Spread, to: Spread];
  /** The same draw by draw, those without an answer left out: to be held against any place. */
  readonly places: readonly PullPlace[];
  readonly fascia: Spread;
  readonly achilles: Spread;
  readonly tibia: Spread;
  /** `sidewaysShare`, `legAlongN` and `legFrontalNmm` of the told run. */
  readonly sideways: Spread;
  readonly legAlong: Spread;
  readonly legFrontal: Spread;
  /** Every part of the path that the told run has, in its order. */
  readonly parts: readonly PartBand[];
  /** Every station of the bone, in the order of its table. */
  readonly stations: readonly StationBand[];
  /** The largest first; none where the ratio has no spread. */
  readonly sensitivity: readonly FigureShare[];
  /** The share that the largest of so many unrelated figures reaches by chance. */
  readonly chanceShare: number;
  /** Share of the draws in which the ratio is beyond what may be stated as a size (`ranksOnly`, in the task or in the reference). */
  readonly beyond: number;
  /** The same for forces of the task alone. A draw without an answer states no size either: both count it. */
  readonly beyondItself: number;
  /** Draws in which the frame found no answer, left out of all the above. */
  readonly unsolved: number;
}
