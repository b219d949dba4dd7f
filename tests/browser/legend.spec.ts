/** The key beside a picture has the picture's own signs: the same pitch, the same break, and none that can be taken for another. */
import type { Locator, Page } from '@playwright/test';
import { expect, LONG_RUN, test } from './fixtures';
import { framesLater, open, withoutBands, withoutPicture } from './walk';

type XY = readonly [x: number, y: number];

/** The straight pieces of a path of capital M and L, each as its points. */
const strokesOf = (d: string): XY[][] =>
  d
    .split('M')
    .slice(1)
    .map((stroke) =>
      stroke.split('L').map((pair): XY => {
        const [x = Number.NaN, y = Number.NaN] = pair.trim().split(/\s+/).map(Number);
        return [x, y];
      }),
    );

/** CSS px a unit of the drawing. */
const scaleOf = (swatch: Locator): Promise<number> =>
  swatch.first().evaluate((svg) => (svg as SVGSVGElement).getScreenCTM()?.a ?? Number.NaN);

interface Family {
  /** Degrees, from the right upwards. */
  readonly degrees: number;
  /** From line to line across the lines, in units of the drawing. */
  readonly pitches: readonly number[];
}

const familiesOf = (d: string): Family[] => {
  const byAngle = new Map<number, number[]>();
  for (const stroke of strokesOf(d)) {
    const [from, to] = [stroke[0], stroke.at(-1)];
    if (from === undefined || to === undefined) continue;
    const [dx, dy] = [to[0] - from[0], from[1] - to[1]];
    const rad = Math.atan2(dy, dx);
    const degrees = Math.round(((rad * 180) / Math.PI + 180) % 180);
    const across = from[0] * Math.sin(rad) + from[1] * Math.cos(rad);
    byAngle.set(degrees, [...(byAngle.get(degrees) ?? []), Math.sign(Math.sin(rad)) * across]);
  }
  return [...byAngle].map(([degrees, places]) => {
    const sorted = [...places].sort((a, b) => a - b);
    return { degrees, pitches: sorted.slice(1).map((place, i) => place - (sorted[i] ?? Number.NaN)) };
  });
};

/** As the shader of the bones has it: src/stage/draw/shaders.ts, `hatch`. */
const PITCH_PX = 6;
const INK_SHARE = 0.25;

const expectZoneHatch = async (items: Locator, pictureScale: number): Promise<void> => {
  const hatch = items.locator('.hatch');
  await expect(hatch).toHaveCount(3);
  const wanted = [[45], [45, 135], [135]];
  for (const [index, degrees] of wanted.entries()) {
    const path = hatch.nth(index);
    const families = familiesOf((await path.getAttribute('d')) ?? '');
    expect(families.map((family) => family.degrees).sort((a, b) => a - b)).toEqual(degrees);
    const scale = (await scaleOf(items.locator('.swatch').nth(index))) / pictureScale;
    const stroke = Number.parseFloat(await path.evaluate((each) => getComputedStyle(each).strokeWidth));
    for (const { pitches } of families) {
      expect(pitches.length).toBeGreaterThan(3);
      // The path is written to a hundredth of a pixel.
      for (const pitch of pitches) expect(Math.abs(pitch * scale - PITCH_PX)).toBeLessThan(0.05);
      expect(stroke / PITCH_PX).toBeCloseTo(INK_SHARE, 3);
    }
  }
};

const ready = (page: Page): Promise<void> =>
  expect(page.locator('.stage[data-ready="true"]')).toBeAttached({ timeout: 45_000 });

test(
  'zones are hatched in the key as on the bone: six pixels across the lines, a quarter of it ink',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, '#demo=demo-handball&question=where');
    await expectZoneHatch(page.locator('.legend-box .legend'), 1);
    await open(page, appUrl, '#demo=demo-handball&view=show&question=where');
    await expectZoneHatch(page.locator('.legend-short .legend'), 1);
  },
);

/** The ring in the picture is the one line of forty pieces: `ringPoints` in src/stage/overlay/shapes.ts. */
const ringInPicture = (page: Page): Promise<boolean> =>
  page
    .locator('.stage-overlay path')
    .evaluateAll((paths) => paths.some((path) => path.getAttribute('d')?.match(/L/g)?.length === 40));

test(
  'the key of the break is the sign in the picture, and goes over to the ring where the picture does',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutBands(page);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const key = page.locator('.legend-box .break-signs');
    await open(page, appUrl, '#demo=demo-handball&question=how');
    await ready(page);
    expect(await ringInPicture(page)).toBe(false);
    await expect(key.locator('.saw')).toHaveCount(1);
    await expect(key.locator('.ring')).toHaveCount(0);
    await expect(key).toHaveText('the break, somewhere in this part');
    for (let press = 0; press < 9; press += 1) await page.getByRole('button', { name: 'Farther away' }).click();
    await ready(page);
    expect(await ringInPicture(page)).toBe(true);
    await expect(key.locator('.ring')).toHaveCount(1);
    await expect(key.locator('.saw')).toHaveCount(0);
    await expect(key).toHaveText('the break is in this part');
  },
);

