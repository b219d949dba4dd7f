/** The words of the screens as they are kept in content. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { makeSay, type Say } from '../../../../src/pages/words';

export const wordsOfScreens = (): Say => {
  const text = readFileSync(new URL('../../../../content/words.yaml', import.meta.url), 'utf8');
  return makeSay((parse(text) as { words: Record<string, string> }).words);
};
