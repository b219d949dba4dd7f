/** Pictures of solids whose looks are known, and the command as a person runs it. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PNG } from 'pngjs';
import { afterAll, describe, expect, test } from 'vitest';
import type { Mesh } from '../../../src/anatomy';
import { drawView, PAPER } from '../../../src/cli/sheets/draw';
import { type Picture, pngOf, tiled } from '../../../src/cli/sheets/picture';
import { EIGHT, SIX, type View } from '../../../src/cli/sheets/views';
import { cross, dot, type Vec3 } from '../../../src/units';
import { LONG } from '../../tools/long';

/** A box; bit 0 of a corner's place is x, bit 1 y, bit 2 z. */
const box = (low: Vec3, high: Vec3): Mesh => ({
  positions: Float32Array.from(
    [0, 1, 2, 3, 4, 5, 6, 7].flatMap((i) => [
      i & 1 ? high[0] : low[0],
      i & 2 ? high[1] : low[1],
      i & 4 ? high[2] : low[2],
    ]),
  ),
  indices: Uint32Array.from([
    0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5,
  ]),
});

const view = (name: string): View => EIGHT.find((each) => each.name === name) ?? SIX[0] ?? expect.fail(name);
const at = ({ width, rgb }: Picture, x: number, y: number): number[] => [
  ...rgb.subarray(3 * (y * width + x), 3 * (y * width + x) + 3),
];
const darkness = (picture: Picture, x: number, y: number): number => 255 - (at(picture, x, y)[1] ?? 0);
const paper = [PAPER, PAPER, PAPER];

describe('views', () => {
  test('right, up and eye are unit and right-handed, and no two views are the same', () => {
    for (const { right, up, eye } of EIGHT) {
      cross(right, up).forEach((c, k) => {
        expect(c).toBeCloseTo(eye[k] ?? Number.NaN, 9);
      });
      for (const d of [right, up, eye]) expect(dot(d, d)).toBeCloseTo(1, 9);
    }
    EIGHT.forEach((a, i) => {
      for (const b of EIGHT.slice(i + 1)) expect(dot(a.eye, b.eye)).toBeLessThan(0.95);
    });
  });

  test('a right foot from above, toes up: what is lateral lies to the right, and from its inner side the toes lie to the left', () => {
    const lateralToe = box([-10, 0, 8], [-8, 2, 10]);
    const medialHeel = box([8, 0, -10], [10, 2, -8]);
    const above = drawView([lateralToe, medialHeel], view('dorsal'), 100);
    expect(at(above, 89, 10)).not.toEqual(paper);
    expect(at(above, 10, 89)).not.toEqual(paper);
    expect(at(above, 10, 10)).toEqual(paper);
    const inner = drawView([box([-1, 0, 0], [1, 10, 30]), box([-1, 0, -30], [1, 2, 0])], view('medial'), 100);
    expect(at(inner, 20, 43)).not.toEqual(paper);
    expect(at(inner, 80, 43)).toEqual(paper);
  });
});

