/** Question 4: what can be done? Options side by side, what each does to the bone, and what was found, trial by trial. */
import type { InjuryId, OptionId } from '../ids';
import { compute, find, givenOf, message } from './build';
import { classInputs } from './case-classes';
import { manyFindings, notTold } from './claims';
import { comparisonsOf, evidenceOf, figuresOf, markOf, studiesOf, trialsOf } from './figures';
import type { MessageOf } from './messages';
import { currentTreatment, tagOf } from './resolve';
import type { Situation } from './situation';
import { supportsAndScrews } from './support-findings';
import { textFinding } from './texts';
import type { Finding, Shown } from './types';
import { usualOptions } from './usual-options';

export const optionsUnknown = compute('options.unknown', () => message('optionsUnknown', {}));
export const optionsUsual = compute('options.usual', ({ content }, inputs: { readonly injury: InjuryId }) => {
  const injury = content.injuries.find((i) => i.id === inputs.injury);
  if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
  return message('optionsUsual', { injury: injury.id, options: injury.options });
});

export const optionNotUsual = compute('options.notUsual', (_, inputs: MessageOf<'optionNotUsual'>['args']) =>
  message('optionNotUsual', inputs),
);

export const trialArms = compute(
  'options.trial',
  ({ content }, inputs: { readonly injury: InjuryId; readonly trial: string }) => {
    const arms = studiesOf(content, inputs.injury).filter((s) => s.trial === inputs.trial);
    const [first] = arms;
    if (first === undefined) throw new RangeError(`no trial ${inputs.trial} for ${inputs.injury}`);
    return message('trialArms', { trial: inputs.trial, design: first.design, arms: arms.map(figuresOf) });
  },
);

/** Comparisons of operated against not operated people: those where the arms are apart, and those where they are not. */
export const studiesDisagree = compute('options.disagree', ({ content }, inputs: { readonly injury: InjuryId }) => {
  const all = comparisonsOf(content, inputs.injury);
  return message('studiesDisagree', { apart: all.filter((c) => c.apart), alike: all.filter((c) => !c.apart) });
});

/**
 * A screw is in the bone only when a claim says that it was put there; an option that is merely listed shows none. Drawn only where
 * the content knows a screw for the canal of this bone: plates and screws across joints have no picture.
 */
const screwIn = (s: Situation, option: OptionId): readonly Shown[] => {
  const { content } = s.context;
  const bone = s.known.bone?.value;
  const operative = content.options.find((o) => o.id === option)?.kind === 'operative';
  return operative && bone !== undefined && content.fixations.some((f) => f.bone === bone)
    ? [{ kind: 'screw', bone }]
    : [];
};

const treatmentFindings = (s: Situation): readonly Finding[] => {
  const { context, facts } = s;
  const inForce = currentTreatment(facts);
  const told = manyFindings(context, 'options', facts.treatments).map((finding, i) => {
    const claim = facts.treatments[i];
    const shown = claim === undefined ? finding : { ...finding, shows: screwIn(s, claim.value.option) };
    return claim === inForce ? { ...shown, depth: 'sentence' as const } : shown;
  });
  const denied = manyFindings(
    context,
    'options',
    facts.ruledOut.filter((c) => c.subject === 'treatment'),
  ).map((f) => ({ ...f, id: `${f.id}.ruledOut` as Finding['id'] }));
  const newestFirst = told.slice().reverse();
  return [
    ...newestFirst.filter(({ depth }) => depth === 'sentence'),
    ...newestFirst.filter(({ depth }) => depth !== 'sentence'),
    ...denied,
  ];
};

const trialFindings = (s: Situation, injury: InjuryId): readonly Finding[] => {
  const { context } = s;
  const whatIf = s.injury?.whatIf ?? false;
  const { classes } = classInputs(s);
  // Of another class than that of the case, where both are known: other people.
  const ofCase = studiesOf(context.content, injury).filter(
    (row) => classes === undefined || row.classes === undefined || row.classes.some((each) => classes.includes(each)),
  );
  const found = [...trialsOf(ofCase)].map(([trial, arms]) =>
    find(context, 'options', {
      id: `trial.${trial}`,
      depth: 'more',
      compute: trialArms,
      inputs: { injury, trial },
      evidence: arms.map((a) => ({ source: a.source, mark: markOf(a) })),
      whatIf,
    }),
  );
  const all = comparisonsOf(context.content, injury);
  if (all.some((c) => c.apart) && all.some((c) => !c.apart))
    found.unshift(
      find(context, 'options', {
        id: 'disagree',
        depth: 'more',
        compute: studiesDisagree,
        inputs: { injury },
        evidence: evidenceOf(all.flatMap((c) => c.arms)),
        models: ['comparisonOfShares'],
        whatIf,
      }),
    );
  return found;
};

export const optionsFindings = (s: Situation, bands: boolean): readonly Finding[] => {
  const { context } = s;
  const found: Finding[] = [...treatmentFindings(s)];
  const treated = found.some((f) => f.depth === 'sentence');
  const depth = treated ? 'more' : 'sentence';
  if (s.injury === null) {
    found.push(
      find(context, 'options', { id: 'usual', depth, compute: optionsUnknown, inputs: {}, unsure: 'notStated' }),
    );
  } else {
    const injury = s.injury.value;
    const options = s.injuryRecord?.options ?? [];
    const whatIf = s.injury.whatIf;
    const { option: own } = s.known;
    // Said beside the treatment: what follows of weights, weeks and steps is of others.
    const { options: usual, ofClass } = usualOptions(s);
    if (own !== null && s.injuryRecord !== null && !usual.includes(own.value)) {
      const evidence = ofClass === null ? undefined : s.injuryRecord.classification[ofClass]?.usual?.evidence;
      const claims = [tagOf(s.injury), tagOf(own)];
      const given = s.given === 'contradiction' ? 'contradiction' : givenOf(...claims);
      found.push(
        find(context, 'options', {
          id: 'notUsual',
          depth: 'claim',
          compute: optionNotUsual,
          inputs: { given, injury, option: own.value, instead: ofClass === null ? [] : usual },
          evidence: evidence === undefined ? [] : [evidence],
          claims,
          whatIf,
        }),
      );
    }
    found.push(
      find(context, 'options', {
        id: 'usual',
        depth,
        compute: optionsUsual,
        inputs: { injury },
        evidence: context.content.options.filter((o) => options.includes(o.id)).map((o) => o.evidence),
        claims: [tagOf(s.injury)],
        whatIf,
      }),
    );
    for (const option of options) {
      for (const part of ['what', 'does'] as const)
        found.push(
          ...textFinding(context, 'options', {
            id: `${option}.${part}`,
            at: { kind: 'option', option, part },
            whatIf,
          }),
        );
      context.content.options
        .find((o) => o.id === option)
        ?.burdens.forEach((_, index) => {
          found.push(
            ...textFinding(context, 'options', {
              id: `${option}.burden.${index + 1}`,
              at: { kind: 'optionBurden', option, index },
              whatIf,
            }),
          );
        });
    }
    found.push(...trialFindings(s, injury));
  }
  found.push(...supportsAndScrews(s, bands));
  if (!treated)
    found.push(
      find(context, 'options', {
        id: 'treatment',
        depth: 'claim',
        compute: notTold,
        inputs: { subject: 'treatment' as const },
        unsure: 'notStated',
      }),
    );
  return found;
};
