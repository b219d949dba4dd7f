/** What can be wrong with a case once it meets content and foot. The words are data, so that every string can be listed. */

export const CHECK_PROBLEM_WORDS = {
  unknownInjury: {
    what: 'Claim {id} names an injury that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  unknownMechanism: {
    what: 'Claim {id} names a way of breaking that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  unknownOption: {
    what: 'Claim {id} names a treatment that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  unknownActivity: {
    what: 'Claim {id} names an activity that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  unknownFactor: {
    what: 'Claim {id} names a risk factor that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  unknownRegion: {
    what: 'Claim {id} names a place that this foot does not have: {found}.',
    remedy: 'Use one of: {known}.',
  },
  regionOnOtherBone: {
    what: 'Claim {id} puts the break in {found}, which is part of {regionBone}, but the case speaks of {bone}.',
    remedy: 'Correct the place or the bone.',
  },
  treatedBeforeInjury: {
    what: 'Claim {id} dates a treatment to {found}, before the injury on {injured}.',
    remedy: 'Correct one of the two dates.',
  },
  seenBeforeInjury: {
    what: 'Claim {id} dates a follow-up to {found}, before the injury on {injured}.',
    remedy: 'Correct one of the two dates.',
  },
  endedBeforeInjury: {
    what: 'Claim {id} dates how it ended to {found}, before the injury on {injured}.',
    remedy: 'Correct one of the two dates.',
  },
  forecastUnknownInjury: {
    what: 'Kept forecast {nth} is about an injury that is not in the content: {found}.',
    remedy: 'Use one of: {known}. Or drop the forecast.',
  },
  forecastUnknownOption: {
    what: 'Kept forecast {nth} is about a treatment that is not in the content: {found}.',
    remedy: 'Use one of: {known}. Or drop the forecast.',
  },
  unknownStage: {
    what: 'The protocol of the clinic names a stage that is not in the content: {found}.',
    remedy: 'Use one of: {known}.',
  },
  breakOutsideBone: {
    what: 'Claim {id} puts the break {mm} mm from the near end, but {bone} is {lengthMm} mm long in this foot.',
    remedy: 'Give a distance from 0 to {lengthMm} mm, measured from the end near the heel. Is it in another unit?',
  },
} as const satisfies Record<string, { readonly what: string; readonly remedy: string }>;

export type CheckProblemCode = keyof typeof CHECK_PROBLEM_WORDS;

export interface CheckProblem {
  readonly code: CheckProblemCode;
  readonly what: string;
  /** Path in the case file, such as `claims[3].value.mm`. */
  readonly where: string;
  readonly remedy: string;
}

const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (_, key: string) => (Object.hasOwn(values, key) ? (values[key] ?? '') : ''));

export const checkProblem = (
  code: CheckProblemCode,
  where: string,
  values: Readonly<Record<string, string>>,
): CheckProblem => {
  const words = CHECK_PROBLEM_WORDS[code];
  return { code, what: fill(words.what, values), where, remedy: fill(words.remedy, values) };
};
