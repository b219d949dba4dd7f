/** What the short run (`npm test`) leaves to the long one (`npm run test:long`), which leaves nothing out. */
export const LONG = Boolean(process.env.UNDERFOOT_LONG);

/** All of them in the long run; in the short one those that are kept. */
export const orAll = <T>(all: readonly T[], isKept: (item: T, index: number) => boolean): readonly T[] =>
  LONG ? all : all.filter(isKept);
