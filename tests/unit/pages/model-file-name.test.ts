import { expect, test } from 'vitest';
import { modelFileName } from '../../../src/pages/foot/model-file-name';

test.each([
  [{ side: 'right', pose: 'standing', whatIf: false }, 'foot-right.stl'],
  [{ side: 'left', pose: 'standing', whatIf: false }, 'foot-left.stl'],
  [{ side: null, pose: 'standing', whatIf: false }, 'foot-side-not-stated.stl'],
  [{ side: 'left', pose: 'heelRaise', whatIf: true }, 'foot-left-what-if-heel-raise.stl'],
] as const)('%j is saved as %s', (saved, name) => {
  expect(modelFileName({ kind: 'stl', ...saved })).toBe(name);
});
