/** Where on the foot a label may point: places that are seen, inside the picture, and best where no label can lie. Pure. */
import type { BoneId } from '../../ids';
import { dot, subtract, type Vec3 } from '../../units';
import type { Size } from '../camera/camera';
import { firstSeen } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import { anchorsOf } from '../labels/anchors';
import type { Point } from '../types';
import type { LabelledInput } from './labelled';
import type { LabelText } from './labels';

/** Dots keep this far from the edge of the picture. */
const INSIDE = 6;
/** And this far from the rim of their bone, where the bone is large enough. */
const CLEAR_PX = 7;

type Spot = NonNullable<LabelText['spot']>;

/** No bone hides it. */
export const spotIsSeen = ({ at, outMm }: Spot, mesh: PlateMesh, eye: Vec3): boolean => {
  const hit = firstSeen(mesh, at, eye);
  return hit === null || dot(subtract(hit.point, at), eye) < outMm / 2;
};

/** It stands before that point: a leader that ended there would name the wrong thing. */
const covers = ({ at, outMm }: Spot, p: Vec3, eye: Vec3): boolean => {
  const off = subtract(p, at);
  const depth = dot(off, eye);
  return depth < 0 && Math.sqrt(Math.max(0, dot(off, off) - depth * depth)) < outMm / 2;
};

export interface Area {
  readonly from: Point;
  readonly to: Point;
}

export const insideOf = ({ width, height }: Size): Area => ({
  from: [INSIDE, INSIDE],
  to: [width - INSIDE, height - INSIDE],
});

const isWithin = ([x, y]: Point, { from, to }: Area): boolean =>
  x >= from[0] && y >= from[1] && x <= to[0] && y <= to[1];

export const within = (a: Area, b: Area): Area => ({
  from: [Math.max(a.from[0], b.from[0]), Math.max(a.from[1], b.from[1])],
  to: [Math.min(a.to[0], b.to[0]), Math.min(a.to[1], b.to[1])],
});

export const isInside = (p: Point, size: Size): boolean => isWithin(p, insideOf(size));

/** Where a label may point on the foot now; `hidden` when it is out of sight and yet stays. */
export const targetsOf = (
  input: LabelledInput,
  label: LabelText,
  area: Area,
): { readonly points: readonly Vec3[]; readonly hidden: boolean } => {
  const { mesh, eye, about, lasting, before, labels } = input;
  if (label.spot !== null) return { points: spotIsSeen(label.spot, mesh, eye) ? [label.spot.at] : [], hidden: false };
  const bone = label.id as BoneId;
  const range = mesh.ranges.find((each) => each.bone === bone);
  if (range === undefined) return { points: [], hidden: false };
  const spots = labels.flatMap(({ spot }) => spot ?? []);
  // The place that keeps clear of zones and break is better than where the leader was.
  const [middle, previous] = about?.bone === bone ? [about.point, undefined] : [range.centre, before.anchors.get(bone)];
  const seenIn = (part: Area): readonly Vec3[] => {
    const suits = (p: Vec3): boolean =>
      isWithin(input.toScreen(p), part) && !spots.some((spot) => covers(spot, p, eye));
    return anchorsOf(mesh, range, eye, { previous, middle, clearMm: CLEAR_PX * input.camera.mmPerPx, suits });
  };
  // Where no label can lie, if the bone is seen there at all.
  const open = seenIn(area);
  const points = open.length > 0 ? open : seenIn(insideOf(input.size));
  if (points.length > 0 || !lasting.includes(bone)) return { points, hidden: false };
  return { points: [range.centre], hidden: true };
};
