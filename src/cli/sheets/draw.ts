/**
 * Pictures of surfaces without a browser: parallel projection, one tone a facet, dark contours, on paper. For looking at bones while
 * they are modelled; the app draws them by itself.
 */
import type { Mesh } from '../../anatomy';
import { dot, type Vec3 } from '../../units';
import { drawLines, INK, linesOf, type Raster } from './lines';
import type { Picture } from './picture';
import type { View } from './views';

/** Every pixel is drawn as so many squared. */
const FINE = 2;
/** Width of a contour in pixels of the raster: a pixel and a half of the picture. */
const CONTOUR_WIDTH = 3;
export const PAPER = 251;
const TONES = [
  [60, 48, 36],
  [120, 100, 74],
  [165, 145, 112],
  [205, 188, 150],
  [232, 219, 186],
  [246, 239, 218],
  [253, 249, 238],
] as const;
const CONTOUR = [20, 16, 12] as const;
const RIDGE = [112, 92, 66] as const;
/** Light from the upper left, fixed to the eye: right, up, towards the eye. */
const LIGHT: Vec3 = [-0.498, 0.677, 0.538];

const pointsOf = (mesh: Mesh): Vec3[] =>
  Array.from({ length: mesh.positions.length / 3 }, (_, i) => [
    mesh.positions[3 * i] ?? 0,
    mesh.positions[3 * i + 1] ?? 0,
    mesh.positions[3 * i + 2] ?? 0,
  ]);

/** Share of the picture left free round what is drawn, each side. */
const MARGIN = 0.04;

/** Length of the bar below what is so wide, and of its parts, mm. */
const barOf = (widestMm: number): { readonly long: number; readonly part: number } => {
  if (widestMm > 120) return { long: 50, part: 10 };
  return { long: widestMm > 25 ? 10 : 5, part: 1 };
};

/** A bar in the margin below, with a tick for each of its parts. */
const drawBar = ({ n, ink }: Raster, px: number, { long, part }: ReturnType<typeof barOf>): void => {
  const [left, bottom] = [Math.round(MARGIN * n), n - 1 - Math.round((MARGIN * n) / 4)];
  const stroke = (x0: number, x1: number, high: number): void => {
    for (let x = x0; x < x1; x++) for (let y = bottom - high; y <= bottom; y++) ink[y * n + x] = INK.contour;
  };
  stroke(left, left + Math.round(long * px) + FINE, FINE - 1);
  for (let at = 0; at <= long; at += part) {
    const x = left + Math.round(at * px);
    const isEnd = at === 0 || at === long;
    stroke(x, x + FINE, Math.round((MARGIN * n) / (isEnd ? 2 : 4)));
  }
};

/** One view of closed surfaces in place, filling a square of `size` pixels, with a bar that tells their size. */
export const drawView = (meshes: readonly Mesh[], view: View, size: number): Picture => {
  const n = size * FINE;
  const all = meshes.map(pointsOf);
  const flat = all.flat();
  const range = (d: Vec3): readonly [number, number] => {
    const along = flat.map((p) => dot(p, d));
    return [along.reduce((a, b) => Math.min(a, b)), along.reduce((a, b) => Math.max(a, b))];
  };
  const axes = [view.right, view.up, view.eye].map((d) => ({ d, range: range(d) }));
  const widest = Math.max(...axes.map(({ range: [low, high] }) => high - low));
  const px = (n * (1 - 2 * MARGIN)) / widest;
  const [x, y, z] = axes.map(
    ({ d, range: [low, high] }) =>
      (p: Vec3) =>
        (dot(p, d) - (low + high) / 2) * px,
  ) as [(p: Vec3) => number, (p: Vec3) => number, (p: Vec3) => number];
  const canvas: Canvas = {
    n,
    depth: new Float32Array(n * n).fill(Number.NEGATIVE_INFINITY),
    ink: new Uint8Array(n * n),
    tone: new Int8Array(n * n).fill(-1),
  };
  const projected = all.map((points) => points.map((q): Vec3 => [n / 2 + x(q), n / 2 - y(q), z(q)]));
  meshes.forEach((mesh, which) => {
    const p = projected[which] ?? [];
    for (let t = 0; t < mesh.indices.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((e) => p[mesh.indices[t + e] ?? 0]) as [Vec3, Vec3, Vec3];
      paint(a, b, c, canvas);
    }
  });
  meshes.forEach((mesh, which) => {
    drawLines(canvas, linesOf(mesh, projected[which] ?? []), CONTOUR_WIDTH);
  });
  drawBar(canvas, px, barOf(widest));
  return shrunk(canvas);
};

interface Canvas extends Raster {
  readonly tone: Int8Array;
}

const paint = (a: Vec3, b: Vec3, c: Vec3, canvas: Canvas): void => {
  const { n } = canvas;
  // Rows run down the page, so that a facet turned to the eye goes clockwise in them.
  const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (area >= -1e-9) return;
  const normal: Vec3 = [
    (b[1] - a[1]) * (c[2] - a[2]) - (b[2] - a[2]) * (c[1] - a[1]),
    (b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2]),
    area,
  ];
  const long = Math.hypot(...normal);
  const lit = (-normal[0] * LIGHT[0] + normal[1] * LIGHT[1] - normal[2] * LIGHT[2]) / long;
  const tone = Math.round((lit * 0.5 + 0.5) * (TONES.length - 1));
  const within = (values: readonly number[]): readonly [number, number] => [
    Math.max(0, Math.floor(Math.min(...values))),
    Math.min(n - 1, Math.ceil(Math.max(...values))),
  ];
  const [left, right] = within([a[0], b[0], c[0]]);
  const [top, bottom] = within([a[1], b[1], c[1]]);
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) {
      const u = ((b[0] - column) * (c[1] - row) - (b[1] - row) * (c[0] - column)) / area;
      const v = ((c[0] - column) * (a[1] - row) - (c[1] - row) * (a[0] - column)) / area;
      const w = 1 - u - v;
      if (u < 0 || v < 0 || w < 0) continue;
      const z = u * a[2] + v * b[2] + w * c[2];
      const k = row * n + column;
      if (z <= (canvas.depth[k] as number)) continue;
      canvas.depth[k] = z;
      canvas.tone[k] = tone;
    }
};

const shrunk = ({ n, tone, ink }: Canvas): Picture => {
  const size = n / FINE;
  const rgb = new Uint8Array(3 * size * size);
  const paper = [PAPER, PAPER, PAPER] as const;
  const colourOf = (k: number): readonly [number, number, number] => {
    if (ink[k] === INK.contour) return CONTOUR;
    if (ink[k] === INK.ridge) return RIDGE;
    return TONES[tone[k] as number] ?? paper;
  };
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++) {
      let [r, g, b] = [0, 0, 0];
      for (let i = 0; i < FINE; i++)
        for (let j = 0; j < FINE; j++) {
          const colour = colourOf((row * FINE + i) * n + column * FINE + j);
          r += colour[0];
          g += colour[1];
          b += colour[2];
        }
      rgb.set([r / FINE ** 2, g / FINE ** 2, b / FINE ** 2], 3 * (row * size + column));
    }
  return { width: size, height: size, rgb };
};
