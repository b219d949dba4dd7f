/** How far a denial reaches, and where it stops: each line with what is understood as not so, as asked, and what comes first. */
import { describe, expect, test } from 'vitest';
import { idsFor, search } from './finding';

const MT5 = ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-proximal-shaft', 'mt5-spiral-shaft'];
const HEEL = ['calcaneus-intra-articular', 'calcaneus-stress', 'calcaneus-apophysis', 'calcaneus-avulsion'];

type Line = readonly [words: string, denied: readonly string[], first: readonly string[]];

const lower = (texts: readonly string[]): string[] => texts.map((each) => each.toLowerCase());

describe.each<[string, readonly Line[]]>([
  [
    'non- takes the next word only, and what hangs on it by a hyphen',
    [
      ['Non-displaced fracture of the navicular', ['displaced'], ['navicular-body', 'navicular-stress']],
      ['Non displaced fracture of the navicular', ['displaced'], ['navicular-body', 'navicular-stress']],
      ['Non-displaced fracture base of the fifth metatarsal', ['displaced'], MT5],
      ['Non-union Jones', ['union'], ['mt5-metaphyseal']],
      ['Non displaced intra-articular calcaneal fracture', ['displaced'], ['calcaneus-intra-articular']],
      ['non-operative treatment of a Lisfranc injury', ['operative'], ['lisfranc']],
      ['Non-comminuted fracture of the talar neck', ['comminuted'], ['talar-neck']],
      ['non-intra-articular cuboid fracture', ['intra-articular'], ['cuboid']],
    ],
  ],
  [
    'weight is not put on what is hurt',
    [
      ['non-weight-bearing for a Jones fracture', [], ['mt5-metaphyseal']],
      ['non weight bearing, Lisfranc injury', [], ['lisfranc']],
      ['no weight on a navicular stress fracture', [], ['navicular-stress']],
      ['no weight bearing on the talar neck fracture', [], ['talar-neck']],
    ],
  ],
  [
    'a verb of doing that is denied is denied alone',
    [
      ['he did not finish the race with a fifth metatarsal', ['finish'], MT5],
      ["she won't play on Saturday on that Jones fracture", ['play'], ['mt5-metaphyseal']],
      ['did not train because of a cuboid fracture', ['train'], ['cuboid']],
      ['not significantly displaced fracture of the cuboid', ['displaced'], ['cuboid']],
      ['not available due to turf toe', ['available'], ['first-mtp-plantar-plate']],
      ['no fall for weeks but the talar neck', ['fall'], ['talar-neck']],
    ],
  ],
  [
    'with begins what is told beside it',
    [
      ['no fall with a sore heel', ['fall'], ['calcaneus-stress', 'calcaneus-apophysis']],
      ['no twist despite the lisfranc injury', ['twist'], ['lisfranc']],
      ['healing, not associated with a Lisfranc injury, cuboid fracture', ['lisfranc'], ['cuboid']],
    ],
  ],
  [
    'nothing at a place',
    [
      ['nothing at the heel, only little toe side', ['heel'], [...MT5, 'cuboid']],
      ['nothing wrong with the navicular, talar neck fracture', ['navicular'], ['talar-neck']],
    ],
  ],
  [
    'a picture takes back what another did not show',
    [
      [
        'X-ray did not show navicular fracture but MRI did',
        [],
        ['navicular-stress', 'navicular-body', 'accessory-navicular'],
      ],
      ['X-ray did not show a Jones fracture. MRI did.', [], ['mt5-metaphyseal']],
      ['No talar neck fracture on the film, but CT was positive', [], ['talar-neck']],
    ],
  ],
  [
    'a list of places after "no fracture of"',
    [
      [
        'No fracture of the calcaneus, talus and navicular. Fracture of the cuboid.',
        ['calcaneus, talus and navicular'],
        ['cuboid'],
      ],
      ['no fracture of the calcaneus and fracture of the cuboid', ['calcaneus'], ['cuboid']],
      ['no pain in the heel and the cuboid is fractured', ['heel'], ['cuboid']],
      ['no fracture of the calcaneus and stress fracture of the navicular', ['calcaneus'], ['navicular-stress']],
      ['no swelling of the cuboid and heel hurts', ['cuboid'], HEEL],
    ],
  ],
  [
    'what hurts is not denied by what stands before it',
    [
      ['no fall heel hurts', ['fall'], ['calcaneus-stress', 'calcaneus-apophysis']],
      ['no injury heel pain', ['injury'], HEEL],
      ['did not twist the cuboid is sore', ['twist'], ['cuboid']],
    ],
  ],
])('%s', (_, lines) => {
  test.each(lines)('%s', (words, denied, first) => {
    expect(lower(search(words).denied)).toEqual(denied);
    expect(first).toContain(idsFor(words)[0]);
  });
});

describe('what stands before "normal" is a list of places, or only the last of it', () => {
  test.each<[words: string, denied: string[]]>([
    ['Talus, navicular and cuboid are normal', ['Talus, navicular and cuboid']],
    ['heel pain, navicular and talus normal', ['navicular and talus']],
    ['heel hurts, navicular and talus are normal', ['navicular and talus']],
    ['Fracture of the talus and navicular intact', ['navicular']],
    ['the heel hurts and the talus is normal', ['talus']],
  ])('%s', (words, denied) => {
    expect(search(words).denied).toEqual(denied);
  });
});

describe('what stays denied', () => {
  test.each<[words: string, denied: string[]]>([
    ['no fracture of the calcaneus and talus', ['calcaneus and talus']],
    ['no fracture of the calcaneus or talus', ['calcaneus or talus']],
    ['no heel pain', ['heel']],
    ['no heel or arch pain', ['heel or arch']],
    ['no displaced fracture of the navicular', ['displaced fracture of the navicular']],
    ['X-ray did not show a navicular fracture and MRI did not', ['navicular']],
    ['no fall, film shows a fracture', ['fall']],
    ['not consistent with a Lisfranc injury', ['Lisfranc']],
  ])('%s', (words, denied) => {
    expect(search(words).denied).toEqual(denied);
    const reasons = search(words).candidates.flatMap(({ matched }) => matched.filter(({ by }) => by !== 'not'));
    expect(reasons).toEqual([]);
  });
});

describe('a mark directly behind a word asks for what stands before it', () => {
  test.each<[words: string, asked: string[]]>([
    ['Lisfranc injury?', ['Lisfranc']],
    ['is it a Jones fracture?', ['Jones']],
    ['Lisfranc??', ['Lisfranc']],
    ['the heel hurts after running, is it a Lisfranc injury?', ['Lisfranc']],
  ])('%s', (words, asked) => {
    expect(search(words).asked).toEqual(asked);
    const name = asked[0]?.toLowerCase();
    const met = search(words).candidates.flatMap(({ matched }) => matched);
    expect(met.filter((each) => 'said' in each && each.said.toLowerCase() === name)).toEqual([]);
  });

  test('and what is found goes before it', () => {
    expect(idsFor('Lisfranc injury? Stress fracture of the navicular.')[0]).toBe('navicular-stress');
    expect(search('Fracture of the cuboid? Navicular fracture.').asked).toEqual(['cuboid']);
  });
});

describe('an X-ray is one word and no ray', () => {
  test.each(['X-ray', 'x ray', 'xray', 'X-rays', 'X-ray today'])('%s', (words) => {
    expect(search(words)).toMatchObject({ candidates: [], unknown: [] });
  });
  test('a ray still is one', () => {
    expect(idsFor('first ray')).toContain('first-metatarsal');
  });
});
