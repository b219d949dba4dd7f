/**
 * Contrast and colour-vision safety of the palette, computed by culori: WCAG 2.2 contrast (1.4.3: 4.5 for text, 1.4.11: 3 for
 * graphics) and CIEDE2000 after a full simulation of the three dichromacies (Machado, Oliveira & Fernandes 2009).
 */
import { wcagContrast } from 'culori';
import { describe, expect, test } from 'vitest';
import { against } from '../tools/against';
import { difference, SEEN, separationOf } from '../tools/colour-sight';
import { type Colour, coloursOf, LOOKS, type Look } from '../tools/tokens';

const TEXT: readonly Colour[] = ['ink', 'ink-2', 'flag'];
const GROUNDS: readonly Colour[] = ['page', 'plate'];
const GRAPHICS: readonly Colour[] = ['here', 'blood', 'pulled', 'pressed', 'edge', 'engraving', 'context-contour'];

const worstStep = (look: Look): number => {
  const colours = coloursOf(look);
  const steps = ([1, 2, 3, 4, 5, 6] as const).map((n) => colours[`stress-${n}`]);
  const values = Object.values(SEEN).flatMap((see) =>
    steps.slice(1).map((step, i) => difference(see(step), see(steps[i] ?? step))),
  );
  return Math.min(...values);
};

describe.each(LOOKS)('%s', (look) => {
  const colours = coloursOf(look);

  test.each(TEXT.flatMap((text) => GROUNDS.map((ground) => [text, ground] as const)))(
    '%s as text on %s: 4.5 or more',
    (text, ground) => {
      expect(wcagContrast(colours[text], colours[ground])).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(GRAPHICS.flatMap((part) => GROUNDS.map((ground) => [part, ground] as const)))(
    '%s as a stroke on %s: 3 or more',
    (part, ground) => {
      expect(wcagContrast(colours[part], colours[ground])).toBeGreaterThanOrEqual(3);
    },
  );

  test('the word on "here" can be read', () => {
    expect(wcagContrast(colours['here-text'], colours.here)).toBeGreaterThanOrEqual(4.5);
  });

  test('stress gets darker or lighter at every step', () => {
    const light = ([1, 2, 3, 4, 5, 6] as const).map((n) => wcagContrast(colours[`stress-${n}`], '#000'));
    const signs = light.slice(1).map((value, i) => Math.sign(value - (light[i] ?? value)));
    expect(new Set(signs).size).toBe(1);
    expect(signs[0]).not.toBe(0);
  });

  test('neighbouring stress steps stay apart for every kind of sight', () => {
    expect(worstStep(look)).toBeGreaterThan(10);
  });
});

/** Pure black print tells meanings apart by texture alone, so only the looks with colour are held to a distance. */
test.each(['paper', 'slate', 'contrast'] as const)('%s: no two meanings look alike to anyone', (look) => {
  for (const see of Object.values(SEEN)) expect(separationOf(look, see)).toBeGreaterThan(12);
});

const WCAG = {
  source: 'WCAG 2.2 (W3C Recommendation 2023), definition of contrast ratio',
  where: 'black on white is 21:1',
  how: 'common practice',
} as const;
against(WCAG, 'the contrast library follows the definition', () => ({
  expected: 21,
  got: wcagContrast('#000', '#fff'),
  tolerance: 1e-9,
  why: 'exact by definition',
}));
