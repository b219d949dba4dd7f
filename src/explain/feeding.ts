/** Who feeds which part of the bone, and what a break leaves: `src/perfusion` fed from content and the foot. */
import { stationOf } from '../anatomy';
import type { Foot } from '../anatomy/types';
import type { Place } from '../cases/schema';
import type { Content, Evidence } from '../content/schema';
import type { BoneId, RegionId } from '../ids';
import { feedingOf } from '../perfusion';
import type { FeedingTable } from '../perfusion/types';
import { axisOn, type Context, regionsOn, zoneNamed, zonesOn } from './context';
import { locate, type OnFoot } from './place';

export interface FeedingRun extends OnFoot {
  readonly bone: BoneId;
  readonly place: Place | null;
}

/** Where a vessel goes in: the middle of the zone or region named. */
const entryOn =
  (foot: Foot, bone: BoneId) =>
  (region: RegionId): number => {
    const zone = zoneNamed(foot, bone, region);
    if (zone !== null) return (zone.fromMm + zone.toMm) / 2;
    const found = regionsOn(foot).find((r) => r.id === region && r.bone === bone);
    if (found === undefined) throw new RangeError(`the drawn foot has no region ${region}`);
    return stationOf(axisOn(foot, bone), found.centre);
  };

export const feedingFor = (context: Context, run: FeedingRun): FeedingTable => {
  const foot = context.footFor(run.foot);
  const vessels = context.content.vessels.filter((v) => v.bone === run.bone);
  const at = run.place === null ? null : locate(foot, run.bone, run.place);
  return feedingOf(zonesOn(foot, run.bone), vessels, at === null ? null : { sMm: at.sMm }, entryOn(foot, run.bone));
};

/** Whether the content knows vessels of a bone. */
export const isFed = (content: Content, bone: BoneId | null): bone is BoneId =>
  content.vessels.some((v) => v.bone === bone);

export const evidenceOfFeeding = (content: Content, bone: BoneId, regions?: readonly RegionId[]): readonly Evidence[] =>
  content.vessels
    .filter((v) => v.bone === bone && (regions === undefined || v.feeds.some((f) => regions.includes(f.region))))
    .flatMap((v) => (v.feedsEvidence === undefined ? [v.evidence] : [v.evidence, v.feedsEvidence]));
