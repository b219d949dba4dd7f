/** The one picture of an injury told in short: its bones in ink, and on them the parts it lies in, outlined. Never a texture that tells of load or blood. */
import { meshOf } from '../../anatomy/bone-axis';
import { meshCentroid } from '../../anatomy/mesh';
import { exitOf } from '../../anatomy/places';
import { outlineOfRegion } from '../../anatomy/region-outline';
import { regionsOf } from '../../anatomy/regions';
import type { Foot, Region } from '../../anatomy/types';
import { regionsOfCard } from '../../content/look-up';
import type { Card } from '../../content/schema';
import type { BoneId, RegionId } from '../../ids';
import type { Vec3 } from '../../units';
import type { Stroke } from '../draw/strokes';

/** One part in which the injury lies. */
export interface MarkedPlace {
  readonly region: RegionId;
  readonly bone: BoneId;
  /** On the surface, where it is looked at from; null where no way out is found. */
  readonly at: Vec3 | null;
  readonly lines: readonly (readonly Vec3[])[];
}

const FROM: Readonly<Record<Card['view'], Vec3>> = {
  outer: [-1, 0, 0],
  inner: [1, 0, 0],
  top: [0, 1, 0],
  sole: [0, -1, 0],
  front: [0, 0, 1],
  back: [0, 0, -1],
};

const pointOf = (foot: Foot, { bone, kind, centre }: Region, view: Card['view']): Vec3 | null => {
  if (kind !== 'zone' && kind !== 'stretch' && kind !== 'watershed' && kind !== 'facet') return centre;
  const mesh = meshOf(foot, bone);
  return exitOf(mesh, centre, FROM[view]) ?? exitOf(mesh, meshCentroid(mesh), FROM[view]);
};

/** A foot is looked at many times while a card is open, and its regions are the same each time. */
const kept = new WeakMap<Foot, Map<string, readonly MarkedPlace[]>>();

/** The parts in which it lies, in its order; none where its bones are meant whole. */
export const markedPlaces = (foot: Foot, card: Card): readonly MarkedPlace[] => {
  const places = kept.get(foot) ?? new Map<string, readonly MarkedPlace[]>();
  kept.set(foot, places);
  const known = places.get(card.id);
  if (known !== undefined) return known;
  const found = regionsOfCard(card).flatMap((id): MarkedPlace[] => {
    const region = regionsOf(foot).find((each) => each.id === id);
    if (region === undefined) return [];
    const { bone } = region;
    return [
      { region: id, bone, at: pointOf(foot, region, card.view), lines: outlineOfRegion(meshOf(foot, bone), region) },
    ];
  });
  places.set(card.id, found);
  return found;
};

/** The bones that the picture is of, the one looked at first: those of its parts, or all of them where they are meant whole. */
export const inkedBones = (card: Card, marked: readonly MarkedPlace[]): readonly BoneId[] => [
  ...new Set([...card.bones.slice(0, 1), ...(card.place.is === 'bones' ? card.bones : marked.map(({ bone }) => bone))]),
];

/** Quiet lines, as of all that is shown beside a case: never the sawtooth of a break. */
export const placeStrokes = (marked: readonly MarkedPlace[]): Stroke[] => {
  const lines = marked.flatMap((place) => place.lines);
  return lines.length === 0
    ? []
    : [
        { lines, colour: 'ivory', widthPx: 8, dashMm: 0, liftMm: 0.9 },
        { lines, colour: 'ink', widthPx: 2.8, dashMm: 0, liftMm: 1 },
      ];
};