test('a confirmed break is solid in the key, a reported one hollow, a what-if dashed', async ({ page, appUrl }) => {
  const key = page.locator('.legend-box .break-signs');
  await open(page, appUrl, '#demo=demo-handball&question=where');
  await ready(page);
  await expect(key.locator('.saw')).toHaveCount(1);
  await expect(key.locator('.saw-hollow, .saw-dashed')).toHaveCount(0);
  await open(page, appUrl, '#demo=demo-hill-runner&question=where');
  await ready(page);
  await expect(key.locator('.saw-hollow')).toHaveCount(1);
  await expect(key).toHaveText('the break, as reported');
  await page.getByText('What if it were otherwise?').click();
  await page.getByLabel('Break, distance from the back end of the bone').fill('40');
  await expect(key.locator('.saw-dashed')).toHaveCount(1);
  await expect(key.locator('.saw-hollow')).toHaveCount(0);
  await expect(key).toHaveText('the break, what if');
});

test(
  'where the model says nothing, the key is of bent and broken strokes, and no zone hatch',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await withoutBands(page);
    await open(page, appUrl, '#demo=demo-handball&question=how');
    const item = page.locator('.legend li').filter({ hasText: 'the model says nothing here' });
    await expect(page.locator('.legend .hatch')).toHaveCount(0);
    const strokes = strokesOf((await item.locator('.broken').getAttribute('d')) ?? '');
    expect(strokes.length).toBeGreaterThan(6);
    for (const stroke of strokes) {
      expect(stroke).toHaveLength(3);
      const turns = stroke
        .slice(1)
        .map(([x, y], i) => Math.atan2(y - (stroke[i]?.[1] ?? 0), x - (stroke[i]?.[0] ?? 0)));
      expect(Math.abs((turns[1] ?? 0) - (turns[0] ?? 0))).toBeGreaterThan(0.3);
      // A line of a zone runs from edge to edge, 20 px high.
      const heights = stroke.map(([, y]) => y);
      expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(10);
    }
  },
);

/** look.md, section 4: captions and legends at least 13 px. */
const LEAST_LETTERS_PX = 13;

for (const view of ['explain', 'show'] as const) {
  test(
    `letters of the stress ramp can be read at 1024 and at 320, ${view}`,
    view === 'explain' ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await withoutPicture(page);
      await withoutBands(page);
      await open(page, appUrl, `#demo=demo-handball&question=how&reader=study&view=${view}`);
      for (const [width, height] of [
        [1024, 768],
        [320, 640],
      ] as const) {
        await page.setViewportSize({ width, height });
        await framesLater(page);
        const ramp = page.locator('.ramp');
        // None and most: multiples of walking stand at the borders only where the bands of both allow a size, which they do in no case here.
        await expect(ramp.locator('text')).toHaveCount(2);
        const read = await ramp.evaluate((svg) => {
          const scale = (svg as SVGSVGElement).getScreenCTM()?.a ?? Number.NaN;
          const frame = svg.getBoundingClientRect();
          return [...svg.querySelectorAll('text')].map((text) => {
            const box = text.getBoundingClientRect();
            return {
              px: Number.parseFloat(getComputedStyle(text).fontSize) * scale,
              from: box.left - frame.left,
              to: box.right - frame.left,
              beyond: Math.max(box.right - frame.right, box.bottom - frame.bottom, frame.left - box.left),
            };
          });
        });
        for (const [i, text] of read.entries()) {
          // The scale of a drawing laid out in whole pixels is off by less than half a pixel of its width.
          expect(text.px).toBeGreaterThanOrEqual(LEAST_LETTERS_PX * 0.998);
          expect(text.beyond).toBeLessThanOrEqual(0.5);
          if (i < 7) expect(text.from).toBeGreaterThan(read[i - 1]?.to ?? -1);
        }
      }
    },
  );
}

test(
  'the figure of the handout has its key, at the scale of the figure, whole and in black',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await page.setViewportSize({ width: 1280, height: 900 });
    for (const demo of ['demo-handball', 'demo-hill-runner'] as const) {
      await open(page, appUrl, `#view=hand&demo=${demo}`);
      const canvas = page.locator('.sheet canvas[data-drawn="true"]');
      await expect(canvas).toBeVisible({ timeout: 40_000 });
      for (const media of ['screen', 'print'] as const) {
        await page.emulateMedia({ media });
        const key = page.locator('.sheet-key');
        // src/render/figure.ts draws 680 by 300 px; what is shown of it keeps its shape within its place.
        const scale = await canvas.evaluate((each) =>
          Math.min(each.getBoundingClientRect().width / 680, each.getBoundingClientRect().height / 300),
        );
        await expectZoneHatch(key, scale);
        // Looked at: the hill runner's bone is thin where it is broken, so that both its pictures have the ring.
        await expect(key.locator('.break-signs .ring')).toHaveCount(1);
        await expect(key.locator('.saw')).toHaveCount(demo === 'demo-handball' ? 1 : 0);
        const cut = await key.evaluate((list) => {
          const inside = list.getBoundingClientRect();
          const boxes = [...list.querySelectorAll('li, svg')].map((each) => each.getBoundingClientRect());
          return Math.max(...boxes.map((box) => Math.max(box.bottom - inside.bottom, box.right - inside.right)));
        });
        expect(cut).toBeLessThanOrEqual(0.5);
        const colours = await key
          .locator('path')
          .evaluateAll((paths) => paths.map((path) => getComputedStyle(path).stroke));
        expect(new Set(colours.filter((colour) => colour !== 'rgb(255, 255, 255)'))).toEqual(new Set(['rgb(0, 0, 0)']));
      }
      await page.emulateMedia({ media: 'screen' });
    }
  },
);
