/**
 * What can be wrong with a case file, in words for the person who opened it: what, where (a path such as
 * `claims[3].value.mm`), and what to do. The words are data, so that every string a person can see can be listed.
 */

export const CASE_PROBLEM_WORDS = {
  tooBig: {
    what: 'The file is {size} MB. A case file is never larger than {limit} MB.',
    remedy: 'Check that this is a case file and not a picture or a scan. Nothing was opened.',
  },
  empty: { what: 'The file is empty.', remedy: 'Choose another file.' },
  notJson: {
    what: 'The file cannot be read as JSON: {detail}.',
    remedy: 'Open a file that Underfoot wrote. If you edited it by hand, look at the place named here.',
  },
  repeatedKey: {
    what: 'The entry {key} stands twice in the same place (the second time in line {line}); only one can hold.',
    remedy: 'Remove one of the two. Nothing was opened.',
  },
  tooDeep: {
    what: 'The file is nested more than {limit} levels deep; no case is.',
    remedy: 'Open a file that Underfoot wrote.',
  },
  notACase: {
    what: 'The file is JSON, but it is not an Underfoot case.',
    remedy: 'Open a file whose name ends in .case.json.',
  },
  badVersion: {
    what: 'The version of the file is {found}; it should be a whole number from {from} to {to}.',
    remedy: 'Open a file that Underfoot wrote.',
  },
  newer: {
    what: 'The file was made by a newer Underfoot (its version is {found}, this one reads up to {to}).',
    remedy: 'Update this Underfoot, then open the file again. The file was not changed.',
  },
  unknownKey: {
    what: 'The file has an entry that a case does not have: {found}.',
    remedy: 'Remove this entry, or write what it says as a claim or a note.',
  },
  missing: { what: 'An entry is missing: {expected}.', remedy: 'Add it, or remove what needs it.' },
  badValue: { what: 'A value cannot be used: {detail}.', remedy: 'Correct the value at the place named here.' },
  wrongUnit: { what: 'A number is out of range: {detail}', remedy: '{guess}' },
  duplicateId: {
    what: 'Two claims have the id {id}.',
    remedy: 'Give one of them another id, such as {free}.',
  },
  futureDate: {
    what: 'Claim {id} speaks of {on}, a day to come (today is {today}); what is known has already happened.',
    remedy: 'Correct the date, or leave it out. If it is right, check the date of this device.',
  },
  futureForecast: {
    what: 'Kept forecast {nth} was made on {on}, a day to come (today is {today}).',
    remedy: 'Correct the date, or leave it out. If it is right, check the date of this device.',
  },
  futureCriterion: {
    what: 'The criterion {criterion} is said to be met on {on}, which is after today ({today}).',
    remedy: 'Take the tick away, or set the day of this device right.',
  },
  supersedesItself: {
    what: 'Claim {id} replaces itself.',
    remedy: 'Remove "supersedes", or name the claim that it replaces.',
  },
  supersedesUnknown: {
    what: 'Claim {id} replaces {other}, which is not in this case.',
    remedy: 'Remove "supersedes", or name a claim of this case.',
  },
  supersedesOtherSubject: {
    what: 'Claim {id} is about {subject} but replaces {other}, which is about {otherSubject}.',
    remedy: 'A claim can only replace a claim about the same subject.',
  },
  supersedesCycle: {
    what: 'Claims replace each other in a circle: {ids}.',
    remedy: 'Remove "supersedes" from the claim that is newest.',
  },
  inLineYetApart: {
    what: 'Claim {id} says that nothing has moved apart, and that it is {mm} mm apart.',
    remedy: 'Say that it is displaced, or leave the millimetres out.',
  },
  apartByNothing: {
    what: 'Claim {id} says that something has moved apart, and that it is 0 mm apart.',
    remedy: 'Say that it is not displaced, or leave the millimetres out.',
  },
  statusNotAllowed: {
    what: 'Claim {id} is marked {status}, but a source of kind {kind} can only make it {allowed}.',
    remedy: 'Change the status, or name the examination, imaging report or operation report that says so.',
  },
} as const satisfies Record<string, { readonly what: string; readonly remedy: string }>;

export type CaseProblemCode = keyof typeof CASE_PROBLEM_WORDS;

export interface CaseProblem {
  readonly code: CaseProblemCode;
  readonly what: string;
  /** Path in the file, such as `claims[3].value.mm`; null when it is about the file as a whole. */
  readonly where: string | null;
  readonly remedy: string;
}

const LONGEST_QUOTE = 60;
/** A value from the file, short enough to print. */
export const quoted = (value: unknown): string => {
  const said = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return said.length > LONGEST_QUOTE ? `${said.slice(0, LONGEST_QUOTE)}…` : said;
};

const fill = (template: string, values: Readonly<Record<string, string | number>>): string =>
  template.replace(/\{(\w+)\}/g, (_, key: string) => String(Object.hasOwn(values, key) ? values[key] : ''));

export const caseProblem = (
  code: CaseProblemCode,
  where: string | null,
  values: Readonly<Record<string, string | number>> = {},
): CaseProblem => {
  const words = CASE_PROBLEM_WORDS[code];
  return { code, what: fill(words.what, values), where, remedy: fill(words.remedy, values) };
};
