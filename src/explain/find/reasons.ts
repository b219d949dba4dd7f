/**
 * Why an injury is a candidate, and how much each reason weighs. Rules of ranking, not of medicine: the weights say which kind of word
 * speaks more plainly for one injury.
 */
import type { FindWord } from '../../content/schema';
import type { Hit } from './hits';
import type { Meaning } from './meanings';
import type { Subject } from './phrases';
import { type CodeInUse, readCode } from './read-code';
import type { Matched, Sought } from './types';

export interface Reason {
  readonly score: number;
  readonly matched: Matched;
  /** The typed words it rests on; none for a tap or a code. */
  readonly at: ReadonlySet<number>;
}

/** A name says more than a place, a place more than what happened; a code says it outright. */
const WEIGHT = { name: 3, words: 1.5, bone: 2, part: 1.2, place: 2.2, event: 1.6, who: 2 } as const;
const CODE = { whole: 12, begun: 6 } as const;
/** A place that lies in the tapped part says less than the part itself, and what is told of the whole bone less again. */
const TAP = { ownBone: 4, otherBone: 2, part: 4, lying: 2.5, anyPart: 1 } as const;
/** What is not so, for what would be its opposite, and against what it speaks of only in general. */
const NOT = { opposite: 1.2, general: 1.3 } as const;
/** Each further word that fits the same phrase makes it more certain that this phrase was meant. */
const MORE_WORDS = 0.25;
/** Below this much of a phrase somebody meant something else. */
const LEAST_COVER = 0.34;

const scoreOf = ({ phrase, cover, words }: Hit): number =>
  WEIGHT[phrase.of.by] * cover ** 2 * (1 + MORE_WORDS * (words - 1));

/** `meaning`: what a line of find-words means for this subject, 0 to 1. Of phrases of one kind the best speaks; each line once. */
export const wordReasons = (
  subject: Subject,
  index: number,
  hits: readonly Hit[],
  meaning: Meaning,
): readonly Reason[] => {
  const best = new Map<string, Reason>();
  const put = (key: string, { at }: Hit, score: number, matched: Matched): void => {
    if (score > (best.get(key)?.score ?? 0)) best.set(key, { score, matched, at });
  };
  for (const hit of hits) {
    const { of } = hit.phrase;
    const [score, said] = [scoreOf(hit), hit.said];
    if ('word' in of) {
      // Places and events count as a whole only.
      if (hit.whole) put(of.word.id, hit, meaning(of.word.id, index) * score, { by: of.by, said, word: of.word.id });
    } else if (hit.cover >= LEAST_COVER) {
      if (of.by === 'bone') {
        const share = subject.bones[0] === of.bone ? 1 : subject.bones.includes(of.bone) ? 0.5 : 0;
        put('bone', hit, share * score, { by: 'bone', said, bone: of.bone });
      } else if (of.by === 'part') {
        if (subject.regions.includes(of.region)) put('part', hit, score, { by: 'part', said, region: of.region });
      } else if (of.subject === index) put(of.by, hit, score, { by: of.by, said, text: of.text });
    }
  }
  return [...best.values()];
};

const NO_WORDS: ReadonlySet<number> = new Set();

export const codeReasons = (
  subject: Subject,
  codes: readonly CodeInUse[],
  typed: readonly string[],
): readonly Reason[] =>
  typed.flatMap((each): readonly Reason[] => {
    const read = codes
      .filter(({ id }) => subject.codes.includes(id) || subject.codeOfGrowing === id)
      .flatMap((code) => readCode(code, each) ?? [])
      .sort((a, b) => Number(b.whole) - Number(a.whole))[0];
    if (read === undefined) return [];
    const { whole, ...rest } = read;
    return [{ score: whole ? CODE.whole : CODE.begun, matched: { by: 'code', ...rest }, at: NO_WORDS }];
  });

export const tapReasons = ({ bones, regions }: Subject, sought: Sought): readonly Reason[] => {
  const { bone, parts, lying } = sought;
  if (bone === null || !bones.includes(bone)) return [];
  const there = parts.find((part) => regions.includes(part)) ?? null;
  const around = lying.find(({ place, part }) => regions.includes(place) && parts.includes(part))?.part ?? null;
  const whole = parts.length > 0 && regions.length === 0;
  const part = there !== null ? TAP.part : around !== null ? TAP.lying : whole ? TAP.anyPart : 0;
  const score = (bones[0] === bone ? TAP.ownBone : TAP.otherBone) + part;
  return [{ score, matched: { by: 'tap', bone, region: there ?? around }, at: NO_WORDS }];
};

export interface Denied {
  readonly word: string;
  readonly said: string;
  readonly at: ReadonlySet<number>;
}

/** Events that are said not to have been: those of the words, and those that words such as "no injury" deny by themselves. */
export const deniedIn = (hits: readonly Hit[], also: readonly Omit<Denied, 'at'>[]): readonly Denied[] => [
  ...hits.flatMap(({ phrase, said, at, whole }) =>
    whole && 'word' in phrase.of && phrase.of.by === 'event' ? [{ word: phrase.of.word.id, said, at }] : [],
  ),
  ...also.map((each) => ({ ...each, at: NO_WORDS })),
];

/** No fall speaks for what comes bit by bit, and against what needs one moment. */
export const notReasons = (
  words: readonly FindWord[],
  denied: readonly Denied[],
  index: number,
  meaning: Meaning,
): { readonly matched: readonly Reason[]; readonly against: readonly Reason[] } => {
  const read = denied.flatMap(({ word: id, said, at }) => {
    const own = words.find((each) => each.id === id);
    const general = words.find((each) => each.id === (own?.whenNot ?? id));
    return general?.opposite === undefined ? [] : [{ said, at, word: general.id, opposite: general.opposite }];
  });
  const once = read.filter(({ word }, i) => read.findIndex((each) => each.word === word) === i);
  return {
    matched: once.flatMap(({ said, at, opposite }): readonly Reason[] =>
      meaning(opposite, index) === 0
        ? []
        : [{ score: NOT.opposite * meaning(opposite, index), matched: { by: 'not', said, word: opposite }, at }],
    ),
    against: once.flatMap(({ said, at, word, opposite }): readonly Reason[] =>
      meaning(word, index) === 0 || meaning(opposite, index) > 0
        ? []
        : [{ score: NOT.general, matched: { by: 'event', said, word }, at }],
    ),
  };
};
