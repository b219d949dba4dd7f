/**
 * Where the frame of the foot takes hold of the bones: places on a standing right foot, each told with the bone it goes along with,
 * so that another pose or shape moves them with the bones. mm, foot frame. Bones keep their own form here; a shape turns them.
 */

import type { Shape } from '../../anatomy';
import { boneAxis, meshOf, regionsOf, stationOf } from '../../anatomy';
import { centreOfCurvature } from '../../anatomy/joint-surface';
import { meshCentroid, verticesOf } from '../../anatomy/mesh';
import { movePoint, STILL } from '../../anatomy/stance/motion';
import type { BoneAxis, Foot, Joint } from '../../anatomy/types';
import type { BoneId, SkeletonId } from '../../ids';
import { add, scale, subtract, type Vec3 } from '../../units';

export const RAYS = [1, 2, 3, 4, 5] as const;
export type Ray = (typeof RAYS)[number];
export const metatarsalOf = (ray: Ray): BoneId => `metatarsal${ray}` as const;

/** A place that goes along with a bone. */
export interface OnBone {
  readonly bone: SkeletonId;
  readonly at: Vec3;
}

export interface RayMarks {
  readonly bone: BoneId;
  readonly axis: BoneAxis;
  /** Middle of the joint at its base, and of the head's curve. */
  readonly base: OnBone;
  readonly head: OnBone;
  /** Where the sole's ties end: plantar edge of the base, and of the head. */
  readonly plantarBase: OnBone;
  readonly plantarHead: OnBone;
  /** Sole side of the toe's first bone at its base: what bending the toe back draws round the head. */
  readonly toeBase: OnBone;
}

export interface FootMarks {
  readonly joints: ReadonlyMap<string, Joint>;
  readonly rays: Readonly<Record<Ray, RayMarks>>;
  /** Axis of the ankle, in the middle of the trochlea's curve. */
  readonly ankle: OnBone;
  /** Middles of the bones that move as one piece. */
  readonly middles: Readonly<Record<RigidBone, Vec3>>;
  /** Places where tendons and ties are fixed or run round a bone. */
  readonly places: Readonly<Record<PlaceName, OnBone>>;
  /** Where the sole's pads lie on the bone. */
  readonly pads: Readonly<Record<PadName, OnBone>>;
}

export const RIGID_BONES = [
  'talus',
  'calcaneus',
  'navicular',
  'cuboid',
  'cuneiformMedial',
  'cuneiformIntermediate',
  'cuneiformLateral',
  'phalanxProximal1',
] as const;
export type RigidBone = (typeof RIGID_BONES)[number];

export const PAD_NAMES = [
  'heelMedial',
  'heelLateral',
  'sesamoidMedial',
  'sesamoidLateral',
  'head2',
  'head3',
  'head4',
  'head5',
  'firstToe',
  'base5',
] as const;
export type PadName = (typeof PAD_NAMES)[number];

/** Regions of content/anatomy/regions.yaml that are asked for by name. */
const REGION_PLACES = {
  achilles: 'calcaneus-footprint-achilles',
  fasciaOrigin: 'calcaneus-footprint-plantar-aponeurosis',
  fasciaLateralOrigin: 'calcaneus-footprint-lateral-band',
  longPlantarOrigin: 'calcaneus-footprint-long-plantar',
  longPlantar2: 'metatarsal2-footprint-long-plantar',
  longPlantar3: 'metatarsal3-footprint-long-plantar',
  longPlantar4: 'metatarsal4-footprint-long-plantar',
  shortPlantarOrigin: 'calcaneus-footprint-short-plantar',
  shortPlantar: 'cuboid-footprint-short-plantar',
  springOrigin: 'calcaneus-footprint-spring',
  spring: 'navicular-footprint-spring',
  lisfrancOrigin: 'cuneiformMedial-footprint-lisfranc',
  lisfranc: 'metatarsal2-footprint-lisfranc',
  tibialisPosterior: 'navicular-footprint-tibialis-posterior',
  fibularisLongus: 'metatarsal1-footprint-fibularis-longus',
  fibularisLongusGroove: 'cuboid-groove-fibularis-longus',
  fibularisBrevis: 'mt5-footprint-brevis',
  flexorHallucis: 'phalanxDistal1-footprint-flexor-longus',
  flexorHallucisTalus: 'talus-groove-flexor-hallucis-longus',
  flexorHallucisCalcaneus: 'calcaneus-groove-flexor-hallucis-longus',
} as const;
type RegionPlace = keyof typeof REGION_PLACES;
export type PlaceName = RegionPlace | 'underFirstHead' | 'behindOuterAnkle' | 'behindInnerAnkle';

const lowest = (points: Iterable<Vec3>): Vec3 => {
  let best: Vec3 | null = null;
  for (const p of points) if (best === null || p[1] < best[1]) best = p;
  if (best === null) throw new RangeError('no point to be the lowest');
  return best;
};

const between = (foot: Foot, bone: BoneId, axis: BoneAxis, from: number, to: number): Vec3[] =>
  [...verticesOf(meshOf(foot, bone))].filter((p) => {
    const share = stationOf(axis, p) / axis.lengthMm;
    return share >= from && share <= to;
  });

const jointNamed = (foot: Foot, id: string): Joint => {
  for (const joint of foot.joints.values()) if (joint.id === id) return joint;
  throw new RangeError(`this foot has no joint ${id}`);
};

