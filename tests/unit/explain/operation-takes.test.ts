/** What an operation itself takes from the blood of a bone: the pieces behind and ahead of a break with a screw, and how it is told. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, partAxis, partsOf } from '../../../src/anatomy';
import type { Said } from '../../../src/cases';
import { contextOf } from '../../../src/explain/context';
import { type FeedingRun, feedingFor } from '../../../src/explain/feeding';
import type { VesselChoices } from '../../../src/explain/vessel-choices';
import { type InjuryId, idOf, type OptionId, READERS } from '../../../src/ids';
import { FEEDING_STATES } from '../../../src/perfusion';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingNamed, foot, REPORTED } from '../../tools/explained';

const context = contextOf(content, foot);
const screw = content.options.find(({ id }) => id === 'screw')?.takes?.cuts ?? [];
const fed = (mm: number | null, taken: FeedingRun['taken'], choices: VesselChoices = {}) =>
  feedingFor(context, {
    foot: DEFAULT_FOOT,
    bone: 'metatarsal5',
    place: mm === null ? null : { by: 'distance', mm },
    choices,
    cuts: [],
    taken,
  });
const middleOf = (region: string): number => {
  const part = partsOf(foot, 'metatarsal5').find((p) => p.region === region);
  if (part === undefined) throw new Error(`no ${region}`);
  return (part.fromMm + part.toMm) / 2;
};
const rank = (state: string) => FEEDING_STATES.indexOf(state as (typeof FEEDING_STATES)[number]);
const treated = (injury: string, option: string, said?: Said) =>
  explained(
    caseOf(
      ['injury', idOf<InjuryId>(injury)],
      said === undefined
        ? ['treatment', { option: idOf<OptionId>(option) }]
        : ['treatment', { option: idOf<OptionId>(option) }, said],
    ),
  );

describe('a screw in the canal of the fifth metatarsal', () => {
  test('zone 2: behind the break the base feeds on, ahead of it the net and the neighbours do; the shaft keeps the head’s arteries', () => {
    expect(fed(middleOf('mt5-zone-2'), screw).parts.map((p) => `${p.region} ${p.state}`)).toEqual([
      'mt5-zone-1 asBefore',
      'mt5-zone-2 asBefore',
      'mt5-zone-2 borderOnly',
      'mt5-zone-3 borderOnly',
      'mt5-shaft mainCut',
      'mt5-head asBefore',
    ]);
  });

  test('zone 3: both pieces live on their borders, and no part is without a feeder', () => {
    const { parts } = fed(middleOf('mt5-zone-3'), screw);
    expect(parts.filter((p) => p.region === 'mt5-zone-3').map((p) => p.state)).toEqual(['borderOnly', 'borderOnly']);
    for (const p of parts) {
      expect(p.state).not.toBe('none');
      expect(p.remaining).toContain('mt5-periosteal');
      expect(p.remaining).not.toContain('mt5-nutrient');
    }
  });

  test('wherever the break, and wherever the artery goes in, the screw never feeds more than the break alone leaves', () => {
    const { lengthMm } = partAxis(foot, 'metatarsal5');
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: Math.floor(lengthMm) - 1 }),
        fc.constantFrom({}, { 'mt5-nutrient-side': 'elsewhere' }),
        (mm, choices) => {
          const [before, after] = [fed(mm, [], choices as VesselChoices), fed(mm, screw, choices as VesselChoices)];
          for (const [i, p] of before.parts.entries()) {
            const q = after.parts[i];
            expect(rank(q?.state ?? 'asBefore')).toBeGreaterThanOrEqual(rank(p.state));
            for (const v of q?.remaining ?? []) expect(p.remaining).toContain(v);
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  test('is told as what the operation itself takes, with the net that takes over, to every reader', () => {
    const told = treated('mt5-metaphyseal', 'screw');
    expect(findingNamed(told, 'why.breakLeaves')?.message.args).toMatchObject({ torn: [], taken: ['mt5-nutrient'] });
    const takes = findingNamed(told, 'why.operationTakes');
    if (takes === undefined) throw new Error('not told');
    for (const reader of READERS) {
      const text = plainText(wordFinding(content, told, takes, reader));
      expect(text).toMatch(/operation itself takes/);
      expect(text).toMatch(/net|periosteum/);
      expect(text).toMatch(/no study of/i);
      expect(text).toMatch(/all the same|is used although/);
    }
    const [leaves] = [findingNamed(told, 'why.breakLeaves')];
    if (leaves === undefined) throw new Error('not told');
    for (const reader of READERS)
      expect(plainText(wordFinding(content, told, leaves, reader))).toMatch(/operation(, which)? itself/);
  });

  test('is no surer than the assumption, and names the claim that a screw is in it', () => {
    const told = treated('mt5-metaphyseal', 'screw');
    for (const id of ['why.breakLeaves', 'why.operationTakes']) {
      expect(findingNamed(told, id)?.confidence).toEqual({
        level: 'uncertain',
        reason: { by: 'model', limit: 'operationTakes' },
      });
      expect(findingNamed(told, id)?.basis.sources.map(({ source }) => source)).toContain('reichert-1995');
    }
    expect(findingNamed(told, 'why.breakLeaves')?.basis.claims).toHaveLength(2);
    const reported = treated('mt5-metaphyseal', 'screw', REPORTED);
    expect(findingNamed(reported, 'why.operationTakes')?.basis.claims).toHaveLength(1);
  });
});

describe('treatments that take nothing we know of', () => {
  test.each([
    ['mt5-metaphyseal', 'cast-nwb'],
    ['navicular-stress', 'cross-screws'],
    ['lisfranc', 'joint-fixation'],
    ['lisfranc', 'joint-fusion'],
    ['calcaneus-intra-articular', 'heel-fixation'],
    // A screw of the fifth metatarsal takes nothing from another bone.
    ['navicular-stress', 'screw'],
  ])('%s, %s: no vessel is taken, and none is told as taken', (injury, option) => {
    const told = treated(injury, option);
    expect(findingNamed(told, 'why.operationTakes')).toBeUndefined();
    const leaves = findingNamed(told, 'why.breakLeaves')?.message;
    if (leaves?.id === 'breakLeaves') expect(leaves.args.taken).toEqual([]);
  });

  test.each(['cross-screws', 'joint-fixation', 'joint-fusion', 'heel-fixation'])(
    '%s: what is known, or that nothing is, of the blood stands among its burdens',
    (option) => {
      const burdens = content.options.find(({ id }) => id === option)?.burdens ?? [];
      expect(
        burdens.some(({ what }) => /vessels/.test(what.study) && /loses nothing|without screws/.test(what.study)),
      ).toBe(true);
    },
  );
});
