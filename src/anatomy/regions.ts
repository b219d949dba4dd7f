/**
 * Named parts of the bones' surfaces, each a function of the surface point, derived from joints and landmarks and never from the
 * triangulation: facets of every joint, parts and stretches of bones, footprints, grooves, foramina and watersheds by the rules of
 * content/anatomy/regions.yaml. mm, foot frame.
 */
import { type BoneId, idOf, type RegionId } from '../ids';
import { cross, dot, length, normalize, scale, subtract, type Vec3 } from '../units';
import { boneAxis, fromBone, meshOf, stationOf } from './bone-axis';
import { keptByFoot } from './kept';
import { meshCentroid, verticesOf } from './mesh';
import { borderAt, partAxis, partsOf } from './parts';
import { carried, placeOn, scaleOn, sectionMiddle } from './places';
import { facetId } from './region-names';
import type { BandRule, PatchRule, StretchRule } from './region-schema';
import type { BoneAxis, Foot, Joint, Region, Zone } from './types';

/** How far off the joint's surface a point still counts as lying on its facet: half the widest gap and the mesh's chords, mm. */
const FACET_DEPTH = 3;

/** A facet is what lies on the joint's curved surface within its ellipse. */
const facetRegion = (joint: Joint, bone: BoneId, other: BoneId): Region => {
  const across = cross(joint.normal, joint.major);
  const [long, short] = joint.extentsMm;
  const [ku, kv] = joint.radiiMm.map((r) => (r === 0 ? 0 : 1 / r)) as [number, number];
  // The tabled centre is the centroid of a curved patch; its apex lies further out.
  const apex = (ku * long ** 2 + kv * short ** 2) / 32;
  return {
    id: facetId(joint.id, bone, other),
    bone,
    kind: 'facet',
    centre: joint.centre,
    contains: (p) => {
      const d = subtract(p, joint.centre);
      const [u, v] = [dot(d, joint.major), dot(d, across)];
      const off = dot(d, joint.normal) - apex + (ku * u * u + kv * v * v) / 2;
      return Math.hypot(u / (long / 2), v / (short / 2)) <= 1 && Math.abs(off) <= FACET_DEPTH;
    },
  };
};

const isLong = (bone: BoneId): boolean => bone.startsWith('metatarsal') || bone.startsWith('phalanx');

/** An ellipse on the surface: its extent along `along`, and as a chord across it, on its own side of the bone. */
const patchRegion = (foot: Foot, rule: PatchRule, axisOf: (bone: BoneId) => BoneAxis): Region => {
  const { at, out } = placeOn(foot, rule.bone, rule);
  const way = carried(foot, rule.bone, rule.along);
  const along = normalize(subtract(way, scale(out, dot(way, out))));
  const k = scaleOn(foot, rule.bone);
  const [long, wide] = [rule.size[0] * k, rule.size[1] * k];
  const span = (): readonly [number, number] => {
    const axis = axisOf(rule.bone);
    const s = stationOf(axis, at);
    const lean = dot(along, axis.axis);
    const half =
      rule.kind === 'foramen' ? 0 : Math.hypot(long * lean, wide * Math.sqrt(1 - Math.min(1, lean * lean))) / 2;
    return [s - half, s + half];
  };
  return {
    id: idOf<RegionId>(rule.id),
    bone: rule.bone,
    kind: rule.kind,
    centre: at,
    contains: (p) => {
      const d = subtract(p, at);
      const a = dot(d, along);
      return Math.hypot(a / (long / 2), length(subtract(d, scale(along, a))) / (wide / 2)) <= 1;
    },
    ...(isLong(rule.bone) ? { spanMm: span() } : {}),
  };
};

const zoneRegion = (bone: BoneId, axis: BoneAxis, { region, fromMm, toMm }: Zone): Region => ({
  id: region,
  bone,
  kind: 'zone',
  centre: fromBone(axis, (fromMm + toMm) / 2),
  spanMm: [fromMm, toMm],
  contains: (p) => {
    const s = stationOf(axis, p);
    // The bone's ends belong to the end zones, however the last digit rounds.
    return (s >= fromMm || fromMm <= 0) && (s < toMm || toMm >= axis.lengthMm);
  },
});

