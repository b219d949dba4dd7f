/** A straight round bar with vessels, for what can be worked out by hand: stations along Z, zones as told, places on its surface. */
import type { BoneAxis, Mesh, Region, Zone } from '../../src/anatomy/types';
import { idOf, type RegionId, type VesselEdgeId, type VesselId } from '../../src/ids';
import { type FeedingInput, type FeedingTable, feedingOf, groundOf, type VesselNode } from '../../src/perfusion';
import { length, subtract } from '../../src/units';
import { barMesh } from './tubes';

export const region = (name: string): RegionId => idOf<RegionId>(name);
export const vesselId = (name: string): VesselId => idOf<VesselId>(name);
const zone = (name: string, fromMm: number, toMm: number): Zone => ({ region: region(name), fromMm, toMm });

export const BAR = { lengthMm: 70, radiusMm: 3 } as const;
const straight: Mesh = barMesh({
  lengthMm: BAR.lengthMm,
  semi: () => [BAR.radiusMm, BAR.radiusMm],
  around: 24,
  along: 20,
});
const AXIS: BoneAxis = {
  origin: [0, 0, 0],
  axis: [0, 0, 1],
  dorsal: [0, 1, 0],
  lateral: [-1, 0, 0],
  lengthMm: BAR.lengthMm,
};
/** The same bar told from its other end. */
const BACK: BoneAxis = { ...AXIS, origin: [0, 0, BAR.lengthMm], axis: [0, 0, -1] };

export const ZONES = [
  zone('zone-1', 0, 15),
  zone('zone-2', 15, 28),
  zone('zone-3', 28, 43),
  zone('shaft', 43, 57),
  zone('head', 57, 70),
];

/** A hole or place on the under side of the bar. */
export const place = (name: string, sMm: number, kind: Region['kind'] = 'foramen'): Region => ({
  id: region(name),
  bone: 'metatarsal5',
  kind,
  centre: [0, -BAR.radiusMm, sMm],
  contains: (p) => length(subtract(p, [0, -BAR.radiusMm, sMm])) < 1,
});

/** Straight from the leg into the bar: at places by name, or null as a net. */
export const vessel = (id: string, enters: readonly (string | null)[], said: readonly string[] = []): VesselNode => ({
  id: vesselId(id),
  from: [],
  ends: enters.map((at) => ({ bone: 'metatarsal5' as const, at: at === null ? null : region(at) })),
  said: said.map((r) => ({ region: region(r) })),
});

export interface Asked {
  readonly vessels: readonly VesselNode[];
  readonly places?: readonly Region[];
  readonly breakMm?: number | null;
  readonly cuts?: readonly string[];
  readonly bare?: readonly string[];
  readonly cells?: number;
  readonly turned?: boolean;
}

const turnedZones = [...ZONES].reverse().map((z) => zone(z.region, BAR.lengthMm - z.toMm, BAR.lengthMm - z.fromMm));
const grounds = new Map<string, ReturnType<typeof groundOf>>();

export const inputOf = ({
  vessels,
  places = [],
  breakMm = null,
  cuts = [],
  bare = [],
  cells = 3000,
  turned = false,
}: Asked): FeedingInput => {
  const key = `${cells} ${turned}`;
  const ground = grounds.get(key) ?? groundOf(straight, turned ? BACK : AXIS, cells);
  grounds.set(key, ground);
  return {
    bone: 'metatarsal5',
    ground,
    places: { zones: turned ? turnedZones : ZONES, regions: places },
    vessels,
    lacking: new Set(),
    bare: bare.map(region),
    cuts: new Set(cuts as VesselEdgeId[]),
    joined: false,
    breakMm: breakMm === null || !turned ? breakMm : BAR.lengthMm - breakMm,
  };
};

export const fed = (asked: Asked): FeedingTable => feedingOf(inputOf(asked));
