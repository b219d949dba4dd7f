/**
 * From what is known to what is drawn: which bone carries which layer, which lines lie on it, where "here" is. Pure; the only
 * place in the stage that reads an Explanation for the picture.
 */

import type { Angle } from '../../anatomy/angles';
import { fromBone, meshOf } from '../../anatomy/bone-axis';
import type { LookAlike } from '../../anatomy/look-alikes';
import { partAxis, partsOf } from '../../anatomy/parts';
import type { BoneAxis, Foot, Zone } from '../../anatomy/types';
import type { Card } from '../../content/schema';
import type { BoneId, QuestionId, Reader, RegionId, StrandId } from '../../ids';
import type { BreakSign, SessionState } from '../../session/types';
import { add, length, normalize, scale, subtract, type Vec3 } from '../../units';
import { walkingScale } from '../../wording/load-scale';
import type { Layer } from '../draw/materials';
import { firstHit } from '../draw/pick';
import { plateMesh } from '../draw/plate-mesh';
import type { Stroke } from '../draw/strokes';
import type { TokenName } from '../draw/tokens';
import type { BreakAt, Content, Explanation } from '../types';
import { besideOn } from './aside';
import { bloodField, stressField, zoneField } from './fields';
import { breakLines, ringAt } from './lines';
import { type LoadPathScene, loadPathOf } from './load-path';
import { type StrandScene, strandScene } from './strand';
import { inkedBones, type MarkedPlace, markedPlaces, placeStrokes } from './told-in-short';

/** What the scene needs of the session, so that a still can be made of any question without moving the screen. */
export interface SceneInput {
  readonly content: Pick<Content, 'shape' | 'strands'>;
  readonly reader: Reader;
  /** Little is shown where there is little room. */
  readonly narrow: boolean;
  readonly explanation: Explanation | null;
  readonly question: QuestionId;
  readonly selectedBone: BoneId | null;
  readonly quiz: SessionState['quiz'];
  /** Places that a page lights on the plain foot. */
  readonly lit: SessionState['lit'];
  /** The break under a dragging hand, ahead of the explanation. */
  readonly dragMm: number | null;
  readonly contourPx: number;
  /** A measure of films, as it was taken of this foot. */
  readonly measured: Angle | null;
  /** Something that can be taken for a fracture, by its id. */
  readonly lookAlike: string | null;
  /** Soft tissue, by its id. */
  readonly strand: StrandId | null;
  /** An injury told in short: then nothing of a case is in the picture. */
  readonly card: Card | null;
}

export interface BreakScene {
  readonly at: BreakAt;
  readonly axis: BoneAxis;
  readonly sMm: number;
  /** The sawtooth, mm. */
  readonly lines: readonly (readonly Vec3[])[];
  readonly centre: Vec3;
  /** Largest extent of the cut, mm: decides between ring and sawtooth. */
  readonly acrossMm: number;
}

/** A screw in the canal, drawn and not measured: its line, head first, and a width that the shaft can hold. mm, foot frame. */
export interface ScrewScene {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly widthMm: number;
}

export interface StageScene {
  /** The bone in question; its texture is `layer`. */
  readonly chosen: BoneId | null;
  /** More bones that the picture is of: in ink as the chosen one, without texture. */
  readonly also: readonly BoneId[];
  readonly selected: BoneId | null;
  readonly layer: Layer;
  readonly dimOthers: boolean;
  readonly borders: readonly Stroke[];
  readonly breakAt: BreakScene | null;
  readonly screw: ScrewScene | null;
  /** The way of the load through the foot, where the question is of it and a model speaks for it. */
  readonly loadPath: LoadPathScene | null;
  readonly measured: Angle | null;
  readonly beside: LookAlike | null;
  readonly strand: StrandScene | null;
  /** The parts in which an injury told in short lies. */
  readonly marked: readonly MarkedPlace[];
  readonly explanation: Explanation | null;
  readonly question: QuestionId;
  readonly inQuiz: boolean;
}

const zoneStrokes = (foot: Foot, bone: BoneId, axis: BoneAxis, stations: readonly number[]): Stroke[] => {
  const mesh = meshOf(foot, bone);
  const lines = stations.map((s) => ringAt(mesh, axis, s)).filter((line) => line.length > 1);
  return lines.length === 0 ? [] : [{ lines, colour: 'ink', widthPx: 1.6, dashMm: 0, liftMm: 0.7 }];
};

const breakScene = (foot: Foot, at: BreakAt, axis: BoneAxis, sMm: number): BreakScene => {
  const mesh = meshOf(foot, at.bone);
  const ring = ringAt(mesh, axis, sMm);
  const centre = ring.length === 0 ? fromBone(axis, sMm) : middleOf(ring);
  let acrossMm = 0;
  for (const a of ring)
    for (const b of ring) acrossMm = Math.max(acrossMm, Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]));
  return { at, axis, sMm, lines: breakLines(mesh, axis, sMm, at.direction), centre, acrossMm };
};

