/**
 * From a point of a bone to its parts, in the words of content: the part that tiles the bone there, its neighbour too where their
 * border is near, and before both a place that an injury is told of. Points and lengths in mm, foot frame.
 */
import { partsNear, partsOf, placesOf } from '../../anatomy';
import type { Foot, Region } from '../../anatomy/types';
import { homesOf, regionsOfCard } from '../../content/look-up';
import type { Content, RegionRecord } from '../../content/schema';
import type { BoneId, RegionId } from '../../ids';
import type { Vec3 } from '../../units';
import type { Lying } from './types';

/** A finger, and a border that is drawn, are no more exact than this. */
const NEAR_BORDER_MM = 2;

type ToldContent = Pick<Content, 'regions' | 'injuries' | 'cards'>;

const toldOf = ({ injuries, cards }: ToldContent): ReadonlySet<RegionId> =>
  new Set([...injuries.flatMap(homesOf), ...cards.flatMap(regionsOfCard)]);

/** What a tap can give on this bone, for those who choose from lists: the parts that tile it, then the places told of. */
export const partsToChoose = (content: ToldContent, bone: BoneId): readonly RegionRecord[] => {
  const told = toldOf(content);
  const own = content.regions.filter((region) => region.bone === bone);
  return [
    ...own.filter(({ kind }) => kind === 'zone'),
    ...own.filter(({ kind, id }) => kind !== 'zone' && told.has(id)),
  ];
};

export const tappedAt = (foot: Foot, content: ToldContent, bone: BoneId, point: Vec3): readonly RegionId[] => {
  const told = toldOf(content);
  const places = placesOf(foot, bone).filter(({ id, contains }) => told.has(id) && contains(point));
  return [...places.map(({ id }) => id), ...partsNear(foot, bone, point, NEAR_BORDER_MM)];
};

/** A stretch lies in each part of which it takes half or more; a place on the surface where its middle does. */
const partsUnder = (foot: Foot, { bone, kind, centre, spanMm }: Region): readonly RegionId[] => {
  if (kind !== 'stretch' || spanMm === undefined) return partsNear(foot, bone, centre, 0);
  const [from, to] = spanMm;
  return partsOf(foot, bone).flatMap(({ region, fromMm, toMm }) =>
    Math.min(to, toMm) - Math.max(from, fromMm) >= (toMm - fromMm) / 2 ? [region] : [],
  );
};

/** In which part of the bone each place lies that an injury is told of. */
export const lyingIn = (foot: Foot, content: ToldContent, bone: BoneId): readonly Lying[] => {
  const told = toldOf(content);
  return placesOf(foot, bone)
    .filter(({ id }) => told.has(id))
    .flatMap((place) => partsUnder(foot, place).map((part) => ({ place: place.id, part })));
};
