/** A straight bone built in at its base and loaded at its head, for tests: the frame gives the forces on a cut, the section the stress. */
import type { Loop2, Point2 } from '../../src/anatomy/inside/polygon';
import { bendingSectionOf } from '../../src/mechanics';
import type { InternalForces } from '../../src/mechanics/forces';
import { type Extremes, extremesOf, fieldOf } from '../../src/mechanics/stress';
import type { BendingSection } from '../../src/mechanics/types';
import { cross, dot, scale, type Vec3 } from '../../src/units';
import { ALL, solved } from './frames';
import { ellipse } from './members';

export interface BoneCut {
  readonly outline: Loop2;
  readonly section: BendingSection;
}

/** Corners: as many as keep stress within 1e-7 of the true ellipse. */
const CORNERS = 7200;

/** A hollow ellipse, heights up-down and across with an even cortex; solid without one. mm */
export const hollowEllipse = (upDownMm: number, acrossMm: number, cortexMm?: number): BoneCut => {
  const outline = ellipse(upDownMm / 2, acrossMm / 2, CORNERS);
  const holes = cortexMm === undefined ? [] : [ellipse(upDownMm / 2 - cortexMm, acrossMm / 2 - cortexMm, CORNERS)];
  return { outline, section: bendingSectionOf(outline, holes) };
};

export interface LoadedBone {
  readonly cut: BoneCut;
  /** From the cut to where the force is put. */
  readonly lengthMm: number;
  /** How far the bone falls from base to head against the ground, rad. */
  readonly slopeRad?: number;
  /** At the head: along the bone's upright plane forwards, upwards, and to the outer side. N, not turned with the bone. */
  readonly forceN: Vec3;
  /** The force is put so far above the bone's axis. */
  readonly aboveMm?: number;
  readonly youngMPa?: number;
}

const G_MPA = 3300;

/** Forces on the cut at the base and the rise of the head across the bone, mm. */
export const loadBone = ({ cut, lengthMm, slopeRad = 0, forceN, aboveMm = 0, youngMPa = 17000 }: LoadedBone) => {
  const along: Vec3 = [Math.cos(slopeRad), -Math.sin(slopeRad), 0];
  const up: Vec3 = [Math.sin(slopeRad), Math.cos(slopeRad), 0];
  const { section: s } = cut;
  const head = scale(along, lengthMm);
  const moment = cross(scale(up, aboveMm), forceN);
  const { displacements, memberEndForces } = solved({
    nodes: [
      { id: 'cut', xyz: [0, 0, 0] },
      { id: 'head', xyz: [...head] },
    ],
    materials: { bone: { E: youngMPa, G: G_MPA } },
    sections: { s: { A: s.areaMm2, Iy: s.iDorsalMm4, Iz: s.iLateralMm4, J: s.iDorsalMm4 + s.iLateralMm4 } },
    members: [{ id: 'bone', i: 'cut', j: 'head', section: 's', material: 'bone', orientation: [...up] }],
    supports: [{ node: 'cut', fixed: ALL }],
    nodalLoads: [{ node: 'head', F: [...forceN, ...moment] }],
  });
  const at = (i: number): number => -(memberEndForces.bone?.[i] ?? Number.NaN);
  const forces: InternalForces = {
    axialN: at(0),
    shearDorsalN: at(1),
    shearLateralN: at(2),
    torsionNmm: at(3),
    bendingSidewaysNmm: at(4),
    bendingUpDownNmm: at(5),
  };
  const [x, y, z] = displacements.head ?? [];
  return { forces, riseMm: dot([x, y, z] as Vec3, up) };
};

/** Stress anywhere on a cut and its extremes, MPa. */
export const stressOn = ({ outline, section }: BoneCut, forces: InternalForces) => {
  const field = fieldOf(section, forces.axialN, forces.bendingUpDownNmm, forces.bendingSidewaysNmm);
  const at = ([dorsal, lateral]: Point2): number => field[0] + field[1] * dorsal + field[2] * lateral;
  const extremes: Extremes = extremesOf(section, outline, field);
  return { dorsal: at([section.toDorsalMm, 0]), plantar: at([-section.toPlantarMm, 0]), ...extremes };
};
