/**
 * Carries places of a standing foot into another pose, and on to a foot whose bones stand as in another shape: each goes with its
 * bone. Exact for poses; for shapes it leaves out what a bone grows towards a moved neighbour (tenths of a millimetre to a few).
 */
import type { Shape } from '../../anatomy';
import { after, inverse, type Motion, moveDirection, movePoint, STILL } from '../../anatomy/stance/motion';
import { motionsOf } from '../../anatomy/stance/stance';
import type { Foot, FootForm, PoseName } from '../../anatomy/types';
import type { SkeletonId } from '../../ids';
import { scale, type Vec3 } from '../../units';
import type { OnBone } from './landmarks';

export interface Placing {
  readonly point: (place: OnBone) => Vec3;
  /** Where it is while a foot of this form stands: ties have their slack there, whatever the form. */
  readonly standing: (place: OnBone) => Vec3;
  readonly direction: (bone: SkeletonId, d: Vec3) => Vec3;
}

/** `form`: how the bones stand; that of the foot itself for a pose alone. Right foot, mm. */
export const placingOf = (shape: Shape, foot: Foot, form: FootForm, pose: PoseName): Placing => {
  const here = motionsOf(shape, foot.parameters, 'standing');
  const k = foot.reference.scale;
  const mover = (there: ReadonlyMap<SkeletonId, Motion>): ((bone: SkeletonId) => Motion) => {
    const moves = new Map<SkeletonId, Motion>();
    return (bone) => {
      const known = moves.get(bone);
      if (known) return known;
      const made = after(there.get(bone) ?? STILL, inverse(here.get(bone) ?? STILL));
      moves.set(bone, made);
      return made;
    };
  };
  const carry =
    (move: (bone: SkeletonId) => Motion) =>
    ({ bone, at }: OnBone): Vec3 =>
      scale(movePoint(move(bone), scale(at, 1 / k)), k);
  const standing = mover(motionsOf(shape, form, 'standing'));
  const posed = pose === 'standing' ? standing : mover(motionsOf(shape, form, pose));
  return {
    point: carry(posed),
    standing: carry(standing),
    direction: (bone, d) => moveDirection(posed(bone), d),
  };
};
