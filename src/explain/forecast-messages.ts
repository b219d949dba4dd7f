/** Messages of the forecast of question 5: odds, and how a follow-up moved them. Weeks and shares, never a date. */
import type { Endpoint, FactorId, FilmScoreId, InjuryId, Level, OptionId, SourceId } from '../ids';
import type { OfHundred } from '../recovery';
import type { IsoDate, Quantity } from '../units';
import type { EffectSays } from './factor-findings';
import type { FollowUpFinding, Says } from './follow-up-says';
import type { ClaimTag, ClaimValue, Given } from './messages';

/** Null where fewer than so many of 100 are ever back. */
export interface BackWeeks {
  readonly ten: Quantity | null;
  readonly half: Quantity | null;
  readonly ninety: Quantity | null;
}

export interface ForecastOdds {
  readonly weeks: BackWeeks;
  /** What is told: rounded once, from the forecast itself. */
  readonly people: OfHundred;
  /** Shares: back without trouble, back after a healing problem, not back; with the bands of the studies where counted. */
  readonly uneventful: Quantity;
  readonly problem: Quantity;
  readonly notBack: Quantity;
}

/** Week by which half are back, and people of 100 with trouble: a healing problem, or never back. */
export interface ReviewOdds {
  readonly half: Quantity | null;
  readonly trouble: number;
}

export interface ForecastMessages {
  forecastOdds: ForecastOdds & {
    readonly given: Given;
    readonly injury: InjuryId;
    readonly option: OptionId;
    readonly endpoint: Endpoint;
    readonly studies: readonly SourceId[];
    /** Of the people in them, all of one. */
    readonly level: Level;
    /** People in them. */
    readonly counted: number;
    /** Lowest and highest middle of a study: how far apart they are. */
    readonly apart: Quantity;
  };
  /** Too few studies print how their people spread: shown side by side, no odds. */
  forecastNot: {
    readonly option: OptionId;
    readonly endpoint: Endpoint;
    readonly why: 'tooFew' | 'levels' | 'noRate';
    readonly studies: readonly SourceId[];
  };
  /** An earlier treatment, or a break anew: the studies are of first treatments. */
  /** `anew`: a treatment of its own; else the one before was changed. */
  forecastSecond: { readonly anew: boolean };
  forecastMoved: {
    /** The follow-up. That the point is not reached is read from it, not claimed by it: so it lends no stamp. */
    readonly from: ClaimTag;
    readonly finding: FollowUpFinding;
    /** What was found speaks for healing: the times moved, the odds of trouble did not. */
    readonly healing: boolean;
    readonly endpoint: Endpoint;
    readonly week: Quantity;
    readonly before: ForecastOdds;
    readonly after: ForecastOdds;
  };
  /** What a film would have on a score that was made for another bone. It conditions nothing. */
  borrowedScore: {
    readonly claim: ClaimTag;
    readonly score: FilmScoreId;
    readonly finding: FollowUpFinding;
    readonly points: Quantity;
    /** The fewest and the most that the score can have. */
    readonly ofPoints: readonly [number, number];
  };
  /** A break anew, or healing that is slow or has stopped: the branch of a healing problem is no longer a chance. */
  forecastProblem: {
    readonly claim: ClaimTag;
    readonly finding: FollowUpFinding;
    readonly endpoint: Endpoint;
    readonly after: ForecastOdds;
  };
  /** A forecast that was given once against what became of it. */
  forecastScored: {
    readonly claim: ClaimTag;
    readonly endpoint: Endpoint;
    /** The week up to which things were known when it was given, and the day, where known. */
    readonly madeAt: Quantity;
    readonly madeOn: IsoDate | null;
    readonly result: 'reached' | 'given up';
    readonly week: Quantity;
    /** Against its ten to ninety of 100; null where it named no such weeks. */
    readonly place: 'inside' | 'early' | 'late' | null;
    readonly crps: Quantity;
    readonly horizon: Quantity;
  };
  /** Weeks somebody named: to what they count was not said; or no odds can be given of that; or they are held against the odds. */
  timetableAsks: { readonly claim: ClaimTag; readonly of: ClaimValue };
  timetableNoOdds: { readonly claim: ClaimTag; readonly of: ClaimValue };
  timetableJudged: {
    readonly claim: ClaimTag;
    readonly of: ClaimValue;
    /** The latest week at which the person is known not to be there; null: none. Then of people like that. */
    readonly notThereAt: Quantity | null;
    /** People of 100 who took longer or were never back. */
    readonly longer: number;
  };
  /** The same where no odds are pooled, study by study. */
  timetableByStudy: {
    readonly claim: ClaimTag;
    readonly of: ClaimValue;
    readonly notThereAt: Quantity | null;
    readonly studies: readonly { readonly source: SourceId; readonly level: Level; readonly longer: number }[];
  };
  /** The weeks have passed and the person is known not to be there: nothing is left to be judged. */
  timetableOverrun: { readonly claim: ClaimTag; readonly of: ClaimValue; readonly week: Quantity };
  /** How it ended against the weeks that were named. */
  timetableEnded: {
    readonly claim: ClaimTag;
    readonly of: ClaimValue;
    readonly result: 'kept' | 'late' | 'given up';
    readonly week: Quantity;
  };
  /** What a review could find that says so of the point, and the odds then; null where the point is reached. */
  reviewMove: {
    readonly endpoint: Endpoint;
    readonly week: Quantity;
    readonly says: Says;
    readonly findings: readonly FollowUpFinding[];
    readonly now: ReviewOdds;
    readonly after: ReviewOdds | null;
  };
  /** The same where no odds can be given: which way it would point, without a number. */
  reviewPoints: { readonly endpoint: Endpoint; readonly says: Says; readonly findings: readonly FollowUpFinding[] };
  /** One published size of a factor: beside the odds, not in them. */
  factorEffect: {
    readonly factor: FactorId;
    /** Its place in the factor's list. */
    readonly index: number;
    readonly measure: 'odds ratio' | 'relative risk';
    readonly about: 'healing' | 'getting it';
    readonly bones: 'fifth metatarsal' | 'many bones';
    readonly size: Quantity;
    readonly n: number | null;
    readonly says: EffectSays;
  };
  /** Mean weeks with a factor, and without it where the same source has them: beside the odds, without an interval. */
  factorWaits: {
    readonly factor: FactorId;
    readonly index: number;
    readonly endpoint: Endpoint;
    readonly centre: 'mean' | 'median';
    readonly weeks: Quantity;
    readonly without: Quantity | null;
    readonly p: string | null;
    readonly n: number | null;
  };
  factorsDisagree: { readonly factor: FactorId };
  forecastReached: { readonly claim: ClaimTag; readonly endpoint: Endpoint; readonly week: Quantity };
}
