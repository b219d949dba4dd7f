/** Texts of the content in a sentence: named by what they belong to, and conditional where they speak of this injury. */
import type { Content } from '../content/schema';
import type { MessageOf, TextAddress } from '../explain/messages';
import { textAt } from '../explain/texts';
import type { Explanation } from '../explain/types';
import type { FactorId, InjuryId, Reader } from '../ids';
import { conditional } from './claims';
import { TEXT_FRAMES } from './en/clauses';
import { PARTS } from './en/messages';
import { fill } from './fill';
import { namesFor } from './names';
import { capital } from './quantities';
import type { Run } from './types';

/** A factor is named with a word of care where the injury told of is of another bone than those it was studied at. */
const factorTitle = (content: Content, id: FactorId, injury: InjuryId | null, name: string): string => {
  const studied = content.factors.find((f) => f.id === id)?.studiedAt ?? null;
  const record = content.injuries.find((i) => i.id === injury);
  if (studied === null || record === undefined) return name;
  const here = [record.bone, ...record.alsoBones].some((bone) => studied.includes(bone));
  return here ? name : fill(PARTS.studiedElsewhere, { title: name });
};

/** What the text is a text of; null when it speaks for itself. */
const titleOf = (content: Content, { injury, option }: Explanation, at: TextAddress, reader: Reader): string | null => {
  const names = namesFor(content, reader);
  switch (at.kind) {
    case 'option':
    case 'optionBurden':
    case 'optionTakes': {
      // What it is names one's own treatment, and what it does and asks stands under that.
      const named = at.kind === 'option' && at.part === 'what';
      return reader === 'patient' && option === at.option && !named && at.kind !== 'optionTakes'
        ? null
        : names.option(at.option);
    }
    case 'attachment':
      return names.attachment(at.attachment);
    case 'factor':
    case 'factorLimit':
    case 'factorAgainst':
      return factorTitle(content, at.factor, injury, names.factor(at.factor));
    case 'trouble': {
      const record = content.troubles.find((t) => t.id === at.trouble);
      return record === undefined ? null : reader === 'study' ? record.term : record.plain;
    }
    case 'classification': {
      const record = content.injuries.find((i) => i.id === at.injury)?.classification[at.index];
      return record === undefined ? null : `${record.scheme}, ${record.term}`;
    }
    case 'tellApart': {
      const other = content.injuries.find((i) => i.id === at.injury)?.tellApart[at.index]?.from;
      return other === undefined ? null : fill(PARTS.apart, { other: names.other(other) });
    }
    default:
      return null;
  }
};

export const contentRuns = (
  content: Content,
  explanation: Explanation,
  { at, as }: MessageOf<'contentText'>['args'],
  reader: Reader,
): readonly Run[] => {
  const text = textAt(content, at)?.tellings[reader] ?? '';
  // How it broke is told as if it had been seen: only a confirmed claim lets it stand without a frame.
  if (at.kind === 'mechanism' || at.kind === 'activity')
    return [{ text: `${TEXT_FRAMES[as ?? 'usual'][reader]}${text}` }];
  if (at.kind === 'stageOpens' || at.kind === 'stageSendsBack') {
    const stage = namesFor(content, reader).stage(at.stage);
    // Before the first there is none to go back to.
    const back = at.stage === content.stages[0]?.id ? 'callFirst' : 'sendsBack';
    const part = at.kind === 'stageOpens' ? 'opens' : back;
    return [{ text: fill(PARTS[reader === 'patient' ? (`${part}.patient` as const) : part], { stage, text }) }];
  }
  // Written for the person who has this injury: true of this foot only as far as the case is.
  if (at.kind === 'injury' || at.kind === 'injuryNotSeen') return conditional([{ text }], explanation.given, reader);
  const title = titleOf(content, explanation, at, reader);
  const told = title === null ? text : fill(PARTS.titled, { title: capital(title), text });
  // A class that was told because a measure of this break says so is no surer than that measure.
  return at.kind === 'classification' && as === 'reported'
    ? conditional([{ text: told }], as, reader)
    : [{ text: told }];
};
