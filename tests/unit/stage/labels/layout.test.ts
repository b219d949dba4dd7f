import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LabelBox, type LabelItem, layout, type PlacedLabel } from '../../../../src/stage/labels/layout';
import { cross } from '../../../../src/stage/labels/segments';
import { spread } from '../../../../src/stage/labels/spread';

const PAD = 12;
const SLACK = 1e-6;

const boxes = fc.record({
  mode: fc.constantFrom<LabelBox['mode']>('sides', 'ends'),
  width: fc.integer({ min: 300, max: 1200 }),
  height: fc.integer({ min: 260, max: 800 }),
  pad: fc.constant(PAD),
});

const scenes = boxes.chain((box) =>
  fc.record({
    box: fc.constant(box),
    items: fc
      .array(
        fc.record({
          x: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
          y: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
          width: fc.integer({ min: 30, max: 180 }),
          height: fc.integer({ min: 16, max: 40 }),
          priority: fc.integer({ min: 0, max: 100 }),
          prefer: fc.constantFrom<LabelItem['prefer']>('low', 'high', null),
        }),
        { maxLength: 14 },
      )
      .map((list): LabelItem[] =>
        list.map(({ x, y, ...rest }, i) => ({ ...rest, id: `b${i}`, anchor: [x * box.width, y * box.height] })),
      ),
  }),
);

const rectOf = (label: PlacedLabel, items: readonly LabelItem[]) => {
  const item = items.find(({ id }) => id === label.id);
  if (item === undefined) throw new Error('a label nobody asked for');
  return { x0: label.x, y0: label.y, x1: label.x + item.width, y1: label.y + item.height };
};

const pairs = <T>(list: readonly T[]): [T, T][] => list.flatMap((a, i) => list.slice(i + 1).map((b): [T, T] => [a, b]));

const sound = (placed: readonly PlacedLabel[], items: readonly LabelItem[], box: LabelBox): void => {
  for (const label of placed) {
    const r = rectOf(label, items);
    // Along the margin every label lies inside; across it, it starts at the pad.
    const [from, to, most] = box.mode === 'sides' ? [r.y0, r.y1, box.height] : [r.x0, r.x1, box.width];
    expect(from).toBeGreaterThanOrEqual(PAD - SLACK);
    expect(to).toBeLessThanOrEqual(most - PAD + SLACK);
  }
  for (const [a, b] of pairs(placed)) {
    if (a.side === b.side) {
      const [p, q] = [rectOf(a, items), rectOf(b, items)];
      const apart =
        box.mode === 'sides'
          ? p.y1 <= q.y0 + SLACK || q.y1 <= p.y0 + SLACK
          : p.x1 <= q.x0 + SLACK || q.x1 <= p.x0 + SLACK;
      expect(apart).toBe(true);
    }
    const [, a1, a2] = a.leader;
    const [, b1, b2] = b.leader;
    expect(cross(a1, a2, b1, b2)).toBe(false);
  }
};

describe('margin labels', () => {
  it('never overlap, never cross, stay inside their margin', () => {
    fc.assert(
      fc.property(scenes, ({ box, items }) => sound(layout(items, box), items, box)),
      { numRuns: 400 },
    );
  });

  it('keep that when they start from the places of a frame before', () => {
    fc.assert(
      fc.property(scenes, fc.double({ min: -40, max: 40, noNaN: true }), ({ box, items }, shift) => {
        const before = layout(items, box);
        const moved = items.map(
          (item): LabelItem => ({ ...item, anchor: [item.anchor[0] + shift, item.anchor[1] - shift] }),
        );
        sound(layout(moved, box, before), moved, box);
      }),
      { numRuns: 300 },
    );
  });

  it('give the same places for the same anchors', () => {
    fc.assert(
      fc.property(scenes, ({ box, items }) => {
        expect(layout(items, box)).toEqual(layout(items, box));
      }),
    );
  });

  it('comes to an end on a plate of any size, and on one lower than its margins with no label', () => {
    const low = fc.record({
      mode: fc.constantFrom<LabelBox['mode']>('sides', 'ends'),
      width: fc.integer({ min: 0, max: 300 }),
      height: fc.integer({ min: 0, max: 60 }),
    });
    fc.assert(
      fc.property(scenes, low, ({ items }, box) => {
        const placed = layout(items, { ...box, pad: PAD });
        expect(placed.length).toBeLessThanOrEqual(items.length);
        if ((box.mode === 'sides' ? box.height : box.width) < PAD) expect(placed).toEqual([]);
      }),
    );
  });

  it('place all labels where there is room for all', () => {
    const items = [0.2, 0.5, 0.8].map(
      (y, i): LabelItem => ({ id: `b${i}`, anchor: [400, y * 600], width: 80, height: 20, priority: i, prefer: null }),
    );
    expect(layout(items, { mode: 'sides', width: 800, height: 600, pad: PAD })).toHaveLength(3);
  });

  it('drop the least important label first when there is no room', () => {
    const items = Array.from(
      { length: 9 },
      (_, i): LabelItem => ({
        id: `b${i}`,
        anchor: [150, 30 + i * 10],
        width: 90,
        height: 30,
        priority: i,
        prefer: null,
      }),
    );
    const placed = layout(items, { mode: 'sides', width: 300, height: 160, pad: PAD });
    const kept = new Set(placed.map(({ id }) => id));
    expect(kept.size).toBeLessThan(9);
    expect(kept.has('b8')).toBe(true);
    expect(kept.has('b0')).toBe(false);
  });

  it('make room for an important label by the least important one, on whichever side that stands', () => {
    const box: LabelBox = { mode: 'ends', width: 366, height: 330, pad: PAD };
    const item = (id: string, x: number, width: number, priority: number, prefer: LabelItem['prefer']): LabelItem => ({
      id,
      anchor: [x, 160],
      width,
      height: 18,
      priority,
      prefer,
    });
    const placed = layout(
      [
        item('here', 145, 147, 1000, 'high'),
        item('chosen', 200, 190, 100, 'high'),
        item('heel', 40, 70, 99, 'low'),
        item('beside', 140, 130, 98, 'low'),
      ],
      box,
    );
    expect(placed.map(({ id }) => id).sort()).toEqual(['chosen', 'heel', 'here']);
  });

  it('keep a label on its side while its anchor is near the middle', () => {
    const box: LabelBox = { mode: 'sides', width: 800, height: 600, pad: PAD };
    const at = (x: number): LabelItem[] => [
      { id: 'b', anchor: [x, 300], width: 80, height: 20, priority: 1, prefer: null },
    ];
    const before = layout(at(390), box);
    expect(before[0]?.side).toBe('low');
    expect(layout(at(420), box, before)[0]?.side).toBe('low');
    expect(layout(at(440), box, before)[0]?.side).toBe('high');
  });
});

describe('places along a margin', () => {
  it('are the wished ones where these do not touch', () => {
    expect(
      spread(
        [
          { want: 50, size: 20 },
          { want: 100, size: 20 },
        ],
        8,
        0,
        200,
      ),
    ).toEqual([50, 100]);
  });

  it('share the shift between labels that want the same place', () => {
    expect(
      spread(
        [
          { want: 100, size: 20 },
          { want: 100, size: 20 },
        ],
        8,
        0,
        200,
      ),
    ).toEqual([86, 114]);
  });
});
