/** The quiz on the foot that is shipped: what it calls further forward lies further forward, and breaks lie in their zone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meshCentroid, zonesOf } from '../../../src/anatomy';
import { isBoneId } from '../../../src/ids';
import { answerTeachBack, questionsOf, teachBackOf } from '../../../src/study';
import { content, DEMOS, demoOnDefaultFoot, explained, foot } from '../../tools/explained';

const forward = (id: string): number => {
  const mesh = isBoneId(id) ? foot.bones.get(id) : undefined;
  if (mesh === undefined) throw new Error(`no bone ${id}`);
  return meshCentroid(mesh)[2];
};
const zones = zonesOf(foot);

describe('questions of the shipped foot', () => {
  it('put bones in the order of their centroids, heel to toe', () => {
    const orders = questionsOf(content, foot, { count: 120, seed: 9 }).filter((item) => item.kind === 'order');
    expect(orders.length).toBeGreaterThan(20);
    for (const { correct } of orders) {
      const places = correct.map(forward);
      expect(places, correct.join(' ')).toEqual([...places].sort((a, b) => a - b));
    }
  });

  it('draw breaks inside the zone they ask for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000 }), (seed) => {
        for (const item of questionsOf(content, foot, { seed }))
          if (item.kind === 'zone') {
            const zone = zones.find((z) => item.breakAt.sMm > z.fromMm && item.breakAt.sMm < z.toMm);
            expect([zone?.region]).toEqual(item.correct);
          }
      }),
      { numRuns: 20 },
    );
  });
});

describe.each(DEMOS)('teach-back of %s', (name) => {
  const items = teachBackOf(content, explained(demoOnDefaultFoot(name)));

  it('asks where it is, what needs help, and what opens the next stage', () => {
    expect(items.map((item) => item.kind)).toEqual(['where', 'help', 'next']);
    for (const item of items) expect(answerTeachBack(item, item.correct).right).toBe(true);
  });

  it('has a red flag of the content as the sign that needs help', () => {
    const help = items.find((item) => item.kind === 'help');
    const sign = help?.choices.find((choice) => choice.id === help.correct)?.text;
    expect(content.cautions.filter((c) => c.kind === 'red flag').map((c) => c.what.patient)).toContain(sign);
  });
});
