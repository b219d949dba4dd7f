/**
 * Stages and reviews to take along: one arrangement for a list in weeks and for a calendar, so that the two can't disagree. A review
 * stands where a usual stage ends: there somebody has to look whether the next may open (common practice). From the case alone.
 */
import type { Content, Injury, Stage } from '../content/schema';
import { criteriaIn, optionsInQuestion } from '../explain/in-question';
import type { MessageOf } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';
import type { OptionId, Reader } from '../ids';
import type { IsoDate } from '../units';
import { fill, namesFor, sourceName } from '../wording';
import { demoLineOf, draftLineOf, whatIfLineOf } from './frame-lines';
import { TELLING_PHRASES as P } from './phrases';

export interface PlanEntry {
  readonly kind: 'stage' | 'review';
  /** The same for the same stage or review of a case, whatever the words. */
  readonly key: string;
  readonly fromWeek: number | null;
  /** Null: open, or a single day. */
  readonly toWeek: number | null;
  readonly from: IsoDate | null;
  /** The first day that no longer belongs to it; null: only the first is known. */
  readonly until: IsoDate | null;
  /** "Week 2 to 6". */
  readonly when: string;
  readonly name: string;
  /** The name with where it belongs and its weeks, for a calendar that holds other things too. */
  readonly short: string;
  readonly lines: readonly string[];
}

export interface Plan {
  readonly entries: readonly PlanEntry[];
  /** What stands on every one of them. */
  readonly cautions: readonly string[];
}

type StageFinding = Finding & { readonly message: MessageOf<'stageUsual'> };
const isStage = (finding: Finding): finding is StageFinding => finding.message.id === 'stageUsual';

/** The weeks that a plan goes by: the clinic's own where it set any, else the usual ones. */
const planned = ({ message: { args } }: StageFinding) => {
  const { own, weeks, dates, openEnded } = args;
  if (own !== null) return { range: own.weeks.lowHigh ?? null, dates: own.dates, openEnded: false, isOwn: true };
  return { range: weeks?.lowHigh ?? null, dates, openEnded, isOwn: false };
};

const number = (week: number): string => String(Math.round(week * 10) / 10);

/** Whose plan it is: what opens a stage differs by treatment. */
interface Told {
  readonly content: Content;
  readonly inQuestion: readonly OptionId[];
  readonly kind: Injury['kind'] | null;
  readonly reader: Reader;
}

const opensLines = (stages: readonly (Stage | undefined)[], { inQuestion, kind, reader }: Told): readonly string[] => {
  const texts = (stage: Stage): readonly string[] =>
    criteriaIn(stage, inQuestion, kind).flatMap((index) => stage.opensNext[index]?.what[reader] ?? []);
  const criteria = [...new Set(stages.flatMap((stage) => (stage === undefined ? [] : texts(stage))))];
  return criteria.length === 0 ? [] : [P['plan.opens'], ...criteria.map((text) => fill(P['plan.item'], { text }))];
};

const stageEntry = (told: Told, finding: StageFinding): PlanEntry => {
  const { content, reader } = told;
  const { stage: id } = finding.message.args;
  const stage = content.stages.find((each) => each.id === id);
  const { range, dates, openEnded, isOwn } = planned(finding);
  const [from, to] = range ?? [null, null];
  const when =
    from === null || to === null
      ? P['plan.noWeeks']
      : openEnded
        ? fill(P['plan.from'], { from: number(from) })
        : fill(P['plan.between'], { from: number(from), to: number(to) });
  const name = namesFor(content, reader).stage(id);
  const [source] = finding.basis.sources;
  const named = isOwn
    ? P['plan.own']
    : source?.source == null
      ? P['plan.practice']
      : sourceName(content, source.source);
  return {
    kind: 'stage',
    key: `stage ${id}`,
    fromWeek: from,
    toWeek: openEnded ? null : to,
    from: dates?.from ?? null,
    until: dates?.to ?? null,
    when,
    name,
    short: fill(P['plan.stage'], { stage: name, when: when.toLowerCase() }),
    lines: [
      ...(stage === undefined ? [] : [stage.what[reader]]),
      ...opensLines([stage], told),
      ...(range === null ? [] : [fill(P['plan.evidence'], { source: named })]),
    ],
  };
};

/** One review for all stages that end in the same week. */
const reviewEntries = (told: Told, findings: readonly StageFinding[]): readonly PlanEntry[] => {
  const ending = new Map<number, StageFinding[]>();
  for (const finding of findings) {
    const { of, number: place } = finding.message.args;
    const { range, openEnded } = planned(finding);
    const end = range?.[1];
    // After the last stage there is none to open.
    if (end === undefined || openEnded || place === of) continue;
    ending.set(end, [...(ending.get(end) ?? []), finding]);
  }
  return [...ending].map(([week, ends]) => {
    const when = fill(P['plan.at'], { week: number(week) });
    const stages = ends.map(({ message }) => told.content.stages.find((each) => each.id === message.args.stage));
    return {
      kind: 'review',
      key: `review ${number(week)}`,
      fromWeek: week,
      toWeek: null,
      from: ends.map((end) => planned(end).dates?.to ?? null).find((day) => day !== null) ?? null,
      until: null,
      when,
      name: P['plan.review'],
      short: fill(P['plan.reviewShort'], { when: when.toLowerCase() }),
      lines: [
        ...opensLines(stages, told),
        P[ends.every((end) => planned(end).isOwn) ? 'plan.reviewOwn' : 'plan.reviewWhy'],
      ],
    };
  });
};

/** By week, a stage before a review of the same week; what has no week comes last. */
const byWeek = (a: PlanEntry, b: PlanEntry): number => {
  const [x, y] = [a.fromWeek ?? Number.MAX_VALUE, b.fromWeek ?? Number.MAX_VALUE];
  return x - y || (a.kind === b.kind ? 0 : a.kind === 'review' ? -1 : 1);
};

export const planOf = (content: Content, explanation: Explanation, reader: Reader): Plan => {
  const findings = explanation.questions.flatMap((question) => question.findings.filter(isStage));
  const injury = content.injuries.find(({ id }) => id === explanation.injury);
  const told = {
    content,
    inQuestion: optionsInQuestion(explanation.option, injury),
    kind: injury?.kind ?? null,
    reader,
  };
  const lines = [P['plan.caution'], demoLineOf(explanation), whatIfLineOf(explanation), draftLineOf(explanation)];
  return {
    entries: [...findings.map((finding) => stageEntry(told, finding)), ...reviewEntries(told, findings)].sort(byWeek),
    cautions: lines.filter((line) => line !== null),
  };
};

/** The list in weeks: nothing in it says when. */
export const weekListText = ({ entries, cautions }: Plan): string =>
  [
    P['plan.title'],
    P['plan.weeks'],
    '',
    ...entries.flatMap(({ when, name, lines }) => [fill(P['plan.entry'], { when, what: name }), ...lines, '']),
    ...cautions,
    '',
  ].join('\n');
