/** The shipped foot with what the frame needs of it, and the figures and load cases of content/ as told: made once a file. */
import { readContent } from '../../src/cli/read-content';
import type { Figure } from '../../src/content';
import { heldWithinOf } from '../../src/explain/loads';
import type { BandedCase, CaseBands, FrameBands } from '../../src/mechanics/foot/bands';
import { type LoadedFoot, loadedFoot } from '../../src/mechanics/foot/case-draw';
import { CHECK_CASES, type CheckCase } from '../../src/mechanics/foot/checks-trial';
import { type Band, drawsOf } from '../../src/mechanics/foot/draws';
import type { FrameDraw } from '../../src/mechanics/foot/held-draws';
import { CASE_FIGURES, type LoadCase } from '../../src/mechanics/foot/load-case';
import { FRAME_FIGURES, type FrameFigures } from '../../src/mechanics/foot/parameter-names';
import { shape } from './built-foot';
import { fineModelFoot } from './model-foot';

/** The fine foot with the sections that are shipped with it. */
export const modelLoadedFoot = (): LoadedFoot => loadedFoot(shape, fineModelFoot(), true);

const content = readContent();

const bandOf = ({ value, low, high }: Figure): Band => ({ value, low: low ?? value, high: high ?? value });

export const FRAME_BANDS = Object.fromEntries(
  FRAME_FIGURES.map((name) => {
    const record = content.frame.find((each) => each.id === name);
    if (!record) throw new Error(`content/frame-figures.yaml lacks ${name}`);
    return [name, bandOf(record.figure)];
  }),
) as FrameBands;

export const HELD_WITHIN = heldWithinOf(content);

/** Draws that nothing is held against, the told values first: for tests that only need some. */
export const freeFrames = (count: number, seed: number): readonly FrameDraw[] =>
  drawsOf(FRAME_FIGURES, FRAME_BANDS, count, seed);

export const TOLD = Object.fromEntries(FRAME_FIGURES.map((name) => [name, FRAME_BANDS[name].value])) as FrameFigures;

export const BANDED_CASES: readonly BandedCase[] = content.activities.map(({ id, pose, contact, figures }) => ({
  id,
  pose,
  contact,
  figures: Object.fromEntries(CASE_FIGURES.map((name) => [name, bandOf(figures[name])])) as CaseBands,
}));

const toldCase = ({ figures, ...rest }: BandedCase): LoadCase => ({
  ...rest,
  figures: Object.fromEntries(
    CASE_FIGURES.map((name) => [name, figures[name].value]),
  ) as unknown as LoadCase['figures'],
});

export const TOLD_CASES: readonly LoadCase[] = BANDED_CASES.map(toldCase);

export const bandedCase = (id: string): BandedCase => {
  const found = BANDED_CASES.find((each) => each.id === id);
  if (!found) throw new Error(`content/activities.yaml lacks ${id}`);
  return found;
};
export const toldCaseOf = (id: string): LoadCase => toldCase(bandedCase(id));

export const CHECK_BANDS = Object.fromEntries(CHECK_CASES.map((id) => [id, bandedCase(id)])) as Record<
  CheckCase,
  BandedCase
>;
export const CHECK_TOLD = Object.fromEntries(CHECK_CASES.map((id) => [id, toldCaseOf(id)])) as Record<
  CheckCase,
  LoadCase
>;

export const PERSON = { massKg: 75, carriedKg: 0, soleBending: 0 } as const;
