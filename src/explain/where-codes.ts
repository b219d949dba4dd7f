/** Codes of a class, for study readers: those of the list of diagnoses, side and visit put in, and its number in another list. */
import type { Facts } from '../cases/schema';
import type { Injury } from '../content/schema';
import type { CodeId, InjuryId } from '../ids';
import { find } from './build';
import { asConfirmed, type ComputedClass, classesOf, gapAgainst, measuredIn } from './classes';
import { type ChosenBy, codeRestsOn } from './code-bases';
import { surelySaid } from './healing-said';
import type { CodeChoice, CodeFacts } from './icd10cm';
import { type Known, knownOf, tagOf } from './resolve';
import { mayGrow, type Situation } from './situation';
import type { Finding } from './types';
import { alsoNumbered, code, codeAnew, codeOfGrowing, codesBeside } from './where-computes';

/** Usual healing goes by what is confirmed alone; slow, none or out of place as far as somebody says so, which is told. */
const visitOf = (facts: Facts): Pick<CodeFacts, 'visit' | 'healing' | 'ifReported'> => {
  const { said, ifReported } = surelySaid(facts);
  if (said === 'disputed') return { visit: 'later', healing: 'disputed', ifReported };
  if (said === null) {
    // A break anew that is only reported is no visit of the old one.
    const visits = facts.followUps.filter(({ value }) => value.finding !== 'broken again');
    return visits.length === 0
      ? { visit: 'first', healing: null, ifReported }
      : { visit: 'later', healing: 'notStated', ifReported };
  }
  if (said.status === 'confirmed') return { visit: said.healing, healing: null, ifReported };
  return { visit: said.healing === 'usual' ? 'later' : said.healing, healing: 'reported', ifReported };
};

const codeFactsOf = (facts: Facts): CodeFacts => ({
  side: facts.side.state === 'contradiction' ? 'disputed' : (knownOf<'side'>(facts.side)?.value ?? null),
  displaced:
    facts.displacement.state === 'contradiction'
      ? 'disputed'
      : (knownOf<'displacement'>(facts.displacement)?.value.displaced ?? null),
  ...visitOf(facts),
});

interface Chosen extends Pick<ChosenBy, 'byClass' | 'byDisplacement'> {
  readonly codes: readonly CodeId[];
  readonly choice: readonly CodeChoice[];
}

/** "Displaced" decides; else the class does, for a gap is measured; else "not displaced". Where nothing does, all are given. */
const chosenCodes = (
  injury: Injury,
  displaced: CodeFacts['displaced'],
  classes: readonly ComputedClass[],
  gap: boolean,
): Chosen => {
  const { codes, codesWhen, classification } = injury;
  const none = { byClass: null, byDisplacement: false } as const;
  if (codesWhen.length === 0) return { ...none, codes, choice: codes.length > 1 ? ['severalFit'] : [] };
  const ofClass = classes.flatMap((c) => {
    const when = codesWhen.find((w) => w.classes.includes(classification[c.index]?.id ?? ''));
    return when === undefined ? [] : [{ when, computed: c }];
  })[0];
  const stated = codesWhen.find((w) => w.displaced === displaced);
  const byClass = displaced !== true && ofClass !== undefined;
  const when = byClass ? ofClass.when : stated;
  // A gap that fits no class still is no joint in line.
  if (when === undefined || (gap && !byClass)) return { ...none, codes, choice: ['open'] };
  return {
    byClass: byClass ? ofClass.computed : null,
    byDisplacement: !byClass,
    codes: when.codes,
    choice: [
      ...(when.codes.length > 1 ? (['ofTwo'] as const) : []),
      ...(gap ? (['gapFirst'] as const) : []),
      ...(byClass && ofClass.computed.assumed.length > 0 ? (['classAssumed'] as const) : []),
    ],
  };
};

