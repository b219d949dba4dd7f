/** What one section of a metatarsal carries, draw by draw: for things put into the bone there. */
import { type BandedCase, caseOf, isSolved, type LoadDraw } from './bands';
import { type LoadedFoot, type Person, runCase } from './case-draw';
import type { Ray } from './landmarks';
import { flagsOf } from './loads';
import { rayStations } from './recover';
import { ranksOnly } from './types';

export interface SectionLoad {
  readonly axialN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
  /** Of the same draw: from -1 (thick cortex) to 1 (thin), and Young's modulus of the cortex. */
  readonly wall: number;
  readonly cortexMPa: number;
  /** The station lies where sections do not stay flat: what follows from it is a rough share. */
  readonly outsideBeamTheory: boolean;
  /** The run is beyond what the theory may state as a size. */
  readonly beyond: boolean;
}

const MPA_A_GPA = 1000;

/** At the station nearest to a place, in the reference case of the draws; null for a draw without an answer, or beyond the member. */
export const sectionLoadsOf = (
  foot: LoadedFoot,
  draws: readonly LoadDraw[],
  reference: BandedCase,
  person: Person,
  ray: Ray,
  sMm: number,
): readonly (SectionLoad | null)[] =>
  draws.map((draw) => {
    const { wall, cortexYoung } = draw.values;
    const loadCase = caseOf(draw, reference, 'reference');
    const solved = runCase(foot, loadCase, draw.values, person);
    if (!isSolved(solved)) return null;
    const at = rayStations(solved, foot.sections, ray, wall).reduce((a, b) =>
      Math.abs(b.sMm - sMm) < Math.abs(a.sMm - sMm) ? b : a,
    );
    if (at.bendingUpDownNmm === 0 && at.bendingSidewaysNmm === 0) return null;
    const { axialN, bendingUpDownNmm, bendingSidewaysNmm, outsideBeamTheory } = at;
    return {
      axialN,
      bendingUpDownNmm,
      bendingSidewaysNmm,
      wall,
      cortexMPa: MPA_A_GPA * cortexYoung,
      outsideBeamTheory,
      beyond: ranksOnly(flagsOf(solved, loadCase.figures)),
    };
  });
