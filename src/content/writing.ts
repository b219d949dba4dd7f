/**
 * How texts of the content are written, for whoever writes them: told by `npm run -s content`, and held by the unit tests with the
 * same functions. What keeps the content from being read at all is told when it is compiled. Pure.
 */
import type { Content, Evidence, Tellings } from './schema';

/** Kinds whose texts a reader meets as they are. */
export const TOLD_KINDS = [
  'bones',
  'boneSupplies',
  'attachments',
  'mechanisms',
  'activities',
  'injuries',
  'cards',
  'options',
  'stages',
  'stageSheets',
  'weightPractice',
  'dailyLife',
  'returnTests',
  'cautions',
  'factors',
  'troubles',
  'contradictions',
  'decisionRules',
] as const;

export interface Told {
  /** Kind, id and place in the record, such as `injuries lisfranc.what`. */
  readonly where: string;
  readonly tellings: Tellings;
  /** What stands nearest. */
  readonly evidence: Evidence | null;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object';

/** Every set of three tellings in a record, with the evidence that stands nearest. */
const toldIn = (value: unknown, where: string, near: Evidence | null): Told[] => {
  if (!isObject(value)) return [];
  const own = isObject(value.evidence) ? (value.evidence as unknown as Evidence) : near;
  if (typeof value.patient === 'string' && typeof value.broadcast === 'string')
    return [{ where, tellings: value as unknown as Tellings, evidence: near }];
  return Object.entries(value).flatMap(([key, inner]) => toldIn(inner, `${where}.${key}`, own));
};

export const toldOf = (content: Pick<Content, (typeof TOLD_KINDS)[number]>): readonly Told[] =>
  TOLD_KINDS.flatMap((kind) => content[kind].flatMap((record) => toldIn(record, `${kind} ${record.id}`, null)));

const MOST_WORDS = 15;
const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+/);
const wordsIn = (text: string): number => (text.match(/[A-Za-z0-9][A-Za-z0-9'’-]*/g) ?? []).length;

const TRADE_WORD =
  /\b(nonunion|metatarsal|fibularis|peroneal|plantar|dorsal|distal|proximal|diaphys\w+|metaphys\w+|weight-bearing)\b/i;
const UNSPEAKABLE = /[()/%±]|\b(?!X\b|AM\b)[A-Z]{2,}\b/;
const FIGURE = /\d[\d.,]*\s?(%|mm|weeks?|months?|of \d)/;

/** Each rule: what is wrong with a text and what to do; null where it holds. */
const PLAIN_RULES: readonly ((patient: string) => string | null)[] = [
  (patient) =>
    /\d/.test(patient.replaceAll(/zones? [123]( (or|and) [123])?/g, ''))
      ? `a figure stands in the patient text ("${patient}"): say it in words, or in the study text`
      : null,
  (patient) => {
    const long = sentencesOf(patient).find((sentence) => wordsIn(sentence) > MOST_WORDS);
    return long === undefined
      ? null
      : `a patient sentence has more than ${MOST_WORDS} words ("${long}"): make two of it`;
  },
  (patient) => {
    const hard = TRADE_WORD.exec(patient)?.[0];
    return hard === undefined ? null : `a patient would have to look up "${hard}": use a plain word`;
  },
];
const RULES: readonly ((told: Told) => string | null)[] = [
  ...PLAIN_RULES.map(
    (rule) =>
      ({ tellings }: Told) =>
        rule(tellings.patient),
  ),
  ({ tellings }) => {
    const found = UNSPEAKABLE.exec(tellings.broadcast)?.[0];
    return found === undefined ? null : `"${found}" in the broadcast text cannot be spoken: write it out`;
  },
  // Stage criteria and the sport tests are rules of thumb and say so by their mark.
  ({ tellings: { study }, evidence }) =>
    FIGURE.test(study) && !evidence?.source && !/\(.*\d{4}\)/.test(study) && evidence?.mark !== 'common practice'
      ? 'a figure in the study text has no source beside it: name the source in `evidence`, or author and year in the text'
      : null,
];

/** The people of studies and rates, as patients read them, and the place of each. */
const peopleOf = ({ studies, rates }: Pick<Content, 'studies' | 'rates'>): readonly (readonly [string, string])[] => [
  ...studies.map(({ id, plain }) => [`studies ${id}.plain`, plain] as const),
  ...rates.flatMap(({ id, plain: { group, type } }) => [
    [`rates ${id}.plain.group`, group] as const,
    ...(type === null ? [] : [[`rates ${id}.plain.type`, type] as const]),
  ]),
];

/** One plain sentence a fault. */
export const writingFaults = (
  content: Parameters<typeof toldOf>[0] & Pick<Content, 'studies' | 'rates'>,
): readonly string[] => [
  ...toldOf(content).flatMap((told) =>
    RULES.flatMap((rule) => {
      const fault = rule(told);
      return fault === null ? [] : [`${told.where}: ${fault}.`];
    }),
  ),
  ...peopleOf(content).flatMap(([where, text]) =>
    PLAIN_RULES.flatMap((rule) => {
      const fault = rule(text);
      return fault === null ? [] : [`${where}: ${fault}.`];
    }),
  ),
];
