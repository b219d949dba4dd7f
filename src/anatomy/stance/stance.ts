/**
 * Where every bone stands: one rigid motion a bone from the as-scanned reference foot (mm, before the foot is scaled).
 * A foot of any shape stands on heel and metatarsal heads: turns that `rest` or `lie` are solved from the turns before them.
 */
import { SKELETON_IDS, type SkeletonId } from '../../ids';
import { add, degrees, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneShapeOf } from '../bone-field';
import { centreOfCurvature } from '../joint-surface';
import { DEFAULT_FOOT } from '../parameters';
import type { JointShape, Shape } from '../shape';
import type { FootForm, PoseName } from '../types';
import { after, inverse, type Motion, moveDirection, movePoint, STILL, shifted, turning } from './motion';
import type { PoseShape, Turn } from './schema';

export type Motions = ReadonlyMap<SkeletonId, Motion>;

/** Bones of a list that may name sets (and sets of sets). Throws RangeError for a name that is neither. */
export const bonesIn = (pose: PoseShape, names: readonly string[]): readonly SkeletonId[] =>
  names.flatMap((name) => {
    const set = pose.sets[name];
    if (set) return bonesIn(pose, set);
    const bone = SKELETON_IDS.find((id) => id === name);
    if (!bone) throw new RangeError(`pose: no bone or set ${name}`);
    return [bone];
  });

/** The shift that a longer or shorter ray gives the bones in front of it, and the joints there. */
export const lengthened = (shape: Shape, form: FootForm): ReadonlyMap<SkeletonId, Vec3> =>
  new Map(
    shape.pose.lengths.flatMap(({ bones, along }) =>
      bonesIn(shape.pose, bones).map((bone) => [bone, scale(normalize(along), form.firstRayMm)] as const),
    ),
  );

const degreesFor = (turn: Extract<Turn, { by: 'degrees' }>, form: FootForm): number => {
  const d = turn.degrees;
  const arch = form.arch < 0 ? -form.arch * d.flat : form.arch * d.high;
  return d.standing + arch + form.hindfootDeg * d.hindfoot + form.adductusDeg * d.adductus + form.halluxDeg * d.hallux;
};

export const carriedJoint = (j: JointShape, m: Motion): JointShape => ({
  ...j,
  centre: movePoint(m, j.centre) as JointShape['centre'],
  normal: moveDirection(m, j.normal) as JointShape['normal'],
  major: moveDirection(m, j.major) as JointShape['major'],
});

/** Degrees about X that bring a point to a height; as near to it as the point can come where it cannot reach. */
const degreesToRest = (pivot: Vec3, head: Vec3, height: number): number => {
  const [, y, z] = subtract(head, pivot);
  const reach = Math.hypot(y, z);
  const want = Math.asin(Math.min(1, Math.max(-1, (height - pivot[1]) / reach)));
  return degrees(Math.atan2(y, z) - want);
};

const jointNamed = (shape: Shape, id: string | undefined): JointShape => {
  const joint = shape.joints.find((j) => j.id === id);
  if (!joint) throw new RangeError(`pose: no joint ${id}`);
  return joint;
};

const pivotOf = (shape: Shape, turn: Turn, carried: Motion): Vec3 => {
  if (turn.pivot) return movePoint(carried, turn.pivot);
  const joint = jointNamed(shape, turn.about);
  const here = carriedJoint(joint, carried);
  return (joint.kind === 'ball' || joint.kind === 'hinge' ? centreOfCurvature(here, turn.axis) : null) ?? here.centre;
};

/** The joint as the first bone has it where it may have grown towards the second. */
const grownJoint = (shape: Shape, form: FootForm, id: string): JointShape => {
  const joint = jointNamed(shape, id);
  const longer = lengthened(shape, form);
  const by = longer.has(joint.first) ? undefined : longer.get(joint.second);
  return by ? { ...joint, centre: add(joint.centre, by) as JointShape['centre'] } : joint;
};

/** The middle of a metatarsal's head, carried along with the metatarsal. */
export const headOf = (shape: Shape, form: FootForm, joint: string, carried: Motion): Vec3 => {
  const here = carriedJoint(grownJoint(shape, form, joint), carried);
  return centreOfCurvature(here, [1, 0, 0]) ?? here.centre;
};

const turnNamed = (shape: Shape, id: string): Turn => {
  const turn = shape.pose.standing.find((t) => t.id === id);
  if (!turn) throw new RangeError(`pose: no turn ${id}`);
  return turn;
};

/** A turn as it was made: for the list of joint angles between two poses. */
export interface TurnMade {
  readonly id: string;
  readonly name: string;
  readonly degrees: number;
}

interface Stance {
  readonly motions: Map<SkeletonId, Motion>;
  readonly made: TurnMade[];
}

