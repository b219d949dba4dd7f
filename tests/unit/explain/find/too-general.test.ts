/** Words that are true of every injury make no list, and the page knows to say what to add; any word more and it is another case. */
import { describe, expect, it } from 'vitest';
import { isTooGeneral } from '../../../../src/explain/find';
import { idsFor, search } from './finding';

const general = (words: string, bone: 'metatarsal5' | null = null) => isTooGeneral(search(words), { words, bone });

describe('words that are true of every injury', () => {
  it.each(['foot fracture', 'broken foot', 'my foot hurts', 'Fracture of the left foot', 'it is painful and swollen'])(
    '%s',
    (words) => {
      expect(idsFor(words)).toEqual([]);
      expect(general(words)).toBe(true);
    },
  );

  it.each([
    ['a place more', 'fracture in the heel'],
    ['an event more', 'broken foot after a fall'],
    ['a word that nobody here knows', 'foot fracture quagmire'],
    ['a code that is none told here', 'S52.501A'],
    ['said not to be so', 'foot not broken'],
    ['nothing typed', '  '],
  ])('%s: not these', (_, words) => expect(general(words)).toBe(false));

  it('with a bone chosen there is something to go by', () =>
    expect(general('foot fracture', 'metatarsal5')).toBe(false));
});

describe('the inner midfoot', () => {
  it.each(['inner midfoot', 'pain in the inner midfoot', 'inner side of the midfoot'])(
    '%s: all that lies there',
    (words) => {
      expect(idsFor(words)).toEqual(
        expect.arrayContaining([
          'navicular-stress',
          'navicular-body',
          'accessory-navicular',
          'lisfranc',
          'cuneiforms',
          'first-metatarsal',
        ]),
      );
      expect(idsFor(words)).not.toContain('mt5-tuberosity');
    },
  );
});
