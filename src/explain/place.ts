/** Where on the drawn bone a stated place lies: a distance is taken as it is, a named part is drawn at its middle. */
import { stationOf } from '../anatomy';
import type { Foot, FootParameters } from '../anatomy/types';
import type { Place } from '../cases/schema';
import type { BoneId, RegionId } from '../ids';
import { axisOn, regionsOn, zoneAtStation, zoneNamed, zonesOn } from './context';

export interface Located {
  readonly sMm: number;
  readonly region: RegionId;
  readonly precision: 'distance' | 'region';
}

/** Tenths of a millimetre: finer than anything the drawing can mean, and the same number in every telling. */
export const tenth = (mm: number): number => Math.round(mm * 10) / 10;

/** Null when the place is not on the bone, or when the bone has no parts to name. */
export const locate = (foot: Foot, bone: BoneId, place: Place): Located | null => {
  if (zonesOn(foot, bone).length === 0) return null;
  if (place.by === 'distance') {
    const region = zoneAtStation(foot, bone, place.mm);
    return region === null ? null : { sMm: tenth(place.mm), region, precision: 'distance' };
  }
  const zone = zoneNamed(foot, bone, place.region);
  if (zone !== null) return { sMm: tenth((zone.fromMm + zone.toMm) / 2), region: zone.region, precision: 'region' };
  const region = regionsOn(foot).find((r) => r.id === place.region && r.bone === bone);
  if (region === undefined) return null;
  const sMm = stationOf(axisOn(foot, bone), region.centre);
  const home = zoneAtStation(foot, bone, sMm);
  return home === null ? null : { sMm: tenth(sMm), region: home, precision: 'region' };
};

/** What every computation on a foot takes: the parameters it can be rebuilt from. */
export interface OnFoot {
  readonly foot: FootParameters;
}
