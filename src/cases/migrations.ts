/**
 * Old case files become new ones, one version at a time. The list must have no gap; that is checked when it is defined, so
 * that a version without a way forward cannot ship. A failure is a value with its reason.
 */
import { CASE_VERSION } from './schema';

export type JsonObject = Readonly<Record<string, unknown>>;

export const isJsonObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Takes a file of version `from` to version `from + 1`. What it does not know it leaves, for the schema to name. */
export interface Migration {
  readonly from: number;
  readonly why: string;
  readonly up: (file: JsonObject) => JsonObject;
}

export type MigrationResult =
  | { readonly ok: true; readonly file: JsonObject }
  | { readonly ok: false; readonly reason: 'newer' | 'badVersion'; readonly found: unknown };

export interface Migrations {
  readonly oldest: number;
  readonly current: number;
  readonly migrate: (file: JsonObject) => MigrationResult;
}

/** Throws RangeError for a list with a gap, out of order, or that does not end at `current`: a programmer's error. */
export const defineMigrations = (current: number, list: readonly Migration[]): Migrations => {
  const oldest = list[0]?.from ?? current;
  list.forEach((step, i) => {
    if (step.from !== oldest + i)
      throw new RangeError(`defineMigrations: step ${i} starts at version ${step.from}, expected ${oldest + i}`);
  });
  if (oldest + list.length !== current)
    throw new RangeError(`defineMigrations: the list ends at version ${oldest + list.length}, expected ${current}`);

  return {
    oldest,
    current,
    migrate(file) {
      const found = Object.hasOwn(file, 'version') ? file.version : undefined;
      if (typeof found !== 'number' || !Number.isInteger(found) || found < oldest)
        return { ok: false, reason: 'badVersion', found };
      if (found > current) return { ok: false, reason: 'newer', found };
      const migrated = list
        .filter((step) => step.from >= found)
        .reduce<JsonObject>((old, step) => ({ ...step.up(old), version: step.from + 1 }), file);
      return { ok: true, file: migrated };
    },
  };
};

/** Words of the draft format for a status. */
const DRAFT_STATUS: Readonly<Record<string, string>> = {
  said: 'reported',
  confirmed: 'confirmed',
  guessed: 'inferred',
  excluded: 'ruledOut',
};
/** Subjects that got their unit into the name. */
const DRAFT_SUBJECT: Readonly<Record<string, string>> = { mass: 'massKg', height: 'heightCm' };

const renamed = (table: Readonly<Record<string, string>>, word: unknown): unknown =>
  typeof word === 'string' && Object.hasOwn(table, word) ? table[word] : word;

const draftClaim = (claim: unknown): unknown => {
  if (!isJsonObject(claim)) return claim;
  const { certainty, from, on, subject, ...rest } = claim;
  return {
    ...rest,
    subject: renamed(DRAFT_SUBJECT, subject),
    status: renamed(DRAFT_STATUS, certainty),
    source: { kind: from, ...(on === undefined ? {} : { on }) },
  };
};

/**
 * Criteria of version 2, which were told by their place in the list of their stage: as the lists were then. Never brought up to date
 * with the content: it says what an old number meant.
 */
const CRITERIA_OF_2: Readonly<Record<string, readonly string[]>> = {
  protect: ['swelling-falls', 'wound-dry'],
  'load-partly': ['spot-hurts-less', 'first-callus'],
  'load-fully': ['walks-without-limp', 'spot-does-not-hurt'],
  'strength-balance': ['heel-raises'],
  run: ['runs-half-an-hour', 'bone-united'],
  'sport-specific': ['hop-tests', 'trains-fully'],
};

/** A number for which there was no criterion told nothing to anybody. What is no number is left, for the schema to name. */
const metById = (stage: string, met: unknown): unknown => {
  if (!Array.isArray(met)) return met;
  const ids = Object.hasOwn(CRITERIA_OF_2, stage) ? (CRITERIA_OF_2[stage] ?? []) : [];
  return met.flatMap((place: unknown) => {
    if (typeof place !== 'number' || !Number.isInteger(place) || place < 0) return [place];
    const criterion = ids[place];
    return criterion === undefined ? [] : [{ criterion, on: null }];
  });
};

const clinicOf2 = (clinic: unknown): unknown => {
  if (!isJsonObject(clinic) || !isJsonObject(clinic.stages)) return clinic;
  const stages = Object.entries(clinic.stages).map(([stage, notes]) => [
    stage,
    isJsonObject(notes) && Object.hasOwn(notes, 'met') ? { ...notes, met: metById(stage, notes.met) } : notes,
  ]);
  return { ...clinic, stages: Object.fromEntries(stages) };
};

export const caseMigrations = defineMigrations(CASE_VERSION, [
  {
    from: 0,
    why: 'The draft kept kind and date of the source flat on the claim, its own words for a status, and no unit in the name.',
    up: (file) => ({
      ...file,
      claims: Array.isArray(file.claims) ? file.claims.map(draftClaim) : file.claims,
    }),
  },
  {
    from: 1,
    why: 'Forecasts that were given and the days asked about became part of a case; before, there were none.',
    // Where a file has them already, they stay as they are: the schema judges them.
    up: (file) => ({ forecasts: [], fixtures: [], ...file }),
  },
  {
    from: 2,
    why: 'Criteria that a clinic ticked were numbers without a day; a list that changed would have moved the ticks to other criteria.',
    up: (file) => (Object.hasOwn(file, 'clinic') ? { ...file, clinic: clinicOf2(file.clinic) } : file),
  },
]);
