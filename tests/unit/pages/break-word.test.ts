/** The key of the picture says how the break is known, and names the sign that is drawn. */
import { expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { breakWord } from '../../../src/pages/note/break-word';

const { words } = readContent();
const confirmed = { whatIf: false, status: 'confirmed', precision: 'distance' } as const;

test.each([
  ['confirmed', confirmed, 'the break', 'here is the break'],
  [
    'only its part of the bone is known',
    { ...confirmed, precision: 'region' },
    'the break, somewhere in this part',
    'the break is in this part',
  ],
  ['reported', { ...confirmed, status: 'reported' }, 'the break, as reported', 'here is the break, as reported'],
  ['inferred', { ...confirmed, status: 'inferred' }, 'the break, as we infer it', 'here is the break, as we infer it'],
  ['tried', { ...confirmed, whatIf: true }, 'the break, what if', 'what if the break were here'],
] as const)('%s', (_what, at, line, ring) => {
  expect(words[breakWord(at, ['line'])]).toBe(line);
  expect(words[breakWord(at, ['ring'])]).toBe(ring);
  expect(words[breakWord(at, ['ring', 'line'])]).toBe(line);
});
