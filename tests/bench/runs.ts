/** How often each thing is timed, and the middle one of the times. */
export const RUNS = 7;

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
