/**
 * Why an injury is a candidate, and how much each reason weighs. Rules of ranking, not of medicine: the weights say which kind of word
 * speaks more plainly for one injury.
 */
import type { Code } from '../../content/schema';
import type { Hit } from './hits';
import type { Subject } from './phrases';
import { readCode } from './read-code';
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
const TAP = { ownBone: 4, otherBone: 2, part: 4 } as const;
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
  meaning: (word: string) => number,
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
      if (hit.whole) put(of.word.id, hit, meaning(of.word.id) * score, { by: of.by, said, word: of.word.id });
    } else if (hit.cover >= LEAST_COVER) {
      if (of.by === 'bone') {
        const share = subject.bones[0] === of.bone ? 1 : subject.bones.includes(of.bone) ? 0.5 : 0;
        put('bone', hit, share * score, { by: 'bone', said, bone: of.bone });
      } else if (of.by === 'part') {
        if (of.region === subject.region) put('part', hit, score, { by: 'part', said, region: of.region });
      } else if (of.subject === index) put(of.by, hit, score, { by: of.by, said, text: of.text });
    }
  }
  return [...best.values()];
};

const NO_WORDS: ReadonlySet<number> = new Set();

export const codeReasons = (subject: Subject, codes: readonly Code[], typed: readonly string[]): readonly Reason[] =>
  typed.flatMap((each): readonly Reason[] => {
    const read = codes
      .filter(({ id }) => subject.codes.includes(id))
      .flatMap((code) => readCode(code, each) ?? [])
      .sort((a, b) => Number(b.whole) - Number(a.whole))[0];
    if (read === undefined) return [];
    const { whole, ...rest } = read;
    return [{ score: whole ? CODE.whole : CODE.begun, matched: { by: 'code', ...rest }, at: NO_WORDS }];
  });

export const tapReasons = ({ bones, region }: Subject, sought: Sought): readonly Reason[] => {
  if (sought.bone === null || !bones.includes(sought.bone)) return [];
  const there = sought.region !== null && region === sought.region;
  const score = (bones[0] === sought.bone ? TAP.ownBone : TAP.otherBone) + (there ? TAP.part : 0);
  return [{ score, matched: { by: 'tap', bone: sought.bone, region: there ? sought.region : null }, at: NO_WORDS }];
};
