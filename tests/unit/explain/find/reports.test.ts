/**
 * Whole sentences as reports have them and as they are said over a match, all invented: what comes first, or what is among those shown
 * at once; and what no sentence may be taken to say.
 */
import { describe, expect, test } from 'vitest';
import { inSightOf } from '../../../../src/explain/find';
import { idsFor, search } from './finding';

type Line = readonly [words: string, first: readonly string[]];

const MT5 = ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-proximal-shaft', 'mt5-spiral-shaft'];
const shownFor = (words: string): string[] => inSightOf(search(words).candidates).inSight.map(({ ref }) => ref.id);

const REPORT: readonly Line[] = [
  ['XR left foot: nondisplaced transverse fracture of the base of the fifth metatarsal.', MT5.slice(0, 3)],
  [
    'Avulsion fracture at the base of the 5th metatarsal, minimally displaced. No other fracture identified.',
    ['mt5-tuberosity'],
  ],
  [
    'Minimally displaced spiral fracture of the 5th metatarsal diaphysis. Joint spaces preserved.',
    ['mt5-spiral-shaft'],
  ],
  ['?Jones fracture. Fracture line reaches the 4/5 intermetatarsal joint.', ['mt5-metaphyseal']],
  ['Widening of the Lisfranc interval on weight bearing views.', ['lisfranc']],
  ['Fleck of bone between the medial cuneiform and second metatarsal base. No dislocation.', ['lisfranc-fleck']],
  [
    'CT: comminuted fracture of the calcaneus involving the posterior facet, Sanders III. Talus and navicular intact.',
    ['calcaneus-intra-articular'],
  ],
  [
    'MRI: bone marrow oedema of the navicular without a fracture line, in keeping with stress reaction.',
    ['navicular-stress'],
  ],
  ['Sagittal fracture of the dorsal navicular cortex, incomplete, no displacement.', ['navicular-stress']],
  [
    'No fracture is seen on the X-ray; MRI shows a stress fracture of the second metatarsal shaft.',
    ['metatarsal-shaft-stress'],
  ],
  [
    'Clinical: rule out stress fracture. Findings: periosteal new bone along the third metatarsal shaft.',
    ['metatarsal-shaft-stress'],
  ],
  ['Vertical fracture through the talar neck, no subluxation of the subtalar joint. Hawkins type I.', ['talar-neck']],
  ['Non-displaced fracture of the lateral process of the talus; no calcaneal fracture.', ['talar-lateral-process']],
  ['Type 2 accessory navicular with oedema across the synchondrosis.', ['accessory-navicular']],
  ['Os trigonum noted. No acute fracture.', ['os-trigonum']],
  ['Medial sesamoid is bipartite with smooth margins, likely normal variant.', ['bipartite-sesamoid']],
  ['Fracture of the medial sesamoid with sharp margins.', ['sesamoids']],
  ['Flattening of the second metatarsal head, consistent with Freiberg disease.', ['second-head-osteochondrosis']],
  [
    'Small avulsion fragment at the dorsal anterior process of the calcaneus at the bifurcate ligament.',
    ['calcaneus-anterior-process'],
  ],
  ['Avulsion of the posterior calcaneal tuberosity at the Achilles insertion.', ['calcaneus-avulsion']],
  ['Fracture of the cuboid with shortening of the lateral column.', ['cuboid']],
  ['No fracture of the metatarsals or cuneiforms. Cuboid fracture.', ['cuboid']],
  ['Comminuted fracture of the distal phalanx of the great toe.', ['hallux']],
  ['Oblique fracture of the proximal phalanx of the fifth toe.', ['lesser-toes']],
  ['Plantar plate tear of the first MTP joint.', ['first-mtp-plantar-plate']],
  ['Midfoot swelling, unlikely to be a Lisfranc injury. Fracture of the cuboid.', ['cuboid']],
  ['Low suspicion for Lisfranc injury. Stress fracture of the navicular.', ['navicular-stress']],
  ['Fracture of the talar neck with an unremarkable calcaneus.', ['talar-neck']],
  ['Normal alignment of the Lisfranc joint. Cuboid fracture.', ['cuboid']],
  ['History of calcaneus fracture. Acute fracture of the cuboid.', ['cuboid']],
  ['Old healed Jones fracture, acute fracture of the cuboid.', ['cuboid']],
  ['Calcaneus fracture, healed. Navicular stress fracture.', ['navicular-stress']],
  ['Apophysis of the fifth metatarsal base, normal variant in a child; no fracture', ['mt5-apophysis']],
];

