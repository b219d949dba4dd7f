/** Values of the sliders of question 2 in words: read beside the slider and spoken with each step. */
import type { Say } from '../words';

/** Bounds of the sliders; the session admits a little more. kg, kg, N m/rad, deg. */
export const SLIDER_BOUNDS = {
  massKg: [30, 160],
  carriedKg: [0, 40],
  soleBending: [0, 40],
  tiltDeg: [-15, 15],
} as const;

/** From how many N m/rad a sole is called so. Names of ours: 20 is the step that the list of contributors calls a stiff sole. */
export const SOLES = [
  { from: 20, name: 'stiff' },
  { from: 8, name: 'firm' },
  { from: 1, name: 'soft' },
  { from: 0, name: 'bare' },
] as const;

const KMH_PER_MS = 3.6;

/** `numbers`: for a reader of the trade. */
export const soleText = (say: Say, bending: number, numbers: boolean): string => {
  const sole = say(`sole.${SOLES.find(({ from }) => bending >= from)?.name ?? 'bare'}`);
  return numbers ? say('whatIf.soleValue', { sole, bending }) : sole;
};

export const tiltText = (say: Say, deg: number): string =>
  deg === 0 ? say('whatIf.level') : say(deg > 0 ? 'whatIf.tiltOuter' : 'whatIf.tiltInner', { degrees: Math.abs(deg) });

export const speedText = (say: Say, metresASecond: number): string =>
  say('whatIf.speedValue', { speed: metresASecond.toFixed(1), kmh: Math.round(KMH_PER_MS * metresASecond) });
