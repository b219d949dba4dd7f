/** Question 2, where a bone tired of many steps: what more steps and more load a step do to its wear. Ratios, never a probability. */
import type { Repetition } from '../content/schema';
import { damageRatio } from '../mechanics/repetition';
import { compute, find, message } from './build';
import type { Context } from './context';
import { two } from './how-computes';
import { markOfRepetition } from './repeated-load';
import type { Situation } from './situation';
import type { Finding } from './types';

/** A step that a person would name. */
const MORE = 1.1;

const constantsIn = ({ content }: Context): Repetition => {
  const [first] = content.repetitions;
  if (first === undefined) throw new RangeError('the content has no constants of repeated load');
  return first;
};

export const repeatedLoad = compute('how.repeatedLoad', (context) => {
  const constants = constantsIn(context);
  const { exponent } = constants;
  const { value, low = value, high = value } = exponent;
  const damage = (power: number): number => two(damageRatio(1, MORE, power));
  return message('repeatedLoad', {
    more: { value: MORE - 1, unit: 'share' },
    exponent: { value, unit: 'count', lowHigh: [low, high] },
    mark: markOfRepetition(constants),
    damage: { value: damage(value), unit: 'times', lowHigh: [damage(low), damage(high)] },
  });
});

export const repeatedFinding = (s: Situation): Finding =>
  find(s.context, 'how', {
    id: 'repeatedLoad',
    depth: 'more',
    compute: repeatedLoad,
    inputs: {},
    evidence: [constantsIn(s.context).exponent.evidence, constantsIn(s.context).repairExponent.evidence],
    models: ['tibialConstants'],
  });
