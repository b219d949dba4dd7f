/**
 * The plate against its reference pictures, under the fixed software renderer. `npm run pictures` draws them anew after a change
 * that was meant. No letter stands in them: fonts are drawn otherwise by each browser; labels have tests of their own.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import type { PNG } from 'pngjs';
import { difference, readPng, writePng } from '../tools/picture-difference';
import { askedFor, type Plan } from './plate-page/asked';
import type { Asked } from './plate-page/drawn';
import { openPlatePage } from './plate-page/open-page';

const at = (view: Plan['view'], question: Plan['question'], look: Plan['look'], more: Partial<Plan> = {}): Plan => ({
  demo: 'handball-zone-2',
  view,
  question,
  look,
  ...more,
});
const PICTURES = {
  'whole-paper': at('outer', 'where', 'paper'),
  'whole-slate': at('outer', 'where', 'slate'),
  'whole-contrast': at('outer', 'where', 'contrast'),
  'whole-print': at('outer', 'where', 'print'),
  'zones-paper': at('close', 'where', 'paper'),
  'zones-slate': at('close', 'where', 'slate'),
  'blood-paper': at('close', 'why', 'paper'),
  'blood-contrast': at('close', 'why', 'contrast'),
  'stress-paper': at('close', 'how', 'paper'),
  'stress-slate': at('close', 'how', 'slate'),
  'stress-print': at('close', 'how', 'print'),
  'left-from-above': at('top', 'back', 'paper', { demo: 'dancer-spiral' }),
  'pushing-off': at('outer', 'where', 'paper', { pose: 'pushOff' }),
} as const satisfies Record<string, Plan>;
type Name = keyof typeof PICTURES;
const NAMES = Object.keys(PICTURES) as Name[];

/**
 * Share of pixels that may be others. Seen: none between two Chromiums; the least of the faults below changes 0.5 %, and what
 * rounding otherwise can do on a processor not tried stays, as far as it could be imitated, under half of this.
 */
const MOST_OTHERS = 0.004;

const folder = fileURLToPath(new URL('./pictures/plate/', import.meta.url));
const pathOf = (name: Name): string => `${folder}${name}.png`;
const reference = (name: Name): PNG => {
  if (!existsSync(pathOf(name))) throw new Error(`there is no picture "${name}": npm run pictures draws it`);
  return readPng(readFileSync(pathOf(name)));
};

let close: () => Promise<void> = async () => undefined;
let page: Page;

test.describe.configure({ mode: 'default' });
test.beforeAll(async ({ browser }) => {
  ({ page, close } = await openPlatePage(browser));
});
test.afterAll(() => close());

const draw = async (asked: Asked): Promise<PNG> => {
  const png = await page.evaluate((what) => {
    if (window.plateMeasures === undefined) throw new Error('no plate');
    return window.plateMeasures.drawn(what);
  }, asked);
  return readPng(Buffer.from(png, 'base64'));
};

for (const name of NAMES) {
  test(`the picture ${name} is drawn as it was`, async () => {
    const got = await draw(await askedFor(PICTURES[name]));
    if (['all', 'changed'].includes(test.info().config.updateSnapshots)) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(pathOf(name), writePng(got));
      return;
    }
    const { share, map } = difference(reference(name), got);
    if (share > MOST_OTHERS) {
      await test.info().attach('drawn', { body: writePng(got), contentType: 'image/png' });
      await test.info().attach('where they differ', { body: writePng(map), contentType: 'image/png' });
    }
    expect(share, `${name}: share of pixels that are others; if that was meant: npm run pictures`).toBeLessThanOrEqual(
      MOST_OTHERS,
    );
  });
}

test('every kept picture is one that is drawn, and no two look alike', () => {
  expect(readdirSync(folder).sort()).toEqual(NAMES.map((name) => `${name}.png`).sort());
  const kept = NAMES.map((name) => ({ name, png: reference(name) }));
  for (const [i, a] of kept.entries())
    for (const b of kept.slice(i + 1))
      expect(difference(a.png, b.png).share, `${a.name} and ${b.name}`).toBeGreaterThan(MOST_OTHERS);
});

const withDrawing = async (name: Name, more: Partial<Asked['drawing']>): Promise<Asked> => {
  const asked = await askedFor(PICTURES[name]);
  return { ...asked, drawing: { ...asked.drawing, ...more } };
};
const PITCH = ['float pitch = uPitch * uCss;', 'float pitch = 1.1 * uPitch * uCss;'] as const;
const faulty = (name: Name, ...otherwise: Asked['otherwise']) => askedFor(PICTURES[name], otherwise);
/** What the comparison has to see, each as the picture it would give. */
const FAULTS: readonly (readonly [string, Name, () => Promise<Asked>])[] = [
  ['another look', 'whole-print', () => askedFor(PICTURES['whole-contrast'])],
  ['no zones', 'whole-paper', () => withDrawing('whole-paper', { layer: { kind: 'shade' } })],
  ['no blood', 'blood-contrast', () => withDrawing('blood-contrast', { layer: { kind: 'shade' } })],
  ['no stress', 'stress-print', () => withDrawing('stress-print', { layer: { kind: 'shade' } })],
  ['no break and no borders', 'zones-slate', () => withDrawing('zones-slate', { strokes: [] })],
  ['the wrong foot', 'left-from-above', () => withDrawing('left-from-above', { mirrored: false })],
  [
    'no contour',
    'whole-contrast',
    () => faulty('whole-contrast', ['mix(uColour, uChosenColour, vChosen)', 'vec3(1.0)']),
  ],
  ['no ridges', 'whole-slate', () => faulty('whole-slate', ['float ridge = 0.55;', 'float ridge = 0.0;'])],
  ['engraving a tenth wider, black on paper', 'whole-paper', () => faulty('whole-paper', PITCH)],
  ['engraving a tenth wider, white on slate', 'zones-slate', () => faulty('zones-slate', PITCH)],
  ['hatch a tenth wider', 'whole-print', () => faulty('whole-print', ['hatchPx = 6.0', 'hatchPx = 6.6'])],
  ['dots a tenth farther apart', 'blood-paper', () => faulty('blood-paper', ['.x, uCellMm)', '.x, 1.1 * uCellMm)'])],
  ['lines of stress a tenth wider', 'stress-print', () => faulty('stress-print', ['pitch * 1.3', 'pitch * 1.43'])],
];
for (const [fault, name, asked] of FAULTS) {
  test(`the comparison sees ${fault}`, async () => {
    const { share } = difference(reference(name), await draw(await asked()));
    expect(share).toBeGreaterThan(MOST_OTHERS);
  });
}

/**
 * Single precision holds a place on a picture this wide to a ten thousandth of a pixel, a colour to a step of 255. Here every vertex
 * is off by five times as much, the same way, and every second pixel by a step.
 */
for (const name of ['zones-paper', 'stress-print'] as const) {
  test(`the comparison lets pass what another processor may round otherwise, ${name}`, async () => {
    const place = 'gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);';
    const colour = 'colour = vec4(mix(fill, inkColour, ink), 1.0);';
    const aside = await faulty(
      name,
      [place, `${place} gl_Position.xy += 0.001 / vec2(480.0, 360.0);`],
      [colour, `${colour} colour.rgb += 0.004 * sign(sin(gl_FragCoord.x * gl_FragCoord.y));`],
    );
    const { share, touched } = difference(reference(name), await draw(aside));
    expect(touched).toBeGreaterThan(0.01);
    expect(share).toBeLessThanOrEqual(MOST_OTHERS);
  });
}
