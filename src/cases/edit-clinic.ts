/**
 * Changing what stands beside the claims: forecasts that were given, the clinic's own protocol, the days asked about. Each
 * function gives a new case and checks nothing. What says nothing is not kept, so that "nothing of the clinic's own" has one form.
 */
import type { CriterionId, ExerciseId, StageId, TopicId } from '../ids';
import type { IsoDate } from '../units';
import type { CaseFile } from './schema';
import type { Clinic, Fixture, StageNotes } from './schema-clinic';
import type { KeptForecast } from './schema-forecast';

export const NO_STAGE_NOTES: StageNotes = { struck: [], met: [], weeks: null, sharePercent: null, note: null };
const NO_CLINIC: Clinic = { stage: null, stages: {}, answers: {} };

/** The clinic's own protocol of a case, with nothing in it where the case has none. */
export const clinicOf = (file: Pick<CaseFile, 'clinic'>): Clinic => file.clinic ?? NO_CLINIC;

const own = <K extends string, T>(table: Readonly<Record<K, T>>, key: K): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

export const stageNotesOf = (file: Pick<CaseFile, 'clinic'>, stage: StageId): StageNotes =>
  own(clinicOf(file).stages, stage) ?? NO_STAGE_NOTES;

export const answerOf = (file: Pick<CaseFile, 'clinic'>, topic: TopicId): string | null =>
  own(clinicOf(file).answers, topic) ?? null;

const withoutKey = <K extends string, T>(table: Readonly<Record<K, T>>, key: K): Readonly<Record<K, T>> =>
  Object.fromEntries(Object.entries(table).filter(([each]) => each !== key)) as Record<K, T>;

const withEntry = <K extends string, T>(table: Readonly<Record<K, T>>, key: K, value: T): Readonly<Record<K, T>> => ({
  ...table,
  [key]: value,
});

const says = ({ struck, met, weeks, sharePercent, note }: StageNotes): boolean =>
  struck.length > 0 || met.length > 0 || weeks !== null || sharePercent !== null || note !== null;

const withClinic = (file: CaseFile, patch: Partial<Clinic>): CaseFile => {
  const next: Clinic = { ...clinicOf(file), ...patch };
  const { clinic: _, ...rest } = file;
  const empty = next.stage === null && Object.keys(next.stages).length + Object.keys(next.answers).length === 0;
  return empty ? rest : { ...rest, clinic: next };
};

/** Where the person is now, as the clinician says; null: not said. */
export const withStage = (file: CaseFile, stage: StageId | null): CaseFile => withClinic(file, { stage });

export const withStageNotes = (file: CaseFile, stage: StageId, patch: Partial<StageNotes>): CaseFile => {
  const next: StageNotes = { ...stageNotesOf(file, stage), ...patch };
  const { stages } = clinicOf(file);
  return withClinic(file, { stages: says(next) ? withEntry(stages, stage, next) : withoutKey(stages, stage) });
};

const toggled = <T>(list: readonly T[], item: T, isIn: boolean): readonly T[] =>
  isIn === list.includes(item) ? list : isIn ? [...list, item] : list.filter((each) => each !== item);

export const withStruck = (file: CaseFile, stage: StageId, exercise: ExerciseId, struck: boolean): CaseFile =>
  withStageNotes(file, stage, { struck: toggled(stageNotesOf(file, stage).struck, exercise, struck) });

/** `on`: the day of the tick; null takes it back. A criterion that is met keeps its first day. */
export const withMet = (file: CaseFile, stage: StageId, criterion: CriterionId, on: IsoDate | null): CaseFile => {
  const { met } = stageNotesOf(file, stage);
  const isMet = met.some((each) => each.criterion === criterion);
  if (on === null) return withStageNotes(file, stage, { met: met.filter((each) => each.criterion !== criterion) });
  return isMet ? file : withStageNotes(file, stage, { met: [...met, { criterion, on }] });
};

/** Text as typed; blank counts as nothing. */
export const saidText = (text: string | null): string | null => (text === null || text.trim() === '' ? null : text);

export const withAnswer = (file: CaseFile, topic: TopicId, text: string | null): CaseFile => {
  const { answers } = clinicOf(file);
  const said = saidText(text);
  return withClinic(file, {
    answers: said === null ? withoutKey(answers, topic) : withEntry(answers, topic, said),
  });
};

/** In order of day; those of one day as they came. */
export const withFixtures = (file: CaseFile, fixtures: readonly Fixture[]): CaseFile => ({
  ...file,
  fixtures: [...fixtures].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)),
});

/** Kept after the others; one that is already kept, number for number, is not kept twice. */
export const withForecast = (file: CaseFile, forecast: KeptForecast): CaseFile => {
  const same = JSON.stringify(forecast);
  return file.forecasts.some((kept) => JSON.stringify(kept) === same)
    ? file
    : { ...file, forecasts: [...file.forecasts, forecast] };
};

export const withoutForecast = (file: CaseFile, index: number): CaseFile => ({
  ...file,
  forecasts: file.forecasts.filter((_, i) => i !== index),
});
