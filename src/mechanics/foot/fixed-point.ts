/**
 * The next guess at what leads back to itself. A step that goes on as far as the last one led converges by a factor a pass; what the
 * passes before it say of how the way bends is nearly always enough to jump (Anderson 1965, J ACM 12:547, from memory).
 */
import { factorLdl, solveLdl } from '../frame/ldl';

export interface Guess {
  readonly at: Float64Array;
  /** How far it led from there. */
  readonly off: Float64Array;
}

/** Differences of passes beyond this share of telling the same are left out, the oldest first. */
const SAME_SHARE = 1e-10;

/** `tried`: at least one, the last one last. `weights`: how much each number counts. */
export const nextGuess = (tried: readonly Guess[], weights: Float64Array): Float64Array => {
  const last = tried.at(-1);
  if (!last) throw new RangeError('a next guess needs one before it');
  const plain = last.at.map((x, i) => x + (last.off[i] as number));
  for (let from = 0; from + 1 < tried.length; from++) {
    const steps = tried.slice(from + 1).map((each, k): Guess => {
      const before = tried[from + k] as Guess;
      return {
        at: each.at.map((x, i) => x - (before.at[i] as number)),
        off: each.off.map((x, i) => x - (before.off[i] as number)),
      };
    });
    const n = steps.length;
    const product = (a: Float64Array, b: Float64Array): number =>
      a.reduce((sum, x, i) => sum + x * (b[i] as number) * (weights[i] as number) ** 2, 0);
    const gram = Float64Array.from({ length: n * n }, (_, ij) =>
      product((steps[Math.floor(ij / n)] as Guess).off, (steps[ij % n] as Guess).off),
    );
    const factor = factorLdl(gram, n, SAME_SHARE);
    if (!factor.ok) continue;
    const shares = solveLdl(
      factor,
      Float64Array.from(steps, ({ off }) => product(off, last.off)),
    );
    return plain.map((x, i) =>
      steps.reduce(
        (sum, step, k) => sum - (shares[k] as number) * ((step.at[i] as number) + (step.off[i] as number)),
        x,
      ),
    );
  }
  return plain;
};
