/**
 * A training diary against the habit before it, week by week. Strain is a ratio to the strain of the habit: body mass, speed, shoes
 * and stride change it, and whoever fills the diary says by how much; a shorter stride alone only means more cycles here.
 */
import { damageRatio, stridesOf } from './damage';
import { type Repair, repairedBy, standingOfHabit } from './repair';

/** A week as told: a distance at a length of stride, or sessions of about so many strides of one foot. */
export type ToldWeek = { readonly strainRatio: number } & (
  | { readonly kind: 'distance'; readonly distanceKm: number; readonly strideM: number }
  | { readonly kind: 'sessions'; readonly sessions: number; readonly stridesPerSession: number }
);

export interface Diary {
  /** Every week before the first of the diary, for long. */
  readonly habit: ToldWeek;
  readonly weeks: readonly ToldWeek[];
}

/** `repair` null: nothing is repaired. */
export interface DamageLaw {
  readonly exponent: number;
  readonly repair: Repair | null;
}

export interface WeekDamage {
  /** Damage done in this week over that of a week of the habit. */
  readonly done: number;
  /** Damage that stands at the end of this week over what would stand had the habit gone on; without repair, of these weeks alone. */
  readonly standing: number;
}

const cyclesIn = (week: ToldWeek): number => {
  if (week.kind === 'distance') return stridesOf(week.distanceKm * 1000, week.strideM);
  const { sessions, stridesPerSession } = week;
  if (!(sessions >= 0 && stridesPerSession > 0)) {
    throw new RangeError(`${sessions} sessions of ${stridesPerSession} strides: give strides above nought`);
  }
  return sessions * stridesPerSession;
};

const DAYS = 7;

/** Each week's cycles are spread evenly over its days. Throws RangeError for a habit without cycles: it compares with nothing. */
export const damageOf = ({ habit, weeks }: Diary, { exponent, repair }: DamageLaw): WeekDamage[] => {
  const usual = cyclesIn(habit);
  if (!(usual > 0 && habit.strainRatio > 0))
    throw new RangeError('a habit without cycles or strain: give the weeks before');
  const done = weeks.map((week) => damageRatio(cyclesIn(week) / usual, week.strainRatio / habit.strainRatio, exponent));
  if (repair === null) {
    let sum = 0;
    return done.map((d, i) => {
      sum += d;
      return { done: d, standing: sum / (i + 1) };
    });
  }
  const steady = standingOfHabit(repair);
  const left = (days: number): number => 1 - repairedBy(days, repair);
  return done.map((d, i) => {
    const today = (i + 1) * DAYS - 1;
    // What differs from the habit, on top of the habit that goes on.
    const more = done.slice(0, i + 1).reduce((sum, each, w) => {
      for (let day = 0; day < DAYS; day++) sum += (each - 1) * left(today - w * DAYS - day);
      return sum;
    }, 0);
    return { done: d, standing: 1 + more / steady };
  });
};
