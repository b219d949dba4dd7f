/**
 * The colours the picture is drawn with: the custom properties of the page's style sheet, or a table of our own for pictures
 * made for paper while the page has another look. sRGB values go straight to the screen, so tokens are pixels.
 */

const NAMES = [
  'plate',
  'ivory',
  'shade',
  'ink',
  'ink-2',
  'engraving',
  'hairline',
  'context-fill',
  'context-contour',
  'here',
  'here-text',
  'blood',
  'pulled',
  'pressed',
  'stress-1',
  'stress-2',
  'stress-3',
  'stress-4',
  'stress-5',
  'stress-6',
] as const;
export type TokenName = (typeof NAMES)[number];
export type TokenTable = Readonly<Record<TokenName, string>>;

export interface Tokens {
  readonly colours: TokenTable;
  /** White lines on a dark plate: the lines are the light. */
  readonly whiteLine: boolean;
  /** No colour to speak of: stress is told by the width of its lines. */
  readonly lineWidthOnly: boolean;
}

/** The same values as the style sheet's looks `paper` and `print`; a test holds them together. */
export const PAPER: TokenTable = {
  plate: '#fbf7ec',
  ivory: '#fbf6e6',
  shade: '#dccda8',
  ink: '#1f1b16',
  'ink-2': '#5a5145',
  engraving: '#3a3128',
  hairline: '#cdbf9e',
  'context-fill': '#f3eddf',
  'context-contour': '#8c8371',
  here: '#273fd6',
  'here-text': '#fff',
  blood: '#c6274e',
  pulled: '#007a70',
  pressed: '#430048',
  'stress-1': '#f7f0d6',
  'stress-2': '#eac67b',
  'stress-3': '#d28e3f',
  'stress-4': '#b06125',
  'stress-5': '#833719',
  'stress-6': '#451913',
};

export const PRINT: TokenTable = {
  plate: '#fff',
  ivory: '#fff',
  shade: '#fff',
  ink: '#000',
  'ink-2': '#3d3d3d',
  engraving: '#000',
  hairline: '#999',
  'context-fill': '#fff',
  'context-contour': '#767676',
  here: '#000',
  'here-text': '#fff',
  blood: '#000',
  pulled: '#000',
  pressed: '#000',
  'stress-1': '#fff',
  'stress-2': '#c1c1c1',
  'stress-3': '#919191',
  'stress-4': '#6d6d6d',
  'stress-5': '#474747',
  'stress-6': '#1b1b1b',
};

/** `#abc` or `#aabbcc` -> red, green, blue in 0..1. Throws for anything else: tokens are ours. */
export const rgb = (hex: string): [number, number, number] => {
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(hex);
  const full = short === null ? hex : `#${[1, 2, 3].map((i) => `${short[i]}${short[i]}`).join('')}`;
  const match = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(full);
  if (match === null) throw new Error(`colour token: expected #rrggbb, got "${hex}"`);
  return [1, 2, 3].map((i) => Number.parseInt(match[i] ?? '0', 16) / 255) as [number, number, number];
};

const lightness = (hex: string): number => {
  const [r, g, b] = rgb(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

export const tokensFrom = (colours: TokenTable): Tokens => ({
  colours,
  whiteLine: lightness(colours.plate) < 0.4,
  lineWidthOnly: [colours.here, colours.blood].every((hex) => new Set(rgb(hex)).size === 1),
});

/** Reads the look the element stands in. A property the sheet does not define keeps its paper value. */
export const readTokens = (element: Element): Tokens => {
  const style = getComputedStyle(element);
  const read = (name: TokenName): string => {
    const value = style.getPropertyValue(`--${name}`).trim();
    return /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.test(value) ? value : PAPER[name];
  };
  return tokensFrom(Object.fromEntries(NAMES.map((name) => [name, read(name)])) as unknown as TokenTable);
};
