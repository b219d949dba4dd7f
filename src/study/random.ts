/** Choosing by a seeded source of numbers in [0, 1). */
export type Random = () => number;

export const pick = <T>(random: Random, items: readonly T[]): T | undefined =>
  items[Math.floor(random() * items.length)];

/** A new, shuffled list (Fisher and Yates). */
export const shuffled = <T>(random: Random, items: readonly T[]): T[] => {
  const left = [...items];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(Math.floor(random() * left.length), 1));
  return out;
};

/** `count` of them, each at most once. */
export const sample = <T>(random: Random, items: readonly T[], count: number): T[] =>
  shuffled(random, items).slice(0, count);
