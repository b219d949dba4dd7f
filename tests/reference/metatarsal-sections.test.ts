/**
 * Sections of the metatarsals as scanned against those measured on CT surfaces of four feet (two women), mm on a foot of H 165.
 * Middle of the shaft: middle of the range over the four feet (their mean H is 165). Base: its extents are those of the whole bone
 * in the second to fifth and the height of the first, so that these are means over the four; so is the width of the first's head,
 * the widest part of it. What is left (base of the first across, waists, other heads, area of the middle) was kept of one foot only,
 * scaled by H. Width: along the horizontal across the axis; height: across both.
 * Of the definition was kept that metatarsals were cut across the axis of the shaft, at stations 5 % apart; how far base and head
 * reach was not. Taken here: the line through the middles of sections from 20 to 80 %, and the first and the last quarter.
 * Sagitta: the farthest that those middles leave the chord from 20 to 80 %; outwards is taken as positive.
 */
import { readFileSync } from 'node:fs';
import { prepareAnatomy } from '../../src/anatomy';
import { shaftLine } from '../../src/anatomy/angles/shaft';
import { integralsOf } from '../../src/anatomy/inside/polygon';
import { verticesOf } from '../../src/anatomy/mesh';
import type { BoneId } from '../../src/ids';
import { dot, subtract } from '../../src/units';
import { against } from '../tools/against';
import { axisAlong } from '../tools/built-bone';
import { builtFoot } from '../tools/built-foot';
import { outlineAt } from '../tools/outline';

type WidthHeight = readonly [width: number, height: number];
type Range = readonly [low: number, high: number];
interface Measured {
  readonly base: WidthHeight;
  readonly midshaft: WidthHeight;
  readonly midshaftArea: number;
  readonly waistAt: number;
  readonly waist: WidthHeight;
  readonly head: WidthHeight;
  readonly sagitta: { readonly dorsal: Range; readonly lateral: Range };
}
const measured = JSON.parse(
  readFileSync(new URL('./metatarsal-sections.fixture.json', import.meta.url), 'utf8'),
) as Record<string, Measured>;

const CT = {
  source: 'VSDFullBodyBoneModels v3.0: Fischer MCM, Sci Data 2023;10:763, doi:10.1038/s41597-023-02669-z',
  where: 'own measurement on the surfaces of subjects z013 and z027',
  how: 'read',
} as const;
/** As for the sizes of whole bones. */
const SHARE = 0.12;
const WHY = 'widths and heights of the four feet differ from their mean by up to 12 %';

await prepareAnatomy();
const foot = builtFoot({}, 'asScanned', 'fine');

const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
/** The number farthest from nought, with its sign. */
const farthest = (values: readonly number[]): number => values.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);

const sectionsOf = (bone: BoneId) => {
  const mesh = foot.bones.get(bone);
  if (!mesh) throw new Error(`${bone} was not built`);
  const [from, to] = shaftLine(foot, bone);
  const axis = axisAlong(mesh, subtract(to, from));
  const across = (from: number, to: number): WidthHeight => {
    const inside = verticesOf(mesh)
      .map((p) => subtract(p, axis.origin))
      .filter((p) => dot(p, axis.axis) >= from * axis.lengthMm && dot(p, axis.axis) <= to * axis.lengthMm);
    return [extent(inside.map((p) => dot(p, axis.lateral))), extent(inside.map((p) => dot(p, axis.dorsal)))];
  };
  const at = (share: number) => {
    const points = outlineAt(mesh, axis, share * axis.lengthMm);
    const { area, a, b } = integralsOf([points]);
    const size: WidthHeight = [extent(points.map(([, lateral]) => lateral)), extent(points.map(([dorsal]) => dorsal))];
    return { share, area, size, middle: [a / area, b / area] as const };
  };
  const shaft = Array.from({ length: 12 }, (_, i) => at(0.25 + 0.05 * i));
  const bowed = Array.from({ length: 31 }, (_, i) => at(0.2 + 0.02 * i).middle);
  const sagitta = (k: 0 | 1): number => {
    const [first, last] = [bowed[0]?.[k] ?? Number.NaN, bowed.at(-1)?.[k] ?? Number.NaN];
    return farthest(bowed.map((p, i) => p[k] - first - ((last - first) * i) / (bowed.length - 1)));
  };
  return {
    base: across(0, 0.25),
    midshaft: at(0.5),
    waist: shaft.reduce((thin, each) => (each.area < thin.area ? each : thin)),
    head: across(0.75, 1),
    sagitta: { dorsal: sagitta(0), lateral: sagitta(1) },
  };
};

for (const [bone, m] of Object.entries(measured)) {
  const { base, midshaft, waist, head, sagitta } = sectionsOf(bone as BoneId);
  const near = (name: string, expected: number, got: number): void =>
    against(CT, `${bone}: ${name}`, () => ({ expected, got, tolerance: SHARE * expected, why: WHY }));
  const sizes = { base: [m.base, base], midshaft: [m.midshaft, midshaft.size], head: [m.head, head] } as const;
  for (const [part, [expected, got]] of Object.entries({ ...sizes, waist: [m.waist, waist.size] as const })) {
    near(`${part}, width, mm`, expected[0], got[0]);
    near(`${part}, height, mm`, expected[1], got[1]);
  }
  near('midshaft, area, mm2', m.midshaftArea, midshaft.area);
  near('place of the waist, share of the length', m.waistAt, waist.share);
  for (const way of ['dorsal', 'lateral'] as const) {
    const [low, high] = m.sagitta[way];
    against(CT, `${bone}: bow of the shaft, ${way}, mm`, () => ({
      expected: (low + high) / 2,
      got: sagitta[way],
      tolerance: (high - low) / 2 + 0.5,
      why: 'range of the four feet, and half a millimetre for a middle cut from few triangles',
    }));
  }
}
