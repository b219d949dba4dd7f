/** The one picture of an injury told in short: its bone, and on it the place, outlined. Never a texture that tells of load or blood. */
import { meshOf } from '../../anatomy/bone-axis';
import { meshCentroid } from '../../anatomy/mesh';
import { exitOf } from '../../anatomy/places';
import { outlineOfRegion } from '../../anatomy/region-outline';
import { regionsOf } from '../../anatomy/regions';
import type { Foot, Region } from '../../anatomy/types';
import type { Card } from '../../content/schema';
import type { RegionId } from '../../ids';
import type { Vec3 } from '../../units';
import type { Stroke } from '../draw/strokes';

export interface MarkedPlace {
  readonly region: RegionId;
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
  if (kind !== 'zone' && kind !== 'watershed' && kind !== 'facet') return centre;
  const mesh = meshOf(foot, bone);
  return exitOf(mesh, centre, FROM[view]) ?? exitOf(mesh, meshCentroid(mesh), FROM[view]);
};

/** A foot is looked at many times while a card is open, and its regions are the same each time. */
const kept = new WeakMap<Foot, Map<string, MarkedPlace | null>>();

export const markedPlace = (foot: Foot, card: Card): MarkedPlace | null => {
  const places = kept.get(foot) ?? new Map<string, MarkedPlace | null>();
  kept.set(foot, places);
  const known = places.get(card.id);
  if (known !== undefined) return known;
  const region = regionsOf(foot).find(({ id }) => id === card.region);
  const place =
    region === undefined
      ? null
      : {
          region: region.id,
          at: pointOf(foot, region, card.view),
          lines: outlineOfRegion(meshOf(foot, region.bone), region),
        };
  places.set(card.id, place);
  return place;
};

/** Quiet lines, as of all that is shown beside a case: never the sawtooth of a break. */
export const placeStrokes = (place: MarkedPlace | null): Stroke[] =>
  place === null
    ? []
    : [
        { lines: place.lines, colour: 'ivory', widthPx: 8, dashMm: 0, liftMm: 0.9 },
        { lines: place.lines, colour: 'ink', widthPx: 2.8, dashMm: 0, liftMm: 1 },
      ];
