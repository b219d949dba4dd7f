/** What things are called for each reader: a plain word for the patient, the trade's for a broadcast, Latin too in study. */
import type { Content, Other } from '../content/schema';
import { shapeOf } from '../explain/context';
import type {
  ActivityId,
  AttachmentId,
  BoneId,
  FactorId,
  InjuryId,
  MechanismId,
  OptionId,
  Reader,
  RegionId,
  StageId,
  VesselId,
} from '../ids';
import { PARTS } from './en/messages';
import { fill } from './fill';
import type { Run } from './types';

export interface Names {
  readonly bone: (id: BoneId) => readonly Run[];
  readonly region: (id: RegionId) => string;
  /** Whether the name of a part says of which bone it is, so that the bone need not be named beside it. */
  readonly namesBone: (id: RegionId, bone: BoneId) => boolean;
  readonly injury: (id: InjuryId) => string;
  readonly option: (id: OptionId) => string;
  readonly mechanism: (id: MechanismId) => string;
  readonly activity: (id: ActivityId) => string;
  readonly vessel: (id: VesselId) => string;
  readonly stage: (id: StageId) => string;
  readonly factor: (id: FactorId) => string;
  readonly attachment: (id: AttachmentId) => string;
  /** What an injury can be taken for. */
  readonly other: (other: Other) => string;
}

/** A record by id. An id that the content does not have is shown as it is: a case may name what was since removed. */
const named = <T extends { readonly id: string }>(
  items: readonly T[],
  id: string,
  name: (item: T) => string,
): string => {
  const found = items.find((item) => item.id === id);
  return found === undefined ? id : name(found);
};

const ZONE = /^mt5-zone-(\d)$/;

export const namesFor = (content: Content, reader: Reader): Names => {
  const study = reader === 'study';
  const either = (item: { readonly term: string; readonly plain: string }): string => (study ? item.term : item.plain);
  return {
    bone: (id) => {
      const bone = content.bones.find((b) => b.id === id);
      if (bone === undefined) return [{ text: id }];
      if (reader === 'patient') return [{ text: bone.plain }];
      if (!study || bone.latin === bone.term) return [{ text: bone.term }];
      return [{ text: `${bone.term} (` }, { text: bone.latin, latin: true }, { text: ')' }];
    },
    region: (id) => {
      const number = id.match(ZONE)?.[1];
      return named(content.regions, id, (region) =>
        study ? region.term : number === undefined ? region.plain : fill(PARTS.zone, { number, plain: region.plain }),
      );
    },
    namesBone: (id, bone) => {
      const region = content.regions.find((r) => r.id === id);
      const term = content.bones.find((b) => b.id === bone)?.term;
      if (region === undefined || term === undefined) return false;
      return study ? region.term.includes(term) : /\bbone\b/.test(region.plain);
    },
    injury: (id) => named(content.injuries, id, either),
    option: (id) => named(content.options, id, either),
    mechanism: (id) => named(content.mechanisms, id, either),
    activity: (id) => named(content.activities, id, either),
    vessel: (id) => named(content.vessels, id, either),
    stage: (id) => named(content.stages, id, either),
    factor: (id) => named(content.factors, id, (f) => f.term),
    attachment: (id) => named(content.attachments, id, (a) => (study ? a.structure : a.plain)),
    other: (other) => {
      switch (other.is) {
        case 'injury':
          return named(content.injuries, other.injury, either);
        case 'card':
          return named(content.cards, other.card, either);
        case 'lookAlike':
          return named(shapeOf(content).lookAlikes, other.id, either);
        case 'other':
          return either(other);
      }
    },
  };
};