/** A stretch of a bone, over several of its parts or within one. Throws RangeError when it would end before it begins. */
const stretchRegion = (foot: Foot, { id, bone, from, to }: StretchRule): Region => {
  const axis = partAxis(foot, bone);
  const [fromMm, toMm] = [borderAt(foot, bone, axis, from), borderAt(foot, bone, axis, to)];
  if (!(toMm > fromMm)) throw new RangeError(`${id} would end at ${toMm} mm, before it begins at ${fromMm} mm`);
  const zone = zoneRegion(bone, axis, { region: idOf<RegionId>(id), fromMm, toMm: Math.min(toMm, axis.lengthMm) });
  return { ...zone, kind: 'stretch' };
};

/** A watershed across a bone: between two stations of one of its parts. */
const bandInZone = (foot: Foot, rule: BandRule, zones: readonly Zone[], zone: string, axis: BoneAxis): Region => {
  const within = zones.find((z) => z.region === zone);
  if (!within) throw new RangeError(`${rule.id}: no zone ${zone}`);
  const [from, to] = rule.between.map((share) => within.fromMm + share * (within.toMm - within.fromMm)) as [
    number,
    number,
  ];
  return {
    id: idOf<RegionId>(rule.id),
    bone: rule.bone,
    kind: 'watershed',
    centre: sectionMiddle(foot, rule.bone, axis, (from + to) / 2),
    spanMm: [from, to],
    contains: (p) => stationOf(axis, p) >= from && stationOf(axis, p) < to,
  };
};

/** A watershed across a short bone: between two shares of its extent along a direction of its own. */
const bandAlong = (foot: Foot, rule: BandRule, way: Vec3): Region => {
  const axis = normalize(carried(foot, rule.bone, way));
  const mesh = meshOf(foot, rule.bone);
  const reach = verticesOf(mesh).map((p) => dot(p, axis));
  const [low, high] = [Math.min(...reach), Math.max(...reach)];
  const [from, to] = rule.between.map((share) => low + share * (high - low)) as [number, number];
  return {
    id: idOf<RegionId>(rule.id),
    bone: rule.bone,
    kind: 'watershed',
    centre: meshCentroid(mesh),
    contains: (p) => dot(p, axis) >= from && dot(p, axis) < to,
  };
};

/** The named places of one bone that are none of its parts: footprints, grooves, foramina and spots, then stretches. */
export const placesOf = (foot: Foot, bone: BoneId): readonly Region[] => {
  const { patches, stretches } = foot.reference.regions;
  const own = <T extends { readonly bone: BoneId }>(rules: readonly T[]): T[] => rules.filter((r) => r.bone === bone);
  return [
    ...own(patches).map((rule) => patchRegion(foot, rule, (id) => boneAxis(foot, id))),
    ...own(stretches).map((rule) => stretchRegion(foot, rule)),
  ];
};

/** Every region of the foot. Facets carry the joint's ellipse; both bones of a joint have theirs. */
export const regionsOf = keptByFoot((foot): readonly Region[] => {
  const axes = new Map<BoneId, BoneAxis>();
  const axisOf = (bone: BoneId): BoneAxis => {
    const axis = axes.get(bone) ?? boneAxis(foot, bone);
    axes.set(bone, axis);
    return axis;
  };
  const { patches, stretches, watersheds } = foot.reference.regions;
  const here = <T extends { readonly bone: BoneId }>(rules: readonly T[]): T[] =>
    rules.filter((r) => foot.bones.has(r.bone));
  return [
    ...[...foot.joints.values()].flatMap((j) => [facetRegion(j, j.first, j.second), facetRegion(j, j.second, j.first)]),
    ...[...foot.bones.keys()].flatMap((bone) => {
      const parts = partsOf(foot, bone);
      return parts.length === 0 ? [] : parts.map((part) => zoneRegion(bone, partAxis(foot, bone), part));
    }),
    ...here(patches).map((rule) => patchRegion(foot, rule, axisOf)),
    ...here(stretches).map((rule) => stretchRegion(foot, rule)),
    ...here(watersheds).map((rule) =>
      'zone' in rule.across
        ? bandInZone(foot, rule, partsOf(foot, rule.bone), rule.across.zone, partAxis(foot, rule.bone))
        : bandAlong(foot, rule, rule.across.axis),
    ),
  ];
});
