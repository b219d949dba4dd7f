/** What follows from a foot, or from one of its bones, made once: no foot is ever changed, another shape or pose is another foot. */
import type { BoneId } from '../ids';
import type { Foot } from './types';

export const keptByBone = <T>(make: (foot: Foot, bone: BoneId) => T): ((foot: Foot, bone: BoneId) => T) => {
  const feet = new WeakMap<Foot, Map<BoneId, T>>();
  return (foot, bone) => {
    const bones = feet.get(foot) ?? new Map<BoneId, T>();
    feet.set(foot, bones);
    const known = bones.get(bone);
    if (known !== undefined) return known;
    const made = make(foot, bone);
    bones.set(bone, made);
    return made;
  };
};

export const keptByFoot = <T extends object>(make: (foot: Foot) => T): ((foot: Foot) => T) => {
  const feet = new WeakMap<Foot, T>();
  return (foot) => {
    const made = feet.get(foot) ?? make(foot);
    feet.set(foot, made);
    return made;
  };
};
