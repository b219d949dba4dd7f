/** Commands on what stands beside the claims of a case. Each is one step that can be undone; refused, it changes nothing. */
import {
  type CaseFile,
  type Fixture,
  type KeptForecast,
  type StageNotes,
  saidText,
  withAnswer,
  withFixtures,
  withForecast,
  withMet,
  withoutForecast,
  withStage,
  withStageNotes,
  withStruck,
} from '../cases';
import type { CriterionId, ExerciseId, StageId, TopicId } from '../ids';
import type { IsoDate } from '../units';

export interface CareCommands {
  /** A forecast as it was given: kept to be held against what happens. Kept once, however often it is asked for. */
  readonly keepForecast: (forecast: KeptForecast) => void;
  /** By its place in the list of the case. */
  readonly dropForecast: (index: number) => void;
  /** Where the person is now, as the clinician says; null takes it back. */
  readonly setStage: (stage: StageId | null) => void;
  readonly strikeExercise: (stage: StageId, exercise: ExerciseId, struck: boolean) => void;
  /** The day on which it is said to be met; null: it is not. */
  readonly meetCriterion: (stage: StageId, criterion: CriterionId, on: IsoDate | null) => void;
  readonly setStageWeeks: (stage: StageId, weeks: StageNotes['weeks']) => void;
  readonly setStageShare: (stage: StageId, sharePercent: StageNotes['sharePercent']) => void;
  /** "No names here". Blank takes it back, here and in an answer. */
  readonly setStageNote: (stage: StageId, note: string | null) => void;
  readonly answerDaily: (topic: TopicId, text: string | null) => void;
  /** All of them anew, in any order. */
  readonly setFixtures: (fixtures: readonly Fixture[]) => void;
}

export const careCommands = (file: () => CaseFile, edit: (file: CaseFile) => unknown): CareCommands => ({
  keepForecast: (forecast) => void edit(withForecast(file(), forecast)),
  dropForecast: (index) => void edit(withoutForecast(file(), index)),
  setStage: (stage) => void edit(withStage(file(), stage)),
  strikeExercise: (stage, exercise, struck) => void edit(withStruck(file(), stage, exercise, struck)),
  meetCriterion: (stage, criterion, on) => void edit(withMet(file(), stage, criterion, on)),
  setStageWeeks: (stage, weeks) => void edit(withStageNotes(file(), stage, { weeks })),
  setStageShare: (stage, sharePercent) => void edit(withStageNotes(file(), stage, { sharePercent })),
  setStageNote: (stage, note) => void edit(withStageNotes(file(), stage, { note: saidText(note) })),
  answerDaily: (topic, text) => void edit(withAnswer(file(), topic, text)),
  setFixtures: (fixtures) => void edit(withFixtures(file(), fixtures)),
});
