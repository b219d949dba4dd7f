/**
 * Named parts of a bone: stretches that tile it along one way through it, told on the reference foot by content/anatomy/regions.yaml
 * and found on the foot at hand. A long bone is divided along its own axis; a tarsal along a way that is told for it. Borders come
 * from joint surfaces, from a share of the bone, or from the trade's rule of squares (`end`), never from a fixed distance. The fifth
 * metatarsal has zones of its own (zones.ts). Stations in mm.
 */
import { type BoneId, idOf, type JointId, type RegionId } from '../ids';
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { boneAxis, meshOf, stationOf } from './bone-axis';
import { keptByBone } from './kept';
import { meshCentroid, verticesOf } from './mesh';
import { carried } from './places';
import type { PartRule } from './region-schema';
import type { BoneAxis, Foot, Zone } from './types';
import { endLength, facetSpan, jointOf, zoneAt, zonesOf } from './zones';

const ruleOf = (foot: Foot, bone: BoneId): PartRule | undefined =>
  foot.reference.regions.parts.find((rule) => rule.bone === bone);

/** A way through a bone as its axis: from where the bone begins to where it ends along it. `dorsal` is as near to up as goes. */
const axisAlong = (foot: Foot, bone: BoneId, told: Vec3): BoneAxis => {
  const axis = normalize(carried(foot, bone, told));
  const up: Vec3 = [0, 1, 0];
  const dorsal = normalize(subtract(up, scale(axis, dot(up, axis))));
  const lateral = foot.side === 'right' ? cross(axis, dorsal) : cross(dorsal, axis);
  const mesh = meshOf(foot, bone);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of verticesOf(mesh)) {
    const s = dot(p, axis);
    low = Math.min(low, s);
    high = Math.max(high, s);
  }
  const middle = meshCentroid(mesh);
  return {
    origin: add(middle, scale(axis, low - dot(middle, axis))),
    axis,
    dorsal,
    lateral,
    lengthMm: high - low,
  };
};

/** The way along which a bone's parts lie and breaks are placed: told for it, or its long axis. */
export const partAxis = keptByBone((foot, bone): BoneAxis => {
  const along = ruleOf(foot, bone)?.along;
  return along === undefined ? boneAxis(foot, bone) : axisAlong(foot, bone, along);
});

/** Where an end of a part lies along `partAxis`. */
export const borderAt = (foot: Foot, bone: BoneId, axis: BoneAxis, to: PartRule['parts'][number]['to']): number => {
  if (typeof to === 'number') return to * axis.lengthMm;
  if ('end' in to) {
    const wide = endLength(foot, bone, axis, to.end);
    return to.end === 'near' ? wide : axis.lengthMm - wide;
  }
  const [near, far] = facetSpan(axis, jointOf(foot, idOf<JointId>(to.facet)));
  return to.edge === 'near' ? near : far;
};

/** The parts of a bone, in order along `partAxis`; none where the content names none. Throws RangeError when a border is out of order. */
export const partsOf = keptByBone((foot, bone): readonly Zone[] => {
  if (bone === 'metatarsal5') return zonesOf(foot);
  const rule = ruleOf(foot, bone);
  if (rule === undefined) return [];
  const axis = partAxis(foot, bone);
  let fromMm = 0;
  return rule.parts.map(({ id, to }, i) => {
    const toMm = i === rule.parts.length - 1 ? axis.lengthMm : borderAt(foot, bone, axis, to);
    if (!(toMm > fromMm)) throw new RangeError(`${id} would end at ${toMm} mm, before it begins at ${fromMm} mm`);
    const part = { region: idOf<RegionId>(id), fromMm, toMm };
    fromMm = toMm;
    return part;
  });
});

/**
 * The part in which a point of a bone lies, then those whose border is less than `nearMm` away along the bone. None where the bone
 * has no parts.
 */
export const partsNear = (foot: Foot, bone: BoneId, point: Vec3, nearMm: number): readonly RegionId[] => {
  const parts = partsOf(foot, bone);
  if (parts.length === 0) return [];
  const axis = partAxis(foot, bone);
  const s = Math.min(axis.lengthMm, Math.max(0, stationOf(axis, point)));
  const own = zoneAt(parts, s);
  const near = parts.filter(({ region, fromMm, toMm }) => region !== own && s > fromMm - nearMm && s < toMm + nearMm);
  return own === null ? [] : [own, ...near.map(({ region }) => region)];
};
