/**
 * Where things go on a still of 1920 x 1080 px, as data. Safe areas: EBU R 95, action 3.5 % and graphics 5 % of each side:
 * every letter lies inside the graphics area, the foot inside the action area. Letter heights: labels at least 32 px and the
 * lower caption at least 45 px at 1080 lines, strokes at least 3 px (our own standard).
 */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const STILL_WIDTH_PX = 1920;
export const STILL_HEIGHT_PX = 1080;
export const ACTION_SHARE = 0.035;
export const GRAPHICS_SHARE = 0.05;

const inset = (share: number): Box => ({
  x: STILL_WIDTH_PX * share,
  y: STILL_HEIGHT_PX * share,
  width: STILL_WIDTH_PX * (1 - 2 * share),
  height: STILL_HEIGHT_PX * (1 - 2 * share),
});

export const ACTION_AREA = inset(ACTION_SHARE);
export const GRAPHICS_AREA = inset(GRAPHICS_SHARE);

export const STILL_TEXT = {
  titlePx: 64,
  sidePx: 46,
  statusPx: 46,
  labelPx: 34,
  sourcePx: 32,
  illustrationPx: 32,
  strokePx: 3,
} as const;

const g = GRAPHICS_AREA;
const TOP_PX = 96;
const FOOT_ROWS_PX = 176;

/** Top row: title and, at the right, the side. Middle: the foot. Foot rows: status, then source and the illustration line. */
export const STILL_BOXES = {
  title: { x: g.x, y: g.y, width: 1240, height: TOP_PX },
  side: { x: g.x + g.width - 464, y: g.y, width: 464, height: TOP_PX },
  foot: { x: g.x, y: g.y + TOP_PX + 16, width: g.width, height: g.height - TOP_PX - FOOT_ROWS_PX - 32 },
  status: { x: g.x, y: g.y + g.height - FOOT_ROWS_PX, width: g.width, height: 64 },
  source: { x: g.x, y: g.y + g.height - 104, width: g.width, height: 48 },
  illustration: { x: g.x, y: g.y + g.height - 48, width: g.width, height: 48 },
} as const satisfies Readonly<Record<string, Box>>;

/** Letters that fit one line of the graphics area at the size of the source line, at 0.52 of the height a letter on average. */
export const STILL_SOURCE_LETTERS = Math.floor(GRAPHICS_AREA.width / (STILL_TEXT.sourcePx * 0.52));
