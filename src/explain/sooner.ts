/**
 * Studies whose people were back at sport before the week in which running usually begins here. Both are told, so that the difference
 * is told as well: else the shorter figure is read as leave.
 */
import { type Endpoint, idOf, type StageId } from '../ids';
import { type RangeInputs, rangeFor } from './back-computes';
import { compute, find, message } from './build';
import type { Context } from './context';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';
import type { Finding } from './types';

/** These ask for a foot that runs. */
const RUNNING: readonly Endpoint[] = ['sport', 'match play', 'performance'];
const RUN = idOf<StageId>('run');

const weeksOf = (context: Context, inputs: RangeInputs): { readonly low: number; readonly run: number } | null => {
  const injury = context.content.injuries.find(({ id }) => id === inputs.injury);
  const run = injury && stagesOf(injury, inputs.option).find(({ stage }) => stage === RUN)?.weeksFrom;
  const low = rangeFor(context, inputs)?.weeks.lowHigh?.[0];
  return run == null || low === undefined ? null : { low, run };
};

export const backSooner = compute('back.sooner', (context, inputs: RangeInputs) => {
  const found = weeksOf(context, inputs);
  if (found === null) throw new RangeError(`no weeks of ${inputs.endpoint}, or of running, for ${inputs.injury}`);
  return message('backSooner', {
    stage: RUN,
    endpoint: inputs.endpoint,
    weeks: { value: found.low, unit: 'week' },
    from: { value: found.run, unit: 'week' },
  });
});

export const soonerFindings = (s: Situation, ranges: readonly RangeInputs[]): readonly Finding[] =>
  ranges
    .filter(({ endpoint }) => RUNNING.includes(endpoint))
    .flatMap((inputs) => {
      const found = weeksOf(s.context, inputs);
      if (found === null || found.low >= found.run) return [];
      return [
        find(s.context, 'back', {
          id: `sooner.${inputs.endpoint.replace(' ', '-')}`,
          depth: 'more',
          compute: backSooner,
          inputs,
          evidence: (rangeFor(s.context, inputs)?.arms ?? []).map(({ source, mark }) => ({ source, mark })),
          models: ['spreadOfStudies'],
          whatIf: s.injury?.whatIf ?? false,
        }),
      ];
    });
