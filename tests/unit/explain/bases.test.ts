import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { prepareAnatomy } from '../../../src/anatomy';
import { factsOf } from '../../../src/cases';
import { COMPUTE_IDS, explain, footOfCase, NO_WHAT_IF, rerun } from '../../../src/explain';
import { content, DEMOS, demoCase, foot } from '../../tools/explained';

/** The dancer's foot is built from its parameters, which takes a while; the others start from the shipped one. */
const BUILD_MS = 180_000;

describe.each(DEMOS)('demo %s', (name) => {
  it(
    'every basis runs again to the stored message, after a trip through JSON',
    async () => {
      await prepareAnatomy();
      const facts = factsOf(demoCase(name));
      const used = footOfCase(content, facts, NO_WHAT_IF, foot);
      const explanation = explain(content, facts, NO_WHAT_IF, used);
      const stored: typeof explanation = JSON.parse(JSON.stringify(explanation));
      for (const { findings } of stored.questions)
        for (const { id, basis, message } of findings) expect([id, rerun(basis, content, used)]).toEqual([id, message]);
    },
    BUILD_MS,
  );
});

describe('registry', () => {
  it('refuses a computation that nobody registered', () => {
    expect(() => rerun({ compute: 'made.up', inputs: {} }, content, foot)).toThrow(RangeError);
  });

  it('holds every computation that the folder defines, so that each basis can run again', () => {
    const folder = fileURLToPath(new URL('../../../src/explain', import.meta.url));
    const defined = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .flatMap((name) => [...readFileSync(`${folder}/${name}`, 'utf8').matchAll(/\bcompute\(\s*'([^']+)'/g)])
      .map(([, id]) => id);
    expect(defined.length).toBeGreaterThan(100);
    expect(defined.filter((id) => id === undefined || !COMPUTE_IDS.includes(id))).toEqual([]);
  });

  it('holds each id once', () => {
    expect(new Set(COMPUTE_IDS).size).toBe(COMPUTE_IDS.length);
  });
});
