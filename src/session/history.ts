/** Steps back and forward over values that never change themselves. Bounded: the oldest step is forgotten first. */

export const MOST_STEPS = 100;

export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
}

export const startOf = <T>(present: T): History<T> => ({ past: [], present, future: [] });

export const stepTo = <T>({ past, present }: History<T>, next: T): History<T> => ({
  past: [...past, present].slice(-MOST_STEPS),
  present: next,
  future: [],
});

export const stepBack = <T>(history: History<T>): History<T> => {
  const { past, present, future } = history;
  const last = past.at(-1);
  return last === undefined ? history : { past: past.slice(0, -1), present: last, future: [present, ...future] };
};

export const stepForward = <T>(history: History<T>): History<T> => {
  const { past, present, future } = history;
  const [next, ...rest] = future;
  return next === undefined ? history : { past: [...past, present], present: next, future: rest };
};
