import { describe, expect, it } from 'vitest';
import {
  ACTION_AREA,
  type Box,
  GRAPHICS_AREA,
  STILL_BOXES,
  STILL_HEIGHT_PX,
  STILL_TEXT,
  STILL_WIDTH_PX,
} from '../../../src/telling/still-layout';

const inside = (inner: Box, outer: Box): boolean =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width + 1e-9 &&
  inner.y + inner.height <= outer.y + outer.height + 1e-9;

const apart = (a: Box, b: Box): boolean =>
  a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;

describe('layout of a still', () => {
  it('is 1920 by 1080 with the action area 67.2 px and the graphics area 96 px in from the sides', () => {
    expect([STILL_WIDTH_PX, STILL_HEIGHT_PX]).toEqual([1920, 1080]);
    expect(ACTION_AREA.x).toBeCloseTo(67.2);
    expect(ACTION_AREA.y).toBeCloseTo(37.8);
    expect([GRAPHICS_AREA.x, GRAPHICS_AREA.y]).toEqual([96, 54]);
  });

  it.each(Object.entries(STILL_BOXES))('%s lies inside the graphics area', (_name, box) => {
    expect(inside(box, GRAPHICS_AREA)).toBe(true);
    expect(box.width).toBeGreaterThan(0);
    expect(box.height).toBeGreaterThan(0);
  });

  it('has no two boxes over each other', () => {
    const boxes = Object.entries(STILL_BOXES);
    for (const [nameA, a] of boxes)
      for (const [nameB, b] of boxes) if (nameA < nameB) expect(apart(a, b), `${nameA} over ${nameB}`).toBe(true);
  });

  it('has letters that fit their box, labels of 32 px or more, the lower caption of 45 px or more', () => {
    for (const [name, px] of Object.entries(STILL_TEXT)) if (name !== 'strokePx') expect(px).toBeGreaterThanOrEqual(32);
    expect(STILL_TEXT.statusPx).toBeGreaterThanOrEqual(45);
    expect(STILL_TEXT.strokePx).toBeGreaterThanOrEqual(3);
    expect(STILL_BOXES.title.height).toBeGreaterThanOrEqual(STILL_TEXT.titlePx * 1.2);
    expect(STILL_BOXES.status.height).toBeGreaterThanOrEqual(STILL_TEXT.statusPx * 1.2);
    expect(STILL_BOXES.source.height).toBeGreaterThanOrEqual(STILL_TEXT.sourcePx * 1.2);
  });
});
