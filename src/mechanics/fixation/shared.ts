/**
 * A screw inside a whole bone: both strain together (transformed section), as far as the thread holds. What a bonded screw could
 * carry, an upper bound of what a real one does: nothing slips here, and spongy bone between screw and cortex is left out.
 */
import type { Point2 } from '../../anatomy/inside/polygon';
import { type Composite, compositeOf, type Part, type PartStress, partStressesOf, strainOf } from '../section';
import { type Screw, screwPart } from './screw';

export interface Moments {
  readonly axialN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
}

export interface ScrewInBone {
  readonly composite: Composite;
  /** Parts of the bending stiffness that the screw has, up/down and sideways, 0 to 1. */
  readonly shareUpDown: number;
  readonly shareSideways: number;
  /** Curvature of the member, 1/mm. */
  readonly curvature: number;
  readonly bone: PartStress;
  readonly screw: PartStress;
  /** The same bone under the same load with nothing in it. */
  readonly boneAlone: PartStress;
}

/** `bone`: cortex with its canal; `at`: where the screw lies in the section, mm dorsal and lateral. */
export const screwInBone = (bone: Part, screw: Screw, at: Point2, load: Moments): ScrewInBone => {
  const part = screwPart(screw, at);
  const composite = compositeOf([bone, part]);
  const alone = compositeOf([bone]);
  const just = compositeOf([part]);
  const [dy, dz] = [just.centreMm[0] - composite.centreMm[0], just.centreMm[1] - composite.centreMm[1]];
  const fieldIn = (c: Composite) => strainOf(c, load.axialN, load.bendingUpDownNmm, load.bendingSidewaysNmm);
  const field = fieldIn(composite);
  const [inBone, inScrew] = partStressesOf(composite, field);
  const [boneAlone] = partStressesOf(alone, fieldIn(alone));
  if (!inBone || !inScrew || !boneAlone) throw new RangeError('a composite lost a part');
  return {
    composite,
    shareUpDown: (just.eiLateralNmm2 + just.eaN * dy * dy) / composite.eiLateralNmm2,
    shareSideways: (just.eiDorsalNmm2 + just.eaN * dz * dz) / composite.eiDorsalNmm2,
    curvature: Math.hypot(field[1], field[2]),
    bone: inBone,
    screw: inScrew,
    boneAlone,
  };
};
