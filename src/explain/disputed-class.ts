/**
 * Claims of one measure that differ, where that measure decides the class by which studies counted their people: then no weeks are this
 * person's yet, and question 5 leads with the dispute, each value with the class that it would make, and what would settle it.
 */
import type { Injury } from '../content/schema';
import type { FilmMeasure } from '../ids';
import { compute, find, message } from './build';
import { countedClasses } from './case-classes';
import { measuredIn, toldClassesOf } from './classes';
import type { ClaimTag, MessageOf } from './messages';
import type { Situation } from './situation';
import type { Finding } from './types';
import { otherInjuriesOf } from './unfit-measures';
import { disputedMeasures } from './where-gap';

export const classDisputed = compute('back.classDisputed', (_, inputs: MessageOf<'classDisputed'>['args']) =>
  message('classDisputed', inputs),
);

const asksFor = (classes: readonly Injury['classification'][number][], what: FilmMeasure): boolean =>
  classes.some(({ rules = [] }) => rules.some((rule) => rule.by === 'measure' && rule.what === what));

/** None where no measure that decides is disputed. */
export const disputedClassFindings = (s: Situation): readonly Finding[] => {
  const { context, facts, injury, injuryRecord: record } = s;
  if (injury === null || record === null) return [];
  const counted = countedClasses(context.content, record);
  const disputed = [...disputedMeasures(facts)].find(
    ([what]) => asksFor(counted, what) && otherInjuriesOf(s, what) === null,
  );
  if (disputed === undefined) return [];
  const [what, claims] = disputed;
  const region = s.region === null ? null : { value: s.region.value, tag: s.breakTag };
  const values = claims.map((claim) => {
    const alone = [...facts.measures.filter(({ value }) => value.what !== what), claim];
    const made = toldClassesOf(record, measuredIn({ ...facts, measures: alone }, region));
    const tag: ClaimTag = { status: claim.status, claims: [claim.id] };
    return {
      claim: tag,
      of: { subject: 'measure', value: claim.value } as const,
      index: made.find(({ index }) => counted.some((one) => one === record.classification[index]))?.index ?? null,
    };
  });
  // Values that all make one class dispute none.
  if (new Set(values.map(({ index }) => index)).size === 1 && values[0]?.index !== null) return [];
  return [
    find(context, 'back', {
      id: 'classDisputed',
      depth: 'sentence',
      compute: classDisputed,
      inputs: { injury: injury.value, what, values },
      evidence: record.settles === undefined ? [] : [record.settles.evidence],
      claims: values.map(({ claim }) => claim),
      unsure: 'contradiction',
      whatIf: injury.whatIf,
    }),
  ];
};
