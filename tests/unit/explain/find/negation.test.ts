/** What is said not to be so counts for nothing, and against what it speaks against; what was only asked is no finding. */
import { describe, expect, test } from 'vitest';
import { candidateFor, idsFor, saidIn, search } from './finding';

describe('what is understood as not so', () => {
  test.each<[words: string, denied: string[]]>([
    ['no fall', ['fall']],
    ['did not twist', ['twist']],
    ["didn't twist it, didn’t fall", ['twist it', 'fall']],
    ['fracture of the base without displacement', ['displacement']],
    ['without displacement of the fifth metatarsal', ['displacement']],
    ['no displacement or angulation of the fifth metatarsal', ['displacement or angulation']],
    ['denies trauma', ['trauma']],
    ['no history of injury', ['injury']],
    ['no injury', ['injury']],
    ['fracture of the base, not displaced', ['displaced']],
    ['no evidence of Lisfranc injury', ['Lisfranc']],
    ['Lisfranc injury was excluded', ['Lisfranc']],
    ['Fracture of the navicular is not seen', ['navicular']],
    ['no fall, twist or blow', ['fall, twist or blow']],
    ['no fall, heel hurts', ['fall']],
    ['no fall but a twist', ['fall']],
    ['no fall and slowly worse', ['fall']],
    ['neither fall nor twist', ['fall', 'twist']],
    ['no pain in the heel', ['heel']],
    ['no fracture. Lisfranc joint', ['fracture']],
    ['No: heel', []],
    ['Lisfranc: negative', ['Lisfranc']],
    ['Lisfranc: not seen. Heel', ['Lisfranc']],
    ['Jones fracture: none', ['Jones']],
    ['ruled out: Jones fracture', ['Jones']],
    ['Excluded: navicular fracture', ['navicular']],
    ['Excluded: Lisfranc, Jones and cuboid fracture. Heel sore', ['Lisfranc, Jones and cuboid']],
    ['rules out Lisfranc', ['Lisfranc']],
    ['MRI ruled out a Jones fracture', ['Jones']],
    ['X-ray negative, heel', []],
    ['metatarsal no. 5', []],
    ['no, it is the heel', []],
  ])('%s', (words, denied) => {
    expect(search(words).denied.map((each) => each.replace(/ it$/, ''))).toEqual(
      denied.map((each) => each.replace(/ it$/, '')),
    );
  });

  test.each([
    'heel, not without pain',
    'no longer able to walk, heel',
    'heel, not able to stand on tiptoe',
    'cannot put the heel down',
    "heel sprain that doesn't get better",
    'not only the heel',
    'heel, no better after weeks',
    'no doubt the heel',
    'nothing happened, heel',
    'northern heel',
  ])('no negation: %s', (words) => {
    expect(search(words).denied).toEqual([]);
    expect(idsFor(words)).toEqual(expect.arrayContaining(['calcaneus-stress']));
  });
});

describe('a word that is denied counts for no candidate', () => {
  test.each([
    ['midfoot pain, no evidence of Lisfranc injury', 'lisfranc'],
    ['tuberosity avulsion of the fifth metatarsal, no Jones fracture', 'mt5-metaphyseal'],
    ['no fracture of the calcaneus, stress fracture of the navicular', 'calcaneus-intra-articular'],
    ['no heel pain, sore under the big toe', 'calcaneus-stress'],
  ])('%s: not %s', (words, id) => {
    const candidate = candidateFor(words, id);
    const denied = search(words).denied.join(' ').toLowerCase();
    for (const said of saidIn(candidate?.matched ?? []))
      for (const word of said.split(' ')) expect(denied).not.toContain(word);
    expect(idsFor(words)[0]).not.toBe(id);
  });

  test('alone it finds nothing', () => {
    expect(idsFor('no evidence of Lisfranc injury')).not.toContain('lisfranc');
    expect(idsFor('no heel')).toEqual([]);
  });

  test('words on both sides make no phrase together', () => {
    const reasons = search('no big, toe').candidates.flatMap(({ matched }) => matched);
    expect(reasons).not.toContainEqual(expect.objectContaining({ word: 'big-toe' }));
  });

  test('where it stays a candidate, what was denied is told beside it', () => {
    const jones = candidateFor('base of the fifth metatarsal, outer edge, side step, no Jones', 'mt5-metaphyseal');
    expect(saidIn(jones?.against ?? [])).toContain('jones');
  });
});

