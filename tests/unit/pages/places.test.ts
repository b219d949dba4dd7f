/** An address carries listed keys and values only, and survives being written and read. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { QUESTION_IDS, READERS } from '../../../src/ids';
import { type Address, DEMOS, PAGES, readAddress, START, strangersIn, writeAddress } from '../../../src/pages/places';

const CARDS = readContent().cards.map(({ id }) => id);
const address: fc.Arbitrary<Address> = fc
  .record({
    page: fc.constantFrom(...PAGES),
    question: fc.constantFrom(...QUESTION_IDS),
    reader: fc.constantFrom(...READERS),
    demo: fc.constantFrom(null, ...DEMOS),
    card: fc.constantFrom(null, ...CARDS),
  })
  // A card is open on its own page only.
  .map((given) => ({ ...given, card: given.page === 'find' ? given.card : null }));

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
    expect(readAddress('#question=nothing')).toEqual(START);
  });

  it('leads to the start when it asks for a page or an example that is not there', () => {
    expect(readAddress('#view=nowhere&question=nothing')).toEqual({ ...START, page: 'start' });
    expect(readAddress('#demo=demo-somebody&view=hand').page).toBe('start');
    expect(readAddress('#demo=demo-dancer&view=hand').page).toBe('hand');
  });

  it('opens a card by its id, and says of one that is not there that it is a stranger', () => {
    expect(readAddress('#card=talar-neck')).toEqual({ ...START, page: 'find', card: 'talar-neck' });
    expect(writeAddress(readAddress('#card=talar-neck&reader=study'))).toBe(
      '#card=talar-neck&question=where&reader=study',
    );
    expect(readAddress('#view=hand&card=talar-neck')).toMatchObject({ page: 'hand', card: null });
    expect(strangersIn('#card=talar-neck', '', CARDS)).toEqual([]);
    expect(strangersIn('#card=nowhere', '', CARDS)).toEqual(['card=nowhere']);
    fc.assert(
      fc.property(fc.string(), (typed) => {
        expect(readAddress(`#${new URLSearchParams({ card: typed })}`).card ?? 'none').toMatch(/^[a-z][a-z0-9-]*$/);
      }),
    );
  });

  it('says which keys and values are not listed, and nothing where all are', () => {
    fc.assert(
      fc.property(address, (given) => {
        expect(strangersIn(writeAddress(given), '', CARDS)).toEqual([]);
      }),
    );
    expect(strangersIn('')).toEqual([]);
    // Written behind a question mark instead of a #, they lead nowhere; what others hang on a link is not ours to judge.
    expect(strangersIn('', '?demo=unknown&view=hand&source=mail')).toEqual(['?demo=unknown', '?view=hand']);
    expect(strangersIn('#demo=unknown')).toEqual(['demo=unknown']);
    expect(strangersIn('#view=hand&question=when&foot=left')).toEqual(['question=when', 'foot=left']);
    expect(strangersIn('#toString=x&__proto__')).toEqual(['toString=x', '__proto__']);
  });

  it('repeats what is not listed in few plain signs, so that a link cannot speak through the page', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (key, value) => {
        for (const said of strangersIn(`#${new URLSearchParams([[key, value]])}`)) {
          expect(said.length).toBeLessThanOrEqual(40);
          expect(said).toMatch(/^[\w=.…-]*$/);
        }
      }),
    );
  });
});
