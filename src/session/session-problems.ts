/** What can go wrong in a session besides the file itself, as data, so that every string a person can see can be listed. */
import type { Problem } from './types';

export const SESSION_PROBLEM_WORDS = {
  explainFailed: {
    what: 'The explanation could not be made for this case: {detail}',
    remedy: 'Undo the last change, or open the case again. Your case is not lost.',
  },
  bandsFailed: {
    what: 'How sure the numbers of the load are could not be worked out: {detail}',
    remedy: 'Read them as more and less only, or reload the page. Your case is not lost.',
  },
  notALoad: {
    what: 'The model has not been tried with this load, speed, sole or ground.',
    remedy: 'Choose a value within the ends of the slider.',
  },
  notAFoot: {
    what: 'A foot of this shape or size has not been checked.',
    remedy: 'Choose measures within the ends of the sliders.',
  },
  newerElsewhere: {
    what: 'A newer version was saved in another tab, so this tab no longer saves by itself.',
    remedy: 'Download the case here if you want to keep it, then close one of the tabs and reload the other.',
  },
  notKept: {
    what: 'This browser could not save the case: {detail}',
    remedy: 'Download the case to keep it.',
  },
  notRestored: {
    what: 'What this browser had saved could not be read: {detail}',
    remedy: 'Open the case from a file if you have one.',
  },
  notWiped: {
    what: 'Not everything could be removed from this device: {detail}',
    remedy: 'Close the other tabs of this page and press Finish again, or clear the site data in the browser.',
  },
} as const satisfies Record<string, { readonly what: string; readonly remedy: string }>;

export const sessionProblem = (code: keyof typeof SESSION_PROBLEM_WORDS, detail = ''): Problem => {
  const { what, remedy } = SESSION_PROBLEM_WORDS[code];
  return { what: what.replace('{detail}', detail), where: null, remedy };
};

export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