describe('a picture', () => {
  const cube = box([-10, -10, -10], [10, 10, 10]);
  const oblique = drawView([cube], view('inner front'), 120);

  test('a cube: paper round it, one tone a face, the face away from the light the darkest', () => {
    const front = drawView([cube], view('front'), 120);
    expect(at(front, 2, 2)).toEqual(paper);
    const tones = new Set([30, 50, 70, 90].flatMap((x) => [30, 50, 70, 90].map((y) => String(at(front, x, y)))));
    expect(tones.size).toBe(1);
    const top = darkness(oblique, 60, 25);
    const [left, right] = [darkness(oblique, 35, 70), darkness(oblique, 85, 70)];
    // Top and left face lie within one step of tone of each other.
    expect(top).toBeLessThanOrEqual(left);
    expect(left).toBeLessThan(right);
  });

  test('contours are dark and thicker than ridges; there are no lines between facets of one plane', () => {
    const front = drawView([cube], view('front'), 120);
    const acrossTop = Array.from({ length: 20 }, (_, y) => darkness(front, 40, y)).filter((d) => d > 120);
    expect(acrossTop.length).toBeGreaterThanOrEqual(1);
    // The upright ridge between the two faces that look at the eye runs down the middle.
    const ridge = Array.from({ length: 9 }, (_, i) => darkness(oblique, 56 + i, 85));
    const inked = ridge.filter((d) => d > Math.max(ridge[0] ?? 0, ridge[8] ?? 0) + 10);
    expect(inked.length).toBeGreaterThanOrEqual(1);
    expect(inked.length).toBeLessThanOrEqual(2);
    expect(Math.max(...ridge)).toBeLessThan(Math.max(...acrossTop));
  });

  test('a bar of 10 mm lies below, of 5 mm under what is small, of 50 mm under what is wider than 120 mm', () => {
    const barOf = (side: number): number => {
      const picture = drawView([box([0, 0, 0], [side, side, side])], view('front'), 500);
      return Array.from({ length: 500 }, (_, x) => darkness(picture, x, 494)).filter((d) => d > 120).length;
    };
    // The side fills 92 % of 500 pixels.
    expect(Math.abs(barOf(40) - (10 * 460) / 40)).toBeLessThan(2);
    expect(Math.abs(barOf(9) - (5 * 460) / 9)).toBeLessThan(2);
    expect(Math.abs(barOf(230) - (50 * 460) / 230)).toBeLessThan(2);
  });

  test('what lies behind is not seen, nor its lines', () => {
    const small = box([-3, -3, -16], [3, 3, -12]);
    const alone = drawView([cube, box([-10, -10, -16], [-9.9, -9.9, -12])], view('front'), 120);
    expect(drawView([cube, small, box([-10, -10, -16], [-9.9, -9.9, -12])], view('front'), 120).rgb).toEqual(alone.rgb);
    // From behind the small one is in front, with a contour of its own.
    const behind = drawView([cube, small], view('back'), 120);
    const row = Array.from({ length: 60 }, (_, i) => darkness(behind, 30 + i, 60)).filter((d) => d > 120);
    expect(row.length).toBeGreaterThanOrEqual(2);
  });

  test('tiles keep their places, and the PNG has the same pixels', () => {
    const one: Picture = { width: 1, height: 1, rgb: Uint8Array.from([1, 2, 3]) };
    const two: Picture = { width: 1, height: 1, rgb: Uint8Array.from([4, 5, 6]) };
    const both = tiled([[one, two], [two]], PAPER);
    expect([...both.rgb]).toEqual([1, 2, 3, 4, 5, 6, 4, 5, 6, ...paper]);
    const read = PNG.sync.read(pngOf(both));
    expect([read.width, read.height]).toEqual([2, 2]);
    expect([...read.data]).toEqual([1, 2, 3, 255, 4, 5, 6, 255, 4, 5, 6, 255, ...paper, 255]);
  });
});

describe('npm run sheets', () => {
  const root = fileURLToPath(new URL('../../../', import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), 'sheets-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const run = (name: string, ...args: string[]): string[] => {
    const out = join(folder, name);
    const command = [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, 'src/cli/sheets.ts')];
    const said = execFileSync(process.execPath, [...command, '--out', out, '--size', '60', ...args], { stdio: 'pipe' });
    expect(said.toString().trim()).toBe(out);
    return readdirSync(out).sort();
  };

  test('bones without names, and the key beside them', () => {
    const files = run('blind', '--bones', 'sesamoidMedial,phalanxMiddle5,phalanxDistal5');
    expect(files).toEqual(['all.png', 'bone-01.png', 'bone-02.png', 'bone-03.png', 'key.json']);
    const key = JSON.parse(readFileSync(join(folder, 'blind', 'key.json'), 'utf8')) as Record<string, string>;
    expect(Object.values(key).sort()).toEqual(['phalanxDistal5', 'phalanxMiddle5', 'sesamoidMedial']);
    const { width, height } = PNG.sync.read(readFileSync(join(folder, 'blind', 'bone-01.png')));
    expect([width, height]).toEqual([6 * 60, 60]);
  }, 60_000);

  test('a group in place from eight sides', () => {
    expect(run('group', '--group', 'sesamoidMedial,sesamoidLateral')).toEqual(['group.png']);
    const { width, height } = PNG.sync.read(readFileSync(join(folder, 'group', 'group.png')));
    expect([width, height]).toEqual([4 * 60, 2 * 60]);
  }, 60_000);

  test.runIf(LONG)(
    'a named bone',
    () => {
      expect(run('named', '--labelled', '--bones', 'sesamoidMedial')).toEqual(['sesamoidMedial.png']);
    },
    60_000,
  );

  test('a bone that is none ends with an error that lists them', () => {
    expect(() => run('none', '--bones', 'kneecap')).toThrow(/kneecap is not one of calcaneus/);
  }, 60_000);
});
