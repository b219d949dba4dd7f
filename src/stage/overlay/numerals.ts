/**
 * The numbers of the zones on their hatch: all three or none, since two of three would leave it open which zone is broken. Pure.
 */
import { fromBone } from '../../anatomy/bone-axis';
import type { Vec3 } from '../../units';
import { firstSeen } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import type { Rect } from '../labels/conflicts';
import type { StageScene } from '../scene/scene';
import type { Point } from '../types';
import type { Project } from './marks';
import { box, type Font, type Shape } from './shapes';

export interface Numeral {
  readonly text: string;
  readonly at: Point;
  readonly mark: Rect;
}

interface NumeralsInput {
  readonly scene: StageScene;
  readonly mesh: PlateMesh;
  readonly font: Font;
  readonly toScreen: Project;
  readonly eye: Vec3;
  /** Middle of the break as it is seen. */
  readonly breakScreen: Point | null;
}

const COUNT = 3;
/** The number of a zone of the fifth metatarsal; null for any other part. */
const zoneNumber = (region: string): string | null => region.match(/^mt5-zone-(\d)$/)?.[1] ?? null;
/** A number keeps this far from the break and its handle; it may leave the bone's axis for that, mm dorsal. */
const BREAK_CLEAR_PX = 17;
const OFF_AXIS_MM = [0, 4, -4, 2, -2, 6, -6] as const;
/** Where along its zone, the best liked first. */
const SHARES = [0.5, 0.3, 0.72, 0.18, 0.84, 0.4, 0.61, 0.1, 0.92] as const;
const APART_PX = 2;

/** One place for each, the first of its list that leaves one to those after it. */
const oneOfEach = (
  lists: readonly (readonly Point[])[],
  apartPx: number,
  taken: readonly Point[] = [],
): Point[] | null => {
  const [first, ...rest] = lists;
  if (first === undefined) return [...taken];
  for (const [x, y] of first) {
    if (taken.some(([ox, oy]) => Math.max(Math.abs(x - ox), Math.abs(y - oy)) < apartPx)) continue;
    const found = oneOfEach(rest, apartPx, [...taken, [x, y]]);
    if (found !== null) return found;
  }
  return null;
};

export const zoneNumerals = ({ scene, mesh, font, toScreen, eye, breakScreen }: NumeralsInput): readonly Numeral[] => {
  const { layer, explanation } = scene;
  if (layer.kind !== 'zones' || explanation === null) return [];
  // Parts of other bones are no zones with numbers.
  if (zoneNumber(explanation.zones[0]?.region ?? '') === null) return [];
  const { axis } = layer;
  const radius = font.px * 0.72;
  const isClear = ([x, y]: Point): boolean =>
    breakScreen === null || Math.hypot(x - breakScreen[0], y - breakScreen[1]) > radius + BREAK_CLEAR_PX;
  const lists = explanation.zones.slice(0, COUNT).map(({ fromMm, toMm }): Point[] => {
    const [from, to] = [toScreen(fromBone(axis, fromMm)), toScreen(fromBone(axis, toMm))];
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 2 * radius + 4) return [];
    return OFF_AXIS_MM.flatMap((off) =>
      SHARES.flatMap((share): Point[] => {
        const p = fromBone(axis, fromMm + (toMm - fromMm) * share, off);
        const at = toScreen(p);
        return isClear(at) && firstSeen(mesh, p, eye)?.bone === scene.chosen ? [at] : [];
      }),
    );
  });
  const places = oneOfEach(lists, 2 * radius + APART_PX) ?? [];
  return places.map((at, i) => ({
    text: String(i + 1),
    at,
    mark: { from: [at[0] - radius, at[1] - radius], to: [at[0] + radius, at[1] + radius] },
  }));
};

export const numeralShapes = ({ text, at, mark: { from, to } }: Numeral, font: Font): Shape[] => [
  {
    kind: 'area',
    points: box(from[0], from[1], to[0] - from[0], to[1] - from[1]),
    fill: 'plate',
    stroke: 'ink',
    width: 1,
    opacity: 0.95,
  },
  { kind: 'text', at: [at[0], at[1] + font.px * 0.36], text, font, colour: 'ink', anchor: 'middle' },
];
