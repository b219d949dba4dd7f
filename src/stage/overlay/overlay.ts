/** Everything laid over the drawn foot for one frame: marks, labels, "here". Pure; asked once a frame. */
import { fromBone } from '../../anatomy/bone-axis';
import type { BoneId } from '../../ids';
import { subtract, type Vec3 } from '../../units';
import { basisOf, type Camera, project, type Size } from '../camera/camera';
import { firstHit } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import { anchorsOf } from '../labels/anchors';
import { clearerSide } from '../labels/clearer-side';
import { type LabelBox, type LabelItem, layout, type PlacedLabel } from '../labels/layout';
import { type BreakScene, type StageScene, showsRing } from '../scene/scene';
import type { Point } from '../types';
import { itemOf, type LabelText, labelShapes } from './labels';
import { loadShapes, screwShapes } from './marks';
import { box, type Fonts, type Measure, type Shape } from './shapes';

export interface OverlayInput {
  readonly scene: StageScene;
  readonly mesh: PlateMesh;
  readonly camera: Camera;
  readonly size: Size;
  readonly mirrored: boolean;
  readonly labels: readonly LabelText[];
  readonly mode: LabelBox['mode'];
  readonly fonts: Fonts;
  readonly measure: Measure;
  readonly before: OverlayMemory;
  /** Sides are chosen anew at rest only: while the foot turns, labels stay where they are. */
  readonly atRest: boolean;
}

/** What the next frame starts from, so that labels and anchors stay where they can. */
export interface OverlayMemory {
  readonly placed: readonly PlacedLabel[];
  readonly anchors: ReadonlyMap<BoneId, Vec3>;
  readonly sides: ReadonlyMap<string, 'low' | 'high'>;
}
export const NO_MEMORY: OverlayMemory = { placed: [], anchors: new Map(), sides: new Map() };

export interface Overlay {
  readonly shapes: readonly Shape[];
  /** Where a hand can take the break, and how a millimetre along the bone runs on the screen. */
  readonly grip: { readonly at: Point; readonly pxPerMm: Point } | null;
  readonly memory: OverlayMemory;
}

export const PAD = 12;
const RING_RADIUS = { wide: 17, narrow: 13 } as const;
const INSIDE = 6;

const flip = (p: Vec3): Vec3 => [-p[0], p[1], p[2]];

/** The visible point of the break nearest the eye, or the middle of the cut when all of it is hidden. */
const breakPoint = (scene: BreakScene, mesh: PlateMesh, eye: Vec3): Vec3 => {
  const points = scene.lines.flat();
  const best = points.reduce<{ p: Vec3; depth: number } | null>((found, p) => {
    const d = subtract(p, scene.centre);
    const depth = d[0] * eye[0] + d[1] * eye[1] + d[2] * eye[2];
    return found === null || depth > found.depth ? { p, depth } : found;
  }, null);
  if (best === null) return scene.centre;
  const hit = firstHit(
    mesh,
    [best.p[0] + eye[0] * 600, best.p[1] + eye[1] * 600, best.p[2] + eye[2] * 600],
    flipAll(eye),
  );
  return hit !== null && hit.bone === scene.at.bone ? best.p : scene.centre;
};

const flipAll = (v: Vec3): Vec3 => [-v[0], -v[1], -v[2]];

