/** The engraving measured on its own pixels, under the fixed software renderer. What is allowed is in the design's look document. */
import { expect, type Page, test } from '@playwright/test';
import { LONG_RUN } from './fixtures';
import { openPlatePage } from './plate-page/open-page';
import type { Calm, Ink } from './plate-page/plate-page';

let close: () => Promise<void> = async () => undefined;
let page: Page;

test.describe.configure({ mode: 'serial' });

test.beforeAll(async ({ browser }) => {
  ({ page, close } = await openPlatePage(browser));
});
test.afterAll(() => close());

const calm = (look: string, azimuth: number, step: number, ratio: number, moving: boolean): Promise<Calm> =>
  page.evaluate(
    ([l, a, s, r, m]) => {
      if (window.plateMeasures === undefined) throw new Error('not measured');
      return window.plateMeasures.calmOf(l, a, s, r, m);
    },
    [look, azimuth, step, ratio, moving] as const,
  );
const ink = (
  kind: 'blood' | 'zones',
  value: number,
  bone: 'metatarsal5' | 'calcaneus',
  mmPerPx: number,
  azimuth: number,
): Promise<Ink> =>
  page.evaluate(
    ([k, v, b, m, a]) => {
      if (window.plateMeasures === undefined) throw new Error('not measured');
      return window.plateMeasures.inkOf(k, v, b, m, a);
    },
    [kind, value, bone, mmPerPx, azimuth] as const,
  );

/** Design, look document, section 2: at most 3 % of the surface's pixels flip for a degree of turning. Seen at most: 2.9 %. */
const MOST_FLIPPED = 0.03;

for (const look of process.env.UNDERFOOT_LONG ? ['paper', 'slate', 'contrast'] : ['paper']) {
  test(`${look}: turned by a degree the engraving stays on the bone, at rest and while moving`, async () => {
    // The same engraving in each look: the long run turns it all the way round, in all of them.
    const all = process.env.UNDERFOOT_LONG;
    for (const azimuth of all ? [-150, -66, -20, 20, 65, 110] : [-66, 65]) {
      for (const [ratio, moving] of [
        [2, false],
        [0.75, true],
        [2, true],
      ] as const) {
        const { samples, flipped } = await calm(look, azimuth, 1, ratio, moving);
        expect(samples).toBeGreaterThan(1200);
        expect(flipped, `from ${azimuth} degrees, ${ratio} pixels a pixel`).toBeLessThan(MOST_FLIPPED);
        // A blank picture would be calm too.
        expect(flipped).toBeGreaterThan(0.001);
      }
    }
  });
}

/** Shares of ink as the look document, section 2, asked for; it got them within 0.016. Seen here: 0.011, on the slenderer bone from afar. */
const INK_WITHIN = 0.014;
/** The edge of a hatch line falls anywhere within a pixel of its six. Seen: 0.018, where two hatches cross. */
const HATCH_WITHIN = 0.02;
test(
  'dots lay down the ink they are asked for, from near and from afar, on round bones and flat ones',
  LONG_RUN,
  async () => {
    for (const share of [0.082, 0.163, 0.272]) {
      for (const bone of ['metatarsal5', 'calcaneus'] as const) {
        for (const mmPerPx of [0.2, 0.34]) {
          const got = await ink('blood', share, bone, mmPerPx, -66);
          expect(got.pixels).toBeGreaterThan(2000);
          expect(
            Math.abs(got.share - share),
            `${share} on ${bone} at ${mmPerPx} mm a pixel: ${got.share}`,
          ).toBeLessThan(INK_WITHIN);
        }
      }
    }
  },
);

test('hatch lays down a quarter of ink, crossed hatch what two hatches leave', LONG_RUN, async () => {
  for (const mmPerPx of [0.15, 0.34]) {
    for (const [zone, share] of [
      [1, 0.25],
      [2, 1 - 0.75 ** 2],
      [3, 0.25],
    ] as const) {
      expect(Math.abs((await ink('zones', zone, 'calcaneus', mmPerPx, -66)).share - share)).toBeLessThan(HATCH_WITHIN);
    }
  }
});
