/**
 * The calcaneus as it lies on a lateral film of a standing foot, found on the bone itself: the line along its plantar border, and
 * which way is forwards and up when that line rises as it does in a usual foot. So "highest" and "lowest" mean the same places of
 * the bone however it is turned. mm, foot frame.
 */
import { add, normalize, radians, scale, subtract, type Vec3 } from '../../units';
import type { Foot } from '../types';
import type { Segment } from './angle';
import { between, outlineOf, rulerOn, squareTo } from './outline';

/** Parts of the bone's length on which the ruler along the plantar border rests. */
const TUBEROSITY_TO = 0.45;
const FRONT_FROM = 0.55;

/**
 * The tangent to the plantar border: a ruler laid from below on the tuberosity and on the front of the bone. Of four ways to draw
 * this line on films it was the most repeatable (the study is named beside the measure in content/anatomy/angles.yaml).
 */
export const plantarLine = (foot: Foot): Segment => {
  const outline = outlineOf(foot, 'calcaneus');
  return rulerOn(between(outline, 0, TUBEROSITY_TO), between(outline, FRONT_FROM, 1), scale(outline.up, -1));
};

/** By how much the plantar line rises in a usual standing foot, deg: only says which points are highest. */
const USUAL_PITCH = 20;

interface Uprights {
  readonly forwards: Vec3;
  readonly up: Vec3;
}

/** Forwards and up of the bone at its usual pitch. */
export const usualStance = (foot: Foot): Uprights => {
  const line = plantarLine(foot);
  const [, y, z] = subtract(line[1], line[0]);
  const [flat, square] = [normalize([0, y, z]), squareTo(line, outlineOf(foot, 'calcaneus').up)];
  const [c, s] = [Math.cos(radians(USUAL_PITCH)), Math.sin(radians(USUAL_PITCH))];
  return { forwards: subtract(scale(flat, c), scale(square, s)), up: add(scale(flat, s), scale(square, c)) };
};
