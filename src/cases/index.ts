/** The case file: what is known, how well, and from whom. */
export { checkClaims } from './check-claims';
export { checkDates } from './check-dates';
export {
  type ClaimableKey,
  type ClaimableWhatIf,
  claimFromWhatIf,
  emptyCase,
  newClaim,
  type Said,
  withClaim,
  withoutClaim,
} from './edit-case';
export {
  answerOf,
  clinicOf,
  NO_STAGE_NOTES,
  saidText,
  stageNotesOf,
  withAnswer,
  withFixtures,
  withForecast,
  withMet,
  withoutForecast,
  withStage,
  withStageNotes,
  withStruck,
} from './edit-clinic';
export { currentClaims, factsOf, isSingle, SINGLE_SUBJECTS } from './facts';
export { CASE_PROBLEM_WORDS, type CaseProblem, type CaseProblemCode } from './problems';
export { checkCaseFile, MAX_CASE_BYTES, type ReadResult, readCase, tooBig } from './read-case';
export {
  CASE_FORMAT,
  CASE_VERSION,
  type CaseFile,
  type Claim,
  type ClaimStatus,
  type Fact,
  type Facts,
  FOLLOW_UP_FINDINGS,
  MANY,
  OUTCOME_RESULTS,
  type Place,
  type SingleSubject,
  SOURCE_KINDS,
  type SourceKind,
  STATUSES,
  SUBJECTS,
  type Subject,
  type SubjectValue,
  subjectValues,
} from './schema';
export {
  CLINIC_TEXT_LENGTH,
  type Clinic,
  type Fixture,
  MOST_FIXTURES,
  type StageNotes,
} from './schema-clinic';
export { BRANCHES, type KeptForecast, MOST_FORECASTS } from './schema-forecast';
export { STATUS_LIMITS } from './status-limits';
export { writeCase } from './write-case';
