/**
 * How much of a day's damage remodelling has taken away after a time: 1 - exp(-(t / t_r)^v), the form that Sinclair and Taylor
 * (2023, doi 10.3390/computation11120248) use for the tibia, credited to Taylor. No such figure was read for a metatarsal.
 */
export interface Repair {
  /** Time after which 63 % are gone, days. */
  readonly timeDays: number;
  readonly exponent: number;
}

export const repairedBy = (days: number, { timeDays, exponent }: Repair): number => {
  if (!(days >= 0 && timeDays > 0 && exponent > 0)) {
    throw new RangeError(`repair within ${days} days of ${timeDays}, exponent ${exponent}: give times above nought`);
  }
  return 1 - Math.exp(-((days / timeDays) ** exponent));
};

/** Damage of which less is left counts no more. */
const LEAST_LEFT = 1e-9;

/** What is left of damage after so many days, summed over as many past days as matter: the standing load of a daily habit. */
export const standingOfHabit = (repair: Repair): number => {
  let sum = 0;
  for (let day = 0; ; day++) {
    const left = 1 - repairedBy(day, repair);
    if (left < LEAST_LEFT) return sum;
    sum += left;
  }
};
