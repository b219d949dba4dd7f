/**
 * Springs between a node and the end of a member, and releases (k = 0), condensed exactly into the member's six ways to deform: the
 * spring gives way by (end force) / k, which the member then need not deform.
 */
import { END_DOFS, MODES } from './timoshenko';

export interface EndSpring {
  /** Which of the twelve end forces it carries. */
  readonly at: number;
  readonly k: number;
}

/** What a member does by itself: forces of its modes = `stiffness` x deformations + `fixed`; end forces add `endLoads`. */
export interface Flexing {
  /** 6 x 6 row-major. */
  readonly stiffness: Float64Array;
  /** 6: forces of the modes under its own load while its ends are held. */
  readonly fixed: Float64Array;
  /** 12: end forces under its own load while it is simply supported. */
  readonly endLoads: Float64Array;
}

/** Below this share of what was there before any spring, nothing is left that a release could take away. */
const NOTHING_LEFT = 1e-12;

const product = (stiffness: Float64Array, a: Float64Array): Float64Array =>
  Float64Array.from(a, (_, i) => a.reduce((sum, value, j) => sum + (stiffness[i * MODES + j] as number) * value, 0));
const dot = (a: Float64Array, b: Float64Array): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);

/**
 * Adds the springs one after another; `modes` (6 x 12, local) tells which deformation each end motion is. Returns the member with
 * its springs, or the release after which the member itself could move while both nodes stand still.
 */
export const withEndSprings = (
  member: Flexing,
  modes: Float64Array,
  springs: readonly EndSpring[],
): { readonly ok: true; readonly member: Flexing } | { readonly ok: false; readonly spring: EndSpring } => {
  const stiffness = member.stiffness.slice();
  const fixed = member.fixed.slice();
  const releases: Release[] = [];
  for (const spring of springs) {
    const a = Float64Array.from({ length: MODES }, (_, mode) => modes[mode * END_DOFS + spring.at] as number);
    const before = dot(a, product(member.stiffness, a));
    const force = product(stiffness, a);
    const resists = dot(a, force);
    if (spring.k + Math.max(0, resists) <= NOTHING_LEFT * before && spring.k === 0) return { ok: false, spring };
    const total = spring.k + resists;
    const load = (dot(a, fixed) + (member.endLoads[spring.at] as number)) / total;
    for (let i = 0; i < MODES; i++) {
      fixed[i] = (fixed[i] as number) - (force[i] as number) * load;
      for (let j = 0; j < MODES; j++)
        stiffness[i * MODES + j] =
          (stiffness[i * MODES + j] as number) - ((force[i] as number) * (force[j] as number)) / total;
    }
    if (spring.k === 0) releases.push({ a, endLoad: member.endLoads[spring.at] as number });
    clean(stiffness, fixed, releases);
  }
  return { ok: true, member: { stiffness, fixed, endLoads: member.endLoads } };
};

interface Release {
  /** The deformations that the released end motion is made of: 6. */
  readonly a: Float64Array;
  /** The end force that the member's own load leaves there. */
  readonly endLoad: number;
}

/** Of a released turn, bow and sway of its plane with shares of one size: which, and whether of one sign. */
const pairOf = ({ a }: Release): readonly [number, number, number] | null => {
  const [p, q, more] = [...a.keys()].filter((mode) => a[mode] !== 0);
  if (p === undefined || q === undefined || more !== undefined) return null;
  return [p, q, Math.sign(a[p] as number) * Math.sign(a[q] as number)];
};

/** Modes of which nothing is left: released alone, in a pair whose other half is gone, or in two pairs, of one sign and of two. */
const goneOf = (releases: readonly Release[]): ReadonlySet<number> => {
  const gone = new Set<number>();
  for (const { a } of releases) {
    const [mode, more] = [...a.keys()].filter((each) => a[each] !== 0);
    if (mode !== undefined && more === undefined) gone.add(mode);
  }
  const pairs = releases.map(pairOf).filter((pair) => pair !== null);
  for (const [p, q, sign] of pairs)
    if (pairs.some(([also, , other]) => also === p && other === -sign)) gone.add(p).add(q);
  for (let again = true; again; ) {
    again = false;
    for (const release of releases) {
      const [p, q] = pairOf(release) ?? [];
      if (p === undefined || q === undefined || gone.has(p) === gone.has(q)) continue;
      gone.add(p).add(q);
      again = true;
    }
  }
  return gone;
};

/**
 * A release leaves exactly nothing of its motion: what rounding leaves there would pass for a very soft spring, and a mechanism for
 * a frame. One mode alone becomes zero. Of a pair the two rows and columns become exact opposites.
 */
const clean = (stiffness: Float64Array, fixed: Float64Array, releases: readonly Release[]): void => {
  const at = (i: number, j: number): number => stiffness[i * MODES + j] as number;
  const set = (i: number, j: number, value: number): void => {
    stiffness[i * MODES + j] = value;
    stiffness[j * MODES + i] = value;
  };
  const gone = goneOf(releases);
  for (const mode of gone) for (let j = 0; j < MODES; j++) set(mode, j, 0);
  const alone = new Set(releases.filter((each) => pairOf(each) === null).map(({ a }) => a.findIndex((v) => v !== 0)));
  for (const release of releases) {
    const { a, endLoad } = release;
    const pair = pairOf(release);
    if (pair === null) {
      const mode = a.findIndex((value) => value !== 0);
      if (mode >= 0) fixed[mode] = -endLoad / (a[mode] as number);
      continue;
    }
    const [p, q, sign] = pair;
    if (!gone.has(p)) {
      for (let j = 0; j < MODES; j++) {
        if (j === p || j === q) continue;
        const half = (at(p, j) - sign * at(q, j)) / 2;
        set(p, j, half);
        set(q, j, -sign * half);
      }
      const own = (at(p, p) + at(q, q) - 2 * sign * at(p, q)) / 4;
      set(p, p, own);
      set(q, q, own);
      set(p, q, -sign * own);
    }
    // Of a sway released by itself, what is left of its force is known already.
    const [known, rest] = alone.has(q) ? [q, p] : [p, q];
    fixed[rest] = (-endLoad - (a[known] as number) * (fixed[known] as number)) / (a[rest] as number);
  }
};
