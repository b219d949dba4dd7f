/** Texts of the content as findings: found by address, told with the evidence that stands beside them. */
import type { Content, Evidence, Tellings } from '../content/schema';
import type { QuestionId, Reader } from '../ids';
import { compute, find, message } from './build';
import type { ModelLimit } from './confidence';
import type { Context } from './context';
import type { ClaimTag, Given, MessageOf, TextAddress } from './messages';
import type { Finding, Shown } from './types';

export interface ContentText {
  readonly tellings: Tellings;
  readonly evidence: Evidence | null;
  /** Whom it is told, where the content says so. */
  readonly readers?: readonly Reader[] | undefined;
}

const inList = <T>(items: readonly T[], wanted: (item: T) => boolean): T | null => items.find(wanted) ?? null;

interface ToldRecord {
  readonly what: Tellings;
  readonly evidence: Evidence;
  readonly readers?: readonly Reader[] | undefined;
}
const toldIn = (record: ToldRecord | null | undefined): ContentText | null =>
  record == null ? null : { tellings: record.what, evidence: record.evidence, readers: record.readers };

/** The text at an address, null when the content has none there. */
export const textAt = (content: Content, at: TextAddress): ContentText | null => {
  switch (at.kind) {
    case 'bone': {
      const r = inList(content.bones, (b) => b.id === at.bone);
      return r && { tellings: r.what, evidence: null };
    }
    case 'supply':
      return toldIn(inList(content.boneSupplies, (b) => b.id === at.bone));
    case 'attachment': {
      const r = inList(content.attachments, (a) => a.id === at.attachment);
      return r && { tellings: r.what, evidence: r.evidence };
    }
    case 'mechanism': {
      const r = inList(content.mechanisms, (m) => m.id === at.mechanism);
      return r && { tellings: r.what, evidence: r.evidence };
    }
    case 'activity': {
      const r = inList(content.activities, (a) => a.id === at.activity);
      return r && { tellings: r.what, evidence: r.figures.total.evidence };
    }
    case 'injury': {
      const r = inList(content.injuries, (i) => i.id === at.injury);
      if (r === null) return null;
      if (at.part === 'heals') return { tellings: r.heals.what, evidence: r.heals.evidence };
      if (at.part === 'what') return { tellings: r.what, evidence: r.occursAt.evidence };
      return r.nameCaveat && { tellings: r.nameCaveat, evidence: null };
    }
    case 'injuryNotSeen':
      return toldIn(inList(content.injuries, (i) => i.id === at.injury)?.notSeen[at.index]);
    case 'tellApart': {
      const r = inList(content.injuries, (i) => i.id === at.injury)?.tellApart[at.index];
      return r === undefined ? null : { tellings: r.how, evidence: r.evidence };
    }
    case 'classification': {
      const r = inList(content.injuries, (i) => i.id === at.injury)?.classification[at.index];
      return r === undefined ? null : { tellings: r.criteria, evidence: r.evidence };
    }
    case 'option': {
      const r = inList(content.options, (o) => o.id === at.option);
      return r && { tellings: at.part === 'does' ? r.does : r.what, evidence: r.evidence };
    }
    case 'optionBurden':
      return toldIn(inList(content.options, (o) => o.id === at.option)?.burdens[at.index]);
    case 'optionTakes':
      return toldIn(inList(content.options, (o) => o.id === at.option)?.takes);
    case 'trouble':
      return toldIn(inList(content.troubles, (t) => t.id === at.trouble));
    case 'stage': {
      const r = inList(content.stages, (s) => s.id === at.stage);
      return r && { tellings: r.what, evidence: null };
    }
    case 'stageOpens':
    case 'stageSendsBack': {
      const stage = inList(content.stages, (s) => s.id === at.stage);
      const r = at.kind === 'stageOpens' ? stage?.opensNext[at.index] : stage?.sendsBack[at.index];
      return r === undefined ? null : { tellings: r.what, evidence: r.evidence };
    }
    case 'stageAids':
      return toldIn(inList(content.stages, (s) => s.id === at.stage)?.today.aids);
    case 'stageExercise':
      return toldIn(inList(content.stages, (s) => s.id === at.stage)?.today.exercises[at.index]);
    case 'weightPractice':
      return toldIn(inList(content.weightPractice, (p) => p.id === at.practice));
    case 'daily':
      return toldIn(inList(content.dailyLife, (d) => d.id === at.topic)?.says[at.index]);
    case 'returnTest':
      return toldIn(inList(content.returnTests, (t) => t.id === at.test));
    case 'returnNorm':
      return toldIn(inList(content.returnTests, (t) => t.id === at.test)?.norms[at.index]);
    case 'filmScore':
      return toldIn(inList(content.filmScores, (f) => f.id === at.score)?.says[at.index]);
    case 'cautionFigure':
      return toldIn(inList(content.cautions, (c) => c.id === at.caution)?.figures[at.index]);
    case 'factorAgainst':
      return toldIn(inList(content.factors, (f) => f.id === at.factor)?.against[at.index]);
    case 'factorLimit': {
      const r = inList(content.factors, (f) => f.id === at.factor);
      return r == null || r.limit === null ? null : { tellings: r.limit, evidence: r.evidence };
    }
    case 'factor':
      return toldIn(inList(content.factors, (f) => f.id === at.factor));
  }
};

export const textTold = compute('content.text', (context, inputs: MessageOf<'contentText'>['args']) => {
  if (textAt(context.content, inputs.at) === null)
    throw new RangeError(`no text in the content at ${JSON.stringify(inputs.at)}`);
  return message('contentText', inputs);
});

export interface TextSpec {
  readonly id: string;
  readonly at: TextAddress;
  readonly depth?: Finding['depth'];
  readonly shows?: readonly Shown[];
  readonly claims?: readonly ClaimTag[];
  readonly models?: readonly ModelLimit[];
  readonly whatIf?: boolean;
  readonly readers?: readonly Reader[];
  readonly as?: Given | 'usual';
}

/** One text as a finding; nothing when the content has no such text. */
export const textFinding = (context: Context, question: QuestionId, spec: TextSpec): readonly Finding[] => {
  const found = textAt(context.content, spec.at);
  if (found === null) return [];
  const readers = spec.readers ?? found.readers;
  return [
    find(context, question, {
      id: spec.id,
      depth: spec.depth ?? 'more',
      shows: spec.shows ?? [],
      compute: textTold,
      inputs: { at: spec.at, ...(spec.as === undefined ? {} : { as: spec.as }) },
      evidence: found.evidence === null ? [] : [found.evidence],
      claims: spec.claims ?? [],
      models: spec.models ?? [],
      whatIf: spec.whatIf ?? false,
      ...(readers === undefined ? {} : { readers }),
    }),
  ];
};
