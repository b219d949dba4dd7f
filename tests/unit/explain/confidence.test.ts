import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STATUSES } from '../../../src/cases';
import { MARKS } from '../../../src/content/schema';
import { CONFIDENCES, type Confidence, confidenceOf, MODEL_LIMITS, type ModelLimit } from '../../../src/explain';

const rank = (c: Confidence): number => CONFIDENCES.indexOf(c);
const statuses = [...STATUSES, 'contradiction', 'notStated'] as const;
const limits = Object.keys(MODEL_LIMITS) as ModelLimit[];

describe('confidence', () => {
  it('nothing that holds it back: established', () => {
    expect(confidenceOf({})).toEqual({ level: 'established', reason: { by: 'nothing' } });
  });

  it.each([
    ['confirmed', 'established'],
    ['reported', 'reported'],
    ['inferred', 'uncertain'],
    ['contradiction', 'uncertain'],
    ['notStated', 'unknown'],
  ] as const)('a claim that is %s gives at most %s', (status, level) => {
    expect(confidenceOf({ claims: [status] }).level).toBe(level);
  });

  it('a weak or remembered figure is at most uncertain', () => {
    expect(confidenceOf({ marks: ['seen', 'weak'] }).level).toBe('uncertain');
    expect(confidenceOf({ marks: ['from memory'] }).level).toBe('uncertain');
  });

  it('is the lowest of its caps, whatever else is there: more caps never raise it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...statuses)),
        fc.array(fc.constantFrom(...MARKS)),
        fc.array(fc.constantFrom(...limits)),
        (claims, marks, models) => {
          const all = rank(confidenceOf({ claims, marks, models }).level);
          const each = [
            ...claims.map((c) => confidenceOf({ claims: [c] })),
            ...marks.map((m) => confidenceOf({ marks: [m] })),
            ...models.map((m) => confidenceOf({ models: [m] })),
          ].map((c) => rank(c.level));
          expect(all).toBe(Math.max(0, ...each));
        },
      ),
    );
  });
});
