import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { nodeOrder } from '../../../../src/mechanics/frame/node-order';

const pairs = fc.array(fc.tuple(fc.nat(19), fc.nat(19)), { maxLength: 40 });

test('every node once, joined or not', () => {
  fc.assert(
    fc.property(pairs, (joined) => {
      expect(nodeOrder(20, joined).toSorted((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, i) => i));
    }),
  );
});

test('a chain named at random comes out as a chain', () => {
  const names = [7, 2, 9, 0, 4, 8, 1, 6, 3, 5];
  const joined = names.slice(1).map((name, i) => [names[i] ?? 0, name] as const);
  const order = nodeOrder(10, joined);
  for (const [a, b] of joined) expect(Math.abs(order.indexOf(a) - order.indexOf(b))).toBe(1);
});
