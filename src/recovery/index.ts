export {
  type ArmFilter,
  armsFor,
  type CountedEvent,
  isQuotable,
  type OneEndpoint,
  rangeOf,
  type StudyLike,
} from './arms';
export { addWeeks, calendarOf, type StageWeeks, weeksBetween } from './calendar';
export { backByOf, ceilingOf, chanceBy, weekOf } from './chance';
export { coverageOf } from './coverage';
export { weekBy } from './distributions';
export { type FixturesAhead, fixturesAhead, type Missed, missedOf } from './fixtures';
export { forecastFor } from './forecast';
export { hundredOf, type OfHundred, peopleOf, troubleOf } from './hundred';
export { wilsonInterval } from './rates';
export { scoreOf } from './score';
export type {
  Branch,
  BranchName,
  CalendarStage,
  Coverage,
  FitFrom,
  FittedArm,
  Forecast,
  ForecastOutcome,
  Happened,
  LeftOut,
  Rate,
  Score,
  TimedArm,
  TimeFit,
  WeekRange,
} from './types';
export { healingAt, knownProblem, notThereAt } from './update';