export const overlayOf = (input: OverlayInput): Overlay => {
  const { scene, mesh, camera, size, mirrored, fonts } = input;
  const basis = basisOf(camera);
  const toScreen = (p: Vec3): Point => {
    const [x, y] = project(camera, basis, size, mirrored ? flip(p) : p);
    return [x, y];
  };
  const eye = mirrored ? flip(basis.eye) : basis.eye;
  const narrow = size.width < 760;
  const k = fonts.label.px / 15;
  const shapes: Shape[] = [];

  const { breakAt, explanation, layer } = scene;
  if (layer.kind === 'stress' && explanation?.stations != null)
    shapes.push(...loadShapes(explanation.stations, layer.axis, toScreen, eye, k * (narrow ? 0.7 : 0.9)));
  if (scene.screw !== null) shapes.push(...screwShapes(scene.screw, toScreen, camera.mmPerPx));

  const ring = breakAt !== null && showsRing(breakAt, camera.mmPerPx);
  const herePoint = breakAt === null ? null : breakPoint(breakAt, mesh, eye);
  const anchors = anchorsOf(
    mesh,
    input.labels.filter(({ tag }) => tag === null).map(({ id }) => id as BoneId),
    eye,
    input.before.anchors,
  );
  const sides = new Map<string, 'low' | 'high'>();
  const items: { label: LabelText; item: LabelItem }[] = input.labels.flatMap((label) => {
    const anchor = label.tag === null ? anchors.get(label.id as BoneId) : herePoint;
    if (anchor == null) return [];
    const at = toScreen(anchor);
    const outside = at[0] < INSIDE || at[1] < INSIDE || at[0] > size.width - INSIDE || at[1] > size.height - INSIDE;
    if (outside) return [];
    const known = input.atRest ? undefined : input.before.sides.get(label.id);
    const prefer = known ?? clearerSide(mesh, camera, size, mirrored, input.mode, at);
    sides.set(label.id, prefer);
    return [{ label, item: itemOf(label, at, prefer, fonts, input.measure) }];
  });
  const placed = layout(
    items.map(({ item }) => item),
    { mode: input.mode, width: size.width, height: size.height, pad: PAD },
    input.before.placed,
  );
  const ringRadius = (narrow ? RING_RADIUS.narrow : RING_RADIUS.wide) * k;
  const labelled: Shape[] = [];
  for (const { label, item } of items) {
    const place = placed.find(({ id }) => id === label.id);
    if (place === undefined) continue;
    const stop = label.tag === null ? 0 : ring ? ringRadius : 4;
    const own = labelShapes(label, item, place, input.mode, fonts, stop);
    if (label.tag !== null && ring) {
      const [, elbow, at] = place.leader;
      own.push({
        kind: 'ring',
        at,
        radius: ringRadius,
        gapRad: Math.atan2(elbow[1] - at[1], elbow[0] - at[0]),
        colour: 'here',
        width: 2.8 * k,
        casing: 6 * k,
      });
    }
    labelled.push(...own);
  }
  shapes.push(...zoneNumerals(input, toScreen, eye), ...labelled);
  const grip =
    breakAt === null || herePoint === null ? null : { at: toScreen(herePoint), pxPerMm: along(breakAt, toScreen) };
  return { shapes, grip, memory: { placed, anchors, sides } };
};

const along = ({ axis, sMm }: BreakScene, toScreen: (p: Vec3) => Point): Point => {
  const [a, b] = [toScreen(fromBone(axis, sMm)), toScreen(fromBone(axis, sMm + 1))];
  return [b[0] - a[0], b[1] - a[1]];
};

/** A zone's number beside its hatch, where the zone is wide enough to hold one. */
const zoneNumerals = (input: OverlayInput, toScreen: (p: Vec3) => Point, eye: Vec3): Shape[] => {
  const { scene, fonts, mesh } = input;
  const { layer, explanation, breakAt } = scene;
  if (layer.kind !== 'zones' || explanation === null) return [];
  const font = fonts.numeral;
  const radius = font.px * 0.72;
  const breakScreen = breakAt === null ? null : toScreen(breakPoint(breakAt, mesh, eye));
  return explanation.zones.slice(0, 3).flatMap((zone, i): Shape[] => {
    const axis = layer.axis;
    const shares = [0.5, 0.3, 0.72, 0.18, 0.84];
    const width = Math.hypot(
      ...([0, 1] as const).map(
        (c) => toScreen(fromBone(axis, zone.toMm))[c] - toScreen(fromBone(axis, zone.fromMm))[c],
      ),
    );
    if (width < 2 * radius + 4) return [];
    // On top of the break a number is unreadable: the first place in the zone that is clear of it.
    const at = shares
      .map((share) => {
        const p = fromBone(axis, zone.fromMm + (zone.toMm - zone.fromMm) * share);
        const from: Vec3 = [p[0] + eye[0] * 300, p[1] + eye[1] * 300, p[2] + eye[2] * 300];
        return { hit: firstHit(mesh, from, flipAll(eye)), screen: toScreen(p) };
      })
      .find(
        ({ hit, screen }) =>
          hit?.bone === scene.chosen &&
          (breakScreen === null ||
            Math.abs(screen[0] - breakScreen[0]) + Math.abs(screen[1] - breakScreen[1]) > radius * 2.1),
      )?.screen;
    if (at === undefined) return [];
    return [
      {
        kind: 'area',
        points: box(at[0] - radius, at[1] - radius, 2 * radius, 2 * radius),
        fill: 'plate',
        stroke: 'ink',
        width: 1,
        opacity: 0.95,
      },
      { kind: 'text', at: [at[0], at[1] + font.px * 0.36], text: String(i + 1), font, colour: 'ink', anchor: 'middle' },
    ];
  });
};
