/**
 * From worded findings to timed lines: which are findings and which say that something is not known, in what order they matter,
 * and when each is spoken. A sentence is never cut, so its hedge survives.
 */
import { MARKS, type Mark } from '../content/schema';
import { confidenceOf } from '../explain/confidence';
import type { Confidence } from '../explain/types';
import type { Endpoint, FindingId, QuestionId } from '../ids';
import type { Sentence } from '../wording/types';
import { TELLING_PHRASES as P } from './phrases';
import { type Candidates, chooseLines, type Piece, RATE, type ScriptSeconds } from './script-fit';
import { spokenWords } from './spoken';
import { isDispute, saysUnknown, tellsToo, type Worded } from './worded';

export interface ScriptLine {
  readonly kind: Piece['kind'];
  readonly text: string;
  readonly startSecond: number;
  readonly seconds: number;
  readonly question: QuestionId | null;
  readonly finding: FindingId | null;
  /** Status of the claim it tells; null when it tells none. */
  readonly stamp: Sentence['stamp'];
  readonly confidence: Confidence | null;
  /** The weakest mark of its numbers. */
  readonly mark: Mark | null;
  readonly whatIf: boolean;
}

/** Something that is not known, spoken or not. */
export interface Unknown {
  readonly text: string;
  readonly finding: FindingId | null;
  readonly spoken: boolean;
}

export interface TimedLines {
  readonly lines: readonly ScriptLine[];
  readonly totalSeconds: number;
  readonly unknowns: readonly Unknown[];
}

/** Which question speaks first when time is short; listeners ask "where" and "when" before the rest. Spoken in usual order. */
const URGENCY: readonly QuestionId[] = ['where', 'back', 'how', 'options', 'why'];
const DEPTHS = ['sentence', 'claim', 'more'] as const;

/** Round robin: the first findings of all questions come before the second of any; sentences before claims before the rest. */
const rankOf = (question: QuestionId, depth: (typeof DEPTHS)[number], place: number): number =>
  DEPTHS.indexOf(depth) * 10_000 + place * 10 + URGENCY.indexOf(question);
/** Further unknowns come after the five sentences, before the claims. */
const UNKNOWN_RANK = 9_000;

/**
 * What was heard of the person since: a follow-up, weeks that somebody named. It is what listeners have heard too, so it comes before
 * all unknowns but the one that is always spoken; only reported, it says so itself.
 */
const HEARD_RANK = 8_000;
const isHeard = ({ finding: { message } }: Worded): boolean =>
  message.id === 'followUpWeek' ||
  message.id === 'brokenAgain' ||
  message.id === 'healsSlowly' ||
  message.id.startsWith('timetable') ||
  (message.id === 'claimStated' && (message.args.of.subject === 'followUp' || message.args.of.subject === 'timetable'));

/** Back at play is asked for with every return: these ranges are spoken as soon as claims are, not only when time is left. */
const ASKED_FOR: ReadonlySet<string> = new Set<Endpoint>([
  'training',
  'sport',
  'activity',
  'performance',
  'match play',
]);
const depthOf = ({ finding }: Worded): (typeof DEPTHS)[number] =>
  finding.message.id === 'backRange' && finding.depth === 'more' && ASKED_FOR.has(finding.message.args.endpoint)
    ? 'claim'
    : finding.depth;

const weakestMark = (sentence: Sentence): Mark | null =>
  sentence.runs.reduce<Mark | null>((worst, run) => {
    if (run.mark === undefined) return worst;
    return worst === null || MARKS.indexOf(run.mark) > MARKS.indexOf(worst) ? run.mark : worst;
  }, null);

const piece = (kind: Piece['kind'], key: string, text: string, rank: number, worded: Worded | null): Piece => ({
  kind,
  key,
  text,
  words: spokenWords(text).length,
  rank,
  finding: worded?.finding.id ?? null,
  question: worded?.question ?? null,
});

export interface ScriptMaterial {
  readonly worded: readonly Worded[];
  readonly openings: readonly string[];
  /** General limits: unknown in every case. */
  readonly limits: readonly { readonly text: string; readonly mark: Mark }[];
  /** What figures of others cannot say of this person's age. */
  readonly ofAge: readonly { readonly text: string; readonly mark: Mark }[];
  /** The findings that tell such figures: it is spoken once, before the first of them, and only where one is spoken. */
  readonly ofOthers: ReadonlySet<FindingId>;
  readonly whatIf: boolean;
}

/** What is not known but told by a finding already: listed, with the finding that speaks for it, and not spoken again. */
interface ToldToo {
  readonly text: string;
  readonly finding: FindingId;
  readonly by: FindingId;
}