describe('no moment speaks for what comes bit by bit', () => {
  test.each([
    ['outer edge of the foot, no fall', 'mt5-proximal-shaft'],
    ['outer edge of the foot, denies trauma', 'mt5-proximal-shaft'],
    ['heel, no history of injury', 'calcaneus-stress'],
    ['midfoot, no accident', 'mt2-base-stress'],
    ['second metatarsal without any injury', 'metatarsal-shaft-stress'],
  ])('%s', (words, id) => {
    const [plain] = words.split(/,| without/);
    const place = (of: string): number => idsFor(of).indexOf(id);
    expect(place(words)).toBeGreaterThanOrEqual(0);
    expect(place(words)).toBeLessThanOrEqual(place(plain ?? ''));
    expect(candidateFor(words, id)?.matched).toContainEqual(expect.objectContaining({ by: 'not', word: 'many-loads' }));
  });

  test('and against what needs one, which says so', () => {
    const [without, plain] = ['heel, no fall', 'heel'].map((words) => candidateFor(words, 'calcaneus-intra-articular'));
    expect(without?.score ?? 0).toBeLessThan(plain?.score ?? 0);
    expect(without?.against).toContainEqual({ by: 'event', said: 'fall', word: 'any-moment' });
  });

  test('but takes nothing off the list: a moment is easily forgotten', () => {
    for (const words of ['midfoot', 'outer edge', 'heel', 'ball of the foot', 'ankle'])
      expect(idsFor(`${words}, no fall, no twist`).sort()).toEqual(idsFor(words).sort());
  });

  test('not bit by bit speaks for one moment', () => {
    const words = 'outer edge, not gradual';
    expect(candidateFor(words, 'mt5-tuberosity')?.matched).toContainEqual({
      by: 'not',
      said: 'gradual',
      word: 'any-moment',
    });
    expect(idsFor(words)[0]).not.toBe('mt5-proximal-shaft');
    expect(candidateFor('zone 3, not gradual', 'mt5-proximal-shaft')?.against).toContainEqual({
      by: 'event',
      said: 'gradual',
      word: 'many-loads',
    });
  });

  test('a film without a break says nothing of how it came', () => {
    const { candidates } = search('no evidence of injury, heel');
    expect(candidates.flatMap(({ matched }) => matched.filter(({ by }) => by === 'not'))).toEqual([]);
  });
});

describe('asked is not found', () => {
  test.each([
    ['rule out Jones fracture', 'Jones'],
    ['r/o jones fracture', 'jones'],
    ['? Jones fracture', 'Jones'],
    ['not excluded: Jones fracture', 'Jones'],
    ['to rule out: Jones fracture', 'Jones'],
    ['Jones fracture cannot be excluded', 'Jones'],
    ['cannot rule out Jones fracture', 'Jones'],
  ])('%s', (words, text) => {
    const found = search(words);
    expect(found.asked).toEqual([text]);
    expect(found.denied).toEqual([]);
    const jones = candidateFor(words, 'mt5-metaphyseal');
    expect(jones?.matched).toEqual([]);
    expect(saidIn(jones?.asked ?? [])).toContain('jones');
  });

  test('what is found goes before what was asked', () => {
    expect(idsFor('Rule out Jones fracture. Avulsion of the tuberosity of the fifth metatarsal.')[0]).toBe(
      'mt5-tuberosity',
    );
    expect(idsFor('Rule out Lisfranc injury. Stress fracture of the navicular.')[0]).toBe('navicular-stress');
  });
});
