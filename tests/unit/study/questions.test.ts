import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isBoneId } from '../../../src/ids';
import { grade } from '../../../src/study/grade';
import { chainsOf, graphOf, rowOf } from '../../../src/study/graph';
import { questionsFrom } from '../../../src/study/questions';
import { QUIZ_KINDS, type QuizItem } from '../../../src/study/types';
import { material, zones } from './material';

const graph = graphOf(material);
const quiz = (seed: number, count?: number): QuizItem[] =>
  questionsFrom(material, zones, count === undefined ? { seed } : { seed, count });
const seeds = fc.integer({ min: 0, max: 2 ** 31 });

describe('the graph of the foot', () => {
  it('names the neighbours of the cuboid: calcaneus, lateral cuneiform, fourth and fifth metatarsals (trade fact)', () => {
    expect(graph.neighbours('cuboid')).toEqual(
      expect.arrayContaining(['calcaneus', 'cuneiformLateral', 'metatarsal4', 'metatarsal5']),
    );
    expect(graph.neighbours('cuboid')).not.toContain('talus');
  });

  it('meets both ways', () => {
    for (const a of graph.bones)
      for (const b of graph.neighbours(a.id)) expect(graph.neighbours(b), `${b} - ${a.id}`).toContain(a.id);
  });

  it('has ways from the hindfoot to the end of each of the five toes, a row further at every step', () => {
    const chains = chainsOf(graph);
    expect(new Set(chains.map((chain) => chain.at(-1)))).toEqual(
      new Set([1, 2, 3, 4, 5].map((ray) => `phalanxDistal${ray}`)),
    );
    for (const chain of chains) {
      const rows = chain.map((id) => rowOf(id) ?? Number.NaN);
      rows.slice(1).forEach((row, i) => {
        expect(row).toBeGreaterThan(rows[i] ?? 99);
      });
    }
  });
});

describe('ten questions', () => {
  it('are ten, all different, of all five kinds, two of each', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const items = quiz(seed);
        expect(items).toHaveLength(10);
        expect(new Set(items.map((item) => item.id)).size).toBe(10);
        for (const kind of QUIZ_KINDS) expect(items.filter((item) => item.kind === kind)).toHaveLength(2);
      }),
    );
  });

  it('are the same for the same seed and differ for another', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        expect(quiz(seed)).toEqual(quiz(seed));
      }),
    );
    expect(quiz(1)).not.toEqual(quiz(2));
  });

  it('go on when one kind is used up, and stop when all are', () => {
    expect(quiz(5, 60)).toHaveLength(60);
    const many = quiz(5, 100_000);
    expect(new Set(many.map((item) => item.id)).size).toBe(many.length);
    expect(many.filter((item) => item.kind === 'zone')).toHaveLength(zones.length);
  });

  it('leave zones out where there are none', () => {
    const items = questionsFrom(material, [], { seed: 3 });
    expect(items).toHaveLength(10);
    expect(items.some((item) => item.kind === 'zone')).toBe(false);
  });
});

