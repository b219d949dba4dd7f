/**
 * The one-page handout as data: their side, the five answers, the stages with what opens the next, warning signs, who to call,
 * where it comes from. Patient wording only. Warning signs, the five answers and the stages are always on it; everything else is
 * taken in order of need while the page has room (`handout-fit.ts`).
 */

import type { Finding } from '../explain/types';
import type { FindingId, QuestionId, SourceId, StageId } from '../ids';
import { QUESTION_IDS } from '../ids';
import { fill } from '../wording';
import type { Sentence } from '../wording/types';
import { HANDOUT_LIMITS, HEADING_LINES, linesOf, takeWhileRoom, type Wish } from './handout-fit';
import { TELLING_PHRASES as P } from './phrases';
import { saysUnknown, type Worded } from './worded';

export interface HandoutAnswer {
  readonly question: QuestionId;
  readonly title: string;
  /** The one sentence of the question, and what else there is room for. */
  readonly sentences: readonly Sentence[];
}

export interface HandoutStage {
  readonly stage: StageId;
  readonly sentence: Sentence;
  /** What has to be true before the next stage. */
  readonly opensNext: readonly Sentence[];
}

export interface HandoutWarning {
  readonly kind: 'red flag' | 'treatment danger';
  readonly text: string;
}

export interface HandoutFigure {
  readonly question: QuestionId;
  readonly caption: string;
  /** Text alternative. */
  readonly alt: string;
}

export interface Handout {
  readonly title: string;
  readonly sideLine: string;
  readonly caseLine: string;
  readonly demoLine: string | null;
  readonly whatIfLine: string | null;
  /** Not null while no clinician has reviewed the content it uses. */
  readonly draftLine: string | null;
  readonly answers: readonly HandoutAnswer[];
  readonly stages: readonly HandoutStage[];
  readonly warnings: readonly HandoutWarning[];
  /** Labels before blank lines to write on. */
  readonly call: readonly string[];
  readonly sources: readonly string[];
  readonly sourcesMore: number;
  readonly disclaimers: readonly string[];
  readonly figures: readonly HandoutFigure[];
  readonly illustrationLine: string;
  readonly headings: {
    readonly stages: string;
    readonly opens: string;
    readonly warnings: string;
    readonly call: string;
    readonly sources: string;
    readonly limits: string;
  };
  /** Lines used of `HANDOUT_LIMITS.columnLines`. */
  readonly lines: number;
}

export type HandoutFrame = Omit<
  Handout,
  'answers' | 'stages' | 'sources' | 'sourcesMore' | 'call' | 'headings' | 'illustrationLine' | 'lines'
>;

export interface HandoutMaterial {
  readonly worded: readonly Worded[];
  readonly titles: Readonly<Record<QuestionId, string>>;
  readonly frame: HandoutFrame;
  readonly sourceText: (id: SourceId) => string;
}

const stageOf = (finding: Finding): { readonly kind: 'stage' | 'opens'; readonly stage: StageId } | null => {
  if (finding.message.id === 'stageUsual') return { kind: 'stage', stage: finding.message.args.stage };
  if (finding.message.id !== 'contentText' || finding.message.args.at.kind !== 'stageOpens') return null;
  return { kind: 'opens', stage: finding.message.args.at.stage };
};

/** What must be there, then what is wished for, most needed first. */
interface Plan {
  readonly must: readonly Wish[];
  readonly wishes: readonly Wish[];
}

const wishOf = (w: Worded): Wish => ({ key: w.finding.id, lines: linesOf(w.text) });

