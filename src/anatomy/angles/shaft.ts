/**
 * The axis of a shaft as it is drawn on a film: through the middles of the shaft, between base and head. Here: the least-squares
 * line through the area centroids of sections across the bone's long axis, from 20 to 80 % of its length. mm, foot frame.
 */
import type { BoneId } from '../../ids';
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import type { Foot } from '../types';
import type { Segment } from './angle';
import { sectionMiddle } from './section-middle';

const FROM = 0.2;
const TO = 0.8;
const SECTIONS = 25;

/** From the proximal to the distal end of the bone. */
export const shaftLine = (foot: Foot, bone: BoneId): Segment => {
  const mesh = meshOf(foot, bone);
  const { origin, axis, lengthMm } = boneAxis(foot, bone);
  let middle: Vec3 = [0, 0, 0];
  let tilt: Vec3 = [0, 0, 0];
  let spread = 0;
  for (let i = 0; i < SECTIONS; i++) {
    const off = (i / (SECTIONS - 1) - 0.5) * (TO - FROM) * lengthMm;
    const { at } = sectionMiddle(mesh, add(origin, scale(axis, lengthMm / 2 + off)), axis);
    middle = add(middle, scale(at, 1 / SECTIONS));
    tilt = add(tilt, scale(at, off));
    spread += off * off;
  }
  // The slope of the regression on the station: its part along the axis is 1, so it only leaves the axis sideways.
  const along = normalize(scale(tilt, 1 / spread));
  const end = (station: number): Vec3 => {
    const s = station - dot(subtract(middle, origin), axis);
    return add(middle, scale(along, s / dot(along, axis)));
  };
  return [end(0), end(lengthMm)];
};
