/**
 * Three questions that check whether the explaining worked. Only from what this explanation says: the place, a warning sign that
 * applies, what opens the next stage; where one of these is not there, what the weeks mean, the side, how sure it is. Wrong
 * choices are harmless everyday things: a warning sign is never a wrong answer.
 */

import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { BoneId } from '../ids';
import { fill } from '../wording';
import { rowOf } from './graph';
import { TEACH_BACK_PHRASES as P } from './phrases';
import type { Choice, TeachBackItem, TeachBackKind } from './types';

export const TEACH_BACK_COUNT = 3;

export interface TeachBackMaterial {
  readonly content: Pick<Content, 'bones' | 'regions' | 'stages'>;
  readonly explanation: Explanation;
  /** Warning signs that apply, in patient words. */
  readonly signs: readonly string[];
}

type Maker = (material: TeachBackMaterial) => Omit<TeachBackItem, 'id' | 'kind'> | null;

/** The right choice among two others, at a place that differs from question to question. */
const among = (
  right: string,
  others: readonly [string, string],
  at: number,
): { choices: Choice[]; correct: string } => {
  const texts: string[] = [...others];
  texts.splice(at, 0, right);
  return {
    choices: texts.map((text, i) => ({ id: `choice-${i + 1}`, text, latin: null })),
    correct: `choice-${at + 1}`,
  };
};

/** Bones as far from this one as the foot allows, in everyday words: one behind or before it, one across. */
const FAR: readonly BoneId[] = ['calcaneus', 'phalanxDistal1', 'navicular', 'metatarsal1'];

const where: Maker = ({ content, explanation }) => {
  const bone = explanation.bone;
  const own = content.bones.find((b) => b.id === bone);
  if (own === undefined) return null;
  const region = content.regions.find((r) => r.id === explanation.part?.region);
  const place = region === undefined ? own.plain : fill(P['where.place'], { part: region.plain, bone: own.plain });
  const [first, second] = FAR.filter((id) => id !== bone && rowOf(id) !== rowOf(own.id)).flatMap((id) =>
    content.bones.filter((b) => b.id === id).map((b) => b.plain),
  );
  if (first === undefined || second === undefined) return null;
  return {
    prompt: P['where.prompt'],
    ...among(place, [first, second], 1),
    feedback: { right: fill(P['where.right'], { place }), again: fill(P['where.again'], { place }) },
  };
};

const help: Maker = ({ signs }) => {
  // The shortest sign: a choice is read at a glance.
  const sign = [...signs].sort((a, b) => a.length - b.length)[0];
  if (sign === undefined) return null;
  return {
    prompt: P['help.prompt'],
    ...among(sign, [P['help.other1'], P['help.other2']], 2),
    feedback: { right: P['help.right'], again: fill(P['help.again'], { sign }) },
  };
};

const next: Maker = ({ content, explanation }) => {
  const opens = explanation.questions
    .flatMap((q) => q.findings)
    .flatMap((f) =>
      f.message.id === 'contentText' && f.message.args.at.kind === 'stageOpens' ? [f.message.args.at] : [],
    );
  const criterion = opens
    .map((at) => content.stages.find((stage) => stage.id === at.stage)?.opensNext[at.index]?.what.patient)
    .find((text) => text !== undefined);
  if (criterion === undefined) return null;
  return {
    prompt: P['next.prompt'],
    ...among(criterion, [P['next.other1'], P['next.other2']], 0),
    feedback: { right: P['next.right'], again: fill(P['next.again'], { criterion }) },
  };
};

const weeks: Maker = ({ explanation }) =>
  explanation.questions.some((q) => q.findings.some((f) => f.message.id === 'backRange'))
    ? {
        prompt: P['weeks.prompt'],
        ...among(P['weeks.answer'], [P['weeks.other1'], P['weeks.other2']], 1),
        feedback: { right: P['weeks.right'], again: P['weeks.again'] },
      }
    : null;

const side: Maker = ({ explanation }) => {
  const [right, left, unknown] = [P['side.rightFoot'], P['side.leftFoot'], P['side.unknown']];
  const said = explanation.side.state !== 'stated' ? unknown : explanation.side.side === 'right' ? right : left;
  const [a, b] = [right, left, unknown].filter((text) => text !== said);
  if (a === undefined || b === undefined) return null;
  return {
    prompt: P['side.prompt'],
    ...among(said, [a, b], 2),
    feedback: { right: P['side.right'], again: fill(P['side.again'], { side: said }) },
  };
};

const known: Maker = ({ explanation }) => {
  const status = explanation.part?.status ?? 'unknown';
  const said = P[`known.${status}`];
  const [a, b] = (['confirmed', 'reported', 'inferred'] as const)
    .filter((s) => s !== status)
    .map((s) => P[`known.${s}`]);
  if (a === undefined || b === undefined) return null;
  return {
    prompt: P['known.prompt'],
    ...among(said, [a, b], 0),
    feedback: { right: P['known.right'], again: fill(P['known.again'], { known: said }) },
  };
};

/** In order of liking. The last two can always be asked. */
const MAKERS: readonly (readonly [TeachBackKind, Maker])[] = [
  ['where', where],
  ['help', help],
  ['next', next],
  ['weeks', weeks],
  ['side', side],
  ['known', known],
];

export const teachBackFrom = (material: TeachBackMaterial): TeachBackItem[] =>
  MAKERS.flatMap(([kind, make]) => {
    const made = make(material);
    return made === null ? [] : [{ kind, id: `teach-back ${kind}`, ...made }];
  }).slice(0, TEACH_BACK_COUNT);

export interface TeachBackAnswer {
  readonly right: boolean;
  readonly feedback: string;
}

/** Throws RangeError for a choice that the item does not have. */
export const answerTeachBack = (item: TeachBackItem, choice: string): TeachBackAnswer => {
  if (!item.choices.some((c) => c.id === choice)) throw new RangeError(`no choice "${choice}" in ${item.id}`);
  const right = choice === item.correct;
  return { right, feedback: right ? item.feedback.right : item.feedback.again };
};
