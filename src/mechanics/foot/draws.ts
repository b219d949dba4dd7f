/**
 * Seeded draws of everything that is assumed or uncertain: half of them below the told value and half above, evenly out to the ends
 * of the band (in the logarithm where the band is a factor). The first draw of a row is always the told values themselves.
 */
import { seededRandom } from '../../units';

export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Bands whose high end is this many times their low end spread by factors. */
const FACTOR_BAND = 2;

/** The value at a share 0 to 1 of the band: 0 the low end, a half the told value, 1 the high end. */
export const inBand = ({ value, low, high }: Band, share: number): number => {
  const t = share < 0.5 ? 2 * share : 2 * share - 1;
  const [a, b] = share < 0.5 ? [low, value] : [value, high];
  if (a === b) return a;
  return low > 0 && high > FACTOR_BAND * low ? a * (b / a) ** t : a + (b - a) * t;
};

/** One draw: the share of its band at which each name lies, and its values. */
export interface Draw<K extends string> {
  readonly shares: Readonly<Record<K, number>>;
  readonly values: Readonly<Record<K, number>>;
}

/** Draws one after the other: names are drawn in the order of `names`, so that the same seed gives the same draws. */
export interface Drawer<K extends string> {
  readonly told: Draw<K>;
  readonly next: () => Draw<K>;
}

export const drawerOf = <K extends string>(
  names: readonly K[],
  bands: Readonly<Record<K, Band>>,
  seed: number,
): Drawer<K> => {
  const random = seededRandom(seed);
  const draw = (share: (name: K) => number): Draw<K> => {
    const shares = Object.fromEntries(names.map((name) => [name, share(name)])) as Record<K, number>;
    const values = Object.fromEntries(names.map((name) => [name, inBand(bands[name], shares[name])])) as Record<
      K,
      number
    >;
    return { shares, values };
  };
  return { told: draw(() => 0.5), next: () => draw(() => random()) };
};

/** `count` draws after the told values. */
export const drawsOf = <K extends string>(
  names: readonly K[],
  bands: Readonly<Record<K, Band>>,
  count: number,
  seed: number,
): readonly Draw<K>[] => {
  const { told, next } = drawerOf(names, bands, seed);
  return [told, ...Array.from({ length: count }, next)];
};

/** Quantile of sorted numbers, between neighbours in proportion (Hyndman and Fan 1996, type 7; from memory). */
export const quantileOfSorted = (sorted: ArrayLike<number>, share: number): number => {
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)], sorted[Math.ceil(at)]];
  if (low === undefined || high === undefined) throw new RangeError('no numbers, no quantile');
  return low + (high - low) * (at - Math.floor(at));
};

/** The same of numbers in any order. */
export const quantile = (values: readonly number[], share: number): number =>
  quantileOfSorted(Float64Array.from(values).sort(), share);

const ranksOf = (values: readonly number[]): number[] => {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] as number) - (values[b] as number));
  const ranks = new Array<number>(values.length);
  order.forEach((i, rank) => {
    ranks[i] = rank;
  });
  return ranks;
};

/** Rank correlation (Spearman), ties in order of appearance. */
export const rankCorrelation = (a: readonly number[], b: readonly number[]): number => {
  const [ra, rb] = [ranksOf(a), ranksOf(b)];
  const mean = (a.length - 1) / 2;
  let [ab, aa, bb] = [0, 0, 0];
  ra.forEach((x, i) => {
    const y = rb[i] as number;
    ab += (x - mean) * (y - mean);
    aa += (x - mean) ** 2;
    bb += (y - mean) ** 2;
  });
  return aa === 0 || bb === 0 ? 0 : ab / Math.sqrt(aa * bb);
};
