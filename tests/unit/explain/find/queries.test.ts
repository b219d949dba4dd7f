/**
 * What four kinds of people type, invented but as they would: each with the injury a clinician would think of first, or the set of
 * which one comes first where the words do not decide it.
 */
import { describe, expect, test } from 'vitest';
import { content, idsFor } from './finding';

type Query = readonly [words: string, first: readonly string[]];

const MT5_BASE = ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-proximal-shaft'];

const PATIENT: readonly Query[] = [
  ['I stepped off a kerb and my foot rolled over, now the bump on the outside of my foot is sore', ['mt5-tuberosity']],
  ['hurts on the outside of my foot for months, I run a lot, I never fell', ['mt5-proximal-shaft']],
  [
    'landed badly from a jump and rolled over my little toe side, it hurts halfway to the little toe',
    ['mt5-spiral-shaft'],
  ],
  ['training for a marathon, top of my foot hurts behind the toes, no accident', ['metatarsal-shaft-stress']],
  ['stabbing in the ball of my foot under the big toe when I dance', ['sesamoids']],
  ['fell off the roof onto my heel and cannot put the heel down', ['calcaneus-intra-articular']],
  ['foot got caught in the stirrup and the sole is bruised, cannot stand on tiptoe', ['lisfranc', 'lisfranc-fleck']],
  ['my son is 10 and the back of his heel is sore after football', ['calcaneus-apophysis']],
  ['my daughter is growing and the bump on the outer edge of her foot hurts after sport', ['mt5-apophysis']],
  ['cannot stand on my toes', ['lisfranc', 'lisfranc-fleck', 'calcaneus-avulsion']],
  ['banged my pinkie toe on the bed post, it is blue', ['lesser-toes']],
  ['dropped a pan on my big toe and the nail is black', ['hallux']],
  ['sudden snap at the back of the heel, I cannot tiptoe', ['calcaneus-avulsion']],
  ['fell snowboarding, doctor said sprain but below the outer ankle still hurts', ['talar-lateral-process']],
  ['ache on top of the arch after every sprint training', ['navicular-stress']],
  ['extra bone on the inside of my foot rubs in the shoe', ['accessory-navicular']],
];

const COACH: readonly Query[] = [
  ['Team says Jones fractur, out two months', ['mt5-metaphyseal']],
  ['planted on a side step and pulled up, outer edge of the foot, one moment', ['mt5-metaphyseal']],
  ['winger has a stress reaction in the fifth metatarsel', ['mt5-proximal-shaft']],
  ['club reports a lisfrank injury', ['lisfranc']],
  ['midfoot sprain, opponent fell on his pointed foot', ['lisfranc']],
  ['turf toe for the lineman', ['first-mtp-plantar-plate']],
  ['hurdler with a navikular stress fracture', ['navicular-stress']],
  ['dancer rolled over a pointed foot, the dancers fracture', ['mt5-spiral-shaft']],
  ['ballerina on pointe, sore at the base of the second metatarsel, came on slowly', ['mt2-base-stress']],
  ['someone stamped on the forefoot, neck of the fourth metatarsal', ['lesser-metatarsal-neck']],
  ['keeper kicked the ground, pain behind the ankle with the foot pointed', ['talar-posterior-process', 'os-trigonum']],
  ['recruit, weeks of marching, heel sore when you squeeze it', ['calcaneus-stress']],
  ['march fracture', ['metatarsal-shaft-stress']],
];

const STUDENT: readonly Query[] = [
  ['zone 1 fifth metatarsal', ['mt5-tuberosity']],
  ['fract base V metatarsal', MT5_BASE],
  ['MT II-IV stress fracture', ['metatarsal-shaft-stress']],
  ['marchfracture', ['metatarsal-shaft-stress']],
  ['pseudojones', ['mt5-tuberosity']],
  ['Torg classification', ['mt5-metaphyseal', 'mt5-proximal-shaft']],
  ['fracture at the metaphyseal-diaphyseal junction of mt 5', ['mt5-metaphyseal']],
  ['Sanders type III calcanius', ['calcaneus-intra-articular']],
  ['Böhler angle', ['calcaneus-intra-articular']],
  ['Hawkins classification talus neck', ['talar-neck']],
  ['Freiberg infarction second metatarsal head', ['second-head-osteochondrosis']],
  ['Sever', ['calcaneus-apophysis']],
  ['nutcracker mechanism cuboid', ['cuboid']],
  ['osteochondral lesion of the talar dome', ['talar-body']],
  ['Nunley Vertullo stage II', ['lisfranc']],
  ['central third of the navicular, dorsal cortex', ['navicular-stress']],
  ['os trigonum versus Shepherd fracture', ['os-trigonum', 'talar-posterior-process']],
  ['bifurcate ligament avulsion anterior process', ['calcaneus-anterior-process']],
];

