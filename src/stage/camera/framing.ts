/**
 * Frames a view: which margins the labels take, and the camera that fits what is to be seen between them. The margins that leave
 * the larger foot win; a narrow plate always labels top and bottom. Pure.
 */

import type { Mesh } from '../../anatomy/types';
import type { BoneId } from '../../ids';
import type { ViewId } from '../../session/types';
import type { Vec3 } from '../../units';
import type { PlateMesh } from '../draw/plate-mesh';
import type { Showing } from '../engine';
import type { LabelBox } from '../labels/layout';
import { sizeOf } from '../overlay/labels';
import { basisOf, type Camera, fitCamera, type Insets, pan, project, type Size } from './camera';
import { anglesOf } from './views';

export interface LabelSpace {
  readonly widest: number;
  readonly tallest: number;
  readonly totalWidth: number;
}

export const labelSpace = ({ labels, fonts, measure }: Pick<Showing, 'labels' | 'fonts' | 'measure'>): LabelSpace => {
  const sizes = labels.map((label) => sizeOf(label, fonts, measure));
  return {
    widest: Math.max(0, ...sizes.map(({ width }) => width)),
    tallest: Math.max(0, ...sizes.map(({ height }) => height)),
    totalWidth: sizes.reduce((sum, { width }) => sum + width + 8, 0),
  };
};

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

/** The vertices that a view must show, mirrored as drawn: the bone in question, or all bones within the foot's outline. */
const pointsOf = (shown: Shown, bone: BoneId | null, mirrored: boolean): Float32Array => {
  const range = shown.mesh.ranges.find((r) => r.bone === bone);
  const points =
    range === undefined
      ? shown.whole.slice()
      : shown.mesh.positions.slice(3 * range.start, 3 * (range.start + range.count));
  if (mirrored) for (let i = 0; i < points.length; i += 3) points[i] = -(points[i] ?? 0);
  return points;
};

/** What can be framed. `whole`: bones and as much of the outline as is foot and not leg, 3 numbers a point. */
export interface Shown {
  readonly mesh: PlateMesh;
  readonly whole: Float32Array;
}

export const shownOf = (mesh: PlateMesh, outline: Mesh): Shown => {
  let top = 0;
  for (let i = 1; i < mesh.positions.length; i += 3) top = Math.max(top, mesh.positions[i] ?? 0);
  const around: number[] = [];
  for (let i = 0; i < outline.positions.length; i += 3) {
    const [x = 0, y = 0, z = 0] = outline.positions.slice(i, i + 3);
    if (y <= top) around.push(x, y, z);
  }
  return { mesh, whole: Float32Array.from([...mesh.positions, ...around]) };
};

/** What is drawn beside the bones, such as the lines of a measure, is to be seen as well. */
export const shownWith = (shown: Shown, more: readonly Vec3[]): Shown =>
  more.length === 0 ? shown : { ...shown, whole: Float32Array.from([...shown.whole, ...more.flat()]) };

/** A close view leaves this share of the picture to the neighbours. */
const AROUND = 1.5;
/** From near another side than the usual one, a small bone alone would leave nobody knowing where in the foot they are. */
const LEAST_NEAR_MM = 115;
/** What lies above and behind a bone of the outer edge tells more than the paper below it. */
const LOWER = 0.1;

export const frameView = (
  shown: Shown,
  view: ViewId,
  bone: BoneId | null,
  mirrored: boolean,
  size: Size,
  space: LabelSpace,
  near = view === 'close',
): Framing => {
  const close = near && bone !== null;
  const points = pointsOf(shown, close ? bone : null, mirrored);
  const angles = anglesOf(view, mirrored);
  const framed = (mode: LabelBox['mode']): Framing => {
    const camera = fitCamera(points, angles, size, insetsOf(mode, space, size));
    if (!close) return { mode, camera };
    const least = view === 'close' ? 0 : LEAST_NEAR_MM / Math.min(size.width, size.height);
    const wide = { ...camera, mmPerPx: Math.max(camera.mmPerPx * AROUND, least) };
    return { mode, camera: pan(wide, 0, LOWER * size.height) };
  };
  const ends = framed('ends');
  const rowHolds = space.totalWidth <= 1.8 * (size.width - 2 * PAD);
  if (size.width < NARROW_PX) return ends;
  const sides = framed('sides');
  return rowHolds && ends.camera.mmPerPx < sides.camera.mmPerPx ? ends : sides;
};

/** The whole foot from where a hand has turned it. */
export const frameAsTurned = (
  shown: Shown,
  { azimuthRad, elevationRad }: Camera,
  mirrored: boolean,
  size: Size,
  mode: LabelBox['mode'],
  space: LabelSpace,
): Camera =>
  fitCamera(pointsOf(shown, null, mirrored), { azimuthRad, elevationRad }, size, insetsOf(mode, space, size));

/** All that a view of the whole foot shows lies on the plate. */
export const isWhole = (shown: Shown, camera: Camera, mirrored: boolean, size: Size): boolean => {
  const points = pointsOf(shown, null, mirrored);
  const basis = basisOf(camera);
  for (let i = 0; i + 2 < points.length; i += 3) {
    const [x, y] = project(camera, basis, size, [points[i] ?? 0, points[i + 1] ?? 0, points[i + 2] ?? 0]);
    if (x < 0 || y < 0 || x > size.width || y > size.height) return false;
  }
  return true;
};

/** A foot drawn larger than this share of its place stands under the labels; drawn smaller than that, it looks lost. */
const LARGER = 1.07;
const SMALLER = 0.87;
/** And it stands beside its place when it is off by this share of the picture. */
const BESIDE = 0.08;

/** A camera that no longer shows well what another would fit. Both look from the same side. */
export const isOff = (camera: Camera, fitted: Camera, size: Size): boolean => {
  const drawn = fitted.mmPerPx / camera.mmPerPx;
  const [x, y] = project(camera, basisOf(camera), size, fitted.target);
  const beside = Math.hypot(x - size.width / 2, y - size.height / 2) / Math.min(size.width, size.height);
  return drawn > LARGER || drawn < SMALLER || beside > BESIDE;
};
