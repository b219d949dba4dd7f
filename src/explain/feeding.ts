/** Who feeds which part of the bone, and what a break leaves: `src/perfusion` fed from content and the foot. */
import { stationOf } from '../anatomy';
import type { Foot } from '../anatomy/types';
import type { Place } from '../cases/schema';
import type { Content, Evidence } from '../content/schema';
import type { RegionId } from '../ids';
import { feedingOf } from '../perfusion';
import type { FeedingTable } from '../perfusion/types';
import { axisOn, type Context, regionsOn, ZONED_BONE, zoneNamed, zonesOn } from './context';
import { locate, type OnFoot } from './place';

export interface FeedingRun extends OnFoot {
  readonly place: Place | null;
}

/** Where a vessel goes in: the middle of the zone or region named. */
const entryOn =
  (foot: Foot) =>
  (region: RegionId): number => {
    const zone = zoneNamed(foot, region);
    if (zone !== null) return (zone.fromMm + zone.toMm) / 2;
    const found = regionsOn(foot).find((r) => r.id === region && r.bone === ZONED_BONE);
    if (found === undefined) throw new RangeError(`the drawn foot has no region ${region}`);
    return stationOf(axisOn(foot, ZONED_BONE), found.centre);
  };

export const feedingFor = (context: Context, run: FeedingRun): FeedingTable => {
  const foot = context.footFor(run.foot);
  const vessels = context.content.vessels.filter((v) => v.bone === ZONED_BONE);
  const at = run.place === null ? null : locate(foot, ZONED_BONE, run.place);
  return feedingOf(zonesOn(foot, ZONED_BONE), vessels, at === null ? null : { sMm: at.sMm }, entryOn(foot));
};

export const evidenceOfFeeding = (content: Content, regions?: readonly RegionId[]): readonly Evidence[] =>
  content.vessels
    .filter((v) => v.bone === ZONED_BONE && (regions === undefined || v.feeds.some((f) => regions.includes(f.region))))
    .flatMap((v) => (v.feedsEvidence === undefined ? [v.evidence] : [v.evidence, v.feedsEvidence]));
