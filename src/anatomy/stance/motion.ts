/** Rigid motions: a rotation (three rows), then a shift. mm. */
import { add, cross, dot, normalize, radians, scale, subtract, type Vec3 } from '../../units';

export interface Motion {
  readonly rows: readonly [Vec3, Vec3, Vec3];
  readonly shift: Vec3;
}

export const STILL: Motion = {
  rows: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  shift: [0, 0, 0],
};

export const moveDirection = (m: Motion, d: Vec3): Vec3 => [dot(m.rows[0], d), dot(m.rows[1], d), dot(m.rows[2], d)];
export const movePoint = (m: Motion, p: Vec3): Vec3 => add(moveDirection(m, p), m.shift);
export const shifted = (m: Motion, by: Vec3): Motion => ({ rows: m.rows, shift: add(m.shift, by) });

const rotate = (d: Vec3, axis: Vec3, angle: number): Vec3 =>
  add(
    add(scale(d, Math.cos(angle)), scale(cross(axis, d), Math.sin(angle))),
    scale(axis, dot(axis, d) * (1 - Math.cos(angle))),
  );

/** A right-handed turn about an axis through a pivot. */
export const turning = (pivot: Vec3, axis: Vec3, degrees: number): Motion => {
  const a = normalize(axis);
  const angle = radians(degrees);
  const columns = STILL.rows.map((d) => rotate(d, a, angle));
  const row = (k: 0 | 1 | 2): Vec3 => [columns[0]?.[k] ?? 0, columns[1]?.[k] ?? 0, columns[2]?.[k] ?? 0];
  const motion: Motion = { rows: [row(0), row(1), row(2)], shift: [0, 0, 0] };
  return { ...motion, shift: subtract(pivot, movePoint(motion, pivot)) };
};

/** First `first`, then `second`. */
export const after = (second: Motion, first: Motion): Motion => {
  const column = (k: 0 | 1 | 2): Vec3 => moveDirection(second, [first.rows[0][k], first.rows[1][k], first.rows[2][k]]);
  const [a, b, c] = [column(0), column(1), column(2)];
  return {
    rows: [
      [a[0], b[0], c[0]],
      [a[1], b[1], c[1]],
      [a[2], b[2], c[2]],
    ],
    shift: movePoint(second, first.shift),
  };
};

export const inverse = (m: Motion): Motion => {
  const column = (k: 0 | 1 | 2): Vec3 => [m.rows[0][k], m.rows[1][k], m.rows[2][k]];
  const turned: Motion = { rows: [column(0), column(1), column(2)], shift: [0, 0, 0] };
  return { ...turned, shift: scale(moveDirection(turned, m.shift), -1) };
};

/** Angle of the whole rotation, rad. */
export const angleOf = (m: Motion): number =>
  Math.acos(Math.min(1, Math.max(-1, (m.rows[0][0] + m.rows[1][1] + m.rows[2][2] - 1) / 2)));
