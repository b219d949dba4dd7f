/**
 * One straight prismatic element with shear deformation, in local axes: x from i to j, y and z across. Twelve motions and forces,
 * ux uy uz rx ry rz at i, then at j. Iz resists bending in the x-y plane, Iy in the x-z plane. mm, N, MPa, rad, or any other
 * consistent units.
 *
 * An element has six ways to deform: stretch, twist, and for each plane a bow (one end turns against the other) and a sway (the sum of
 * what both ends turn against the chord). Their forces are tension N, torque T, the even moment and half the length times the shear.
 * Bow and sway of a straight element know nothing of each other, and of a bent one with its ends close together neither drowns the
 * other, as the two ends' turns would. End forces made from these six are in balance whatever the rounding. Source: Przemieniecki, Theory of Matrix Structural Analysis (beam element with shear, from memory).
 */

export interface Prism {
  readonly areaMm2: number;
  readonly iyMm4: number;
  readonly izMm4: number;
  readonly jMm4: number;
  /** Shear areas for shear along y and z; absent: no shear deformation. */
  readonly shearYMm2?: number | undefined;
  readonly shearZMm2?: number | undefined;
  readonly youngMPa: number;
  readonly shearMPa: number;
}

export const MODES = 6;
export const END_DOFS = 12;

/** Bending in one plane: the forces of a bow and of a sway. */
const bending = (ei: number, shear: number | undefined, shearMPa: number, lengthMm: number): [number, number] => {
  const phi = shear === undefined ? 0 : (12 * ei) / (shearMPa * shear * lengthMm * lengthMm);
  const bow = ei / lengthMm;
  return [bow, (3 * bow) / (1 + phi)];
};

/** Forces of the six ways to deform: stretch, twist, bow and sway about z, bow and sway about y; 6 x 6 row-major. */
export const modeStiffness = (prism: Prism, lengthMm: number): Float64Array => {
  const k = new Float64Array(MODES * MODES);
  const { youngMPa, shearMPa } = prism;
  k[0] = (youngMPa * prism.areaMm2) / lengthMm;
  k[7] = (shearMPa * prism.jMm4) / lengthMm;
  [k[14], k[21]] = bending(youngMPa * prism.izMm4, prism.shearYMm2, shearMPa, lengthMm);
  [k[28], k[35]] = bending(youngMPa * prism.iyMm4, prism.shearZMm2, shearMPa, lengthMm);
  return k;
};

/** How the twelve end motions deform a member with a chord of this length, 6 x 12 row-major; turned over: end forces from the six. */
export const modesOf = (lengthMm: number): Float64Array => {
  const b = new Float64Array(MODES * END_DOFS);
  const set = (mode: number, dof: number, value: number): void => {
    b[mode * END_DOFS + dof] = value;
  };
  const per = 2 / lengthMm;
  set(0, 0, -1);
  set(0, 6, 1);
  set(1, 3, -1);
  set(1, 9, 1);
  set(2, 5, -1);
  set(2, 11, 1);
  set(3, 5, 1);
  set(3, 11, 1);
  set(3, 1, per);
  set(3, 7, -per);
  set(4, 4, -1);
  set(4, 10, 1);
  set(5, 4, 1);
  set(5, 10, 1);
  set(5, 2, -per);
  set(5, 8, per);
  return b;
};

/** `modes`^T `stiffness` `modes`: 12 x 12 row-major, symmetric. `modes` is 6 x 12, in whatever axes the result is wanted. */
export const endStiffness = (stiffness: Float64Array, modes: Float64Array): Float64Array => {
  const half = new Float64Array(MODES * END_DOFS);
  for (let a = 0; a < MODES; a++)
    for (let b = 0; b < MODES; b++) {
      const k = stiffness[a * MODES + b] as number;
      if (k === 0) continue;
      for (let j = 0; j < END_DOFS; j++)
        half[a * END_DOFS + j] = (half[a * END_DOFS + j] as number) + k * (modes[b * END_DOFS + j] as number);
    }
  const full = new Float64Array(END_DOFS * END_DOFS);
  for (let a = 0; a < MODES; a++)
    for (let i = 0; i < END_DOFS; i++) {
      const m = modes[a * END_DOFS + i] as number;
      if (m === 0) continue;
      for (let j = 0; j < END_DOFS; j++)
        full[i * END_DOFS + j] = (full[i * END_DOFS + j] as number) + m * (half[a * END_DOFS + j] as number);
    }
  return full;
};

/** 12 x 12 row-major stiffness of the element in local axes. */
export const localStiffness = (prism: Prism, lengthMm: number): Float64Array =>
  endStiffness(modeStiffness(prism, lengthMm), modesOf(lengthMm));