/** How far a turn has been made so far, deg. */
const madeOf = ({ made }: Stance, id: string): number =>
  made.reduce((sum, each) => (each.id === id ? sum + each.degrees : sum), 0);

const degreesOf = (shape: Shape, stance: Stance, turn: Turn, form: FootForm, pivot: Vec3, carried: Motion): number => {
  switch (turn.by) {
    case 'degrees':
      return degreesFor(turn, form);
    case 'rest':
      return degreesToRest(pivot, headOf(shape, form, turn.head, carried), turn.height);
    case 'lie': {
      const bone = bonesIn(shape.pose, turn.bones)[0] as SkeletonId;
      const to = turn.to ? jointNamed(shape, turn.to).centre : boneShapeOf(shape, bone).centre;
      const way = moveDirection(carried, subtract(to, jointNamed(shape, turn.from).centre));
      return turn.declination - degrees(Math.atan2(-way[1], way[2]));
    }
    case 'follow':
      return madeOf(stance, turn.turn) + turn.further - madeOf(stance, turn.id);
  }
};

const turnBy = (shape: Shape, stance: Stance, turn: Turn, by: (pivot: Vec3, carried: Motion) => number): void => {
  const bones = bonesIn(shape.pose, turn.bones);
  const carried = stance.motions.get(bones[0] as SkeletonId) ?? STILL;
  const pivot = pivotOf(shape, turn, carried);
  const angle = by(pivot, carried);
  const motion = turning(pivot, turn.axis, angle);
  for (const bone of bones) stance.motions.set(bone, after(motion, stance.motions.get(bone) ?? STILL));
  stance.made.push({ id: turn.id, name: turn.name, degrees: angle });
};

const standing = (shape: Shape, form: FootForm): Stance => {
  const longer = lengthened(shape, form);
  const stance: Stance = {
    motions: new Map(SKELETON_IDS.map((bone) => [bone, shifted(STILL, longer.get(bone) ?? [0, 0, 0])])),
    made: [],
  };
  for (const turn of shape.pose.standing) {
    turnBy(shape, stance, turn, (pivot, carried) => degreesOf(shape, stance, turn, form, pivot, carried));
  }
  const { at, radius } = shape.pose.back;
  const back = movePoint(stance.motions.get('calcaneus') ?? STILL, at);
  for (const [bone, m] of stance.motions) stance.motions.set(bone, shifted(m, [0, 0, radius - back[2]]));
  return stance;
};

/** The bone a phalanx or sesamoid turns on: in the joint table it is the first of the joint that has this one as its second. */
const carrierOf = (shape: Shape, bone: SkeletonId): SkeletonId | undefined =>
  bonesIn(shape.pose, ['toes', 'sesamoids']).includes(bone)
    ? shape.joints.find(({ second }) => second === bone)?.first
    : undefined;

/**
 * A foot of another shape is unloaded by the motions that load the usual one with as long a first ray, which then keeps that length:
 * the bones of hind-, mid- and forefoot each from where it stands, a toe's on the bone it turns on, or it would leave its joint.
 */
const asScanned = (shape: Shape, form: FootForm): Stance => {
  const longer = lengthened(shape, form);
  const usual = standing(shape, { ...DEFAULT_FOOT, firstRayMm: form.firstRayMm }).motions;
  const own = standing(shape, form).motions;
  const of = (motions: Motions, bone: SkeletonId): Motion => motions.get(bone) ?? STILL;
  const grown = (bone: SkeletonId): Motion => shifted(STILL, longer.get(bone) ?? [0, 0, 0]);
  /** What is left of the standing turn of a bone on its carrier when the usual one's is taken back, in the bone's own place. */
  const leftOn = (bone: SkeletonId, carrier: SkeletonId): Motion => {
    const on = (motions: Motions): Motion => after(inverse(of(motions, carrier)), of(motions, bone));
    return after(inverse(on(usual)), on(own));
  };
  const unloaded = (bone: SkeletonId): Motion => {
    const carrier = carrierOf(shape, bone);
    if (carrier === undefined) return after(grown(bone), after(inverse(of(usual, bone)), of(own, bone)));
    const joint = after(inverse(grown(carrier)), grown(bone));
    return after(unloaded(carrier), after(joint, leftOn(bone, carrier)));
  };
  return { motions: new Map(SKELETON_IDS.map((bone) => [bone, unloaded(bone)])), made: [] };
};

/** How far the line from one head to another lies turned about Y in a standing foot, deg: front end inwards is positive. */
const headingOf = (shape: Shape, form: FootForm, heads: readonly [string, string]): number => {
  const { motions } = standing(shape, form);
  const at = (id: string): Vec3 => headOf(shape, form, id, motions.get(jointNamed(shape, id).first) ?? STILL);
  const [x, , z] = subtract(at(heads[1]), at(heads[0]));
  return degrees(Math.atan2(-z, x));
};

