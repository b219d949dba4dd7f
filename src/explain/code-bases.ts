/** What an assembled code rests on: it is as sure as the least sure of the claims that chose it or one of its characters. */
import type { Facts } from '../cases/schema';
import type { Code } from '../content/schema';
import type { InjuryId } from '../ids';
import type { ComputedClass } from './classes';
import { surelySaid } from './healing-said';
import { CODE_PARTS, type CodePart, tellsDisplacement } from './icd10cm';
import type { ClaimTag } from './messages';
import { type Known, knownOf, tagOf, weakest } from './resolve';
import type { Situation } from './situation';

/** What chose among the codes of the injury. */
export interface ChosenBy {
  readonly byClass: ComputedClass | null;
  readonly byDisplacement: boolean;
  readonly byBone: boolean;
}

/** The follow-ups that decide the character of the visit: what is said of healing, else that there was a later visit at all. */
const visitTag = (facts: Facts): ClaimTag | null => {
  const { said } = surelySaid(facts);
  if (said !== null && said !== 'disputed') return { status: said.status, claims: said.claims };
  const visits = facts.followUps.filter(({ value }) => value.finding !== 'broken again');
  // One that is confirmed is enough for a later visit.
  const best = visits.find(({ status }) => status === 'confirmed') ?? visits[0];
  return best === undefined ? null : { status: best.status, claims: [best.id] };
};

const tagIf = (known: Known<unknown> | null, used: boolean): ClaimTag | null =>
  known === null || !used ? null : tagOf(known);

/** Every claim that one code rests on, by what it says. What is not stated, or disputed, is coded by rule and rests on none. */
const partsOf = (
  { facts, known }: Situation,
  injury: Known<InjuryId>,
  code: Code,
  chosen: ChosenBy,
): readonly { readonly part: CodePart; readonly tag: ClaimTag }[] => {
  const tags: Readonly<Record<CodePart, ClaimTag | null>> = {
    class: tagOf(injury),
    bone: tagIf(known.bone, chosen.byBone),
    measures: chosen.byClass?.claim ?? null,
    displacement: tagIf(knownOf(facts.displacement), tellsDisplacement(code) || chosen.byDisplacement),
    side: tagIf(knownOf(facts.side), true),
    followUps: code.visit === 'none' ? null : visitTag(facts),
  };
  return CODE_PARTS.flatMap((part) => {
    const tag = tags[part];
    return tag === null ? [] : [{ part, tag }];
  });
};

export const codeRestsOn = (
  s: Situation,
  injury: Known<InjuryId>,
  code: Code,
  chosen: ChosenBy,
): { readonly claim: ClaimTag; readonly notConfirmed: readonly CodePart[] } => {
  const parts = partsOf(s, injury, code, chosen);
  const statuses = parts.flatMap(({ tag: { status } }) => (status === 'ruledOut' ? [] : [status]));
  return {
    claim: { status: weakest(...statuses), claims: [...new Set(parts.flatMap(({ tag }) => tag.claims))] },
    notConfirmed: parts.flatMap(({ part, tag }) => (tag.status === 'confirmed' ? [] : [part])),
  };
};
