/**
 * Named parts of the bones' surfaces, each a function of the surface point, derived from joints and landmarks and never from the
 * triangulation: facets of every joint, zones, footprints and foramen of the fifth metatarsal. mm, foot frame.
 */
import type { BoneId, RegionId } from '../ids';
import { cross, dot, length, radians, scale, subtract, type Vec3 } from '../units';
import { boneAxis, fromBone, inBone, meshOf, stationOf } from './bone-axis';
import { facetId } from './region-names';
import { FOOTPRINTS, FORAMEN, REFERENCE_LENGTH_MM } from './region-rules';
import { sliceMesh } from './slice';
import type { BoneAxis, Foot, Joint, Region, Zone } from './types';
import { zonesOf } from './zones';

/** A facet is the ellipse of the joint, as deep as a ball-shaped facet of that size can curve plus the gap, mm. */
const facetRegion = (joint: Joint, bone: BoneId, other: BoneId): Region => {
  const across = cross(joint.normal, joint.major);
  const [long, short] = joint.extentsMm;
  const depth = 0.45 * short + 1;
  return {
    id: facetId(joint.id, bone, other),
    bone,
    kind: 'facet',
    centre: joint.centre,
    contains: (p) => {
      const d = subtract(p, joint.centre);
      const ellipse = Math.hypot(dot(d, joint.major) / (long / 2), dot(d, across) / (short / 2));
      return ellipse <= 1 && Math.abs(dot(d, joint.normal)) <= depth;
    },
  };
};

/**
 * Where a ray from the middle of the section at `s` leaves the bone, `round` rad from dorsal towards lateral.
 * Throws RangeError when the section is empty.
 */
const surfacePoint = (foot: Foot, axis: BoneAxis, bone: BoneId, s: number, round: number): Vec3 => {
  const loops = sliceMesh(meshOf(foot, bone), fromBone(axis, s), axis.axis);
  const loop = loops.reduce<Vec3[]>((a, b) => (b.length > a.length ? b : a), []);
  if (loop.length === 0) throw new RangeError(`${bone} has no section at ${s} mm`);
  const points = loop.map((p) => inBone(axis, p));
  const [midD, midL] = [
    points.reduce((sum, p) => sum + p.dorsalMm, 0) / points.length,
    points.reduce((sum, p) => sum + p.lateralMm, 0) / points.length,
  ];
  const [rayD, rayL] = [Math.cos(round), Math.sin(round)];
  let reach = 0;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length] ?? a;
    const [ad, al] = [a.dorsalMm - midD, a.lateralMm - midL];
    const [bd, bl] = [b.dorsalMm - midD, b.lateralMm - midL];
    // Signed distances of both ends from the ray's line; the stretch crosses it where they differ in sign.
    const [ca, cb] = [ad * rayL - al * rayD, bd * rayL - bl * rayD];
    if (ca === cb || ca < 0 === cb < 0) return;
    const t = ca / (ca - cb);
    reach = Math.max(reach, (ad + t * (bd - ad)) * rayD + (al + t * (bl - al)) * rayL);
  });
  return fromBone(axis, s, midD + reach * rayD, midL + reach * rayL);
};

/** An ellipse on the surface about `centre`: along the bone, and as a chord across it, on the centre's side of the bone. */
const patch = (
  axis: BoneAxis,
  id: RegionId,
  kind: Region['kind'],
  centre: Vec3,
  lengthMm: number,
  widthMm: number,
): Region => {
  const s = stationOf(axis, centre);
  return {
    id,
    bone: 'metatarsal5',
    kind,
    centre,
    spanMm: [s - lengthMm / 2, s + lengthMm / 2],
    contains: (p) => {
      const d = subtract(p, centre);
      const along = dot(d, axis.axis);
      const chord = length(subtract(d, scale(axis.axis, along)));
      return Math.hypot(along / (lengthMm / 2), chord / (widthMm / 2)) <= 1;
    },
  };
};

const zoneRegion = (axis: BoneAxis, { region, fromMm, toMm }: Zone): Region => ({
  id: region,
  bone: 'metatarsal5',
  kind: 'zone',
  centre: fromBone(axis, (fromMm + toMm) / 2),
  spanMm: [fromMm, toMm],
  contains: (p) => {
    const s = stationOf(axis, p);
    // The bone's ends belong to the end zones, however the last digit rounds.
    return (s >= fromMm || fromMm <= 0) && (s < toMm || toMm >= axis.lengthMm);
  },
});

const pointSpan = (axis: BoneAxis, p: Vec3): readonly [number, number] => {
  const s = stationOf(axis, p);
  return [s, s];
};

const fifthMetatarsal = (foot: Foot, axis: BoneAxis, zones: readonly Zone[]): Region[] => {
  const k = axis.lengthMm / REFERENCE_LENGTH_MM;
  const zone1 = zones[0]?.toMm ?? 0;
  const at = (s: number, deg: number) => surfacePoint(foot, axis, 'metatarsal5', s, radians(deg));
  const foramen = at(zone1 + FORAMEN.fromMedialBaseMm * k, FORAMEN.roundDeg);
  return [
    ...zones.map((z) => zoneRegion(axis, z)),
    ...FOOTPRINTS.map((f) =>
      patch(axis, f.id, 'footprint', at(zone1 * f.alongZone1, f.roundDeg), f.lengthMm * k, f.widthMm * k),
    ),
    {
      ...patch(axis, FORAMEN.id, 'foramen', foramen, FORAMEN.acrossMm, FORAMEN.acrossMm),
      spanMm: pointSpan(axis, foramen),
    },
  ];
};

/** Every region of the foot. Facets carry the joint's ellipse; both bones of a joint have theirs. */
export const regionsOf = (foot: Foot): Region[] => {
  const axis = boneAxis(foot, 'metatarsal5');
  const facets = [...foot.joints.values()].flatMap((j) => [
    facetRegion(j, j.first, j.second),
    facetRegion(j, j.second, j.first),
  ]);
  return [...facets, ...fifthMetatarsal(foot, axis, zonesOf(foot))];
};
