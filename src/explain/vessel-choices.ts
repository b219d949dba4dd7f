/** How the vessels of a case run: the commonest pattern unless another is tried, and what is torn or cut. Plain data. */
import type { Content, Evidence, VesselChoice, VesselPattern } from '../content/schema';
import {
  type BoneId,
  type OptionId,
  type RegionId,
  type VesselChoiceId,
  type VesselEdgeId,
  type VesselPatternId,
  vesselEdge,
} from '../ids';
import { measuredIn, toldClassesOf } from './classes';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import type { WhatIf } from './types';

export type VesselChoices = NonNullable<WhatIf['vessels']>;

/** Patterns that are asked at a bone. */
export const patternsAt = (content: Content, bone: BoneId | null): readonly VesselPattern[] =>
  bone === null ? [] : content.vesselPatterns.filter((p) => p.bones.includes(bone));

/** The choice of a pattern that is tried, or its first. A choice that the content does not have is no choice. */
export const choiceOf = (pattern: VesselPattern, choices: VesselChoices): VesselChoice | undefined =>
  pattern.choices.find(({ id }) => id === choices[pattern.id]) ?? pattern.choices[0];

export interface ChosenVessels {
  readonly lacking: ReadonlySet<VesselEdgeId>;
  readonly bare: readonly RegionId[];
  readonly torn: readonly VesselEdgeId[];
  readonly evidence: readonly Evidence[];
}

export const chosenAt = (content: Content, bone: BoneId, choices: VesselChoices): ChosenVessels => {
  const chosen = content.vesselPatterns.flatMap((pattern) => {
    const choice = choiceOf(pattern, choices);
    return choice === undefined ? [] : [{ pattern, choice }];
  });
  const patterns = chosen.filter(({ pattern }) => pattern.kind === 'pattern');
  const isHere = ({ pattern }: { readonly pattern: VesselPattern }): boolean => pattern.bones.includes(bone);
  const torn = chosen.filter((c) => c.pattern.kind === 'torn' && c.choice.lacks.length > 0 && isHere(c));
  const here = [...patterns.filter(isHere), ...torn];
  return {
    lacking: new Set(patterns.flatMap(({ choice }) => choice.lacks)),
    bare: patterns.flatMap(({ choice }) => choice.bare),
    torn: torn.flatMap(({ choice }) => choice.lacks),
    evidence: here.map(({ choice }) => choice.evidence),
  };
};

/** Choices that differ from the first of their pattern, at a bone: what makes its feeding a what-if. */
export const triedAt = (content: Content, bone: BoneId | null, choices: VesselChoices): readonly VesselPatternId[] =>
  patternsAt(content, bone)
    .filter((pattern) => choiceOf(pattern, choices)?.id !== pattern.choices[0]?.id)
    .map(({ id }) => id);

/** The choices with one more; those that are the first of their pattern are left out. */
export const withChoice = (
  content: Content,
  choices: VesselChoices,
  pattern: VesselPattern,
  choice: VesselChoice,
): VesselChoices => {
  const all: VesselChoices = { ...choices, [pattern.id]: choice.id };
  const entries = content.vesselPatterns.flatMap((p): [VesselPatternId, VesselChoiceId][] => {
    const id = choiceOf(p, all)?.id;
    return id === undefined || id === p.choices[0]?.id ? [] : [[p.id, id]];
  });
  return Object.fromEntries(entries) as VesselChoices;
};

export interface CutVessels {
  readonly edges: readonly VesselEdgeId[];
  readonly claims: readonly ClaimTag[];
}

/** What the classes that hold have torn, and the claims that say so. */
export const tornBy = ({ facts, region, injuryRecord }: Situation): CutVessels => {
  const place = region === null ? null : { value: region.value, tag: tagOf(region) };
  const classes =
    injuryRecord === null
      ? []
      : toldClassesOf(injuryRecord, measuredIn(facts, place)).flatMap(({ index, claim }) => {
          const cuts = injuryRecord.classification[index]?.cuts ?? [];
          return cuts.length === 0 ? [] : [{ cuts, claim }];
        });
  return { edges: classes.flatMap(({ cuts }) => cuts), claims: classes.map(({ claim }) => claim) };
};

/** What the operation in force takes from one bone itself. */
export interface TakenVessels {
  readonly option: OptionId;
  readonly edges: readonly VesselEdgeId[];
  readonly evidence: Evidence;
  readonly claim: ClaimTag;
}

/** Null where none is in force, or where it takes nothing from this bone that we know of. */
export const takenBy = ({ context, known }: Situation, bone: BoneId): TakenVessels | null => {
  const { options, vessels } = context.content;
  const takes = options.find(({ id }) => id === known.option?.value)?.takes;
  if (known.option === null || takes === undefined) return null;
  const into = new Set(
    vessels.flatMap(({ id, ends }) => ends.filter((e) => e.bone === bone).map((e) => vesselEdge(id, e.at ?? e.bone))),
  );
  const edges = takes.cuts.filter((edge) => into.has(edge));
  if (edges.length === 0) return null;
  return { option: known.option.value, edges, evidence: takes.evidence, claim: tagOf(known.option) };
};
