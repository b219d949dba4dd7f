/**
 * The frame's answer as a screen needs it: told now, at every step of a slider, and the last bands of the same bone in the same
 * task. Bands come a second or more after what is told; until then those before stay, marked as such.
 */
import { useState } from 'react';
import type { ExplainedLoads, Explanation } from '../../explain/types';
import type { StationTable } from '../../mechanics/types';
import { useSession } from '../context';

export interface Loads {
  readonly explanation: Explanation;
  readonly loads: ExplainedLoads;
  /** Of the bone in question: its stations now and its place in the list of five. */
  readonly table: StationTable;
  readonly index: number;
  /** The explanation whose bands are shown; null before the first ones. */
  readonly banded: Explanation | null;
  /** Whether these bands are of what is told now. */
  readonly current: boolean;
}

/** Explanation and loads of one moment, when a frame of the foot speaks for the bone in question. */
const spokenFor = (
  explanation: Explanation | null,
): Pick<Loads, 'explanation' | 'loads' | 'table' | 'index'> | null => {
  const loads = explanation?.loads ?? null;
  if (explanation === null || loads === null) return null;
  const index = loads.told.tables.findIndex(({ bone }) => bone === explanation.bone);
  const table = loads.told.tables[index];
  return table === undefined ? null : { explanation, loads, table, index };
};

const sameAsked = (a: Explanation, b: Explanation): boolean =>
  a.caseId === b.caseId && a.bone === b.bone && a.loads?.activity === b.loads?.activity;

/** `needs`: what counts as banded. Contributors and checks come after the bands of the ratio. */
export const useLoads = (needs: 'bands' | 'contributors' = 'bands'): Loads | null => {
  const explanation = useSession((state) => state.explanation);
  const [kept, keep] = useState<Explanation | null>(null);
  const now = spokenFor(explanation);
  const banded = now !== null && now.loads[needs] !== null ? now.explanation : null;
  if (banded !== null && banded !== kept) keep(banded);
  if (now === null) return null;
  const shown = banded ?? (kept !== null && sameAsked(kept, now.explanation) ? kept : null);
  return { ...now, banded: shown, current: banded !== null };
};
