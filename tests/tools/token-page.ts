/**
 * The page beside tokens.css that says for each token what it is for, why it has this value and what it measures. Reasons stand
 * here; values are read from the style sheet and figures are culori's, so neither is ever typed a second time.
 */
import { readFileSync } from 'node:fs';
import { wcagContrast } from 'culori';
import { SEEN, separationOf } from './colour-sight';
import { type Colour, coloursOf, LOOKS } from './tokens';
import { root } from './tracked';

export const PAGE = 'src/pages/tokens.md';

/** What a token is measured against. */
const GROUND: Partial<Record<Colour, Colour>> = { 'here-text': 'here', 'context-contour': 'context-fill' };
const groundOf = (name: Colour): Colour => GROUND[name] ?? 'plate';

const REASONS: Readonly<Record<Colour, string>> = {
  page: 'Ground of the words. Warm on paper, so that the plate looks laid on it; never brighter than the plate.',
  plate: 'Ground of the picture. A step from the page, because the plate is a thing with an edge.',
  ivory: 'A facet in full light. Near the plate: bones are told by their lines, not by their fill.',
  shade: 'A facet turned away. Darker than ivory for form, light enough that engraving and labels stay readable on it.',
  ink: 'Text, contour of what is spoken of, labels. As near to black (white on slate) as the ground’s own hue allows.',
  'ink-2': 'Second text: captions, sources, small print. Quieter than ink, and still text at any size.',
  engraving: 'Lines that shade a facet. A little lighter than ink, so that many of them do not drown the contour.',
  edge: 'Border of a control, tick of the foot-rule. Informs, so it is held to 3:1 like a drawing.',
  hairline: 'Ornament only: press mark, lines between rows. Says nothing, so nothing is lost where it cannot be seen.',
  'context-fill':
    'Facet of a bone that stands back. Near the plate: it keeps its form in few lines and gives up its weight.',
  'context-contour':
    'Contour of a bone that stands back, outline of the foot. Quiet, and still 3:1: one must see where it lies.',
  here: 'The one "here": the break, its ring and tag, the focus ring, the current question. Blue, because blood and flag are red.',
  'here-text': 'Words on a filled "here".',
  blood: 'Dots of the layer of blood. The trade’s colour for it; their density says how much, so hue may be lost.',
  pulled: 'The cord of tension. Far from blood and here for every kind of sight; its three threads say it without hue.',
  pressed: 'The blocks of compression. Far from pulled in lightness too; its blocks say it without hue.',
  flag: 'Words of warning. Red, as everybody expects; always with the word, never a fill.',
  'stress-1': 'Least stress. Near the ground: nearly nothing lies here.',
  'stress-2':
    'Second band. Bands are nearly equal steps for the eye; ink lines part them, for neighbours are near in contrast.',
  'stress-3': 'Third band.',
  'stress-4': 'Fourth band.',
  'stress-5': 'Fifth band. On this band and the next the lines between bands take the bone’s own colour.',
  'stress-6': 'Most stress. Farthest from the ground, where the eye goes first.',
};

/** Tokens of the sheet that are no colours. */
const OTHERS: Readonly<Record<string, string>> = {
  'font-text': 'Words and figures: letters that are not taken for one another, a slashed zero.',
  'font-title': 'Titles, "Fig.", the numbers of the rule: a Clarendon whose strokes survive small print.',
};

/** Every custom property that a style sheet sets, once. */
export const tokensIn = (css: string): readonly string[] => [
  ...new Set([...css.matchAll(/--([\w-]+)\s*:/g)].map((found) => found[1] ?? '')),
];
export const withoutReason = (css: string): readonly string[] =>
  tokensIn(css).filter((name) => !(REASONS as Record<string, string>)[name]?.trim() && !OTHERS[name]?.trim());

const cell = (look: (typeof LOOKS)[number], name: Colour): string => {
  const colours = coloursOf(look);
  const contrast = wcagContrast(colours[name], colours[groundOf(name)]);
  return name === 'plate' ? `\`${colours[name]}\`` : `\`${colours[name]}\` ${contrast.toFixed(1)}`;
};

export const tokenPage = (): string => {
  const css = readFileSync(`${root}src/pages/tokens.css`, 'utf8');
  const missing = withoutReason(css);
  if (missing.length > 0) throw new Error(`no reason is given for ${missing.join(', ')}`);
  const names = Object.keys(REASONS) as Colour[];
  const rows = names.map(
    (name) =>
      `| \`${name}\` | ${REASONS[name]} | ${groundOf(name)} | ${LOOKS.map((look) => cell(look, name)).join(' | ')} |`,
  );
  const apart = (['paper', 'slate', 'contrast'] as const).map(
    (look) =>
      `| ${look} | ${Object.values(SEEN)
        .map((see) => separationOf(look, see).toFixed(1))
        .join(' | ')} |`,
  );
  return `# Why each token is what it is

Made by \`npm run tokens\` from \`tokens.css\` and the reasons in \`tests/tools/token-page.ts\`; change those, not this page. A test
fails when a token has no reason or when this page is out of date.

After each value stands its contrast (WCAG 2.2) on the token in the column "on". \`tests/reference/palette.test.ts\` holds text to
4.5:1 or more and what is drawn to 3:1 or more, on page and plate.

The meaning colours were not picked by eye: a search took those with the largest difference for the worst kind of sight at a
contrast of 4.5:1, in the look "contrast" 7:1. Print is black and white: there texture alone tells meanings apart.

| token | what it is for, why so | on | ${LOOKS.join(' | ')} |
| --- | --- | --- | ${LOOKS.map(() => '---').join(' | ')} |
${rows.join('\n')}

Least difference (CIEDE2000) between any two of here, blood, pulled, pressed and ink, as seen:

| look | ${Object.keys(SEEN).join(' | ')} |
| --- | ${Object.keys(SEEN)
    .map(() => '---')
    .join(' | ')} |
${apart.join('\n')}

| token | why |
| --- | --- |
${Object.entries(OTHERS)
  .map(([name, why]) => `| \`${name}\` | ${why} |`)
  .join('\n')}
`;
};
