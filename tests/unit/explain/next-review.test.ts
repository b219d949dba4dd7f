/** What would change a forecast at the next review: every finding has its way, and the figures go that way. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FOLLOW_UP_FINDINGS } from '../../../src/cases';
import { readContent } from '../../../src/cli/read-content';
import { criteriaOf, nextReview } from '../../../src/explain/next-review';
import { textAt } from '../../../src/explain/texts';
import { ENDPOINTS, idOf, type OptionId, type StageId } from '../../../src/ids';
import type { Forecast } from '../../../src/recovery';

const content = readContent();
const STAGE = idOf<StageId>('load-partly');
const FORECAST: Forecast = {
  endpoint: 'sport',
  option: idOf<OptionId>('screw'),
  branches: [
    { name: 'uneventful', chance: 0.8, time: { mu: Math.log(12), sigma: 0.3 } },
    { name: 'problem', chance: 0.12, time: { mu: Math.log(26), sigma: 0.3 } },
    { name: 'notReturned', chance: 0.08, time: null },
  ],
  afterWeek: 0,
};
const asked = { endpoint: 'sport', week: 8, forecast: FORECAST } as const;
const movesFor = (endpoint: (typeof ENDPOINTS)[number]) =>
  Object.fromEntries(nextReview({ ...asked, endpoint }).moves.map(({ says, findings }) => [says, findings]));

describe('texts', () => {
  test('are the criteria of the stage, all of them, by address', () => {
    const { opens, sendsBack } = criteriaOf(content, STAGE, [], null);
    const record = content.stages.find(({ id }) => id === STAGE);
    const patient = (list: typeof opens) => list.map((at) => textAt(content, at)?.tellings.patient);
    expect(patient(opens)).toEqual(record?.opensNext.map(({ what }) => what.patient));
    expect(patient(sendsBack)).toEqual(record?.sendsBack.map(({ what }) => what.patient));
    expect(opens.length * sendsBack.length).toBeGreaterThan(0);
  });
});

describe('findings', () => {
  test('for union: what is seen on a film counts, what people can do says nothing', () => {
    expect(movesFor('union')).toEqual({
      there: ['united', 'malunion'],
      healing: ['two cortices bridged'],
      notThere: ['line visible'],
      problem: ['delayed union', 'nonunion', 'broken again'],
    });
    const { silent } = nextReview({ ...asked, endpoint: 'union' });
    expect(silent).toEqual(['tender', 'not tender', 'walking without pain', 'training']);
  });

  test('for sport nothing short of it reaches it, and good signs stand apart from bad', () => {
    const moves = movesFor('sport');
    expect(moves.there).toBeUndefined();
    expect(moves.notThere).toContain('tender');
    expect(moves.healing).toContain('training');
    expect(moves.healing).toContain('united');
  });

  test('every finding stands once: with what it says, or with those that say nothing', () => {
    for (const endpoint of ENDPOINTS) {
      const { moves, silent } = nextReview({ ...asked, endpoint });
      const all = [...moves.flatMap(({ findings }) => findings), ...silent];
      expect([...all].sort()).toEqual([...FOLLOW_UP_FINDINGS].sort());
      expect(moves.at(-1)).toMatchObject({ says: 'problem', findings: ['delayed union', 'nonunion', 'broken again'] });
    }
  });
});

describe('figures', () => {
  test('not there yet is later and never better odds; a problem is later still', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), (week) => {
        const { now, moves } = nextReview({ ...asked, week });
        const then = (asks: string) => moves.find(({ says }) => says === asks)?.after;
        const [still, problem] = [then('notThere'), then('problem')];
        expect(still?.trouble).toBeGreaterThanOrEqual(now?.trouble ?? 101);
        expect(problem?.trouble).toBe(100);
        const late = (w: number | null | undefined) => w ?? Number.POSITIVE_INFINITY;
        expect(late(still?.halfBackWeek)).toBeGreaterThanOrEqual(late(now?.halfBackWeek) - 1e-6);
        expect(late(problem?.halfBackWeek)).toBeGreaterThanOrEqual(late(still?.halfBackWeek) - 1e-6);
      }),
    );
  });

  test('by hand: at week 8 nobody of a branch with a median of 12 and ln spread 0.3 has come as late as ln(8/12)/0.3 = -1.352', () => {
    // Normal table: 0.0882 of the first branch are back, 0.00004 of the second. Left: 0.7294, 0.12, 0.08 of 0.9294.
    const { moves } = nextReview(asked);
    expect(moves.find(({ says }) => says === 'notThere')?.after?.trouble).toBe(Math.round((100 * 0.2) / 0.9294));
  });

  test('none where the point is reached, and none without a forecast', () => {
    const union = nextReview({ ...asked, endpoint: 'union' });
    expect(union.moves.map(({ after }) => after === null)).toEqual([true, false, false, false]);
    const without = nextReview({ ...asked, forecast: null });
    expect(without.now).toBeNull();
    for (const { after } of without.moves) expect(after).toBeNull();
  });
});