const candidatesOf = ({
  worded,
  openings,
  limits,
  ofAge,
  ofOthers,
  whatIf,
}: ScriptMaterial): Candidates & { toldToo: readonly ToldToo[] } => {
  const seen = new Set<string>();
  const each = worded.filter(({ text }) => spokenWords(text).length > 0 && !seen.has(text) && seen.add(text));
  const tellerOf = ({ finding }: Worded) => each.find((other) => tellsToo(other.finding, finding))?.finding.id;
  const fresh = each.filter((w) => tellerOf(w) === undefined);
  const places = new Map<string, number>();
  const findings = fresh
    .filter(({ finding }) => !saysUnknown(finding))
    .map((w) => {
      const depth = depthOf(w);
      const slot = `${w.question} ${depth}`;
      const place = places.get(slot) ?? 0;
      places.set(slot, place + 1);
      const rank = rankOf(w.question, depth, place);
      // A lead keeps its place; what was heard last is told first.
      return piece('finding', w.finding.id, w.text, isHeard(w) ? Math.min(rank, HEARD_RANK - place) : rank, w);
    });
  const unknown = fresh
    .filter(({ finding }) => saysUnknown(finding))
    .toSorted((a, b) => Number(isDispute(b.finding)) - Number(isDispute(a.finding)));
  const disputes = new Set(unknown.flatMap(({ finding }) => (isDispute(finding) ? finding.id : [])));
  return {
    toldToo: each.flatMap((w) => {
      const by = tellerOf(w);
      return by === undefined || !saysUnknown(w.finding) ? [] : [{ text: w.text, finding: w.finding.id, by }];
    }),
    openings: [...openings, P['script.opening']].map((text, i) => piece('opening', `opening ${i}`, text, i, null)),
    ofAge: ofAge.map(({ text }, i) => piece('unknown', `of age ${i}`, text, UNKNOWN_RANK, null)),
    isOfOthers: ({ finding }) => finding !== null && ofOthers.has(finding),
    isDue: ({ finding }) => finding !== null && disputes.has(finding),
    whatIf: whatIf ? piece('whatIf', 'what-if', P['script.whatIf'], 0, null) : null,
    findings,
    unknowns: [
      ...unknown.map((w, i) => piece('unknown', w.finding.id, w.text, UNKNOWN_RANK + i, w)),
      ...limits.map(({ text }, i) => piece('unknown', `limit ${i}`, text, UNKNOWN_RANK + unknown.length + i, null)),
      piece('unknown', 'limit of all', P['script.unknown'], UNKNOWN_RANK, null),
    ],
  };
};

/** The timed lines of a material; total never over `seconds`. Throws RangeError for a rate nobody speaks at. */
export const timedLines = (material: ScriptMaterial, seconds: ScriptSeconds, wordsPerMinute: number): TimedLines => {
  if (!(wordsPerMinute >= RATE.slowest && wordsPerMinute <= RATE.fastest))
    throw new RangeError(`a script is spoken at ${RATE.slowest} to ${RATE.fastest} words a minute`);
  const candidates = candidatesOf(material);
  const spoken = chooseLines(candidates, seconds, wordsPerMinute);
  const byId = new Map(material.worded.map((w) => [w.finding.id, w]));
  let words = 0;
  const limits = new Map([...material.limits, ...material.ofAge].map(({ text, mark }) => [text, mark]));
  /** How sure a line without a finding is: a limit by its own source; the one that always ends a script says so itself. */
  const levelOf = (p: Piece): Confidence | null => {
    if (p.kind !== 'unknown') return null;
    const mark = limits.get(p.text);
    return mark === undefined ? 'unknown' : confidenceOf({ marks: [mark] }).level;
  };
  const lines = spoken.map((p): ScriptLine => {
    const worded = p.finding === null ? undefined : byId.get(p.finding);
    const startSecond = (words * 60) / wordsPerMinute;
    words += p.words;
    return {
      kind: p.kind,
      text: p.text,
      startSecond,
      seconds: (p.words * 60) / wordsPerMinute,
      question: p.question,
      finding: p.finding,
      stamp: worded?.sentence.stamp ?? null,
      confidence: worded?.finding.confidence.level ?? levelOf(p),
      mark: worded === undefined ? (limits.get(p.text) ?? null) : weakestMark(worded.sentence),
      whatIf: p.kind === 'whatIf' || (worded?.sentence.whatIf ?? false),
    };
  });
  return {
    lines,
    totalSeconds: (words * 60) / wordsPerMinute,
    unknowns: [
      ...candidates.toldToo.map(({ text, finding, by }) => ({
        text,
        finding,
        spoken: spoken.some((p) => p.finding === by),
      })),
      // Nothing is missing where no figure is told.
      ...candidates.ofAge.filter((p) => spoken.includes(p)).map(({ text }) => ({ text, finding: null, spoken: true })),
      ...candidates.unknowns.map((p) => ({ text: p.text, finding: p.finding, spoken: spoken.includes(p) })),
    ],
  };
};
