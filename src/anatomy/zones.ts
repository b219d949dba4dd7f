/**
 * Zones of the fifth metatarsal, tip to head, with borders taken from the facet between the fourth and fifth metatarsals and never
 * from a fixed distance. Border 1/2 is the facet's proximal edge along the bone's axis, border 2/3 its distal edge.
 * Zone 3 is the next 15 mm: it runs to the proximal 1.5 cm of the tubular shaft (Dameron 1995, J Am Acad Orthop Surg 3:110).
 * The head is the end segment by the trade's rule of squares: as long as the end is wide (from memory). Stations in mm. Other bones:
 * parts.ts.
 */
import { type BoneId, idOf, type JointId, type RegionId } from '../ids';
import { cross, dot, type Vec3 } from '../units';
import { boneAxis, fromBone, inBone, meshOf, stationOf } from './bone-axis';
import { keptByFoot } from './kept';
import { MT5 } from './region-names';
import { sliceMesh } from './slice';
import type { BoneAxis, Foot, Joint, Zone } from './types';

const INTERMETATARSAL_45 = idOf<JointId>('metatarsal4-metatarsal5');
export const CUBOID_MT5 = idOf<JointId>('cuboid-metatarsal5');
const ZONE_3_MM = 15;

/** Throws RangeError when the foot lacks the joint. */
export const jointOf = (foot: Foot, id: JointId): Joint => {
  const joint = foot.joints.get(id);
  if (!joint) throw new RangeError(`this foot has no joint ${id}`);
  return joint;
};

/** Stretch of the axis that the ellipse of a facet covers. */
export const facetSpan = (axis: BoneAxis, joint: Joint): readonly [from: number, to: number] => {
  const across = cross(joint.normal, joint.major);
  const half = Math.hypot(
    (joint.extentsMm[0] / 2) * dot(joint.major, axis.axis),
    (joint.extentsMm[1] / 2) * dot(across, axis.axis),
  );
  const s = stationOf(axis, joint.centre);
  return [s - half, s + half];
};

/** The stretch of the fifth metatarsal that its facet in this joint covers. */
export const facetStretch = (foot: Foot, id: JointId): readonly [from: number, to: number] => {
  const axis = boneAxis(foot, 'metatarsal5');
  return facetSpan(axis, jointOf(foot, id));
};

/** Greatest width of the cut at a station, over all directions across the bone. */
const widthAt = (foot: Foot, bone: BoneId, axis: BoneAxis, s: number): number => {
  const loops = sliceMesh(meshOf(foot, bone), fromBone(axis, s), axis.axis);
  const points = loops.flat().map((p: Vec3) => inBone(axis, p));
  let widest = 0;
  for (const a of points)
    for (const b of points) widest = Math.max(widest, Math.hypot(a.dorsalMm - b.dorsalMm, a.lateralMm - b.lateralMm));
  return widest;
};

/** Length of an end of a long bone: a square on the widest cut of the last fifth of the bone on that side. */
export const endLength = (foot: Foot, bone: BoneId, axis: BoneAxis, end: 'near' | 'far'): number => {
  let widest = 0;
  for (let i = 1; i < 20; i++) {
    const share = end === 'far' ? 0.8 + 0.01 * i : 0.01 * i;
    widest = Math.max(widest, widthAt(foot, bone, axis, axis.lengthMm * share));
  }
  return widest;
};

export const zonesOf = keptByFoot((foot): readonly Zone[] => {
  const axis = boneAxis(foot, 'metatarsal5');
  const [proximal, distal] = facetStretch(foot, INTERMETATARSAL_45);
  const borders: [RegionId, number][] = [
    [MT5.zone1, proximal],
    [MT5.zone2, distal],
    [MT5.zone3, distal + ZONE_3_MM],
    [MT5.shaft, axis.lengthMm - endLength(foot, 'metatarsal5', axis, 'far')],
    [MT5.head, axis.lengthMm],
  ];
  let fromMm = 0;
  return borders.map(([region, toMm]) => {
    if (!(toMm > fromMm)) throw new RangeError(`${region} would end at ${toMm} mm, before it begins at ${fromMm} mm`);
    const zone = { region, fromMm, toMm };
    fromMm = toMm;
    return zone;
  });
});

/** The zone a station lies in; a border belongs to the zone distal to it. Null off the bone. */
export const zoneAt = (zones: readonly Zone[], sMm: number): RegionId | null => {
  const last = zones.at(-1);
  if (last && sMm === last.toMm) return last.region;
  return zones.find((z) => sMm >= z.fromMm && sMm < z.toMm)?.region ?? null;
};
