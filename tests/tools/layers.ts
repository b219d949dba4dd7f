/**
 * The layer rule: which folder of src may import which. The table is the one in DEVELOPERS.md's house; a folder not listed here
 * may not exist. Types count as imports: a layer that knows a type depends on it.
 */

const BASE = ['ids', 'units'];
const ANATOMY = [...BASE, 'anatomy'];
const EXPLAIN = [...ANATOMY, 'mechanics', 'perfusion', 'recovery', 'content', 'cases', 'checks', 'explain'];
const WORDING = ['wording', ...EXPLAIN];

export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  ids: [],
  units: [],
  anatomy: BASE,
  mechanics: ANATOMY,
  perfusion: ANATOMY,
  recovery: BASE,
  content: BASE,
  cases: BASE,
  checks: ['content', 'cases', ...ANATOMY],
  explain: EXPLAIN,
  wording: EXPLAIN,
  session: WORDING,
  stage: ['session', 'anatomy', 'mechanics', 'explain', 'content', 'wording', 'perfusion', ...BASE],
  telling: WORDING,
  render: ['telling', 'stage', 'session', ...WORDING],
  study: WORDING,
  pages: ['session', 'telling', 'study', ...WORDING],
  app: ['session', 'telling', 'study', 'stage', 'render', 'pages', ...WORDING],
  cli: ['session', 'telling', 'study', ...WORDING],
};

/** Folders whose code is a pure function of its arguments. */
export const PURE = [
  'ids',
  'units',
  'anatomy',
  'mechanics',
  'perfusion',
  'recovery',
  'content',
  'cases',
  'checks',
  'explain',
  'wording',
  'telling',
  'study',
];

export interface Breach {
  readonly path: string;
  readonly what: string;
}

const importsOf = (text: string): string[] =>
  [...text.matchAll(/(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)].flatMap((match) => (match[1] ? [match[1]] : []));

const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"])\/\/.*$/gm, '$1');

/** The src folder that `specifier`, written in src/<folder>/..., leads to; null when it leaves src. */
const targetFolder = (path: string, specifier: string): string | null => {
  const parts = path.split('/').slice(0, -1);
  for (const step of specifier.split('/')) {
    if (step === '..') parts.pop();
    else if (step !== '.') parts.push(step);
  }
  return parts[0] === 'src' ? (parts[1] ?? null) : null;
};

const IMPURE: readonly (readonly [RegExp, string])[] = [
  [/\bMath\.random\b/, 'Math.random'],
  [/\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b/, 'a clock'],
  [/\b(document|window|localStorage|navigator|globalThis)\s*[.[]/, 'the DOM'],
  [/\bfetch\s*\(|\bcrypto\s*\./, 'the platform'],
];

/** What one file of src does that its layer may not. */
export const breachesIn = (path: string, text: string): Breach[] => {
  const folder = path.split('/')[1] ?? '';
  const allowed = MAY_IMPORT[folder];
  if (!allowed) return [{ path, what: `src/${folder} is not a layer` }];
  const code = withoutComments(text);
  const breaches: Breach[] = [];
  for (const specifier of importsOf(code)) {
    if (specifier.startsWith('.')) {
      const target = targetFolder(path, specifier);
      if (target && target !== folder && !allowed.includes(target)) breaches.push({ path, what: `imports ${target}` });
    } else if (PURE.includes(folder) && /^(react|react-dom|three$|node:|idb|zustand)/.test(specifier)) {
      breaches.push({ path, what: `imports ${specifier}` });
    }
  }
  if (PURE.includes(folder))
    for (const [pattern, what] of IMPURE) if (pattern.test(code)) breaches.push({ path, what });
  return breaches;
};
