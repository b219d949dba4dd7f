import { describe, expect, test } from 'vitest';
import { breachesIn } from '../../tools/layers';
import { textFiles } from '../../tools/tracked';

test('every file of src imports only what its layer may', () => {
  const sources = textFiles().filter(({ path }) => /^src\/.*\.(ts|tsx)$/.test(path));
  expect(sources.length).toBeGreaterThan(50);
  expect(sources.flatMap(({ path, text }) => breachesIn(path, text))).toEqual([]);
});

describe('the rule itself finds', () => {
  test.each([
    ['an upward import', 'src/anatomy/a.ts', "import { explain } from '../explain';"],
    ['an upward type import', 'src/cases/a.ts', "import type { Content } from '../content/schema';"],
    ['a dynamic import', 'src/pages/A.tsx', "const s = await import('../stage');"],
    ['pages and stage meeting', 'src/stage/a.ts', "import '../pages/x';"],
    ['React in a pure folder', 'src/telling/a.ts', "import { useState } from 'react';"],
    ['a clock', 'src/explain/a.ts', 'const t = Date.now();'],
    ['chance', 'src/study/a.ts', 'const x = Math.random();'],
    ['the DOM', 'src/wording/a.ts', "document.title = '';"],
    ['Node', 'src/content/a.ts', "import { readFileSync } from 'node:fs';"],
    ['an unknown folder', 'src/helpers/a.ts', ''],
  ])('%s', (_, path, text) => {
    expect(breachesIn(path, text)).toHaveLength(1);
  });

  test('nothing wrong in an allowed import or a comment', () => {
    expect(breachesIn('src/explain/a.ts', "import { x } from '../anatomy';\n// Date.now() is not used\n")).toEqual([]);
  });
});
