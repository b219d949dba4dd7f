/** The colours of each look, read from the one file that has them. */
import { readFileSync } from 'node:fs';
import { root } from './tracked';

export const LOOKS = ['paper', 'slate', 'contrast', 'print'] as const;
export type Look = (typeof LOOKS)[number];

/** Colours a look must define; all of them are drawn with. */
export const COLOURS = [
  'page',
  'plate',
  'ivory',
  'shade',
  'ink',
  'ink-2',
  'engraving',
  'edge',
  'hairline',
  'context-fill',
  'context-contour',
  'here',
  'here-text',
  'blood',
  'pulled',
  'pressed',
  'flag',
  'stress-1',
  'stress-2',
  'stress-3',
  'stress-4',
  'stress-5',
  'stress-6',
] as const;
export type Colour = (typeof COLOURS)[number];

export const coloursOf = (look: Look): Readonly<Record<Colour, string>> => {
  const css =
    readFileSync(`${root}src/pages/tokens.css`, 'utf8')
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .split('@media')[0] ?? '';
  const block = css.match(new RegExp(`\\[data-look="${look}"\\]\\s*\\{([^}]*)\\}`))?.[1] ?? '';
  const value = (name: Colour): string => {
    const found = block.match(new RegExp(`--${name}:\\s*(#[0-9a-fA-F]{3,6})\\s*;`))?.[1];
    if (!found) throw new Error(`tokens.css: ${look} has no --${name}`);
    return found;
  };
  return Object.fromEntries(COLOURS.map((name) => [name, value(name)])) as Record<Colour, string>;
};
