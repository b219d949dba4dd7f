/** A number far out of range is often right in another unit: says which one, and what it would be in ours. */

interface UnitGuess {
  readonly unit: string;
  /** Multiply by this to get our unit. Pound, stone, foot and inch: exact, international yard and pound agreement of 1959. */
  readonly times: number;
}

interface Measure {
  readonly our: string;
  readonly low: number;
  readonly high: number;
  readonly others: readonly UnitGuess[];
}

/** By what the number measures. `low` and `high` are the bounds of the schema. */
export const MEASURES = {
  massKg: {
    our: 'kg',
    low: 20,
    high: 250,
    others: [
      { unit: 'grams', times: 0.001 },
      { unit: 'pounds', times: 0.45359237 },
      { unit: 'stone', times: 6.35029318 },
    ],
  },
  heightCm: {
    our: 'cm',
    low: 80,
    high: 230,
    others: [
      { unit: 'metres', times: 100 },
      { unit: 'millimetres', times: 0.1 },
      { unit: 'feet', times: 30.48 },
      { unit: 'inches', times: 2.54 },
    ],
  },
  mm: { our: 'mm', low: 0, high: 120, others: [{ unit: 'micrometres', times: 0.001 }] },
} as const satisfies Record<string, Measure>;

export const guessUnit = (measure: keyof typeof MEASURES, found: number): string => {
  const { our, low, high, others }: Measure = MEASURES[measure];
  for (const { unit, times } of others) {
    const converted = found * times;
    if (converted >= low && converted <= high)
      return `It looks like ${unit}: write it in ${our} (${Math.round(converted)}).`;
  }
  return `Write it in ${our}, between ${low} and ${high}.`;
};
