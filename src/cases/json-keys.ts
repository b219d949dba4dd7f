/**
 * Which key stands twice in one object of a JSON text. `JSON.parse` keeps the last one and says nothing, so a file edited by
 * hand could be read as something other than what its reader saw. Only for text that `JSON.parse` has accepted.
 */
import { endOfString } from './json-place';

export interface RepeatedKey {
  readonly key: string;
  /** Path of the second one, written like all places in a file: `claims[3].status`. */
  readonly path: string;
  readonly line: number;
}

interface Level {
  /** Null in a list. */
  readonly keys: Set<string> | null;
  /** The key or index that is being read. */
  at: string | number;
}

const pathOf = (levels: readonly Level[]): string =>
  levels.map(({ at }, i) => (typeof at === 'number' ? `[${at}]` : `${i === 0 ? '' : '.'}${at}`)).join('');

export const repeatedKey = (text: string): RepeatedKey | null => {
  const levels: Level[] = [];
  let keyMayFollow = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    const level = levels.at(-1);
    if (c === '{' || c === '[') {
      levels.push(c === '{' ? { keys: new Set(), at: '' } : { keys: null, at: 0 });
      keyMayFollow = c === '{';
    } else if (c === '}' || c === ']') {
      levels.pop();
      keyMayFollow = false;
    } else if (c === ',') {
      if (level !== undefined && typeof level.at === 'number') level.at++;
      keyMayFollow = level?.keys != null;
    } else if (c === '"') {
      const end = endOfString(text, i) ?? text.length;
      if (keyMayFollow && level?.keys) {
        // As JSON reads it: a key written with escapes is the same key.
        const key = String(JSON.parse(text.slice(i, end)));
        level.at = key;
        if (level.keys.has(key)) return { key, path: pathOf(levels), line: text.slice(0, i).split('\n').length };
        level.keys.add(key);
        keyMayFollow = false;
      }
      i = end - 1;
    }
  }
  return null;
};
