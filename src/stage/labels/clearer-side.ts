/** Which margin a leader reaches over less bone: rays along both ways, a covered stretch counting as several clear ones. */
import type { Vec3 } from '../../units';
import { type Camera, rayAt, type Size } from '../camera/camera';
import { firstHit } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import type { Point } from '../types';
import type { LabelBox } from './layout';

const STEPS = 10;
const COVERED = 2.5;
/** A label changes its side only for a way that is clearer by this much, px: else it would hop to and fro with a turning foot. */
const LOYAL = 250;

export const clearerSide = (
  mesh: PlateMesh,
  camera: Camera,
  size: Size,
  mirrored: boolean,
  mode: LabelBox['mode'],
  at: Point,
  before: 'low' | 'high' | undefined,
): 'low' | 'high' => {
  const flip = (v: Vec3): Vec3 => (mirrored ? [-v[0], v[1], v[2]] : v);
  const cost = (to: Point): number => {
    const step = Math.hypot(to[0] - at[0], to[1] - at[1]) / STEPS;
    let sum = 0;
    for (let i = 1; i <= STEPS; i += 1) {
      const t = i / STEPS;
      const { from, along } = rayAt(camera, size, at[0] + (to[0] - at[0]) * t, at[1] + (to[1] - at[1]) * t);
      sum += firstHit(mesh, flip(from), flip(along)) === null ? step : step * COVERED;
    }
    return sum;
  };
  const [low, high]: [Point, Point] =
    mode === 'sides'
      ? [
          [0, at[1]],
          [size.width, at[1]],
        ]
      : [
          [at[0], 0],
          [at[0], size.height],
        ];
  const loyal = before === undefined ? 0 : before === 'low' ? LOYAL : -LOYAL;
  return cost(low) <= cost(high) + loyal ? 'low' : 'high';
};
