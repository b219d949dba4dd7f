/** Words of the screens come from content by key; `{name}` in a text is a place for a value. No screen holds a text of its own. */
export type Say = (key: string, values?: Readonly<Record<string, string | number>>) => string;

export const makeSay =
  (words: Readonly<Record<string, string>>): Say =>
  (key, values = {}) =>
    (words[key] ?? key).replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));

/** Values of closed lists may hold spaces; keys of words may not. */
export const wordKey = (value: string): string =>
  value.replace(/[^A-Za-z0-9]+(\w)/g, (_, letter: string) => letter.toUpperCase());
