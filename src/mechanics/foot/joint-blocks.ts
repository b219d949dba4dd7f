/**
 * What a joint adds to the frame's stiffness: 12 x 12 row-major, its two nodes. Which way it pushes follows from the pose alone, so
 * that a draw of the figures only weighs blocks that were made once. mm, N, rad.
 */
import { cross, type Vec3 } from '../../units';

export const NONE: Vec3 = [0, 0, 0];

/** How one direction of a place moves with its node: translation d, rotation r x d. */
export const rowAt = (direction: Vec3, from: Vec3): readonly [Vec3, Vec3] => [direction, cross(from, direction)];

/** Stiffness s along one direction between two places, or of a turn about it. */
export const addDirection = (
  block: Float64Array,
  a: readonly [Vec3, Vec3],
  b: readonly [Vec3, Vec3],
  s: number,
): void => {
  if (s === 0) return;
  const row = new Float64Array(12);
  for (let i = 0; i < 3; i++) {
    row[i] = -(a[0][i] as number);
    row[3 + i] = -(a[1][i] as number);
    row[6 + i] = b[0][i] as number;
    row[9 + i] = b[1][i] as number;
  }
  for (let i = 0; i < 12; i++)
    for (let j = 0; j < 12; j++)
      block[i * 12 + j] = (block[i * 12 + j] as number) + s * (row[i] as number) * (row[j] as number);
};

/** One unit of stiffness along these directions, at levers from the two nodes. */
export const unitBlock = (directions: readonly Vec3[], fromA: Vec3, fromB: Vec3): Float64Array => {
  const block = new Float64Array(144);
  for (const d of directions) addDirection(block, rowAt(d, fromA), rowAt(d, fromB), 1);
  return block;
};

export interface Weighed {
  readonly alongBlock: Float64Array;
  readonly acrossBlock: Float64Array;
  /** N/mm. */
  readonly along: number;
  readonly across: number;
  /** N mm/rad about X, Y and Z. */
  readonly turning: Vec3;
}

export const springBlock = ({ alongBlock, acrossBlock, along, across, turning }: Weighed): Float64Array => {
  const block = new Float64Array(144);
  for (let i = 0; i < 144; i++) block[i] = along * (alongBlock[i] as number) + across * (acrossBlock[i] as number);
  for (let i = 0; i < 3; i++) {
    const [a, b, k] = [3 + i, 9 + i, turning[i] as number];
    block[13 * a] = (block[13 * a] as number) + k;
    block[13 * b] = (block[13 * b] as number) + k;
    block[12 * a + b] = (block[12 * a + b] as number) - k;
    block[12 * b + a] = (block[12 * b + a] as number) - k;
  }
  return block;
};
