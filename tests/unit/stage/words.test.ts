import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { STAGE_WORDS, stageSay } from '../../../src/stage/words';

const { words } = parse(readFileSync(new URL('../../../content/words.yaml', import.meta.url), 'utf8')) as {
  words: Record<string, string>;
};

describe("the stage's words", () => {
  it.each(STAGE_WORDS)('%s has a text', (key) => expect(words[key]).toBeTruthy());

  it('are filled with values and show a key that has no text', () => {
    const say = stageSay({ 'stage.figure': 'Fig. {n}.' });
    expect(say('stage.figure', { n: 2 })).toBe('Fig. 2.');
    expect(say('stage.here')).toBe('stage.here');
  });
});
