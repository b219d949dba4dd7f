/** Everything laid over the drawn foot for one frame: marks, labels, "here". Pure; asked once a frame. */
import { fromBone } from '../../anatomy/bone-axis';
import { dot, subtract, type Vec3 } from '../../units';
import { basisOf, project } from '../camera/camera';
import { firstSeen } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import { type KeepClear, meetsMark, type Rect } from '../labels/conflicts';
import { outlineOf } from '../labels/outline';
import { type PenStroke, penShapes } from '../pen/stroke';
import type { LoadNumber } from '../scene/load-path';
import { type BreakScene, type StageScene, showsRing } from '../scene/scene';
import type { Point } from '../types';
import { type DrawnLabel, type LabelFrame, type LabelMemory, labelled } from './labelled';
import { sizeOf } from './labels';
import { numberShapes, type PathFrame, pathNumbers, pathShapes } from './load-path';
import { loadShapes, screwShapes } from './marks';
import { measureShapes } from './measure';
import { numeralShapes, zoneNumerals } from './numerals';
import type { Shape } from './shapes';

export interface OverlayInput extends LabelFrame {
  readonly scene: StageScene;
  /** A number of body weights in words. */
  readonly loadText: (number: LoadNumber) => string;
  /** Drawn by hand on the bones. */
  readonly strokes?: readonly PenStroke[];
}

export interface Overlay {
  /** Under the labels. */
  readonly marks: readonly Shape[];
  readonly labels: readonly DrawnLabel[];
  /** Labels of the frame before that are no longer there, or no longer where they were. */
  readonly gone: readonly DrawnLabel[];
  /** Where a hand can take the break, and how a millimetre along the bone runs on the screen. */
  readonly grip: { readonly at: Point; readonly pxPerMm: Point } | null;
  readonly memory: LabelMemory;
}

/** A bone as long as this share of the picture is seen from near. */
const NEAR_SHARE = 0.4;
/** A plate of this height has room for the whole length of the arrows at the leg. */
const FULL_REACH_PX = 440;
const RING_RADIUS = { wide: 17, narrow: 13 } as const;

const flip = (p: Vec3): Vec3 => [-p[0], p[1], p[2]];