/**
 * A turn whose axis goes along with the heads of this foot. A longer first ray does not turn it: the foot would roll over its outer
 * border, and outer heads leave the ground first.
 */
const alongHeads = (shape: Shape, form: FootForm, turn: Turn): Turn => {
  if (turn.by !== 'degrees' || turn.along === undefined) return turn;
  const own = headingOf(shape, { ...form, firstRayMm: DEFAULT_FOOT.firstRayMm }, turn.along);
  const usual = headingOf(shape, { ...DEFAULT_FOOT, arch: form.arch }, turn.along);
  return { ...turn, axis: [...moveDirection(turning([0, 0, 0], [0, 1, 0], own - usual), turn.axis)] };
};

const stanceOf = (shape: Shape, form: FootForm, pose: PoseName): Stance => {
  if (pose === 'asScanned') return asScanned(shape, form);
  if (pose === 'standing') return standing(shape, form);
  const further = shape.pose.poses.find((p) => p.id === pose);
  if (!further) throw new RangeError(`no pose ${pose}`);
  const { by, archPerDegree } = shape.pose.windlass;
  const wound = -(further.turns.find(({ turn }) => turn === by)?.degrees ?? 0);
  // The arch is higher as far as feet have been checked; the bones themselves stay those of this foot.
  const arch = Math.min(1, form.arch + further.arch + archPerDegree * Math.max(0, wound));
  const risen = { ...form, arch };
  const stance = standing(shape, risen);
  for (const { turn: id, degrees: angle } of further.turns) {
    turnBy(shape, stance, alongHeads(shape, risen, turnNamed(shape, id)), () => angle);
  }
  // Set down on these heads together: where one ray is short, the pads share the difference.
  const ups = further.restsOn.flatMap((id) => {
    const turn = turnNamed(shape, id);
    if (turn.by !== 'rest') return [];
    const carried = stance.motions.get(bonesIn(shape.pose, turn.bones)[0] as SkeletonId) ?? STILL;
    return [turn.height - headOf(shape, form, turn.head, carried)[1]];
  });
  if (ups.length > 0) {
    const up = ups.reduce((sum, each) => sum + each, 0) / ups.length;
    for (const [bone, m] of stance.motions) stance.motions.set(bone, shifted(m, [0, up, 0]));
  }
  for (const id of further.lift) {
    const turn = turnNamed(shape, id);
    // Front end down is positive: only upwards.
    turnBy(shape, stance, turn, (pivot, carried) => Math.min(0, degreesOf(shape, stance, turn, form, pivot, carried)));
  }
  for (const id of further.again) {
    const turn = turnNamed(shape, id);
    turnBy(shape, stance, turn, (pivot, carried) => degreesOf(shape, stance, turn, form, pivot, carried));
  }
  return stance;
};

/** Stances by form object, the last asked for: every bone of a foot asks for the same one. */
const kept = new WeakMap<Shape, WeakMap<FootForm, Map<PoseName, Stance>>>();

const keptStance = (shape: Shape, form: FootForm, pose: PoseName): Stance => {
  const forms = kept.get(shape) ?? new WeakMap<FootForm, Map<PoseName, Stance>>();
  kept.set(shape, forms);
  const poses = forms.get(form) ?? new Map<PoseName, Stance>();
  forms.set(form, poses);
  const stance = poses.get(pose) ?? stanceOf(shape, form, pose);
  poses.set(pose, stance);
  return stance;
};

/** The motion of every bone from the as-scanned reference foot; bones that stay put may be missing. `form` is not changed later. */
export const motionsOf = (shape: Shape, form: FootForm, pose: PoseName): Motions =>
  keptStance(shape, form, pose).motions;

/** The turns that lead from as scanned to a pose, in order, deg. */
export const turnsOf = (shape: Shape, form: FootForm, pose: PoseName): readonly TurnMade[] =>
  keptStance(shape, form, pose).made;

const mean = (a: Vec3, b: Vec3): Vec3 => scale(add(a, b), 0.5);

/**
 * A joint between two bones that have moved: midway between where each of them carries it. `longer` is the shift of the second
 * bone that the first one has grown towards.
 */
export const joined = (j: JointShape, first: Motion, second: Motion, longer: Vec3 = [0, 0, 0]): JointShape => {
  const a = carriedJoint(j, shifted(first, moveDirection(first, longer)));
  const b = carriedJoint(j, second);
  return {
    ...j,
    centre: mean(a.centre, b.centre) as JointShape['centre'],
    normal: normalize(add(a.normal, b.normal)) as JointShape['normal'],
    major: normalize(add(a.major, b.major)) as JointShape['major'],
  };
};
