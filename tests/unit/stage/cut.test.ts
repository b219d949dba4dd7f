/** What runs behind the bone in question is cut at its outline. */
import { describe, expect, it } from 'vitest';
import { piecesOutside } from '../../../src/stage/overlay/cut';
import type { Point } from '../../../src/stage/types';

describe('the bone in question', () => {
  const square: Point[] = [
    [10, 10],
    [20, 10],
    [20, 20],
    [10, 20],
  ];
  it('is run behind, not over: a line is cut at its outline', () => {
    expect(
      piecesOutside(
        [
          [0, 15],
          [30, 15],
        ],
        square,
      ),
    ).toEqual([
      [
        [0, 15],
        [10, 15],
      ],
      [
        [20, 15],
        [30, 15],
      ],
    ]);
    expect(
      piecesOutside(
        [
          [0, 0],
          [30, 0],
        ],
        square,
      ),
    ).toEqual([
      [
        [0, 0],
        [30, 0],
      ],
    ]);
    expect(
      piecesOutside(
        [
          [12, 12],
          [18, 18],
        ],
        square,
      ),
    ).toEqual([]);
    expect(
      piecesOutside(
        [
          [0, 15],
          [15, 15],
          [15, 40],
        ],
        square,
      ),
    ).toEqual([
      [
        [0, 15],
        [10, 15],
      ],
      [
        [15, 20],
        [15, 40],
      ],
    ]);
    expect(
      piecesOutside(
        [
          [0, 15],
          [30, 15],
        ],
        square.toReversed(),
      ),
    ).toHaveLength(2);
  });
});
