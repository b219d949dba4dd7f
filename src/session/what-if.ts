/** Overrides: put together, checked as the case would be checked if they were claims, compared. */
import { FORM_BOUNDS, H_BOUNDS_MM } from '../anatomy/parameters';
import type { FootForm } from '../anatomy/types';
import { type CaseFile, type CaseProblem, type ClaimableKey, claimFromWhatIf, type Said, withClaim } from '../cases';
import type { WhatIf } from '../explain/types';
import { sessionProblem } from './session-problems';
import type { Problem } from './types';

const within = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;

const CLAIMABLE: readonly ClaimableKey[] = ['place', 'massKg', 'footShape', 'activity'];
const GUESSED: Said = { status: 'inferred', source: { kind: 'generalKnowledge' } };

export const without = (whatIf: WhatIf, ...keys: readonly (keyof WhatIf)[]): WhatIf =>
  Object.fromEntries(Object.entries(whatIf).filter(([key]) => !keys.some((dropped) => dropped === key)));

/** The arch can be tried by its name and by its measure: what is tried last holds, and the other goes. */
const withOneArch = (whatIf: WhatIf, patch: Partial<WhatIf>): WhatIf => {
  if (patch.foot?.arch !== undefined) return without(whatIf, 'footShape');
  if (patch.footShape === undefined || whatIf.foot === undefined) return whatIf;
  const { arch: _, ...foot } = whatIf.foot;
  return Object.keys(foot).length === 0 ? without(whatIf, 'foot') : { ...whatIf, foot };
};

/** Keys set to undefined are dropped. */
export const patched = (whatIf: WhatIf, patch: Partial<WhatIf>): WhatIf =>
  Object.fromEntries(
    Object.entries(withOneArch({ ...whatIf, ...patch }, patch)).filter(([, value]) => value !== undefined),
  );

export const sameData = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** What the sliders of question 2 admit: kg, N m/rad, m/s, deg. */
export const LOAD_BOUNDS = {
  carriedKg: [0, 60],
  soleBending: [0, 60],
  speed: [1, 8],
  tiltDeg: [-20, 20],
} as const;

/** The first thing wrong with new overrides, found by asking what would be wrong with a case that claimed them. */
export const problemOf = (
  file: CaseFile,
  whatIf: WhatIf,
  check: (file: CaseFile) => readonly (CaseProblem | Problem)[],
): Problem | null => {
  for (const [name, bounds] of Object.entries(LOAD_BOUNDS)) {
    const value = whatIf[name as keyof typeof LOAD_BOUNDS];
    if (value !== undefined && !within(value, bounds)) return sessionProblem('notALoad');
  }
  const { heelToSecondHeadMm: h, ...form } = whatIf.foot ?? {};
  if (h !== undefined && !within(h, H_BOUNDS_MM)) return sessionProblem('notAFoot');
  for (const [measure, value] of Object.entries(form)) {
    if (!within(value, FORM_BOUNDS[measure as keyof FootForm])) return sessionProblem('notAFoot');
  }
  for (const key of CLAIMABLE) {
    const others = { ...file, claims: file.claims.filter(({ subject }) => subject !== key) };
    const claim = claimFromWhatIf(others, whatIf, key, GUESSED);
    const problem = claim === null ? undefined : check(withClaim(others, claim))[0];
    if (problem !== undefined) return { what: problem.what, where: `what-if ${key}`, remedy: problem.remedy };
  }
  return null;
};