const SPOKEN: readonly Line[] = [
  ['team says midfoot', ['lisfranc']],
  ['midfoot', ['lisfranc']],
  ['midfoot sprain', ['lisfranc']],
  ['injured midfoot, out for weeks', ['lisfranc']],
  ['outer midfoot', ['cuboid']],
  ['midfoot pain in a runner, came on slowly', ['navicular-stress']],
  ['stress reaction in the foot', ['metatarsal-shaft-stress']],
  ['outside of the foot, after a twist', ['mt5-tuberosity']],
  ['heel after a fall from a ladder', ['calcaneus-intra-articular']],
  ['pain under big toe joint', ['sesamoids', 'bipartite-sesamoid', 'first-mtp-plantar-plate']],
  ['He has not broken the fifth metatarsal, it is a Lisfranc.', ['lisfranc']],
  ['The word from the dugout is a metatarsal, he went over on the outside of his foot.', MT5],
  ['Planted the foot and it just gave way, that looks like a Jones.', ['mt5-metaphyseal']],
  ['Somebody landed on the back of his heel while he was on his toes and the midfoot folded.', ['lisfranc']],
  ['She came down off the beam awkwardly and rolled onto the outer edge of her foot.', MT5],
  ['The midfielder is out with a foot injury, club says fifth metatarsal, no surgery.', MT5],
  ["It wasn't a tackle, nobody near him, stress fracture they say, fifth metatarsal.", ['mt5-proximal-shaft']],
  ['They are saying turf toe, not a fracture.', ['first-mtp-plantar-plate']],
  ['The medics were worried about the Lisfranc but it is only the cuboid.', ['cuboid']],
  ['The scan was clear of a Jones fracture, it is the tuberosity.', ['mt5-tuberosity']],
  ['Ruled out for the season with a Lisfranc injury.', ['lisfranc']],
  ["He won't be back this season after surgery on the navicular.", ['navicular-stress', 'navicular-body']],
  ['He is out, not with a calf problem but with a stress fracture in his heel.', ['calcaneus-stress']],
  ['A broken talus, the neck of it, from a car accident', ['talar-neck']],
];

describe.each([
  ['a report', REPORT],
  ['over a match', SPOKEN],
])('%s', (_, lines) => {
  test.each(lines)('%s', (words, first) => {
    expect(first).toContain(idsFor(words)[0]);
  });
});

describe('nothing is found', () => {
  test.each([
    'sore shin',
    'broke a bone in the foot',
    'foot fracture',
    'No acute fracture or dislocation. Lisfranc alignment maintained.',
    'Talus, navicular and cuboid are normal',
    'Calcaneus and talus intact.',
    'unlikely to be a Lisfranc injury',
    'unlikely Lisfranc',
    'no longer Lisfranc',
    'improbable Jones fracture',
    'Jones fracture is not likely',
    'unremarkable calcaneus',
    'normal calcaneus',
    'intact calcaneus',
    'no previous Jones fracture',
  ])('%s', (words) => {
    expect(idsFor(words)).toEqual([]);
  });
});