/** The line through the middles of two cuts of the shaft, back to where it leaves the base, and at least 15 mm past the break. */
const screwScene = (foot: Foot, bone: BoneId, axis: BoneAxis, breakMm: number): ScrewScene | null => {
  const mesh = meshOf(foot, bone);
  const shares = [0.42, 0.5, 0.58, 0.66, 0.74];
  const rings = shares.map((share) => ringAt(mesh, axis, share * axis.lengthMm));
  if (rings.some((ring) => ring.length === 0)) return null;
  const middles = rings.map(middleOf);
  const [first, last] = [middles[0], middles.at(-1)];
  if (first === undefined || last === undefined) return null;
  const along = normalize(subtract(last, first));
  const narrowest = Math.min(
    ...rings.map((ring, i) => Math.min(...ring.map((p) => length(subtract(p, middles[i] ?? p))))),
  );
  const hit = firstHit(plateMesh(new Map([[bone, mesh]])), subtract(first, scale(along, axis.lengthMm)), along);
  const from = hit?.point ?? first;
  const toMm = Math.min(0.85 * axis.lengthMm, Math.max(0.66 * axis.lengthMm, breakMm + 15));
  return { from, to: add(from, scale(along, toMm)), widthMm: Math.max(2.4, 1.15 * narrowest) };
};

const middleOf = (ring: readonly Vec3[]): Vec3 =>
  scale(
    ring.reduce<Vec3>((s, p) => add(s, p), [0, 0, 0]),
    1 / ring.length,
  );

const shownKinds = (explanation: Explanation, question: QuestionId): ReadonlySet<string> =>
  new Set(
    explanation.questions
      .filter(({ id }) => id === question)
      .flatMap(({ findings }) => findings.flatMap(({ shows }) => shows.map(({ kind }) => kind))),
  );

/** The bone whose part this is, and the part. */
const partNamed = (foot: Foot, region: RegionId): { readonly bone: BoneId; readonly part: Zone } | null => {
  for (const bone of foot.bones.keys()) {
    const part = partsOf(foot, bone).find((p) => p.region === region);
    if (part !== undefined) return { bone, part };
  }
  return null;
};

const quizScene = (foot: Foot, input: SceneInput, quiz: NonNullable<SessionState['quiz']>): StageScene => {
  const base: StageScene = {
    chosen: quiz.litBone,
    also: [],
    selected: null,
    layer: { kind: 'shade' },
    dimOthers: quiz.litBone !== null,
    borders: [],
    breakAt: null,
    screw: null,
    loadPath: null,
    measured: null,
    beside: null,
    strand: null,
    marked: [],
    explanation: input.explanation,
    question: input.question,
    inQuiz: true,
  };
  if (quiz.litRegion === null) return base;
  const lit = partNamed(foot, quiz.litRegion);
  if (lit === null) return base;
  const { bone, part } = lit;
  const middle = (part.fromMm + part.toMm) / 2;
  const axis = partAxis(foot, bone);
  const at: BreakAt = {
    bone,
    sMm: middle,
    region: quiz.litRegion,
    precision: 'region',
    status: 'confirmed',
    whatIf: false,
    direction: 'transverse',
  };
  return { ...base, chosen: bone, dimOthers: true, breakAt: breakScene(foot, at, axis, middle) };
};

/**
 * Places on the plain foot: parts of the first bone that has any are hatched as zones are, with lines at their ends; another is a whole
 * bone, chosen as by hand. More than that the plate cannot tell apart.
 */
const litScene = (foot: Foot, plain: StageScene, places: NonNullable<SessionState['lit']>): StageScene => {
  const named = places.flatMap(({ region }) => (region === null ? [] : (partNamed(foot, region) ?? [])));
  const bone = named[0]?.bone;
  const whole = places.find(({ region }) => region === null)?.bone ?? null;
  const lit: StageScene = { ...plain, explanation: null, selected: whole, dimOthers: true };
  if (bone === undefined) return lit;
  const axis = partAxis(foot, bone);
  const parts = named.flatMap((each) => (each.bone === bone ? [each.part] : [])).sort((a, b) => a.fromMm - b.fromMm);
  const stations = new Set(parts.flatMap(({ fromMm, toMm }) => [fromMm, toMm]));
  const ends = [...stations].filter((s) => s > 0 && s < axis.lengthMm);
  return {
    ...lit,
    chosen: bone,
    layer: { kind: 'zones', axis, field: zoneField(parts, axis.lengthMm) },
    borders: zoneStrokes(foot, bone, axis, ends),
  };
};

