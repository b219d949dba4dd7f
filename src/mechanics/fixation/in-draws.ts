/**
 * A screw in a section of a bone over all that is uncertain: bone stiffness, cortex and load of each draw, one screw. Only shares
 * and ratios leave this.
 */
import { integralsOf, type Loop2, type Point2 } from '../../anatomy/inside/polygon';
import { beyondTheoryOf } from '../foot/pull';
import type { SectionLoad } from '../foot/section-loads';
import { agreementOf, spreadOf } from '../foot/spread';
import type { Agreement, BeyondTheory, Spread } from '../foot/types';
import { bridgeOf } from './bridge';
import { type Screw, yieldMomentOf } from './screw';
import { screwInBone } from './shared';

/** A bone cut at the station: outline, and what its cortex encloses. */
export interface CutBone {
  readonly outline: Loop2;
  readonly canals: readonly Loop2[];
}
export type CutWalls = Readonly<Record<'thick' | 'usual' | 'thin', CutBone>>;

/** `ranks`, `beyond`: of the loads. Shares of stiffness and figures for each N m ask nothing of them. */
export interface ScrewFigures extends BeyondTheory {
  /** Parts of the bending stiffness that a bonded screw has. */
  readonly shareUpDown: Spread;
  readonly shareSideways: Spread;
  /** Largest pull in the bone with the screw over that without, and whether it is less. */
  readonly boneRatio: Spread;
  readonly boneLess: Agreement;
  /** Largest stress in the bonded screw over its yield. */
  readonly ofYield: Spread;
  /** The screw alone across a gap: the section's whole bending over its yield moment. */
  readonly aloneOfYield: Spread;
  /** Whether the screw alone comes nearer to its yield than the bonded one. */
  readonly aloneMore: Agreement;
  /** The screw alone: how far the far cortex opens under this bending, over the gap's width. */
  readonly opening: Spread;
  /** Of the screw alone, for 1 N m: opening over width, and turn for each millimetre of gap, rad. */
  readonly openingPerNm: number;
  readonly turnPerNmMm: number;
  /** The load lies where sections do not stay flat. */
  readonly outsideBeamTheory: boolean;
}

const NMM_A_NM = 1000;

const largest = (loops: readonly Loop2[]): Loop2 | null =>
  loops.reduce<Loop2 | null>((a, b) => (a === null || integralsOf([b]).area > integralsOf([a]).area ? b : a), null);

/** The canal made wide enough for the screw, as a drill does: every corner at least so far from the axis. */
const reamed = (canal: Loop2, [y, z]: Point2, radiusMm: number): Loop2 =>
  canal.map((p): Point2 => {
    const r = Math.hypot(p[0] - y, p[1] - z);
    const k = r >= radiusMm || r === 0 ? 1 : radiusMm / r;
    return [y + k * (p[0] - y), z + k * (p[1] - z)];
  });

const middleOf = (canal: Loop2): Point2 => {
  const { area, a, b } = integralsOf([canal]);
  return [a / area, b / area];
};

const wallOf = (wall: number): keyof CutWalls => (wall < -0.5 ? 'thick' : wall > 0.5 ? 'thin' : 'usual');

interface OneDraw {
  readonly shareUpDown: number;
  readonly shareSideways: number;
  readonly boneRatio: number;
  readonly ofYield: number;
  readonly aloneOfYield: number;
  readonly opening: number;
}

/**
 * `loads`: the told one first, null for a draw without an answer. The screw lies in the middle of the canal. Null where the told
 * draw has no answer or the bone no canal there.
 */
export const screwInDraws = (
  cuts: CutWalls,
  screw: Screw,
  yieldMPa: number,
  loads: readonly (SectionLoad | null)[],
): ScrewFigures | null => {
  const canal = largest(cuts.usual.canals);
  const [told] = loads;
  if (canal === null || !told) return null;
  const at = middleOf(canal);
  const reachMm = Math.max(...cuts.usual.outline.map((p) => Math.hypot(p[0] - at[0], p[1] - at[1])));
  const boneOf = (load: SectionLoad) => {
    const { outline, canals } = cuts[wallOf(load.wall)];
    const holes = canals.map((loop) => (loop === largest(canals) ? reamed(loop, at, screw.coreMm / 2) : loop));
    return { outline, holes, modulusMPa: load.cortexMPa };
  };
  const one = (load: SectionLoad): OneDraw => {
    const { shareUpDown, shareSideways, bone, screw: inScrew, boneAlone } = screwInBone(boneOf(load), screw, at, load);
    const momentNmm = Math.hypot(load.bendingUpDownNmm, load.bendingSidewaysNmm);
    return {
      shareUpDown,
      shareSideways,
      boneRatio: bone.tensionMPa / boneAlone.tensionMPa,
      ofYield: Math.max(inScrew.tensionMPa, -inScrew.compressionMPa) / yieldMPa,
      aloneOfYield: momentNmm / yieldMomentOf(screw, yieldMPa),
      opening: bridgeOf(screw, 1, reachMm, momentNmm).openingStrain,
    };
  };
  const all = loads.flatMap((load) => (load === null ? [] : [one(load)]));
  const [first, ...rest] = all;
  if (first === undefined || rest.length === 0) return null;
  const spread = (of: (d: OneDraw) => number): Spread => spreadOf(of(first), rest.map(of));
  const agreement = (of: (d: OneDraw) => boolean): Agreement => agreementOf(of(first), rest.map(of), loads.length - 1);
  const perNm = bridgeOf(screw, 1, reachMm, NMM_A_NM);
  return {
    ...beyondTheoryOf(loads, loads),
    shareUpDown: spread((d) => d.shareUpDown),
    shareSideways: spread((d) => d.shareSideways),
    boneRatio: spread((d) => d.boneRatio),
    boneLess: agreement((d) => d.boneRatio < 1),
    ofYield: spread((d) => d.ofYield),
    aloneOfYield: spread((d) => d.aloneOfYield),
    aloneMore: agreement((d) => d.aloneOfYield > d.ofYield),
    opening: spread((d) => d.opening),
    openingPerNm: perNm.openingStrain,
    turnPerNmMm: perNm.rotationRad,
    outsideBeamTheory: told.outsideBeamTheory,
  };
};
