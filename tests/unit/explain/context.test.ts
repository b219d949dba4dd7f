/** Feet are kept by what they are made from: no answer depends on what was asked before. */
import { beforeAll, expect, test } from 'vitest';
import { DEFAULT_FOOT, prepareAnatomy } from '../../../src/anatomy';
import type { Foot } from '../../../src/anatomy/types';
import { contextOf } from '../../../src/explain/context';
import { content, foot as usual } from '../../tools/explained';

beforeAll(prepareAnatomy);

const PARAMETERS = { ...DEFAULT_FOOT, arch: 0.5 };
const places = ({ bones }: Foot): number[][] => [...bones.values()].map(({ positions }) => Array.from(positions));

test('a foot that starts from a given usual foot is the same whatever was built before, and knows what it started from', () => {
  const [late, early] = [{ ...content }, { ...content }];
  const fromNothing = contextOf(late).footFor(PARAMETERS);
  const after = contextOf(late, usual).footFor(PARAMETERS);
  const first = contextOf(early, usual).footFor(PARAMETERS);
  expect(after).not.toBe(fromNothing);
  expect(places(after)).toEqual(places(first));
  expect(contextOf(late).footFor(PARAMETERS)).toBe(fromNothing);
  expect(contextOf(late, usual).footFor(PARAMETERS)).toBe(after);
  expect(contextOf(late, after).footFor(DEFAULT_FOOT)).toBe(usual);
  expect(contextOf(late, after).footFor(PARAMETERS)).toBe(after);
});