const assembled = (s: Situation, injury: Injury, stated: Known<InjuryId>): readonly Finding[] => {
  const { whatIf } = stated;
  const { context, facts, known } = s;
  const bone = known.bone?.value;
  const anew = facts.followUps.filter(({ value }) => value.finding === 'broken again');
  const sure = anew.filter(({ status }) => status === 'confirmed').at(-1);
  const codedAnew = ({ id, status, value }: (typeof anew)[number]): Finding =>
    find(context, 'where', {
      id: sure === undefined ? 'codeIfAgain' : 'code',
      depth: 'more',
      compute: codeAnew,
      inputs: { injury: injury.id, on: value.on, reported: sure === undefined },
      claims: [{ status, claims: [id] }],
      whatIf,
      readers: ['study'],
    });
  if (sure !== undefined) return [codedAnew(sure)];
  const measured = measuredIn(facts, s.region === null ? null : { value: s.region.value, tag: s.breakTag });
  const codeFacts = codeFactsOf(facts);
  const held = asConfirmed(injury, measured);
  const gap = gapAgainst(injury, held) !== null;
  const isOverruled = measured.displaced !== null && held.displaced === null;
  const displaced = isOverruled ? null : codeFacts.displaced;
  const chosen = chosenCodes(injury, displaced, classesOf(injury, held), gap);
  const { codes, choice } = chosen;
  const fitting = context.content.codes.filter(({ id }) => codes.includes(id));
  const ofThisBone = codes.flatMap((id) =>
    fitting.filter((each) => each.id === id && (bone === undefined || (each.bone ?? bone) === bone)),
  );
  const assembledCodes = ofThisBone.map((record, i) => {
    const rests = codeRestsOn(s, stated, record, { ...chosen, byBone: ofThisBone.length < codes.length });
    return find(context, 'where', {
      id: i === 0 ? 'code' : `code.${i + 1}`,
      depth: 'more',
      compute: code,
      inputs: { injury: injury.id, code: record.id, choice, ...rests, ...codeFacts },
      evidence: [record.evidence],
      claims: [rests.claim],
      whatIf,
      readers: ['study'],
    });
  });
  // A report switches off no code of what is confirmed: it stands beside it.
  return [...assembledCodes, ...anew.slice(-1).map(codedAnew)];
};

export const codeFindings = (s: Situation, injury: Known<InjuryId>): readonly Finding[] => {
  const { whatIf } = injury;
  const age = knownOf<'ageBand'>(s.facts.ageBand);
  const { context, injuryRecord: record } = s;
  if (record === null) return [];
  const found = [...assembled(s, record, injury)];
  const beside = record.codesBeside;
  if (beside.length > 0)
    found.push(
      find(context, 'where', {
        id: 'codesBeside',
        depth: 'more',
        compute: codesBeside,
        inputs: { injury: record.id },
        claims: [tagOf(injury)],
        evidence: context.content.codes.filter((c) => beside.includes(c.id)).map((c) => c.evidence),
        whatIf,
        readers: ['study'],
      }),
    );
  if (record.codeOfGrowing !== undefined && mayGrow(s))
    found.push(
      find(context, 'where', {
        id: 'codeOfGrowing',
        depth: 'claim',
        compute: codeOfGrowing,
        inputs: { injury: record.id },
        claims: [tagOf(injury), ...(age === null ? [] : [tagOf(age)])],
        evidence: context.content.codes.filter(({ id }) => id === record.codeOfGrowing).map((c) => c.evidence),
        whatIf,
        readers: ['study'],
      }),
    );
  if (record.alsoNumbered !== undefined)
    found.push(
      find(context, 'where', {
        id: 'alsoNumbered',
        depth: 'more',
        compute: alsoNumbered,
        inputs: { injury: record.id },
        claims: [tagOf(injury)],
        evidence: [record.alsoNumbered.evidence, record.alsoNumbered.edition],
        whatIf,
        readers: ['study'],
      }),
    );
  return found;
};