export const BASE_JOINTS: Readonly<Record<Ray, string>> = {
  1: 'cuneiformMedial-metatarsal1',
  2: 'cuneiformIntermediate-metatarsal2',
  3: 'cuneiformLateral-metatarsal3',
  4: 'cuboid-metatarsal4',
  5: 'cuboid-metatarsal5',
};

/** How much of each end of a metatarsal is looked at for its lowest point. */
const END_SHARE = 0.18;

const rayMarks = (foot: Foot, ray: Ray): RayMarks => {
  const bone = metatarsalOf(ray);
  const axis = boneAxis(foot, bone);
  const toe = jointNamed(foot, `metatarsal${ray}-phalanxProximal${ray}`);
  const toeBone: BoneId = `phalanxProximal${ray}`;
  const radius = (toe.radiiMm[0] + toe.radiiMm[1]) / 2;
  return {
    bone,
    axis,
    base: { bone, at: jointNamed(foot, BASE_JOINTS[ray]).centre },
    head: { bone, at: subtract(toe.centre, scale(toe.normal, radius)) },
    plantarBase: { bone, at: lowest(between(foot, bone, axis, 0, END_SHARE)) },
    plantarHead: { bone, at: lowest(between(foot, bone, axis, 1 - END_SHARE, 1)) },
    toeBase: { bone: toeBone, at: lowest(between(foot, toeBone, boneAxis(foot, toeBone), 0, 0.25)) },
  };
};

const legVertices = (foot: Foot, bone: 'tibia' | 'fibula'): readonly Vec3[] => {
  const mesh = foot.leg.get(bone);
  if (!mesh) throw new RangeError(`this foot has no ${bone}`);
  return [...verticesOf(mesh)];
};

/** How far behind and above the tip of a malleolus its tendons turn, on the reference foot (drawn; common practice that they turn there). */
const BEHIND_MM: Vec3 = [0, 6, -9];

const behind = (foot: Foot, tip: Vec3): Vec3 => add(tip, scale(BEHIND_MM, foot.reference.scale));

const placesOf = (foot: Foot): Record<PlaceName, OnBone> => {
  const regions = new Map(regionsOf(foot).map((r) => [r.id as string, r]));
  const fromRegion = (id: string): OnBone => {
    const region = regions.get(id);
    if (!region) throw new RangeError(`this foot has no region ${id}`);
    return { bone: region.bone, at: region.centre };
  };
  const told = Object.fromEntries(Object.entries(REGION_PLACES).map(([name, id]) => [name, fromRegion(id)])) as Record<
    RegionPlace,
    OnBone
  >;
  const sesamoids = (['sesamoidMedial', 'sesamoidLateral'] as const).map((bone) => meshCentroid(meshOf(foot, bone)));
  const tibia = legVertices(foot, 'tibia');
  return {
    ...told,
    // The sesamoids lie in what winds round the first head: ties of the first toe run through their middle.
    underFirstHead: { bone: 'sesamoidMedial', at: scale(add(sesamoids[0] as Vec3, sesamoids[1] as Vec3), 0.5) },
    behindOuterAnkle: { bone: 'fibula', at: behind(foot, lowest(legVertices(foot, 'fibula'))) },
    behindInnerAnkle: { bone: 'tibia', at: behind(foot, lowest(tibia)) },
  };
};

const padsOf = (foot: Foot, rays: FootMarks['rays'], places: FootMarks['places']): Record<PadName, OnBone> => {
  const under = (bone: BoneId): OnBone => ({ bone, at: lowest(verticesOf(meshOf(foot, bone))) });
  const fifth = rays[5];
  return {
    heelMedial: places.fasciaOrigin,
    heelLateral: places.fasciaLateralOrigin,
    sesamoidMedial: under('sesamoidMedial'),
    sesamoidLateral: under('sesamoidLateral'),
    head2: rays[2].plantarHead,
    head3: rays[3].plantarHead,
    head4: rays[4].plantarHead,
    head5: fifth.plantarHead,
    firstToe: under('phalanxDistal1'),
    base5: { bone: fifth.bone, at: lowest(between(foot, fifth.bone, fifth.axis, 0, 0.25)) },
  };
};

/** Marks of a standing right foot. Throws RangeError for a foot that is another or lacks a part. */
export const footMarks = (shape: Shape, foot: Foot): FootMarks => {
  if (foot.side !== 'right' || foot.pose !== 'standing')
    throw new RangeError('marks are taken on a standing right foot');
  const ankle = shape.joints.find((j) => j.id === 'tibia-talus');
  if (!ankle) throw new RangeError('the shape has no ankle');
  const centre = centreOfCurvature(ankle, [1, 0, 0]) ?? ankle.centre;
  const talus = foot.reference.motions.get('talus') ?? STILL;
  const rays = Object.fromEntries(RAYS.map((ray) => [ray, rayMarks(foot, ray)])) as FootMarks['rays'];
  const places = placesOf(foot);
  return {
    joints: new Map([...foot.joints.values()].map((j) => [j.id as string, j])),
    rays,
    ankle: { bone: 'talus', at: scale(movePoint(talus, centre), foot.reference.scale) },
    middles: Object.fromEntries(
      RIGID_BONES.map((bone) => [bone, meshCentroid(meshOf(foot, bone))]),
    ) as FootMarks['middles'],
    places,
    pads: padsOf(foot, rays, places),
  };
};
