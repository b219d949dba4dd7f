/** One record by its id. Content is checked when it is compiled, so an id that is not there is a programmer's error and throws. */
import type { BoneId, RegionId } from '../ids';
import type {
  Activity,
  Attachment,
  Bone,
  Card,
  Caution,
  Content,
  Factor,
  Injury,
  JointRecord,
  Mechanism,
  Option,
  RegionRecord,
  Source,
  Stage,
  Study,
  Vessel,
} from './schema';

const find = <T extends { readonly id: string }>(kind: string, records: readonly T[], id: string): T => {
  const found = records.find((r) => r.id === id);
  if (!found) throw new RangeError(`no ${kind} "${id}" in the content`);
  return found;
};

/** Whether a list of records has this id: for ids that come from a case. */
export const hasId = (records: readonly { readonly id: string }[], id: string): boolean =>
  records.some((r) => r.id === id);

export const boneOf = (c: Pick<Content, 'bones'>, id: string): Bone => find('bone', c.bones, id);
export const jointOf = (c: Pick<Content, 'joints'>, id: string): JointRecord => find('joint', c.joints, id);
export const regionOf = (c: Pick<Content, 'regions'>, id: string): RegionRecord => find('region', c.regions, id);
export const attachmentOf = (c: Pick<Content, 'attachments'>, id: string): Attachment =>
  find('attachment', c.attachments, id);
export const vesselOf = (c: Pick<Content, 'vessels'>, id: string): Vessel => find('vessel', c.vessels, id);
export const mechanismOf = (c: Pick<Content, 'mechanisms'>, id: string): Mechanism =>
  find('mechanism', c.mechanisms, id);
export const activityOf = (c: Pick<Content, 'activities'>, id: string): Activity => find('activity', c.activities, id);
export const injuryOf = (c: Pick<Content, 'injuries'>, id: string): Injury => find('injury', c.injuries, id);
export const optionOf = (c: Pick<Content, 'options'>, id: string): Option => find('option', c.options, id);
export const stageOf = (c: Pick<Content, 'stages'>, id: string): Stage => find('stage', c.stages, id);
export const studyOf = (c: Pick<Content, 'studies'>, id: string): Study => find('study', c.studies, id);
export const cautionOf = (c: Pick<Content, 'cautions'>, id: string): Caution => find('caution', c.cautions, id);
export const factorOf = (c: Pick<Content, 'factors'>, id: string): Factor => find('factor', c.factors, id);
export const sourceOf = (c: Pick<Content, 'sources'>, id: string): Source => find('source', c.sources, id);

/** Every part in which an injury lives, its first home first. */
export const homesOf = ({ region, alsoRegions }: Pick<Injury, 'region' | 'alsoRegions'>): readonly RegionId[] => [
  region,
  ...alsoRegions,
];
/** The parts in which an injury told in short lies; none where its bones are meant whole. */
export const regionsOfCard = ({ place }: Pick<Card, 'place'>): readonly RegionId[] =>
  place.is === 'regions' ? place.regions : [];
/** Every bone of which it can be said, the usual one first. */
export const bonesOf = ({ bone, alsoBones }: Pick<Injury, 'bone' | 'alsoBones'>): readonly BoneId[] => [
  bone,
  ...alsoBones,
];
/** Its home on one bone; null where it has none there. */
export const homeOn = (
  c: Pick<Content, 'regions'>,
  injury: Pick<Injury, 'region' | 'alsoRegions'>,
  bone: BoneId,
): RegionId | null => homesOf(injury).find((id) => c.regions.some((r) => r.id === id && r.bone === bone)) ?? null;

/** Joints in which a bone takes part. */
export const jointsAt = (c: Pick<Content, 'joints'>, bone: string): readonly JointRecord[] =>
  c.joints.filter((j) => j.bones.some((b) => b === bone));
