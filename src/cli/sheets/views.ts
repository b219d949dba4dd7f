/** From where a sheet looks: right and up on the page and towards the eye, as directions of the foot frame (a right foot). */
import type { Vec3 } from '../../units';

export interface View {
  readonly name: string;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly eye: Vec3;
}

/** A bone from its six sides. */
export const SIX: readonly View[] = [
  { name: 'medial', right: [0, 0, -1], up: [0, 1, 0], eye: [1, 0, 0] },
  { name: 'lateral', right: [0, 0, 1], up: [0, 1, 0], eye: [-1, 0, 0] },
  { name: 'dorsal', right: [-1, 0, 0], up: [0, 0, 1], eye: [0, 1, 0] },
  { name: 'plantar', right: [1, 0, 0], up: [0, 0, 1], eye: [0, -1, 0] },
  { name: 'front', right: [1, 0, 0], up: [0, 1, 0], eye: [0, 0, 1] },
  { name: 'back', right: [-1, 0, 0], up: [0, 1, 0], eye: [0, 0, -1] },
];

const slanted = (side: 1 | -1): View => {
  const [c, s, h] = [Math.SQRT1_2, Math.SQRT1_2, Math.sin(0.4)];
  const flat = Math.cos(0.4);
  const eye: Vec3 = [side * c * flat, h, s * flat];
  const right: Vec3 = [s, 0, -side * c];
  // Up is across both: the eye looks down by 0.4 rad.
  const up: Vec3 = [-side * c * h, flat, -s * h];
  return { name: side === 1 ? 'inner front' : 'outer front', right: side === 1 ? right : [s, 0, c], up, eye };
};

/** The whole foot from eight sides. */
export const EIGHT: readonly View[] = [...SIX, slanted(1), slanted(-1)];
