/**
 * Hash of what a review saw: 64-bit FNV-1a over a canonical form of the records, so that comments, order of keys and line
 * breaks do not matter and every change of a value does. Guards against forgetting, not against malice.
 * Constants as its authors (Fowler, Noll, Vo) give them, from memory; held to a known value in tests.
 */
const OFFSET = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;
const MASK = 0xffffffffffffffffn;

/** FNV-1a, 64 bit, of the UTF-8 bytes of a text, as 16 hex digits. */
export const fnv1a64 = (text: string): string => {
  let h = OFFSET;
  for (const byte of new TextEncoder().encode(text)) h = ((h ^ BigInt(byte)) * PRIME) & MASK;
  return h.toString(16).padStart(16, '0');
};

/** JSON with keys in order, so that equal data give equal text. */
export const canonical = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (value !== null && typeof value === 'object') {
    const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
    return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonical(v)}`).join(',')}}`;
  }
  return JSON.stringify(value) ?? 'null';
};

/** Everything in a content file except the review itself. */
export const hashOfData = (data: Readonly<Record<string, unknown>>): string => {
  const { review: _, ...reviewed } = data;
  return fnv1a64(canonical(reviewed));
};
