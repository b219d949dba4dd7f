/** What content/anatomy/inside.yaml knows of one bone, at one end or the middle of its bands. mm on the reference foot. */
import type { BoneId } from '../../ids';
import { type Inside, placeOf, type Station, WALLS, type Wall } from './schema';

/** Thickness of the cortex on each side, mm. */
export interface Sides {
  readonly dorsal: number;
  readonly plantar: number;
  readonly medial: number;
  readonly lateral: number;
}

export interface KnownStation {
  readonly name: string;
  readonly at: number;
  /** Null: whatever leaves the canal. */
  readonly sides: Sides | null;
}

export interface KnownCanal {
  readonly at: number;
  readonly acrossMm: number;
  readonly upDownMm: number;
}

export interface KnownBone {
  /** A shell has one station. */
  readonly stations: readonly KnownStation[];
  readonly canal: KnownCanal | null;
  readonly isTube: boolean;
}

export const evenSides = (mm: number): Sides => ({ dorsal: mm, plantar: mm, medial: mm, lateral: mm });

/** Throws RangeError for a bone that is not listed. */
export const knownOf = (inside: Inside, bone: BoneId, wall: Wall): KnownBone => {
  const end = WALLS.indexOf(wall);
  const thickness = (name: string): number => {
    const figure = inside.cortex[name];
    if (!figure) throw new RangeError(`no cortex is called ${name}`);
    return figure.band[end] ?? figure.band[1];
  };
  const sidesOf = ({ cortex }: Pick<Station, 'cortex'>): Sides | null => {
    if (cortex === 'fromCanal') return null;
    if (typeof cortex === 'string') return evenSides(thickness(cortex));
    return {
      dorsal: thickness(cortex.dorsal),
      plantar: thickness(cortex.plantar),
      medial: thickness(cortex.medial),
      lateral: thickness(cortex.lateral),
    };
  };
  const shell = inside.shells.find((s) => s.bones.includes(bone));
  if (shell) return { stations: [{ name: 'shell', at: 0, sides: sidesOf(shell) }], canal: null, isTube: false };
  const tube = inside.tubes.find((t) => t.bones.includes(bone));
  if (!tube) throw new RangeError(`nothing is known of the inside of ${bone}`);
  const stations = tube.stations.map((s) => ({ name: s.name, at: placeOf(s, wall), sides: sidesOf(s) }));
  const study = inside.canals.find((c) => c.widths.some((w) => w.bone === bone));
  const widths = study?.widths.find((w) => w.bone === bone);
  if (!study || !widths) return { stations, canal: null, isTube: true };
  // The wider the canal, the thinner the wall.
  const wide = (band: readonly [number, number, number]): number => band[2 - end] ?? band[1];
  const canal = { at: study.at, acrossMm: wide(widths.across), upDownMm: wide(widths.upDown) };
  return { stations, canal, isTube: true };
};
