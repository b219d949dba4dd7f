/**
 * Where JSON text breaks, as line and column. Engines word their errors differently and some name no place for a stray word,
 * so the words of the text are walked here when the engine is silent.
 */

const SINGLE = new Set([...'{}[]:,']);
const WORD = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** Index after the closing quote, or null when the text breaks inside. */
export const endOfString = (text: string, from: number): number | null => {
  for (let i = from + 1; i < text.length; i++) {
    const c = text[i] ?? '';
    if (c === '\\') i++;
    else if (c === '"') return i + 1;
    else if (c < ' ') return null;
  }
  return null;
};

const firstStray = (text: string): number | null => {
  let i = 0;
  while (i < text.length) {
    const c = text[i] ?? '';
    if (SINGLE.has(c) || ' \t\r\n'.includes(c)) i++;
    else if (c === '"') {
      const end = endOfString(text, i);
      if (end === null) return i;
      i = end;
    } else {
      WORD.lastIndex = i;
      const word = WORD.exec(text)?.[0] ?? '';
      if (word === '') return i;
      i += word.length;
    }
  }
  return null;
};

/** @param message of the engine's error */
export const placeOfJsonError = (text: string, message: string): string => {
  const lineAndColumn = /line (\d+) column (\d+)/.exec(message);
  if (lineAndColumn) return `look at line ${lineAndColumn[1]}, column ${lineAndColumn[2]}`;
  const said = /position (\d+)/.exec(message)?.[1];
  const position = said === undefined ? firstStray(text) : Number(said);
  if (position === null) return 'it ends too early, or something is out of place';
  const before = text.slice(0, position).split('\n');
  return `look at line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
};
