/** Study arms as recovery needs them, and what it makes of them. Weeks throughout. One endpoint at a time, by type. */
import type { Endpoint, Level, OptionId, SourceId, StudyId } from '../ids';
import type { IsoDate } from '../units';

export interface TimedArm<E extends Endpoint = Endpoint> {
  readonly id: StudyId;
  readonly source: SourceId;
  readonly option: OptionId;
  readonly population: string;
  readonly level: Level;
  readonly n: number | null;
  readonly endpoint: E;
  readonly centreWeeks: number;
  readonly centre: 'mean' | 'median';
  readonly sdWeeks: number | null;
  readonly rangeWeeks: readonly [number, number] | null;
}

/** The spread of the printed centres of comparable arms: a range in weeks, never a date and never a pooled curve. */
export interface WeekRange<E extends Endpoint = Endpoint> {
  readonly endpoint: E;
  readonly option: OptionId;
  readonly lowWeeks: number;
  readonly highWeeks: number;
  readonly arms: readonly TimedArm<E>[];
}

export interface CalendarStage {
  readonly stageIndex: number;
  readonly fromWeek: number | null;
  readonly toWeek: number | null;
  readonly fromDate: IsoDate | null;
  readonly toDate: IsoDate | null;
}