describe('in doubt, or of an earlier time: listed as such, and not as found', () => {
  test.each<[words: string, as: 'asked' | 'earlier', what: string, id: string]>([
    ['low suspicion for Lisfranc', 'asked', 'Lisfranc', 'lisfranc'],
    ['Jones fracture, low suspicion', 'asked', 'Jones', 'mt5-metaphyseal'],
    ['doubtful Lisfranc', 'asked', 'Lisfranc', 'lisfranc'],
    ['Lisfranc injury is doubtful', 'asked', 'Lisfranc', 'lisfranc'],
    ['less likely Jones fracture', 'asked', 'Jones', 'mt5-metaphyseal'],
    ['history of calcaneus fracture', 'earlier', 'calcaneus', 'calcaneus-intra-articular'],
    ['old calcaneus fracture', 'earlier', 'calcaneus', 'calcaneus-intra-articular'],
    ['previous Jones fracture', 'earlier', 'Jones', 'mt5-metaphyseal'],
    ['prior Jones fracture', 'earlier', 'Jones', 'mt5-metaphyseal'],
    ['my Jones fracture healed well', 'earlier', 'Jones', 'mt5-metaphyseal'],
    ['healed Jones fracture', 'earlier', 'Jones', 'mt5-metaphyseal'],
    ['Calcaneus: old fracture', 'earlier', 'Calcaneus', 'calcaneus-intra-articular'],
    ['calcaneus previously fractured', 'earlier', 'calcaneus', 'calcaneus-intra-articular'],
    ['the fracture of the calcaneus has healed', 'earlier', 'calcaneus', 'calcaneus-intra-articular'],
    ['I had a Jones fracture two years ago', 'earlier', 'Jones', 'mt5-metaphyseal'],
  ])('%s', (words, as, what, id) => {
    const found = search(words);
    expect({ denied: found.denied, [as]: found[as] }).toEqual({ denied: [], [as]: [what] });
    const candidate = found.candidates.find(({ ref }) => (ref.id as string) === id);
    expect(candidate?.matched).toEqual([]);
    expect(candidate?.[as].length).toBeGreaterThan(0);
    const plain = search(what).candidates.find(({ ref }) => (ref.id as string) === id);
    expect(candidate?.score ?? 0).toBeLessThan(plain?.score ?? 0);
  });

  test.each([
    'history of a fall on the heel',
    'history of twisting, outer edge',
    '10 year old boy with heel pain',
    '3 week old Jones fracture',
    '19 yr old with heel pain',
    'winger with a Jones fracture unlikely to return this season',
    'the navicular has not healed',
    'pain prior to the fall, heel',
    'he can no longer play with a Jones fracture',
    'the fifth metatarsal, hurt in the previous match',
    'doubtful for Saturday, Jones fracture',
    'heel pain, normal X-ray',
    'normal X-ray heel pain',
    'sore in normal shoes under the big toe',
    'intact skin over a calcaneus fracture',
    '23-year-old midfielder with a Lisfranc injury',
  ])('but is present: %s', (words) => {
    const { denied, asked, earlier, candidates } = search(words);
    expect({ denied, asked, earlier }).toEqual({ denied: [], asked: [], earlier: [] });
    expect(candidates[0]?.matched.length).toBeGreaterThan(0);
  });
});

describe('shown at once', () => {
  test.each<[words: string, injuries: string[]]>([
    ['team says midfoot', ['lisfranc', 'navicular-stress', 'mt2-base-stress']],
    ['injured midfoot, out for weeks', ['lisfranc', 'navicular-stress', 'mt2-base-stress']],
    ['metatarsal', ['lisfranc', 'mt2-base-stress', 'metatarsal-shaft-stress', ...MT5]],
    [
      'stress reaction in the foot',
      ['metatarsal-shaft-stress', 'navicular-stress', 'mt2-base-stress', 'mt5-proximal-shaft'],
    ],
    ['outside of the foot', MT5],
  ])('%s', (words, injuries) => {
    expect(shownFor(words)).toEqual(expect.arrayContaining(injuries));
  });

  test('no more than a glance takes in, but for injuries told in full; each candidate once, in its order', () => {
    const { candidates } = search('metatarsal');
    const { inSight, folded } = inSightOf(candidates);
    expect(folded.length).toBeGreaterThan(0);
    expect(inSight.slice(6).every(({ ref }) => ref.is === 'injury')).toBe(true);
    expect([...inSight, ...folded].sort((a, b) => candidates.indexOf(a) - candidates.indexOf(b))).toEqual(candidates);
  });

  test('an injury that fits much less waits with the rest', () => {
    const words = 'midfoot pain in a runner, came on slowly';
    const [sixth] = search(words).candidates.slice(5);
    for (const { ref, score } of inSightOf(search(words).candidates).folded)
      if (ref.is === 'injury') expect(score).toBeLessThan(0.75 * (sixth?.score ?? 0));
  });
});

test('a place said in full is no piece of the name of a bone', () => {
  const reasons = search('midfoot').candidates.flatMap(({ matched }) => matched);
  expect(reasons.filter(({ by }) => by === 'bone')).toEqual([]);
  expect(search('outer midfoot').candidates[0]?.matched).toContainEqual(
    expect.objectContaining({ by: 'bone', bone: 'cuboid' }),
  );
});
