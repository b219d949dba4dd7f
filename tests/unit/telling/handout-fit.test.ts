import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linesOf, takeWhileRoom } from '../../../src/telling/handout-fit';

/** Breaks at blanks the slow way: word by word into lines. */
const broken = (text: string, letters: number): number => {
  const lines: string[] = [''];
  for (const word of text.split(/\s+/).filter((w) => w.length > 0)) {
    const last = lines[lines.length - 1] ?? '';
    const longer = last === '' ? word : `${last} ${word}`;
    if (longer.length <= letters) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.length;
};

describe('lines of a text', () => {
  it('are those of breaking it word by word', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { maxLength: 60 }),
        fc.integer({ min: 12, max: 60 }),
        (words, letters) => {
          expect(linesOf(words.join(' '), letters)).toBe(broken(words.join(' '), letters));
        },
      ),
    );
  });

  it('break a word longer than a line', () => {
    expect(linesOf('x'.repeat(101), 50)).toBe(3);
    expect(linesOf(`ab ${'x'.repeat(101)}`, 50)).toBe(4);
  });
});

describe('room', () => {
  it('is never overdrawn, and what is left out does not fit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { maxLength: 30 }),
        fc.integer({ min: -5, max: 60 }),
        (lines, room) => {
          const wishes = lines.map((n, i) => ({ key: `w${i}`, lines: n }));
          const taken = takeWhileRoom(wishes, room);
          const used = wishes.filter((w) => taken.has(w.key)).reduce((sum, w) => sum + w.lines, 0);
          expect(used).toBeLessThanOrEqual(Math.max(0, room) + 1e-9);
          for (const wish of wishes) if (!taken.has(wish.key)) expect(wish.lines).toBeGreaterThan(room - used - 1e-9);
        },
      ),
    );
  });
});
