/**
 * What a computation may look at besides its inputs: the content and the foot. Building a foot is dear, so feet are kept by
 * their parameters, and what is derived from a foot is kept with it. Kept values are pure functions of their keys.
 */
import * as v from 'valibot';
import { buildFoot, isUsual, meshOf, partAxis, partsOf, regionsOf, shapeSchema, startFrom, zoneAt } from '../anatomy';
import type { BoneAxis, Foot, FootParameters, Region, Zone } from '../anatomy/types';
import type { Content } from '../content/schema';
import type { BoneId, RegionId } from '../ids';
import { type Ground, groundOf } from '../perfusion';

export interface Context {
  readonly content: Content;
  readonly footFor: (parameters: FootParameters) => Foot;
}

type Shape = v.InferOutput<typeof shapeSchema>;

const shapes = new WeakMap<object, Shape>();

/** Feet that start from the triangles of one usual foot; where none was given, from nothing. */
interface Built {
  /** Its own, since the triangles are kept with the shape. */
  readonly shape: Shape;
  readonly feet: Map<string, Foot>;
}
const built = new WeakMap<object, WeakMap<object, Built>>();
/** The usual foot that a built one started from. */
const startedFrom = new WeakMap<Foot, Foot>();

/** The shape parameters of the content, read once. */
export const shapeOf = (content: Content): Shape => {
  const kept = shapes.get(content);
  if (kept !== undefined) return kept;
  const shape = v.parse(shapeSchema, content.shape);
  shapes.set(content, shape);
  return shape;
};

const keyOf = (parameters: FootParameters): string =>
  JSON.stringify(Object.entries(parameters).sort(([a], [b]) => a.localeCompare(b)));

/** The feet kept for this content and the usual foot given: those that start from it differ in the ninth digit from those that do not. */
const builtFrom = (content: Content, usual: Foot | null): Built => {
  const all = built.get(content) ?? new WeakMap<object, Built>();
  built.set(content, all);
  const kept = all.get(usual ?? content);
  if (kept !== undefined) return kept;
  const shape = usual === null ? shapeOf(content) : { ...shapeOf(content) };
  if (usual !== null) startFrom(shape, usual);
  const made: Built = { shape, feet: new Map() };
  all.set(usual ?? content, made);
  return made;
};

const usualBehind = (given: Foot | undefined): Foot | null =>
  given === undefined ? null : isUsual(given) ? given : (startedFrom.get(given) ?? null);

/** The standing right foot of these parameters: the one given, or that it started from, when it is that foot, else built and kept. */
export const contextOf = (content: Content, given?: Foot): Context => ({
  content,
  footFor: (parameters) => {
    const key = keyOf(parameters);
    const usual = usualBehind(given);
    for (const foot of [given, usual])
      if (foot?.side === 'right' && foot.pose === 'standing' && keyOf(foot.parameters) === key) return foot;
    const { shape, feet } = builtFrom(content, usual);
    const foot = feet.get(key) ?? buildFoot(shape, parameters, 'standing', 'fine');
    feet.set(key, foot);
    if (usual !== null) startedFrom.set(foot, usual);
    return foot;
  },
});

interface Derived {
  readonly zones: Map<BoneId, readonly Zone[]>;
  readonly regions: readonly Region[];
  readonly axes: Map<BoneId, BoneAxis>;
  readonly grounds: Map<BoneId, Ground>;
}
const derived = new WeakMap<Foot, Derived>();
const derivedFrom = (foot: Foot): Derived => {
  const kept = derived.get(foot);
  if (kept !== undefined) return kept;
  const made: Derived = { zones: new Map(), regions: regionsOf(foot), axes: new Map(), grounds: new Map() };
  derived.set(foot, made);
  return made;
};

/** The way along which a bone's parts lie and a break is placed. */
export const axisOn = (foot: Foot, bone: BoneId): BoneAxis => {
  const { axes } = derivedFrom(foot);
  const axis = axes.get(bone) ?? partAxis(foot, bone);
  axes.set(bone, axis);
  return axis;
};
/** The inside of a bone, for what spreads through it. */
export const groundOn = (foot: Foot, bone: BoneId): Ground => {
  const { grounds } = derivedFrom(foot);
  const ground = grounds.get(bone) ?? groundOf(meshOf(foot, bone), axisOn(foot, bone));
  grounds.set(bone, ground);
  return ground;
};
/** The parts of a bone in order along `axisOn`; none where the content names none. */
export const zonesOn = (foot: Foot, bone: BoneId): readonly Zone[] => {
  const { zones } = derivedFrom(foot);
  const found = zones.get(bone) ?? partsOf(foot, bone);
  zones.set(bone, found);
  return found;
};
export const regionsOn = (foot: Foot): readonly Region[] => derivedFrom(foot).regions;
/** A part of a bone by its name; null when the bone has no such part. */
export const zoneNamed = (foot: Foot, bone: BoneId, region: RegionId): Zone | null =>
  zonesOn(foot, bone).find((z) => z.region === region) ?? null;
/** The part of a bone at a station. */
export const zoneAtStation = (foot: Foot, bone: BoneId, sMm: number): RegionId | null =>
  zoneAt(zonesOn(foot, bone), sMm);
