/** An address carries listed keys and values only, and survives being written and read. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUESTION_IDS, READERS } from '../../../src/ids';
import { type Address, DEMOS, PAGES, readAddress, START, writeAddress } from '../../../src/pages/places';

const address: fc.Arbitrary<Address> = fc.record({
  page: fc.constantFrom(...PAGES),
  question: fc.constantFrom(...QUESTION_IDS),
  reader: fc.constantFrom(...READERS),
  demo: fc.constantFrom(null, ...DEMOS),
});

describe('the address', () => {
  it('comes back as it was written', () => {
    fc.assert(
      fc.property(address, (given) => {
        expect(readAddress(writeAddress(given))).toEqual(given);
      }),
    );
  });

  it('holds nothing but listed values, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const read = readAddress(`#${typed}`);
        expect(PAGES).toContain(read.page);
        expect(QUESTION_IDS).toContain(read.question);
        expect(READERS).toContain(read.reader);
        expect([null, ...DEMOS]).toContain(read.demo);
      }),
    );
  });

  it('drops keys that are not listed', () => {
    expect(writeAddress(readAddress('#view=hand&name=someone&question=why'))).toBe('#view=hand&question=why');
    expect(readAddress('#view=nowhere&question=nothing')).toEqual(START);
  });
});
