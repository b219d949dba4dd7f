/**
 * How many words a line takes when it is spoken. Rule: a word is what a reader says, not what is printed. Numbers are read in
 * full ("15.0" is fifteen point zero, "87" is eighty seven), years and other whole numbers as cardinals, the longest usual
 * reading; a sign or a unit is its word ("%" is percent, "mm" is millimetres); a dash between two numbers is "to"; capitals
 * and capitals with digits are read letter by letter (MRI, MT5); hyphens and slashes part words. Bare punctuation is silent.
 */
const ONES = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;

/** Signs and units said as words. Keys are what is left of a token once its digits are read. */
const SAID: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    '%': ['percent'],
    '°': ['degrees'],
    '±': ['plus', 'or', 'minus'],
    '×': ['times'],
    '=': ['equals'],
    '<': ['less', 'than'],
    '>': ['more', 'than'],
    '≤': ['at', 'most'],
    '≥': ['at', 'least'],
    '+': ['plus'],
    '−': ['minus'],
    '&': ['and'],
    mm: ['millimetres'],
    cm: ['centimetres'],
    kg: ['kilograms'],
    MPa: ['megapascals'],
    N: ['newtons'],
  }),
);

const below1000 = (n: number): string[] => {
  if (n < 20) return [ONES[n] ?? ''];
  if (n < 100) return [TENS[Math.floor(n / 10)] ?? '', ...(n % 10 === 0 ? [] : below1000(n % 10))];
  return [...below1000(Math.floor(n / 100)), 'hundred', ...(n % 100 === 0 ? [] : ['and', ...below1000(n % 100)])];
};

const cardinal = (n: number): string[] => {
  if (n < 1000) return below1000(n);
  const rest = n % 1000;
  const tail = rest === 0 ? [] : [...(rest < 100 ? ['and'] : []), ...below1000(rest)];
  return [...below1000(Math.floor(n / 1000)), 'thousand', ...tail];
};

/** A run of digits of any length: beyond 999 999 it is read digit by digit. */
const wholeNumber = (digits: string): string[] =>
  digits.length > 6 || (digits.length > 1 && digits.startsWith('0')) ? digitByDigit(digits) : cardinal(Number(digits));

const digitByDigit = (digits: string): string[] => [...digits].map((d) => ONES[Number(d)] ?? '');

const NUMBER = /^(\d+)(?:\.(\d+))?/;
const CAPITALS = /^[A-Z]{2,}$/;
const CODE = /^[A-Z]+\d+$/;

const token = (raw: string): string[] => {
  if (CAPITALS.test(raw)) return [...raw];
  if (CODE.test(raw)) return [...raw].flatMap((c) => (/\d/.test(c) ? digitByDigit(c) : [c]));
  const words: string[] = [];
  let rest = raw;
  while (rest.length > 0) {
    const number = NUMBER.exec(rest);
    if (number !== null) {
      words.push(...wholeNumber(number[1] ?? ''));
      if (number[2] !== undefined) words.push('point', ...digitByDigit(number[2]));
      rest = rest.slice(number[0].length);
      // An ordinal's ending belongs to its number: "5th" is one word.
      rest = rest.replace(/^(st|nd|rd|th)\b/, '');
      continue;
    }
    const whole = SAID.get(rest);
    if (whole !== undefined) return [...words, ...whole];
    const sign = /[A-Za-z]/.test(rest.charAt(0)) ? undefined : SAID.get(rest.charAt(0));
    if (sign !== undefined) {
      words.push(...sign);
      rest = rest.slice(1);
      continue;
    }
    const word = /^[^\d%°±×=<>≤≥+−&]+/.exec(rest)?.[0] ?? rest;
    if (/[\p{L}]/u.test(word)) words.push(word);
    rest = rest.slice(word.length);
  }
  return words;
};

/** The words of a text as they are said. */
export const spokenWords = (text: string): string[] =>
  text
    .replace(/(\d),(?=\d{3}\b)/g, '$1')
    .replace(/(\d)\s*[-–—]\s*(?=\d)/g, '$1 to ')
    .split(/[\s/\-–—]+/)
    .map((raw) => raw.replace(/^[("'“‘[]+|[)"'”’\].,;:!?…]+$/g, ''))
    .filter((raw) => raw.length > 0)
    .flatMap(token);

export const secondsOf = (text: string, wordsPerMinute: number): number =>
  (spokenWords(text).length * 60) / wordsPerMinute;
