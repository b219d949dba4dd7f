import { describe, expect, it } from 'vitest';
import { readRange } from '../../../../src/pages/back/OwnRange';

describe('a range as the clinic types it', () => {
  it.each([
    ['', '', { range: null }],
    [' 2 ', '6', { range: { low: 2, high: 6 } }],
    ['0', '0', { range: { low: 0, high: 0 } }],
    ['2.5', '100', { range: { low: 2.5, high: 100 } }],
    ['2', '', 'half'],
    ['', '6', 'half'],
    ['6', '2', 'wrong'],
    ['-1', '2', 'wrong'],
    ['1', '101', 'wrong'],
    ['a', '2', 'wrong'],
  ] as const)('%j to %j', (low, high, read) => {
    expect(readRange(low, high, 100)).toEqual(read);
  });
});
