/** Everything laid over the drawn foot for one frame: marks, labels, "here". Pure; asked once a frame. */
import { fromBone } from '../../anatomy/bone-axis';
import { dot, subtract, type Vec3 } from '../../units';
import { basisOf, project } from '../camera/camera';
import { firstSeen } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import { type PenStroke, penShapes } from '../pen/stroke';
import { type BreakScene, type StageScene, showsRing } from '../scene/scene';
import type { Point } from '../types';
import { type DrawnLabel, type LabelFrame, type LabelMemory, labelled } from './labelled';
import { loadShapes, screwShapes } from './marks';
import { measureShapes } from './measure';
import { box, type Shape } from './shapes';

export interface OverlayInput extends LabelFrame {
  readonly scene: StageScene;
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

const RING_RADIUS = { wide: 17, narrow: 13 } as const;
/** A zone's number keeps this far from the break and its handle; it may leave the bone's axis for that, mm dorsal. */
const BREAK_CLEAR_PX = 17;
const OFF_AXIS_MM = [0, 4, -4] as const;

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

  const { breakAt, explanation, layer } = scene;
  if (layer.kind === 'stress' && explanation?.stations != null)
    shapes.push(...loadShapes(explanation.stations, layer.axis, toScreen, eye, k * (narrow ? 0.7 : 0.9)));
  if (scene.screw !== null) shapes.push(...screwShapes(scene.screw, toScreen, camera.mmPerPx));

  if (scene.measured !== null) shapes.push(...measureShapes(scene.measured, toScreen, fonts));

  const ring = breakAt !== null && showsRing(breakAt, camera.mmPerPx);
  const breakSeen = breakAt === null ? [] : seenOf(breakAt, mesh, eye).map(toScreen);
  const breakMiddle = breakAt === null ? null : (middleOf(breakSeen) ?? toScreen(breakAt.centre));
  const { drawn, gone, memory } = labelled({
    ...input,
    eye,
    toScreen,
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
  shapes.push(
    ...zoneNumerals(input, toScreen, eye, breakMiddle),
    ...penShapes(input.strokes ?? [], mesh, toScreen, eye),
  );
  const grip = breakAt === null || breakMiddle === null ? null : { at: breakMiddle, pxPerMm: along(breakAt, toScreen) };
  return { marks: shapes, labels: drawn, gone, grip, memory };
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

/** A zone's number beside its hatch, where the zone is wide enough to hold one. */
const zoneNumerals = (
  input: OverlayInput,
  toScreen: (p: Vec3) => Point,
  eye: Vec3,
  breakScreen: Point | null,
): Shape[] => {
  const { scene, fonts, mesh } = input;
  const { layer, explanation } = scene;
  if (layer.kind !== 'zones' || explanation === null) return [];
  const font = fonts.numeral;
  const radius = font.px * 0.72;
  const taken: Point[] = [];
  return explanation.zones.slice(0, 3).flatMap((zone, i): Shape[] => {
    const axis = layer.axis;
    const shares = [0.5, 0.3, 0.72, 0.18, 0.84];
    const width = Math.hypot(
      ...([0, 1] as const).map(
        (c) => toScreen(fromBone(axis, zone.toMm))[c] - toScreen(fromBone(axis, zone.fromMm))[c],
      ),
    );
    if (width < 2 * radius + 4) return [];
    const clear = ([x, y]: Point): boolean =>
      (breakScreen === null || Math.hypot(x - breakScreen[0], y - breakScreen[1]) > radius + BREAK_CLEAR_PX) &&
      taken.every(([ox, oy]) => Math.max(Math.abs(x - ox), Math.abs(y - oy)) > 2 * radius + 2);
    const at = OFF_AXIS_MM.flatMap((off) => shares.map((share) => [share, off] as const))
      .map(([share, off]) => {
        const p = fromBone(axis, zone.fromMm + (zone.toMm - zone.fromMm) * share, off);
        return { hit: firstSeen(mesh, p, eye), screen: toScreen(p) };
      })
      .find(({ hit, screen }) => hit?.bone === scene.chosen && clear(screen))?.screen;
    if (at === undefined) return [];
    taken.push(at);
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

/** Everything in the order it is painted. */
export const allShapes = ({ marks, labels }: Pick<Overlay, 'marks' | 'labels'>): readonly Shape[] => [
  ...marks,
  ...labels.flatMap(({ shapes }) => shapes),
];
