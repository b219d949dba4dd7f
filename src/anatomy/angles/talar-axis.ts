/**
 * The three lines that films draw for the talus; only the talus decides them. mm, foot frame.
 * From the side: the line that halves the angle between the tangents to the dorsal and the plantar border, each laid on the back half
 * of the bone and on the head. Of six ways to draw it this one was the most repeatable (the study is named beside the measure in
 * content/anatomy/angles.yaml).
 * From above: from the centre of the body to the centre of the head (a convention of the measured table), and the way the head looks.
 */
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { meshCentroid } from '../mesh';
import type { Foot } from '../types';
import type { Segment } from './angle';
import { type Look, lookOf } from './looks';
import { between, outlineOf, rulerOn } from './outline';
import { patchesOf } from './patches';
import { blockMiddle } from './section-middle';

/** Ends of the part behind and beginning of the head for the tangents, as shares of the bone's length in the view. */
const BACK_TO = 0.5;
const HEAD_FROM = 0.75;

/** Unit direction and middle of a line, as the lateral view shows them. */
const flatLine = ([a, b]: Segment): { along: Vec3; middle: Vec3 } => {
  const flat = ([, y, z]: Vec3): Vec3 => [0, y, z];
  return { along: normalize(flat(subtract(b, a))), middle: flat(scale(add(a, b), 0.5)) };
};

/** Lateral view: half-way between the two tangents, from back to front of the bone, at the depth of its middle. */
export const talarAxisLateral = (foot: Foot): Segment => {
  const outline = outlineOf(foot, 'talus');
  const [back, head] = [between(outline, 0, BACK_TO), between(outline, HEAD_FROM, 1)];
  const dorsal = flatLine(rulerOn(back, head, outline.up));
  const plantar = flatLine(rulerOn(back, head, scale(outline.up, -1)));
  const along = normalize(add(dorsal.along, plantar.along));
  const middle = scale(add(dorsal.middle, plantar.middle), 0.5);
  const [depth] = meshCentroid(meshOf(foot, 'talus'));
  const end = (station: number): Vec3 => {
    const [, y, z] = add(middle, scale(along, (station - dot(middle, outline.along)) / dot(along, outline.along)));
    return [depth, y, z];
  };
  return [end(outline.reach[0]), end(outline.reach[1])];
};

/** The body is the bone between these shares of its length: behind the neck, without the posterior process. */
const BODY = [0.1, 0.55] as const;
/** The head begins at the first share and counts fully from the second, so that no triangle falls in or out at once. */
const HEAD = [0.65, 0.8] as const;

/** Centre of the front of the head, and the way it looks. */
export const talarHead = (foot: Foot): Look => {
  const { origin, axis, lengthMm } = boneAxis(foot, 'talus');
  const front = patchesOf(meshOf(foot, 'talus')).map((p) => {
    const share = dot(subtract(p.at, origin), axis) / lengthMm;
    return { ...p, area: p.area * Math.min(1, Math.max(0, (share - HEAD[0]) / (HEAD[1] - HEAD[0]))) };
  });
  return lookOf(front, axis);
};

/** From the centre of the body to the centre of the head. */
export const bodyToHead = (foot: Foot): Segment => {
  const axis = boneAxis(foot, 'talus');
  const body = blockMiddle(meshOf(foot, 'talus'), axis, BODY[0] * axis.lengthMm, BODY[1] * axis.lengthMm);
  return [body, talarHead(foot).at];
};