const REPORT: readonly Query[] = [
  ['Transverse fracture through the tuberosity of the fifth metatarsal without displacement.', ['mt5-tuberosity']],
  ['Fracture line extends into the 4-5 intermetatarsal joint. No evidence of Lisfranc injury.', ['mt5-metaphyseal']],
  [
    'Cortical thickening and lucency of the proximal diaphysis of the fifth metatarsal, stress fracture.',
    ['mt5-proximal-shaft'],
  ],
  ['Spiral oblique fracture of the distal shaft of the 5th metatarsal.', ['mt5-spiral-shaft']],
  [
    'Periosteal reaction of the second metatarsal shaft in keeping with a stress fracture.',
    ['metatarsal-shaft-stress'],
  ],
  [
    'Stress fracture of the base of the second metatarsal. Tarsometatarsal alignment is normal, no diastasis.',
    ['mt2-base-stress'],
  ],
  ['Diastasis between the medial cuneiform and the base of the second metatarsal.', ['lisfranc', 'lisfranc-fleck']],
  [
    'Comminuted intraarticular fracture of the calcaneus with depression of the posterior facet.',
    ['calcaneus-intra-articular'],
  ],
  ['Incomplete sagittal stress fracture of the navicular on CT.', ['navicular-stress']],
  ['Displaced fracture of the body of the navicular.', ['navicular-body']],
  ['Small fleck of bone at the base of the second metatarsal.', ['lisfranc-fleck']],
  ['Fracture of the medial cuneiform.', ['cuneiforms']],
  ['Fracture of the shaft of the first metatarsal.', ['first-metatarsal']],
  ['Bipartite medial sesamoid, no fracture.', ['bipartite-sesamoid']],
  ['Well corticated ossicle at the lateral border next to the cuboid, os peroneum.', ['extra-bones-outer-edge']],
  [
    'Fracture of the lateral process of the talus. Anterior process of the calcaneus intact.',
    ['talar-lateral-process'],
  ],
  ['Fracture of the base of the fifth metatarsal, not further specified.', MT5_BASE],
];

describe.each([
  ['a patient', PATIENT],
  ['a coach or a commentator', COACH],
  ['a student', STUDENT],
  ['a report', REPORT],
])('%s', (_, queries) => {
  test.each(queries)('%s', (words, first) => {
    expect(first).toContain(idsFor(words)[0]);
  });
});

describe('the table', () => {
  const all = [...PATIENT, ...COACH, ...STUDENT, ...REPORT];
  const firsts = new Set(all.filter(([, first]) => first.length === 1).flatMap(([, first]) => first));

  test('asks for every injury told in full, and for most cards', () => {
    expect(all.length).toBeGreaterThanOrEqual(40);
    expect(content.injuries.map(({ id }) => id).filter((id) => !firsts.has(id))).toEqual([]);
    expect(content.cards.filter(({ id }) => firsts.has(id)).length).toBeGreaterThanOrEqual(15);
  });

  test('says nothing only as content has it', () => {
    const phrases = new Set(
      [...content.injuries, ...content.cards].flatMap(({ findBy }) => findBy.map((each) => each.toLowerCase())),
    );
    expect(all.filter(([words]) => phrases.has(words.toLowerCase()))).toEqual([]);
  });
});

test.each(['cannot stand on my toes', 'cannot go up on toes', 'unable to tip-toe'])(
  '%s: the midfoot is among the first',
  (words) => {
    expect(idsFor(words).slice(0, 5)).toContain('lisfranc');
    expect(idsFor(words)).not.toContain('lesser-toes');
  },
);

test('a Roman figure beside no metatarsal, and the one who speaks, are no ray', () => {
  expect(idsFor('type V navicular')).toEqual(idsFor('type navicular'));
  expect(idsFor('the metatarsal I broke')).toEqual(idsFor('the metatarsal broke'));
});