const planOf = ({ worded, titles, frame }: HandoutMaterial): Plan => {
  const first = (question: QuestionId): Worded | undefined =>
    worded.find((w) => w.question === question && w.finding.depth === 'sentence');
  const sentences = QUESTION_IDS.flatMap((question) => first(question) ?? []);
  const stages = worded.filter((w) => stageOf(w.finding)?.kind === 'stage').slice(0, HANDOUT_LIMITS.stages);
  const counted = new Map<StageId, number>();
  const opens = worded.filter((w) => {
    const at = stageOf(w.finding);
    if (at?.kind !== 'opens') return false;
    const count = (counted.get(at.stage) ?? 0) + 1;
    counted.set(at.stage, count);
    return count <= HANDOUT_LIMITS.criteriaPerStage && stages.some((s) => stageOf(s.finding)?.stage === at.stage);
  });
  const firstOpens = opens.filter(
    (w, i) => opens.findIndex((o) => stageOf(o.finding)?.stage === stageOf(w.finding)?.stage) === i,
  );
  const rest = worded.filter((w) => !sentences.includes(w) && stageOf(w.finding) === null);
  const byDepth = (depth: Finding['depth']) =>
    rest.filter((w) => w.finding.depth === depth && !(depth === 'more' && saysUnknown(w.finding)));
  return {
    must: [
      ...QUESTION_IDS.map((q) => ({ key: `title ${q}`, lines: HEADING_LINES + linesOf(titles[q]) - 1 })),
      { key: 'heading warnings', lines: frame.warnings.length === 0 ? 0 : HEADING_LINES },
      { key: 'heading stages', lines: stages.length === 0 ? 0 : HEADING_LINES },
      ...frame.warnings.map((warning, i) => ({ key: `warning ${i}`, lines: linesOf(warning.text) })),
      ...sentences.map(wishOf),
      // A list of stages with a hole in it would mislead: all of them or none.
      ...stages.map(wishOf),
    ],
    wishes: [
      ...firstOpens.map(wishOf),
      ...byDepth('sentence').map(wishOf),
      ...opens.filter((w) => !firstOpens.includes(w)).map(wishOf),
      ...byDepth('claim').map(wishOf),
    ],
  };
};

const sourcesOf = (used: readonly Worded[], sourceText: (id: SourceId) => string) => {
  const ids = [...new Set(used.flatMap((w) => w.finding.basis.sources.flatMap(({ source }) => source ?? [])))];
  const texts = ids.map(sourceText).filter((text) => text.length <= HANDOUT_LIMITS.sourceLetters);
  const sources = texts.slice(0, HANDOUT_LIMITS.sources);
  return { sources, sourcesMore: ids.length - sources.length };
};

export const handoutFrom = (material: HandoutMaterial): Handout => {
  const { worded, titles, frame, sourceText } = material;
  const plan = planOf(material);
  const mustLines = plan.must.reduce((sum, wish) => sum + wish.lines, 0);
  const taken = takeWhileRoom(plan.wishes, HANDOUT_LIMITS.columnLines - mustLines);
  const chosen = new Set<string>([...plan.must.map((wish) => wish.key), ...taken]);
  const used = worded.filter((w) => chosen.has(w.finding.id));
  const is = (id: FindingId): boolean => chosen.has(id);
  const opensOf = (stage: StageId): readonly Sentence[] =>
    used
      .filter((w) => stageOf(w.finding)?.kind === 'opens' && stageOf(w.finding)?.stage === stage)
      .map((w) => w.sentence);
  return {
    ...frame,
    answers: QUESTION_IDS.map((question) => ({
      question,
      title: titles[question],
      sentences: worded
        .filter((w) => w.question === question && is(w.finding.id) && stageOf(w.finding) === null)
        .map((w) => w.sentence),
    })),
    stages: used.flatMap((w) => {
      const at = stageOf(w.finding);
      return at?.kind === 'stage' ? [{ stage: at.stage, sentence: w.sentence, opensNext: opensOf(at.stage) }] : [];
    }),
    ...sourcesOf(used, sourceText),
    call: [P['handout.callName'], P['handout.callPhone'], P['handout.callHours']],
    illustrationLine: P.illustration,
    headings: {
      stages: P['handout.stages'],
      opens: P['handout.opens'],
      warnings: P['handout.warnings'],
      call: P['handout.call'],
      sources: P['handout.sources'],
      limits: P['handout.limits'],
    },
    lines: [...plan.must, ...plan.wishes].filter((w) => chosen.has(w.key)).reduce((sum, w) => sum + w.lines, 0),
  };
};

export const handoutTitle = (part: string | null): string =>
  part === null ? P['handout.titleNoPart'] : fill(P['handout.title'], { part });
