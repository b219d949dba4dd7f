/** Supports and screws fed from content: the draws they share, the section of the bone, the screw and its materials. */

import type { Fixation } from '../content/schema';
import { type ActivityId, type BoneId, idOf } from '../ids';
import { cutsAlong, type LoadedFoot, type SectionLoad, type Support, sectionLoadsOf, supportsOf } from '../mechanics';
import {
  type CanalPlace,
  type CutWalls,
  canalPlacesOf,
  longestIn,
  type ScrewFigures,
  screwInDraws,
} from '../mechanics/fixation';
import { axisOn, type Context, shapeOf, zonesOn } from './context';
import {
  activityIn,
  bandedCase,
  DRAWS,
  drawsFor,
  type LoadRun,
  loaded,
  personOf,
  REFERENCE_ACTIVITY,
  rayOf,
  remembered,
} from './loads';
import { ASSUMED_MASS_KG } from './mass';
import type { OnFoot } from './place';

/** Whose flat foot stands in for a boot. */
export const FLAT_ACTIVITY = idOf<ActivityId>('midstance');

/** A foot, its bone, and who stands on it: barefoot, nothing carried. */
export interface SupportRun extends OnFoot {
  readonly bone: BoneId;
  readonly massKg: number;
}

const runOf = ({ foot, massKg }: SupportRun): LoadRun => ({
  foot,
  massKg,
  activity: REFERENCE_ACTIVITY,
  carriedKg: 0,
  soleBending: 0,
  speed: null,
  tiltDeg: null,
});

const supportDraws = ({ content }: Context, on: LoadedFoot) => {
  const asTold = { speed: null, tiltDeg: null };
  const flat = bandedCase(activityIn(content, FLAT_ACTIVITY), asTold);
  const pushOff = bandedCase(activityIn(content, REFERENCE_ACTIVITY), asTold);
  return { flat, pushOff, draws: drawsFor(content, on, flat, pushOff, DRAWS) };
};

/** Empty where the told values find no answer for this bone. */
export const supportsFor = (context: Context, run: SupportRun): readonly Support[] => {
  const ray = rayOf(run.bone);
  if (ray === null) return [];
  return remembered(context, runOf(run), `supports ${ray}`, (foot) => {
    const on = loaded(context, foot, true);
    const { flat, pushOff, draws } = supportDraws(context, on);
    return supportsOf(on, draws, flat, pushOff, personOf(runOf(run)), ray);
  });
};

/** The screw that the content has for a bone; null where it has none. */
export const fixationIn = ({ content }: Context, bone: BoneId): Fixation | null =>
  content.fixations.find((f) => f.bone === bone) ?? null;

export interface ScrewRun extends SupportRun {
  readonly sMm: number;
}

const loadsAt = (context: Context, run: ScrewRun): readonly (SectionLoad | null)[] => {
  const ray = rayOf(run.bone);
  if (ray === null) return [];
  return remembered(context, runOf(run), `section ${ray} ${run.sMm}`, (foot) => {
    const on = loaded(context, foot, true);
    const { pushOff, draws } = supportDraws(context, on);
    return sectionLoadsOf(on, draws, pushOff, personOf(runOf(run)), ray, run.sMm);
  });
};

const MPA_A_GPA = 1000;

/** A solid screw of the content's core, in a material of its list. Null where the section or the frame allows no answer. */
export const screwFor = (context: Context, asked: ScrewRun, material: string): ScrewFigures | null => {
  // Against its own yield a screw's load would be a stress of the person: it is told for a reference mass.
  const run = { ...asked, massKg: ASSUMED_MASS_KG };
  return remembered(context, runOf(run), `screw ${run.bone} ${run.sMm} ${material}`, (foot) => {
    const fixation = fixationIn(context, run.bone);
    const made = fixation?.materials.find((m) => m.id === material);
    if (fixation === null || made === undefined) throw new RangeError(`no screw of ${material} for ${run.bone}`);
    const share = run.sMm / axisOn(foot, run.bone).lengthMm;
    const cut = (wall: keyof CutWalls) => {
      const [found] = cutsAlong(foot, run.bone, shapeOf(context.content), wall, [share]);
      if (found === undefined) throw new RangeError(`${run.bone} has no section at ${run.sMm} mm`);
      return found;
    };
    const screw = { coreMm: fixation.core.value, cannulaMm: 0, modulusMPa: MPA_A_GPA * made.young.value };
    const cuts: CutWalls = { thick: cut('thick'), usual: cut('usual'), thin: cut('thin') };
    return screwInDraws(cuts, screw, made.yields.value, loadsAt(context, run));
  });
};

/** How far a straight rod that goes in through the tuberosity comes, mm from the bone's tip; null where none enters. */
const reachOf = (canal: readonly CanalPlace[], rodMm: number, entryMm: number): number | null => {
  const rod = longestIn(canal, rodMm);
  return rod === null || rod.fromMm > entryMm ? null : rod.toMm;
};

export interface RodReach {
  readonly diameterMm: number;
  readonly toldMm: number | null;
  /** With the cortex at the thick and the thin end of what is known of it. */
  readonly lowMm: number | null;
  readonly highMm: number | null;
}

export const rodsFor = (
  context: Context,
  { foot: parameters, bone }: OnFoot & { readonly bone: BoneId },
): readonly RodReach[] => {
  const fixation = fixationIn(context, bone);
  if (fixation === null) return [];
  const foot = context.footFor(parameters);
  const entryMm = zonesOn(foot, bone)[0]?.toMm ?? 0;
  const canal = (wall: keyof CutWalls) => canalPlacesOf(foot, bone, shapeOf(context.content), wall);
  const [thick, usual, thin] = [canal('thick'), canal('usual'), canal('thin')];
  const { value, low = value, high = value } = fixation.diameter;
  return [...new Set([low, value, high])].map((diameterMm) => ({
    diameterMm,
    toldMm: reachOf(usual, diameterMm, entryMm),
    lowMm: reachOf(thick, diameterMm, entryMm),
    highMm: reachOf(thin, diameterMm, entryMm),
  }));
};
