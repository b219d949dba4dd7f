/**
 * Sections along the metatarsals as the frame needs them: cut once on the standing foot, with the cortex at the thick, usual and
 * thin end of what is known of it; a figure of the ensemble lies anywhere between. Stations and centroids in the bone's own axes.
 */
import { fromBone } from '../../anatomy';
import type { InsideOfShape } from '../../anatomy/inside';
import type { Foot } from '../../anatomy/types';
import type { Vec3 } from '../../units';
import { bendingSectionOf, cutsAlong, evenShares, type SectionStation, sectionsAlong } from '../section';
import type { SectionProperties } from '../types';
import { type FootMarks, metatarsalOf, RAYS, type Ray } from './landmarks';

/** What the frame's users ask of a cut: the canal has gone into its section. */
export type RayCut = Omit<SectionStation, 'canals'>;

export interface RayWalls {
  readonly usual: readonly RayCut[];
  /** At the ends of the cortex's bands; null where only the usual foot was asked for. */
  readonly thick: readonly RaySection[] | null;
  readonly thin: readonly RaySection[] | null;
}
export type RaySections = Readonly<Record<Ray, RayWalls>>;

/** Stations of every metatarsal, tip to tip: about two millimetres apart. */
const STATIONS = 33;

/**
 * A wall at the end of its band: cut at every other station and taken midway between, as it only widens bands. Its twist and shear go
 * with the usual section's, as its polar moment and as its area.
 */
const atEnd = (
  foot: Foot,
  ray: Ray,
  shape: InsideOfShape,
  wall: 'thick' | 'thin',
  usual: readonly RayCut[],
): RaySection[] => {
  const every = evenShares(STATIONS).filter((_, i) => i % 2 === 0);
  const cut = cutsAlong(foot, metatarsalOf(ray), shape, wall, every).map((each, k): RaySection => {
    const like = (usual[2 * k] as RayCut).section;
    const own = bendingSectionOf(each.outline, each.canals);
    const [twist, area] = [
      (own.iLateralMm4 + own.iDorsalMm4) / (like.iLateralMm4 + like.iDorsalMm4),
      own.areaMm2 / like.areaMm2,
    ];
    return {
      ...own,
      jMm4: like.jMm4 * twist,
      shearAreaMostMm2: like.shearAreaMostMm2 * area,
      shearAreaLeastMm2: like.shearAreaLeastMm2 * area,
    };
  });
  return usual.map((_, i) => {
    const [before, after] = [cut[Math.floor(i / 2)], cut[Math.ceil(i / 2)]] as [RaySection, RaySection];
    return before === after ? before : mixed(before, after, 0.5);
  });
};

const cutBefore = new WeakMap<Foot, RaySections>();

/** Sections that were cut before on this very foot, with the bands' ends: the usual foot is shipped with its own. */
export const takeSections = (foot: Foot, sections: RaySections): void => {
  cutBefore.set(foot, sections);
};

/** Cuts all five metatarsals. A second or two, with the bands' ends more: keep the result with the foot. */
export const raySections = (foot: Foot, shape: InsideOfShape, bands: boolean): RaySections => {
  const before = cutBefore.get(foot);
  if (before) return before;
  const walls = (ray: Ray): RayWalls => {
    const usual = sectionsAlong(foot, metatarsalOf(ray), shape, 'usual', evenShares(STATIONS));
    if (!bands) return { usual, thick: null, thin: null };
    return { usual, thick: atEnd(foot, ray, shape, 'thick', usual), thin: atEnd(foot, ray, shape, 'thin', usual) };
  };
  return Object.fromEntries(RAYS.map((ray) => [ray, walls(ray)])) as RaySections;
};

/** What the frame and the stress need of a section, between two cuts or two walls. */
export type RaySection = Pick<
  SectionProperties,
  | 'centroidMm'
  | 'areaMm2'
  | 'iLateralMm4'
  | 'iDorsalMm4'
  | 'iProductMm4'
  | 'jMm4'
  | 'shearAreaMostMm2'
  | 'shearAreaLeastMm2'
>;

export const mixed = (a: RaySection, b: RaySection, t: number): RaySection => {
  const mix = (x: number, y: number): number => x + (y - x) * t;
  return {
    centroidMm: [mix(a.centroidMm[0], b.centroidMm[0]), mix(a.centroidMm[1], b.centroidMm[1])],
    areaMm2: mix(a.areaMm2, b.areaMm2),
    iLateralMm4: mix(a.iLateralMm4, b.iLateralMm4),
    iDorsalMm4: mix(a.iDorsalMm4, b.iDorsalMm4),
    iProductMm4: mix(a.iProductMm4, b.iProductMm4),
    jMm4: mix(a.jMm4, b.jMm4),
    shearAreaMostMm2: mix(a.shearAreaMostMm2, b.shearAreaMostMm2),
    shearAreaLeastMm2: mix(a.shearAreaLeastMm2, b.shearAreaLeastMm2),
  };
};

const otherWall = ({ thick, thin }: RayWalls, wall: number): readonly RaySection[] => {
  const other = wall < 0 ? thick : thin;
  if (!other) throw new RangeError('these sections were cut without the ends of the bands');
  return other;
};

/** The section at the i-th cut; `wall` from -1 (thick) over 0 (usual) to 1 (thin). */
export const sectionOfCut = (walls: RayWalls, i: number, wall: number): RaySection => {
  const usual = walls.usual[i]?.section;
  if (!usual) throw new RangeError(`no cut ${i}`);
  return wall === 0 ? usual : mixed(usual, otherWall(walls, wall)[i] ?? usual, Math.abs(wall));
};

type Walls = 'usual' | 'thick' | 'thin';
/** Sections between cuts, kept: an ensemble asks for the same stations thousands of times. */
const keptBetween = new WeakMap<RayWalls, Readonly<Record<Walls, Map<number, RaySection>>>>();

const between = (walls: RayWalls, which: Walls, sMm: number): RaySection => {
  const all = keptBetween.get(walls) ?? { usual: new Map(), thick: new Map(), thin: new Map() };
  keptBetween.set(walls, all);
  const kept = all[which];
  const known = kept.get(sMm);
  if (known) return known;
  const cuts = walls.usual;
  const after = cuts.findIndex((cut) => cut.sMm > sMm);
  const high = after < 0 ? cuts.length - 1 : Math.max(1, after);
  const [a, b] = [cuts[high - 1], cuts[high]];
  if (!a || !b) throw new RangeError('a member needs two cuts or more');
  const t = Math.min(1, Math.max(0, (sMm - a.sMm) / (b.sMm - a.sMm)));
  const wall = which === 'usual' ? 0 : which === 'thick' ? -1 : 1;
  const made = mixed(sectionOfCut(walls, high - 1, wall), sectionOfCut(walls, high, wall), t);
  kept.set(sMm, made);
  return made;
};

/** The section at a station, between the cuts on either side; beyond them the last holds. */
export const sectionAt = (walls: RayWalls, sMm: number, wall: number): RaySection => {
  const usual = between(walls, 'usual', sMm);
  return wall === 0 ? usual : mixed(usual, between(walls, wall < 0 ? 'thick' : 'thin', sMm), Math.abs(wall));
};

/** The middle of the usual section at a station, on the standing foot. */
export const centroidAt = (sections: RaySections, marks: FootMarks, ray: Ray, sMm: number): Vec3 => {
  const [dorsal, lateral] = sectionAt(sections[ray], sMm, 0).centroidMm;
  return fromBone(marks.rays[ray].axis, sMm, dorsal, lateral);
};
