/**
 * A case against content and foot: every id it names exists, every break lies on its bone. Only the shape of the foot decides
 * what is on it; side does not matter.
 */
import { type Foot, partAxis, regionsOf } from '../anatomy';
import { type CaseFile, type Claim, factsOf } from '../cases';
import { bonesOf, type Content } from '../content';
import type { BoneId } from '../ids';
import { checkCare } from './check-care';
import { type CheckProblem, type CheckProblemCode, checkProblem } from './problems';

type Listed = Pick<Content, 'injuries' | 'mechanisms' | 'options' | 'activities' | 'factors' | 'stages'>;

interface Named {
  readonly code: CheckProblemCode;
  readonly found: string;
  readonly path: string;
  readonly known: readonly { readonly id: string }[];
}

/** The id of the content that a claim names, if its subject names one. */
const namedBy = (claim: Claim, content: Listed): Named | null => {
  switch (claim.subject) {
    case 'injury':
      return { code: 'unknownInjury', found: claim.value, path: 'value', known: content.injuries };
    case 'mechanism':
      return { code: 'unknownMechanism', found: claim.value, path: 'value', known: content.mechanisms };
    case 'activity':
      return { code: 'unknownActivity', found: claim.value, path: 'value', known: content.activities };
    case 'riskFactor':
      return { code: 'unknownFactor', found: claim.value, path: 'value', known: content.factors };
    case 'treatment':
      return {
        code: 'unknownOption',
        found: claim.value.option,
        path: 'value.option',
        known: content.options.filter(({ named }) => named),
      };
    default:
      return null;
  }
};

/** Every bone the case speaks of and has not ruled out, by name or through its injury. */
const bonesIn = (file: CaseFile, content: Listed): ReadonlySet<BoneId> => {
  const bones = new Set<BoneId>();
  for (const claim of file.claims) {
    if (claim.status === 'ruledOut') continue;
    if (claim.subject === 'bone') bones.add(claim.value);
    const injury = claim.subject === 'injury' ? content.injuries.find((i) => i.id === claim.value) : undefined;
    if (injury) for (const bone of bonesOf(injury)) bones.add(bone);
  }
  return bones;
};

const checkPlace = (
  claim: Extract<Claim, { subject: 'place' }>,
  where: string,
  bones: ReadonlySet<BoneId>,
  foot: Foot,
): CheckProblem[] => {
  const place = claim.value;
  const [bone] = bones;
  if (place.by === 'region') {
    const regions = regionsOf(foot);
    const region = regions.find((r) => r.id === place.region);
    if (!region) {
      const known = regions.filter((r) => r.kind === 'zone').map((r) => r.id);
      const values = { id: claim.id, found: place.region, known: known.join(', ') };
      return [checkProblem('unknownRegion', `${where}.region`, values)];
    }
    if (bone === undefined || bones.has(region.bone)) return [];
    const values = { id: claim.id, found: region.id, regionBone: region.bone, bone: [...bones].join(' and ') };
    return [checkProblem('regionOnOtherBone', `${where}.region`, values)];
  }
  if (bone === undefined) return [];
  // With bones that contradict each other the break has to lie on one of them.
  const lengths = [...bones].map((b) => ({ bone: b, lengthMm: partAxis(foot, b).lengthMm }));
  if (lengths.some(({ lengthMm }) => place.mm <= lengthMm)) return [];
  const longest = lengths.reduce((a, b) => (b.lengthMm > a.lengthMm ? b : a));
  const values = {
    id: claim.id,
    mm: String(place.mm),
    bone: longest.bone,
    lengthMm: String(Math.floor(longest.lengthMm)),
  };
  return [checkProblem('breakOutsideBone', `${where}.mm`, values)];
};

/** Nobody is treated, followed up or back before being hurt. A disputed day of injury is compared with nothing. */
const checkDates = (file: CaseFile): CheckProblem[] => {
  const facts = factsOf(file);
  if (facts.injuryDate.state !== 'stated') return [];
  const injured = facts.injuryDate.value;
  const at = (id: Claim['id']): string => `claims[${file.claims.findIndex((claim) => claim.id === id)}].value.on`;
  return [
    ...facts.treatments.flatMap(({ id, value: { on } }) =>
      on !== undefined && on < injured ? [checkProblem('treatedBeforeInjury', at(id), { id, found: on, injured })] : [],
    ),
    ...facts.followUps.flatMap(({ id, value: { on } }) =>
      on < injured ? [checkProblem('seenBeforeInjury', at(id), { id, found: on, injured })] : [],
    ),
    ...facts.outcomes.flatMap(({ id, value: { on } }) =>
      on < injured ? [checkProblem('endedBeforeInjury', at(id), { id, found: on, injured })] : [],
    ),
  ];
};

/** Empty when content and foot have everything that the case names. */
export const checkCase = (file: CaseFile, content: Listed, foot: Foot): readonly CheckProblem[] => {
  const bones = bonesIn(file, content);
  const named = file.claims.flatMap((claim, i) => {
    if (claim.subject === 'place') return checkPlace(claim, `claims[${i}].value`, bones, foot);
    const record = namedBy(claim, content);
    if (!record || record.known.some((k) => k.id === record.found)) return [];
    const values = { id: claim.id, found: record.found, known: record.known.map((k) => k.id).join(', ') };
    return [checkProblem(record.code, `claims[${i}].${record.path}`, values)];
  });
  return [...named, ...checkDates(file), ...checkCare(file, content)];
};
