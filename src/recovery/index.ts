export { type ArmFilter, armsFor, isQuotable, type OneEndpoint, rangeOf, type StudyLike } from './arms';
export { addWeeks, calendarOf, type StageWeeks, weeksBetween } from './calendar';
export type { CalendarStage, TimedArm, WeekRange } from './types';
