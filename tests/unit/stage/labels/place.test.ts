/** Labels step aside: another visible point of a bone is chosen where a leader would pass close to a foreign dot. Pure layout. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LabelBox } from '../../../../src/stage/labels/layout';
import { CLEAR_PX, type LabelWish, leaderToDot, placeLabels } from '../../../../src/stage/labels/place';
import type { Point } from '../../../../src/stage/types';

const box = fc.record({
  mode: fc.constantFrom<LabelBox['mode']>('sides', 'ends'),
  width: fc.integer({ min: 320, max: 1440 }),
  height: fc.integer({ min: 260, max: 860 }),
  pad: fc.constant(12),
});
/** Whole numbers: doubles of fast-check prefer the ends of their bits, and nearly all points would coincide. */
const share = fc.noBias(fc.integer({ min: 200, max: 800 })).map((n) => n / 1000);
const near = fc.noBias(fc.integer({ min: -45, max: 45 }));
const scenes = box.chain((given) =>
  fc.record({
    box: fc.constant(given),
    wishes: fc
      .array(
        fc.record({
          at: fc.tuple(share, share),
          others: fc.array(fc.tuple(near, near), { minLength: 2, maxLength: 4 }),
          width: fc.integer({ min: 30, max: 160 }),
          height: fc.integer({ min: 16, max: 40 }),
          priority: fc.integer({ min: 0, max: 100 }),
          prefer: fc.constantFrom<LabelWish['prefer']>('low', 'high', null),
        }),
        { minLength: 2, maxLength: 10 },
      )
      .map((list): LabelWish[] =>
        list.map(({ at: [x, y], others, ...rest }, i) => {
          const first: Point = [x * given.width, y * given.height];
          return {
            ...rest,
            id: `b${i}`,
            anchors: [first, ...others.map(([dx, dy]): Point => [first[0] + dx, first[1] + dy])],
          };
        }),
      ),
  }),
);

const conflicts = ({ placed }: ReturnType<typeof placeLabels>): number =>
  placed.flatMap((a) => placed.filter((b) => a !== b && leaderToDot(a, b) < CLEAR_PX)).length;

describe('labels that may choose among points of their bone', () => {
  it('never have more leaders close to foreign dots than with the first points, nor fewer labels; in all far fewer', () => {
    let [before, after] = [0, 0];
    fc.assert(
      fc.property(scenes, ({ box: given, wishes }) => {
        const free = placeLabels(wishes, given);
        const first = placeLabels(
          wishes.map((wish) => ({ ...wish, anchors: wish.anchors.slice(0, 1) })),
          given,
        );
        expect(conflicts(free)).toBeLessThanOrEqual(conflicts(first));
        expect(free.placed.length).toBeGreaterThanOrEqual(first.placed.length);
        before += conflicts(first);
        after += conflicts(free);
      }),
      { numRuns: 1500, seed: 20_261_128 },
    );
    expect(before).toBeGreaterThan(200);
    expect(after).toBeLessThan(0.6 * before);
  });

  it('end at one of their points, and what has no room is told by importance', () => {
    fc.assert(
      fc.property(scenes, ({ box: given, wishes }) => {
        const { placed, chosen, left } = placeLabels(wishes, given);
        for (const { id, leader } of placed) {
          const wish = wishes.find((each) => each.id === id);
          expect(wish?.anchors[chosen.get(id) ?? -1]).toEqual(leader[2]);
        }
        const priorities = left.map((id) => wishes.find((wish) => wish.id === id)?.priority ?? Number.NaN);
        expect(priorities).toEqual([...priorities].sort((a, b) => b - a));
        expect(placed.length + left.length).toBe(wishes.length);
        expect(placeLabels(wishes, given)).toEqual({ placed, chosen, left });
      }),
      { numRuns: 500 },
    );
  });
});
