/** Study rows of the content as figures that a message can carry, and the comparisons that they allow. */
import type { Content, Evidence, Mark, Study } from '../content/schema';
import type { InjuryId, OptionId } from '../ids';
import type { ArmEvent, ArmFigures, Comparison } from './messages';
import { differenceOf, type Share, wilson } from './shares';

/** A figure that reached us second-hand is no better than weak. */
export const markOf = (study: Pick<Study, 'mark' | 'read'>): Mark =>
  study.read === 'secondary' && study.mark === 'seen' ? 'weak' : study.mark;

const eventOf = ({ lowHighPercent: _, ...event }: Study['events'][number]): ArmEvent => event;

export const figuresOf = (study: Study): ArmFigures => {
  const [low, high] = study.time?.rangeWeeks ?? [];
  return {
    study: study.id,
    source: study.source,
    mark: markOf(study),
    option: study.option,
    ...(study.alsoOptions === undefined ? {} : { alsoOptions: study.alsoOptions }),
    population: study.population,
    level: study.level,
    ...(study.levelAssumed === undefined ? {} : { levelAssumed: study.levelAssumed }),
    n: study.n,
    nUnit: study.nUnit,
    time:
      study.time === null
        ? null
        : {
            endpoint: study.time.endpoint,
            centre: study.time.centre,
            ...(study.time.since === 'first treatment' ? {} : { since: study.time.since }),
            weeks: {
              value: study.time.centreWeeks,
              unit: 'week',
              ...(low === undefined || high === undefined ? {} : { lowHigh: [low, high] as const }),
            },
          },
    event: study.event === null ? null : eventOf(study.event),
    events: study.events.map(eventOf),
  };
};

export const evidenceOf = (arms: readonly ArmFigures[]): readonly Evidence[] =>
  arms.map((a) => ({ source: a.source, mark: a.mark }));

export const studiesOf = (content: Content, injury: InjuryId): readonly Study[] =>
  content.studies.filter((s) => s.injuries.includes(injury));

/** Who is treated how is drawn by lot, or chosen and followed, or only counted: what says more about the treatment comes first. */
const DESIGN_ORDER: readonly Study['design'][] = ['randomised', 'cohort', 'register', 'series', 'pooled'];

/** Arms by trial, trials by design and then in the order of the content. */
export const trialsOf = (studies: readonly Study[]): ReadonlyMap<string, readonly Study[]> => {
  const trials = new Map<string, Study[]>();
  for (const study of studies) trials.set(study.trial, [...(trials.get(study.trial) ?? []), study]);
  const rank = ([, arms]: readonly [string, readonly Study[]]): number =>
    Math.min(...arms.map(({ design }) => DESIGN_ORDER.indexOf(design)));
  return new Map([...trials].sort((a, b) => rank(a) - rank(b)));
};

const shareOf = (study: Study): Share | null => {
  const { event } = study;
  if (event === null) return null;
  if (event.count !== null && event.of !== null) return wilson(event.count, event.of);
  if (event.percent === null) return null;
  const [low, high] = event.lowHighPercent ?? [];
  if (low !== undefined && high !== undefined) return { value: event.percent / 100, low: low / 100, high: high / 100 };
  const of = event.of ?? study.n;
  return of === null ? null : wilson((event.percent / 100) * of, of);
};

const rounded = (share: number): number => Math.round(share * 1000) / 1000;

/** Within each trial, a non-operative arm against an operative one with the same event counted. */
export const comparisonsOf = (content: Content, injury: InjuryId): readonly Comparison[] => {
  const operative = (option: OptionId): boolean => content.options.find((o) => o.id === option)?.kind === 'operative';
  return [...trialsOf(studiesOf(content, injury))].flatMap(([trial, arms]) =>
    arms
      .filter((a) => !operative(a.option))
      .flatMap((a) =>
        arms
          .filter((b) => operative(b.option) && a.event !== null && b.event?.what === a.event.what)
          .flatMap((b): Comparison[] => {
            const [first, second] = [shareOf(a), shareOf(b)];
            if (first === null || second === null || a.event === null) return [];
            const d = differenceOf(first, second);
            return [
              {
                trial,
                design: a.design,
                what: a.event.what,
                arms: [figuresOf(a), figuresOf(b)],
                difference: { value: rounded(d.value), unit: 'share', lowHigh: [rounded(d.low), rounded(d.high)] },
                apart: d.low > 0 || d.high < 0,
              },
            ];
          }),
      ),
  );
};
