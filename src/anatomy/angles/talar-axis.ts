/**
 * The axis of the talus in a view: the line that halves the angle between the tangents to its two borders (dorsal and plantar, or
 * medial and lateral), each laid on the back half of the bone and on the head. Of six ways to draw it on lateral films this one was
 * the most repeatable (the study is named beside the measure in content/anatomy/angles.yaml). Only the talus decides it.
 */
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { meshOf } from '../bone-axis';
import { meshCentroid } from '../mesh';
import type { Foot } from '../types';
import { placed, type Segment, seen, type View } from './angle';
import { between, outlineOf, rulerOn } from './outline';

/** Ends of the part behind and beginning of the head, as shares of the bone's length in the view. */
const BACK_TO = 0.5;
const HEAD_FROM = 0.75;

/** Unit direction and middle of a line, as the view shows them. */
const flatLine = (view: View, [a, b]: Segment): { along: Vec3; middle: Vec3 } => {
  const flat = (p: Vec3): Vec3 => placed(view, { ...seen(view, p), depth: 0 });
  return { along: normalize(flat(subtract(b, a))), middle: flat(scale(add(a, b), 0.5)) };
};

/** Drawn from back to front of the bone, half-way between the two tangents, at the depth of the bone's middle. */
export const talarAxis = (foot: Foot, view: View): Segment => {
  const outline = outlineOf(foot, 'talus', view);
  const [back, head] = [between(outline, 0, BACK_TO), between(outline, HEAD_FROM, 1)];
  const [one, other] = [outline.side, scale(outline.side, -1)].map((side) =>
    flatLine(view, rulerOn(view, back, head, side)),
  ) as [ReturnType<typeof flatLine>, ReturnType<typeof flatLine>];
  const along = normalize(add(one.along, other.along));
  const middle = scale(add(one.middle, other.middle), 0.5);
  const { depth } = seen(view, meshCentroid(meshOf(foot, 'talus')));
  const end = (station: number): Vec3 => {
    const off = (station - dot(middle, outline.along)) / dot(along, outline.along);
    return placed(view, { ...seen(view, add(middle, scale(along, off))), depth });
  };
  return [end(outline.reach[0]), end(outline.reach[1])];
};