const layerOf = (e: Explanation, question: QuestionId, axis: BoneAxis, screw: boolean): Layer => {
  if (question === 'where' && e.zones.length > 0)
    return { kind: 'zones', axis, field: zoneField(e.zones, axis.lengthMm) };
  if (question === 'how' && e.stations !== null) {
    const scale = walkingScale(e);
    if (scale !== null && e.stations.bone === e.bone)
      return { kind: 'stress', axis, field: stressField(e.stations, axis.lengthMm), topMPa: scale.topMPa };
  }
  if (question === 'why' && e.feeding !== null)
    return { kind: 'blood', axis, field: bloodField(e.feeding, axis.lengthMm) };
  return { kind: question === 'options' && screw ? 'open' : 'shade' };
};

const pathOf = (foot: Foot, { content, reader, narrow }: SceneInput, explanation: Explanation): LoadPathScene | null =>
  loadPathOf({ foot, shape: content.shape, explanation, few: reader === 'patient' || narrow });

const cardScene = (foot: Foot, plain: StageScene, card: Card): StageScene => {
  const marked = markedPlaces(foot, card);
  const [chosen = null, ...also] = inkedBones(card, marked);
  const selected = plain.selected === chosen ? null : plain.selected;
  return {
    ...plain,
    chosen,
    also,
    selected,
    dimOthers: true,
    borders: placeStrokes(marked),
    marked,
    explanation: null,
  };
};

export const sceneOf = (foot: Foot, input: SceneInput): StageScene => {
  if (input.quiz !== null) return quizScene(foot, input, input.quiz);
  const { explanation: e, question } = input;
  const bone = e?.bone ?? null;
  const selected = input.selectedBone === bone ? null : input.selectedBone;
  const plain: StageScene = {
    chosen: null,
    also: [],
    selected,
    layer: { kind: 'shade' },
    dimOthers: selected !== null,
    borders: [],
    breakAt: null,
    screw: null,
    loadPath: null,
    measured: input.measured,
    beside: besideOn(foot, input.lookAlike),
    strand: strandScene(foot, input.content.strands, input.strand),
    marked: [],
    explanation: e,
    question,
    inQuiz: false,
  };
  if (input.lit !== null) return litScene(foot, plain, input.lit);
  if (input.card !== null) return cardScene(foot, plain, input.card);
  if (e === null || bone === null) return plain;
  const axis = partAxis(foot, bone);
  const inner = e.zones
    .filter(({ fromMm }) => fromMm > 0)
    .map(({ fromMm }) => fromMm)
    .slice(0, 3);
  const sMm = input.dragMm ?? e.breakAt?.sMm ?? null;
  const screwed = question === 'options' && shownKinds(e, question).has('screw');
  const at = e.breakAt === null || input.dragMm === null ? e.breakAt : { ...e.breakAt, whatIf: true };
  return {
    ...plain,
    chosen: bone,
    layer: layerOf(e, question, axis, screwed),
    dimOthers: true,
    borders: question === 'where' ? zoneStrokes(foot, bone, axis, inner) : [],
    breakAt: at === null || sMm === null ? null : breakScene(foot, at, axis, sMm),
    screw: screwed ? screwScene(foot, bone, axis, sMm ?? 0) : null,
    loadPath: question === 'how' ? pathOf(foot, input, e) : null,
  };
};

/** Below this size on the screen the sawtooth is a smudge: "here" is a ring instead, never both. */
const RING_BELOW_PX = 36;

export const showsRing = ({ acrossMm }: BreakScene, mmPerPx: number): boolean => acrossMm / mmPerPx < RING_BELOW_PX;

export const breakSignOf = (scene: BreakScene | null, mmPerPx: number): BreakSign | null =>
  scene === null ? null : showsRing(scene, mmPerPx) ? 'ring' : 'line';

/**
 * The break as strokes. Confirmed: solid. Reported or inferred: an open line, hollow like the stamp. What-if: dashed. All on a
 * casing of bone colour.
 */
export const breakStrokes = (scene: BreakScene): Stroke[] => {
  const { lines, at } = scene;
  const stroke = (colour: TokenName, widthPx: number, liftMm: number, dashMm = 0): Stroke => ({
    lines,
    colour,
    widthPx,
    dashMm,
    liftMm,
  });
  const casing = stroke('ivory', 8, 1.2);
  if (at.whatIf) return [casing, stroke('here', 3.2, 1.4, 2.4)];
  if (at.status !== 'confirmed') return [casing, stroke('here', 5.2, 1.4), stroke('ivory', 2, 1.5)];
  return [casing, stroke('here', 3.2, 1.4)];
};
