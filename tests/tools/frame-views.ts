/** Places, axes and lengths of a frame's members, for tests that check balance by hand. */
import type { FrameModel } from '../../src/mechanics/frame';
import { localAxes } from '../../src/mechanics/frame/axes';
import { add, length, scale, subtract, type Vec3 } from '../../src/units';
import { LONG } from './long';

/** Random frames a property is tried on; the long run draws new ones each time. */
export const RUNS = LONG ? { numRuns: 1000 } : { numRuns: 60, seed: 1 };
export const EVERYTHING = { springs: true, distributed: true, ground: true };

export const placeOf = (model: FrameModel, id: string): Vec3 =>
  model.nodes.find((node) => node.id === id)?.xyz ?? [0, 0, 0];
export const three = (row: readonly number[] | undefined, from: number): Vec3 => [
  row?.[from] ?? Number.NaN,
  row?.[from + 1] ?? Number.NaN,
  row?.[from + 2] ?? Number.NaN,
];
export const axesOf = (model: FrameModel, m: FrameModel['members'][number]): readonly Vec3[] =>
  localAxes(placeOf(model, String(m.i)), placeOf(model, String(m.j)), m.orientation) ?? [];
export const lengthOf = (model: FrameModel, m: FrameModel['members'][number]): number =>
  length(subtract(placeOf(model, String(m.j)), placeOf(model, String(m.i))));
export const toGlobal = (axes: readonly Vec3[], local: Vec3): Vec3 =>
  axes.reduce<Vec3>((sum, axis, i) => add(sum, scale(axis, local[i] ?? 0)), [0, 0, 0]);
