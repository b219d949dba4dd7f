/** Vessels and their patterns as content: what is refused, and where. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compileContent } from '../../../src/content';

const ROOT = join(import.meta.dirname, '../../../content');
const files = new Map(
  readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name, readFileSync(join(ROOT, name), 'utf8')]),
);
/** The real content with one piece of a file written otherwise. */
const problemsWith = (file: string, from: string, to: string): readonly string[] => {
  const text = files.get(file) ?? '';
  expect(text).toContain(from);
  const compiled = compileContent(new Map(files).set(file, text.replace(from, to)));
  return compiled.ok ? [] : compiled.problems.map((p) => `${p.file}: ${p.expected}, got ${p.got}`);
};

describe('vessels', () => {
  test('a pattern that lacks an edge which no vessel tells is a problem', () => {
    expect(problemsWith('vessel-patterns.yaml', 'dorsalis-pedis>arcuate', 'dorsalis-pedis>arcuates')).toEqual([
      'vessel-patterns.yaml: an edge found in vessels.yaml, got dorsalis-pedis>arcuates',
    ]);
  });

  test('so is a vessel that comes from one that is not there', () => {
    expect(problemsWith('vessels.yaml', '{ vessel: anterior-tibial,', '{ vessel: front-tibial,').join()).toContain(
      'front-tibial',
    );
  });

  test('the commonest choice of a pattern stands first', () => {
    expect(problemsWith('vessel-patterns.yaml', 'percent: 57,', 'percent: 17,').join()).toContain(
      'the commonest choice first',
    );
  });

  test('what an injury tears grows from choice to choice', () => {
    const from = 'lacks: ["tarsal-canal>talus-spot-canal", "tarsal-sinus>talus-spot-sinus"]';
    const to = 'lacks: ["tarsal-canal>talus-spot-canal", "talar-neck>talus-spot-neck"]';
    expect(problemsWith('vessel-patterns.yaml', from, to).join()).toContain('what the choice before has torn');
  });

  test('what is only remembered does not outweigh the computation', () => {
    const from = '{ region: mt5-head, evidence: { source: shereff-1991, mark: seen } }';
    const to = '{ region: mt5-head, evidence: { source: shereff-1991, mark: from memory } }';
    expect(problemsWith('vessels.yaml', from, to).join()).toContain('outweighs what is computed');
  });

  test('an operation takes only ways that go into a bone', () => {
    const from = 'cuts: ["mt5-nutrient>mt5-foramen-nutrient", "mt5-nutrient>mt5-foramen-nutrient-lateral"]';
    expect(problemsWith('options.yaml', from, 'cuts: ["plantar-metatarsal-4>mt5-nutrient"]')).toEqual([
      'options.yaml: a way into a bone found in vessels.yaml, got plantar-metatarsal-4>mt5-nutrient',
    ]);
  });
});
