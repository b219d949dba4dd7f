/**
 * Frames a view: which margins the labels take, and the camera that fits what is to be seen between them. The margins that leave
 * the larger foot win; a narrow plate always labels top and bottom. Pure.
 */

import type { BoneId } from '../../ids';
import type { ViewId } from '../../session/types';
import type { PlateMesh } from '../draw/plate-mesh';
import type { LabelBox } from '../labels/layout';
import { type Camera, fitCamera, type Insets, type Size } from './camera';
import { anglesOf } from './views';

export interface LabelSpace {
  readonly widest: number;
  readonly tallest: number;
  readonly totalWidth: number;
}

export interface Framing {
  readonly camera: Camera;
  readonly mode: LabelBox['mode'];
}

/** Leader room between the labels and the foot. */
const CLEAR = 26;
const PAD = 12;
export const NARROW_PX = 760;

const insetsOf = (mode: LabelBox['mode'], space: LabelSpace, size: Size): Insets => {
  if (space.widest === 0) return { left: 20, right: 20, top: 20, bottom: 20 };
  if (mode === 'sides') {
    const column = Math.min(size.width / 4, space.widest + PAD + CLEAR);
    return { left: column, right: column, top: 16, bottom: 16 };
  }
  const row = Math.min(size.height / 4, space.tallest + PAD + CLEAR);
  return { left: 22, right: 22, top: row, bottom: row };
};

/** The vertices that a view must show, mirrored as drawn. `close` shows the bone in question and what surrounds it. */
const pointsOf = (mesh: PlateMesh, bone: BoneId | null, mirrored: boolean): Float32Array => {
  const range = mesh.ranges.find((r) => r.bone === bone);
  const points =
    range === undefined
      ? mesh.positions.slice()
      : mesh.positions.slice(3 * range.start, 3 * (range.start + range.count));
  if (mirrored) for (let i = 0; i < points.length; i += 3) points[i] = -(points[i] ?? 0);
  return points;
};

/** A close view leaves this share of the picture to the neighbours. */
const AROUND = 1.32;

export const frameView = (
  mesh: PlateMesh,
  view: ViewId,
  bone: BoneId | null,
  mirrored: boolean,
  size: Size,
  space: LabelSpace,
): Framing => {
  const close = view === 'close' && bone !== null;
  const points = pointsOf(mesh, close ? bone : null, mirrored);
  const angles = anglesOf(view, mirrored);
  const framed = (mode: LabelBox['mode']): Framing => {
    const camera = fitCamera(points, angles, size, insetsOf(mode, space, size));
    return { mode, camera: close ? { ...camera, mmPerPx: camera.mmPerPx * AROUND } : camera };
  };
  const ends = framed('ends');
  const rowHolds = space.totalWidth <= 1.8 * (size.width - 2 * PAD);
  if (size.width < NARROW_PX) return ends;
  const sides = framed('sides');
  return rowHolds && ends.camera.mmPerPx < sides.camera.mmPerPx ? ends : sides;
};