/** The points of the break that are seen. */
const seenOf = (scene: BreakScene, mesh: PlateMesh, eye: Vec3): Vec3[] =>
  scene.lines.flat().filter((p) => {
    const hit = firstSeen(mesh, p, eye);
    if (hit === null) return true;
    // Its teeth stand a little in or out of the surface.
    return hit.bone === scene.at.bone && dot(subtract(hit.point, p), eye) < 1.2;
  });

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

  const { breakAt, explanation, layer, loadPath } = scene;
  const bone = boneOf(scene, mesh, toScreen);
  const path: PathFrame = {
    toScreen,
    outline: isInSight(scene, mesh, eye) ? (bone?.outline ?? []) : [],
    mmPerPx: camera.mmPerPx,
    k: k * (narrow ? 0.75 : 1),
    reach: Math.min(1, size.height / (FULL_REACH_PX * k)),
  };
  // From near, the bands on the bone are what is looked at, with what pulls and presses beside them.
  const isNear = layer.kind === 'stress' && layer.axis.lengthMm > NEAR_SHARE * size.width * camera.mmPerPx;
  if (loadPath !== null) shapes.push(...pathShapes(loadPath, path));
  if (isNear && layer.kind === 'stress' && explanation?.stations != null)
    shapes.push(...loadShapes(explanation.stations, layer.axis, toScreen, eye, k * (narrow ? 0.7 : 0.9)));
  if (scene.screw !== null) shapes.push(...screwShapes(scene.screw, toScreen, camera.mmPerPx));

  if (scene.measured !== null) shapes.push(...measureShapes(scene.measured, toScreen, fonts));

  const ring = breakAt !== null && showsRing(breakAt, camera.mmPerPx);
  const breakSeen = breakAt === null ? [] : seenOf(breakAt, mesh, eye).map(toScreen);
  const breakMiddle = breakAt === null ? null : (middleOf(breakSeen) ?? toScreen(breakAt.centre));
  const numerals = zoneNumerals({ scene, mesh, font: fonts.numeral, toScreen, eye, breakScreen: breakMiddle });
  const numbersIn = (isFree: (mark: Rect) => boolean) =>
    loadPath === null || isNear
      ? []
      : pathNumbers(loadPath, {
          ...path,
          size,
          font: fonts.label,
          measure: input.measure,
          say: input.loadText,
          most: narrow ? 2 : 3,
          isFree,
        });
  const marks = [...numerals, ...numbersIn(() => true)].map(({ mark }) => mark);
  const { drawn, places, gone, memory } = labelled({
    ...input,
    eye,
    toScreen,
    keepClear: { marks, bone },
    here:
      breakMiddle === null
        ? null
        : {
            seen: breakSeen,
            middle: breakMiddle,
            ringPx: ring ? (narrow ? RING_RADIUS.narrow : RING_RADIUS.wide) * k : null,
          },
    about:
      scene.chosen !== null && breakAt !== null
        ? { bone: scene.chosen, point: fromBone(breakAt.axis, 0.7 * breakAt.axis.lengthMm) }
        : null,
    lasting: [scene.chosen, scene.selected].filter((bone) => bone !== null),
  });
  // Where a leader had no other way than over a number all three go: the label "here" and the words say the zone.
  const extents = new Map(input.labels.map((label) => [label.id, sizeOf(label, fonts, input.measure)]));
  const isMet = (mark: Rect): boolean =>
    places.some((place) => {
      const extent = extents.get(place.id);
      return extent !== undefined && meetsMark(mark, place, extent);
    });
  if (!numerals.some(({ mark }) => isMet(mark)))
    shapes.push(...numerals.flatMap((numeral) => numeralShapes(numeral, fonts.numeral)));
  // These each tell a thing of their own: one that is met steps aside, or goes.
  const numbers = numbersIn((mark) => !isMet(mark));
  shapes.push(...numbers.flatMap((number) => numberShapes(number, fonts.label)));
  shapes.push(...penShapes(input.strokes ?? [], mesh, toScreen, eye));
  const grip = breakAt === null || breakMiddle === null ? null : { at: breakMiddle, pxPerMm: along(breakAt, toScreen) };
  return { marks: shapes, labels: drawn, gone, grip, memory };
};

const SIGHTS = [0.15, 0.35, 0.5, 0.65, 0.85] as const;

/** Other bones may hide the one in question: then what runs over those is no business of it. */
const isInSight = ({ chosen, layer }: StageScene, mesh: PlateMesh, eye: Vec3): boolean =>
  !('axis' in layer) ||
  SIGHTS.filter((s) => firstSeen(mesh, fromBone(layer.axis, s * layer.axis.lengthMm), eye)?.bone === chosen).length >=
    SIGHTS.length / 2;

/** Only its own label and "here" point into the bone in question. */
const boneOf = ({ chosen }: StageScene, mesh: PlateMesh, toScreen: (p: Vec3) => Point): KeepClear['bone'] => {
  const range = mesh.ranges.find(({ bone }) => bone === chosen);
  if (range === undefined) return null;
  const points = Array.from({ length: range.count }, (_, i) => {
    const [x = 0, y = 0, z = 0] = mesh.positions.subarray(3 * (range.start + i), 3 * (range.start + i) + 3);
    return toScreen([x, y, z]);
  });
  return { outline: outlineOf(points), own: [range.bone, 'here'] };
};

const along = ({ axis, sMm }: BreakScene, toScreen: (p: Vec3) => Point): Point => {
  const [a, b] = [toScreen(fromBone(axis, sMm)), toScreen(fromBone(axis, sMm + 1))];
  return [b[0] - a[0], b[1] - a[1]];
};

const middleOf = (points: readonly Point[]): Point | null => {
  if (points.length === 0) return null;
  const sum = points.reduce<Point>(([x, y], p) => [x + p[0], y + p[1]], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
};

/** Everything in the order it is painted. */
export const allShapes = ({ marks, labels }: Pick<Overlay, 'marks' | 'labels'>): readonly Shape[] => [
  ...marks,
  ...labels.flatMap(({ shapes }) => shapes),
];
