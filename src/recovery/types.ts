/** Study arms as recovery needs them, and what it makes of them. Weeks throughout. One endpoint at a time, by type. */
import type { Endpoint, InjuryId, Level, OptionId, SourceId, StudyId } from '../ids';
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
  readonly quartilesWeeks: readonly [number, number] | null;
  /** Whose times were printed: of all, of those whose bone healed as planned, or of those whose bone did not at first. */
  readonly branch: 'all' | 'uneventful' | 'problem';
  readonly design: 'randomised' | 'cohort' | 'series' | 'pooled' | 'register';
}

/** Log-normal: ln weeks ~ N(mu, sigma^2). */
export interface TimeFit {
  readonly mu: number;
  readonly sigma: number;
}

export type FitFrom = 'mean and SD' | 'mean and range' | 'median and range' | 'median and quartiles';

export interface FittedArm<E extends Endpoint = Endpoint> extends TimedArm<E> {
  /** Never null: without a size no arm is fitted. */
  readonly n: number;
  readonly fit: TimeFit;
  readonly from: FitFrom;
}

/** How often something happened, over all that counted it, with an 80 % interval. */
export interface Rate {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** One entry a trial; people of one trial counted to several endpoints stand here once. */
  readonly arms: readonly {
    readonly id: StudyId;
    readonly source: SourceId;
    readonly count: number;
    readonly of: number;
    /** What was counted; breaks as soon as one count of the trial is of breaks. */
    readonly unit: 'people' | 'breaks';
  }[];
  /** own: only people of the level asked for. */
  readonly levels: 'own' | 'mixed';
}

export type BranchName = 'uneventful' | 'problem' | 'notReturned';

export interface Branch {
  readonly name: BranchName;
  readonly chance: number;
  /** null: not back within what is known (did not return, or no study timed it). */
  readonly time: TimeFit | null;
}

/** What is forecast, for one endpoint: plain numbers that survive JSON. */
export interface Forecast<E extends Endpoint = Endpoint> {
  readonly endpoint: E;
  readonly option: OptionId;
  /** In this order: uneventful, problem, notReturned. Chances sum to one. */
  readonly branches: readonly [Branch, Branch, Branch];
  /** 0, or the week up to which it is known that the person is not there yet. */
  readonly afterWeek: number;
}

export type ForecastOutcome<E extends Endpoint = Endpoint> =
  | {
      readonly kind: 'pooled';
      readonly forecast: Forecast<E>;
      /** What the times come from. */
      readonly arms: readonly FittedArm<E>[];
      /** What the time after a healing problem comes from; may be empty, then nobody is counted as back after one. */
      readonly problemArms: readonly FittedArm<E>[];
      /** Comparable by what they counted, but not in the curve: no spread, reviews of others, other levels. */
      readonly aside: readonly TimedArm<E>[];
      /** Standard deviations of ln weeks: between people of one study, and between studies. */
      readonly within: number;
      readonly between: number;
      readonly problem: Rate;
      readonly notReturned: Rate;
    }
  | {
      readonly kind: 'sideBySide';
      readonly arms: readonly TimedArm<E>[];
      /** Those of them that print how their people lie apart, each by itself. */
      readonly fitted: readonly FittedArm<E>[];
      /** Too few studies with a spread; enough, but of several levels; or nobody counted how it went. */
      readonly why: 'tooFew' | 'levels' | 'noRate';
    }
  | { readonly kind: 'none' };

/** What became of it: the week in which the endpoint was reached, or never. */
export interface Happened<E extends Endpoint = Endpoint> {
  readonly endpoint: E;
  readonly week: number | 'never';
}

export interface Score {
  /** Against the weeks by which 10 and 90 of 100 are back; null when the forecast names no tenth percentile. */
  readonly inside: 'inside' | 'early' | 'late' | null;
  /** Continuous ranked probability score in weeks, up to the horizon: 0 is perfect, smaller is better. */
  readonly crps: number;
  readonly horizonWeeks: number;
}

/** One study left out and forecast from the others of its group. */
export interface LeftOut<E extends Endpoint = Endpoint> {
  readonly arm: FittedArm<E>;
  /** 80 % predictive interval of what this study would print as its centre. */
  readonly centreWeeks: readonly [number, number];
  readonly centreInside: boolean;
  /** 80 % predictive interval for one person, and the share of this study's people in it, by the study's own fit. */
  readonly personWeeks: readonly [number, number];
  readonly peopleInside: number;
}

export type Coverage<E extends Endpoint = Endpoint> = {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly endpoint: E;
  readonly level: Level;
} & (
  | {
      readonly kind: 'checked';
      readonly left: readonly LeftOut<E>[];
      readonly centresInside: number;
      /** Mean share of people inside; 0.8 was promised. */
      readonly peopleInside: number;
    }
  | { readonly kind: 'tooFew'; readonly fitted: number }
);

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
