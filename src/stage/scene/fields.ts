/**
 * What a texture along a bone says, as numbers over stations: FIELD_LENGTH texels from the proximal to the distal end, two rows
 * of four. Zones: (code). Blood: (ink share). Stress: (a, b, c, outside) and (middle dorsal, middle lateral). Pure.
 */
import type { Zone } from '../../anatomy/types';
import { FIELD_LENGTH } from '../draw/materials';
import type { FeedingTable, StationTable } from '../types';

const table = (lengthMm: number, at: (sMm: number) => readonly (readonly number[])[]): Float32Array => {
  const out = new Float32Array(FIELD_LENGTH * 8);
  for (let i = 0; i < FIELD_LENGTH; i += 1) {
    const rows = at((i / (FIELD_LENGTH - 1)) * lengthMm);
    for (const [r, row] of rows.entries()) out.set(row, (r * FIELD_LENGTH + i) * 4);
  }
  return out;
};

/** 1 `/`, 2 crossed, 3 `\`, in the order of the zones; the rest of the bone keeps its shade (4). */
export const zoneField = (zones: readonly Zone[], lengthMm: number): Float32Array =>
  table(lengthMm, (s) => {
    const i = zones.findIndex(({ fromMm, toMm }) => s >= fromMm && s < toMm);
    return [[i >= 0 && i < 3 ? i + 1 : 4]];
  });

/** Ink share of the four feeding states: a word each, never a flow. Steps wide enough to be told apart in black. */
export const FEEDING_SHARES = { asBefore: 0.34, mainCut: 0.2, borderOnly: 0.09, none: 0 } as const;

/** A border is computed, never measured: a narrow bare line, so that it never passes for a part that nothing feeds. */
const BORDER_HALF_MM = 1;

export const bloodField = (feeding: FeedingTable, lengthMm: number): Float32Array =>
  table(lengthMm, (s) => {
    const { borders, parts } = feeding;
    if (borders.some(({ sMm }) => Math.abs(s - sMm) < BORDER_HALF_MM)) return [[0]];
    const part = parts.find(({ fromMm, toMm }) => s >= fromMm && s <= toMm);
    return [[part === undefined ? 0 : FEEDING_SHARES[part.state]]];
  });

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;

export const stressField = (stations: StationTable, lengthMm: number): Float32Array =>
  table(lengthMm, (s) => {
    const list = stations.stations;
    const next = list.findIndex(({ sMm }) => sMm >= s);
    const after = list[next === -1 ? list.length - 1 : next];
    const before = list[Math.max(0, (next === -1 ? list.length : next) - 1)];
    // Beyond the first or last station there is no beam.
    if (after === undefined || before === undefined || next <= 0) return [[0, 0, 0, 1]];
    const span = after.sMm - before.sMm;
    const t = span === 0 ? 0 : (s - before.sMm) / span;
    const field = [0, 1, 2].map((k) => mix(before.field[k] ?? 0, after.field[k] ?? 0, t));
    // As the sampler of src/mechanics has it: no beam between two stations of which one has none.
    const outside = before.outsideBeamTheory || after.outsideBeamTheory;
    const middle = [0, 1].map((k) => mix(before.section.centroidMm[k] ?? 0, after.section.centroidMm[k] ?? 0, t));
    return [[...field, outside ? 1 : 0], middle];
  });
