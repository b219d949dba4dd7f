/** What was made for a foot in a pose, kept for when it is asked for again; what failed is made anew. */
import type { FootParameters, PoseName } from '../anatomy/types';

export interface Wanted {
  readonly key: string;
  readonly parameters: FootParameters;
  readonly pose: PoseName;
}

export const wantedOf = (parameters: FootParameters, pose: PoseName): Wanted => ({
  key: `${pose} ${JSON.stringify(parameters, Object.keys(parameters).sort())}`,
  parameters,
  pose,
});

const MOST = 8;

export const kept = <T>(make: (wanted: Wanted) => Promise<T>): ((wanted: Wanted) => Promise<T>) => {
  const made = new Map<string, Promise<T>>();
  return (wanted) => {
    const { key } = wanted;
    const ready = made.get(key) ?? make(wanted);
    // Asked for last, dropped last.
    made.delete(key);
    made.set(key, ready);
    ready.catch(() => made.delete(key));
    const [oldest] = made.keys();
    if (made.size > MOST && oldest !== undefined) made.delete(oldest);
    return ready;
  };
};