describe('every item', () => {
  it('has one right answer that lies among its different choices, and says why', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        for (const item of quiz(seed)) {
          const ids = item.choices.map((choice) => choice.id);
          const texts = item.choices.map((choice) => choice.text);
          expect(new Set(ids).size).toBe(ids.length);
          expect(new Set(texts).size, texts.join('|')).toBe(texts.length);
          expect(item.correct.length).toBeGreaterThan(0);
          for (const id of item.correct) expect(ids).toContain(id);
          expect(item.why.length).toBeGreaterThan(0);
          expect(item.prompt).not.toMatch(/[{}]/);
        }
      }),
    );
  });

  it('is right by the graph and the zones themselves', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        for (const item of quiz(seed)) {
          if (item.kind === 'nameLit') expect(item.correct).toEqual([item.lit]);
          if (item.kind === 'pointTo') {
            expect(item.choices).toHaveLength(28);
            const named = graph.bones.filter((bone) => item.prompt.includes(`: ${bone.term}.`));
            expect(named.map((bone) => bone.id)).toEqual(item.correct);
            expect(item.lit).toBeNull();
          }
          if (item.kind === 'meets') {
            const lit = item.lit;
            if (lit === null) throw new Error('no bone lit');
            const touching = item.choices.filter((choice) =>
              material.joints.some(
                (joint) =>
                  joint.articular && joint.bones.includes(lit) && joint.bones.some((bone) => bone === choice.id),
              ),
            );
            expect(new Set(touching.map((choice) => choice.id))).toEqual(new Set(item.correct));
            expect(item.correct).toEqual(graph.neighbours(lit));
            expect(item.choices.length).toBeGreaterThan(item.correct.length);
          }
          if (item.kind === 'zone') {
            const zone = zones.find((z) => item.breakAt.sMm >= z.fromMm && item.breakAt.sMm < z.toMm);
            expect(item.correct).toEqual([zone?.region]);
            expect(item.lit).toBeNull();
          }
          if (item.kind === 'order') {
            const rows = item.correct.map((id) => (isBoneId(id) ? rowOf(id) : null) ?? Number.NaN);
            expect(rows).toEqual([...rows].sort((a, b) => a - b));
            expect(new Set(rows).size).toBe(rows.length);
            expect(item.choices.map((choice) => choice.id)).not.toEqual(item.correct);
          }
        }
      }),
    );
  });

  it('does not say its answer in the prompt of a lit bone or a drawn break', () => {
    for (const item of quiz(11, 80)) {
      if (item.kind !== 'nameLit' && item.kind !== 'zone') continue;
      for (const choice of item.choices) expect(item.prompt).not.toContain(choice.text);
    }
  });
});

describe('grading', () => {
  it('gives the right answer full marks, in any order where order does not count', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        for (const item of quiz(seed)) {
          expect(grade(item, item.correct)).toMatchObject({ score: 1, full: true, wrong: [], missed: [] });
          const reversed = [...item.correct].reverse();
          expect(grade(item, reversed).full).toBe(item.kind !== 'order' || item.correct.length < 2);
        }
      }),
    );
  });

  it('never gives a wrong answer full marks, and always a score from 0 to 1', () => {
    fc.assert(
      fc.property(seeds, fc.infiniteStream(fc.nat(1000)), (seed, stream) => {
        for (const item of quiz(seed)) {
          const answer = item.choices.map((choice) => choice.id).filter(() => (stream.next().value ?? 0) % 2 === 0);
          const result = grade(item, answer);
          const exact =
            item.kind === 'order'
              ? answer.join() === item.correct.join()
              : answer.length === item.correct.length && answer.every((id) => item.correct.includes(id));
          expect(result.full).toBe(exact);
          expect(result.score === 1).toBe(exact);
          expect(result.score).toBeGreaterThanOrEqual(0);
          expect(result.feedback).not.toMatch(/[{}]/);
        }
      }),
    );
  });

  it('scores an order by its pairs: two neighbours swapped in four is 5 of 6, reversed is 0', () => {
    const item = quiz(1, 40).find((i) => i.kind === 'order');
    if (item === undefined) throw new Error('no order question');
    const [a, b, c, d] = item.correct;
    if (a === undefined || b === undefined || c === undefined || d === undefined)
      throw new Error('four bones expected');
    expect(grade(item, [b, a, c, d]).score).toBeCloseTo(5 / 6, 12);
    expect(grade(item, [d, c, b, a]).score).toBe(0);
    expect(grade(item, [a, b, c]).score).toBe(0);
  });

  it('scores what a bone meets by right ones less wrong ones: everything ticked is never a way to win', () => {
    const items = quiz(1, 60).filter((i) => i.kind === 'meets');
    for (const item of items) {
      const all = item.choices.map((choice) => choice.id);
      expect(grade(item, all).score).toBeLessThan(1);
      expect(grade(item, item.correct.slice(1)).score).toBeCloseTo((item.correct.length - 1) / item.correct.length, 12);
      expect(grade(item, []).score).toBe(0);
    }
    expect(items.length).toBeGreaterThan(5);
  });
});
