/**
 * Classes that geometry decides: the rules of an injury's classification (content) held against what the case says of place,
 * displacement and measures of films. A value on a border belongs to the class that begins there, and that is said. What is not
 * stated decides nothing, unless the rule takes it to hold then or a displaced break makes it hold, and that is said; two claims of one
 * measure that differ decide nothing.
 */
import type { Claim, Facts } from '../cases/schema';
import type { ClassRule, Injury } from '../content/schema';
import type { FilmMeasure, RegionId } from '../ids';
import type { ClaimTag } from './messages';
import { knownOf, weakest } from './resolve';

interface MeasureKnown {
  readonly what: FilmMeasure | 'displacement';
  readonly value: number;
  readonly tag: ClaimTag;
}

/** What a rule is held against, with the claims that say so. Plain data: it is the input of a computation. */
export interface Measured {
  readonly region: { readonly value: RegionId; readonly tag: ClaimTag } | null;
  readonly displaced: { readonly value: boolean; readonly tag: ClaimTag } | null;
  /** What says that the break runs only part of the way; null where nothing does. */
  readonly incomplete: ClaimTag | null;
  /** One value a measure; a measure on which claims differ has none. */
  readonly measures: readonly MeasureKnown[];
  /** Measures on which claims differ: stated, and so nothing is taken for them. */
  readonly disputed: readonly FilmMeasure[];
}

type MeasureClaim = Extract<Claim, { subject: 'measure' }>;

const byMeasure = (claims: readonly MeasureClaim[]): Pick<Measured, 'measures' | 'disputed'> => {
  const found = new Map<FilmMeasure, { value: number; tag: ClaimTag } | null>();
  for (const claim of claims) {
    if (claim.status === 'ruledOut') continue;
    const { what, value } = claim.value;
    const before = found.get(what);
    if (before === null || (before !== undefined && before.value !== value)) found.set(what, null);
    else {
      const tags = before === undefined ? [] : [before.tag];
      const status = weakest(claim.status, ...tags.flatMap((t) => (t.status === 'ruledOut' ? [] : [t.status])));
      found.set(what, { value, tag: { status, claims: [...tags.flatMap((t) => t.claims), claim.id] } });
    }
  }
  return {
    measures: [...found].flatMap(([what, known]) => (known === null ? [] : [{ what, ...known }])),
    disputed: [...found].flatMap(([what, known]) => (known === null ? [what] : [])),
  };
};

export const measuredIn = (facts: Facts, region: Measured['region']): Measured => {
  const displacement = knownOf(facts.displacement);
  const tag: ClaimTag | null = displacement && { status: displacement.status, claims: displacement.claims };
  const { measures, disputed } = byMeasure(facts.measures);
  const mm = displacement?.value.mm;
  const direction = knownOf(facts.direction);
  return {
    region,
    displaced: displacement === null || tag === null ? null : { value: displacement.value.displaced, tag },
    incomplete: direction?.value === 'incomplete' ? { status: direction.status, claims: direction.claims } : null,
    measures: mm === undefined || tag === null ? measures : [...measures, { what: 'displacement', value: mm, tag }],
    disputed,
  };
};

interface Held {
  readonly holds: boolean;
  /** On the border at which the class begins. */
  readonly onBorder: boolean;
  /** Null where nobody stated it and the rule is taken to hold: `assumed` is what was not stated. */
  readonly tag: ClaimTag | null;
  readonly assumed?: FilmMeasure;
  /** Nobody stated the measure, and the break is displaced. */
  readonly byDisplacement?: true;
}

/** Null where nothing was stated that the rule asks for. */
const heldAgainst = (rule: ClassRule, m: Measured): Held | null => {
  if (rule.by === 'place')
    return m.region && { holds: m.region.value === rule.region, onBorder: false, tag: m.region.tag };
  if (rule.by === 'displaced')
    return m.displaced && { holds: m.displaced.value === rule.displaced, onBorder: false, tag: m.displaced.tag };
  const known = m.measures.find(({ what }) => what === rule.what);
  if (known === undefined) {
    const { what } = rule;
    if (what === 'displacement' || m.disputed.includes(what)) return null;
    // It follows from the displacement, and so nobody measured it: no surer than what we conclude.
    if (rule.orDisplaced && m.displaced?.value === true) {
      const { claims } = m.displaced.tag;
      return { holds: true, onBorder: false, tag: { status: 'inferred', claims }, byDisplacement: true };
    }
    return rule.orNotStated ? { holds: true, onBorder: false, tag: null, assumed: what } : null;
  }
  const { value, tag } = known;
  const holds = (rule.from === undefined || value >= rule.from) && (rule.below === undefined || value < rule.below);
  return { holds, onBorder: holds && value === rule.from, tag };
};

export interface ComputedClass {
  /** Its place in the injury's classification. */
  readonly index: number;
  readonly onBorder: boolean;
  /** Measures that nobody stated, taken to be as the class asks. */
  readonly assumed: readonly FilmMeasure[];
  /** It follows from pieces that moved apart; the measure of its rule was not stated. */
  readonly byDisplacement: boolean;
  readonly claim: ClaimTag;
}

/** The classes whose rules all hold, at most one a scheme as long as rules of a scheme do not overlap (checked with the content). */
export const classesOf = ({ classification }: Pick<Injury, 'classification'>, m: Measured): readonly ComputedClass[] =>
  classification.flatMap(({ rules }, index) => {
    if (rules === undefined) return [];
    const held = rules.map((rule) => heldAgainst(rule, m));
    if (held.some((h) => h === null || !h.holds)) return [];
    const all = held.flatMap((h) => h ?? []);
    const assumed = all.flatMap((h) => h.assumed ?? []);
    const tags = all.flatMap(({ tag }) => tag ?? []);
    const statuses = tags.flatMap(({ status }) => (status === 'ruledOut' ? [] : [status]));
    return [
      {
        index,
        onBorder: all.some((h) => h.onBorder),
        assumed,
        byDisplacement: all.some((h) => h.byDisplacement),
        // What nobody stated was confirmed by nobody, and so nor is what rests on it.
        claim: {
          status: weakest(...statuses, ...assumed.map(() => 'inferred' as const)),
          claims: [...new Set(tags.flatMap(({ claims }) => claims))],
        },
      },
    ];
  });

export interface GapAgainst {
  readonly gapMm: number;
  /** From which gap on the joint is apart: where the first class with a gap begins. */
  readonly fromMm: number;
  /** What is said of the joint beside it. */
  readonly displaced: boolean;
  readonly claims: readonly ClaimTag[];
}

/**
 * A joint that is said not to be displaced, with a gap from which on it is, or one said to be displaced with less of a gap: both cannot
 * hold, and so no class follows from either. Null where they do not collide.
 */
export const gapAgainst = (
  { kind, classification }: Pick<Injury, 'kind' | 'classification'>,
  m: Measured,
): GapAgainst | null => {
  if (kind !== 'joint' || m.displaced === null) return null;
  const begins = classification.flatMap(({ rules = [] }) =>
    rules.flatMap((rule) => (rule.by === 'measure' && rule.what === 'diastasis' ? (rule.from ?? []) : [])),
  );
  const gap = m.measures.find(({ what }) => what === 'diastasis');
  const fromMm = Math.min(...begins);
  const displaced = m.displaced.value;
  if (gap === undefined || gap.value >= fromMm === displaced) return null;
  return { gapMm: gap.value, fromMm, displaced, claims: [m.displaced.tag, gap.tag] };
};

export interface ThroughSign {
  readonly by: 'displacement' | 'direction' | FilmMeasure;
  readonly tag: ClaimTag;
}
export interface ThroughAgainst {
  /** What says that the break has gone all the way through. */
  readonly through: readonly ThroughSign[];
  /** What says that it has not. */
  readonly notThrough: readonly ThroughSign[];
}

/**
 * A break that is said to have gone all the way through, by its depth or because it is displaced, and not to have, by its depth or its
 * name: both cannot hold, and so no class follows from either. Null where they do not collide, and where no class asks for the depth.
 */
export const throughAgainst = (
  { classification }: Pick<Injury, 'classification'>,
  m: Measured,
): ThroughAgainst | null => {
  const rules = classification.flatMap((one) => one.rules ?? []);
  const rule = rules.flatMap((r) => (r.by === 'measure' && r.what !== 'displacement' && r.orDisplaced ? [r] : []))[0];
  if (rule?.from === undefined || rule.what === 'displacement') return null;
  const { what, from } = rule;
  const depth = m.measures.find((known) => known.what === what);
  const isThrough = depth !== undefined && depth.value >= from;
  const measured = depth === undefined ? [] : [{ by: what, tag: depth.tag }];
  const through = [
    ...(m.displaced?.value === true ? [{ by: 'displacement' as const, tag: m.displaced.tag }] : []),
    ...(isThrough ? measured : []),
  ];
  const notThrough = [
    ...(m.incomplete === null ? [] : [{ by: 'direction' as const, tag: m.incomplete }]),
    ...(isThrough ? [] : measured),
  ];
  return through.length === 0 || notThrough.length === 0 ? null : { through, notThrough };
};

const without = (m: Measured, claims: readonly ClaimTag[]): Measured => {
  const isOut = (tag: ClaimTag | null | undefined): boolean => tag != null && claims.includes(tag);
  return {
    ...m,
    displaced: isOut(m.displaced?.tag) ? null : m.displaced,
    incomplete: isOut(m.incomplete) ? null : m.incomplete,
    measures: m.measures.filter(({ tag }) => !isOut(tag)),
  };
};

/** The weaker of two sides that collide, where the other one alone has something confirmed: a report takes back nothing of that. */
const weaker = (one: readonly ClaimTag[], other: readonly ClaimTag[]): readonly ClaimTag[] => {
  const [a, b] = [one, other].map((side) => side.some(({ status }) => status === 'confirmed'));
  return a === b ? [] : a === true ? other : one;
};

/** What decides the class once mere reports against what is confirmed are left out; they are told as a clash all the same. */
export const asConfirmed = (injury: Pick<Injury, 'kind' | 'classification'>, m: Measured): Measured => {
  const gap = gapAgainst(injury, m);
  const [said = null, measured = null] = gap?.claims ?? [];
  const byGap = said === null || measured === null ? m : without(m, weaker([said], [measured]));
  const through = throughAgainst(injury, byGap);
  const tags = (signs: readonly ThroughSign[]): readonly ClaimTag[] => signs.map(({ tag }) => tag);
  return through === null ? byGap : without(byGap, weaker(tags(through.through), tags(through.notThrough)));
};

/** The classes that may be told of a case: none while two claims that decide them collide, and neither is surer than the other. */
export const toldClassesOf = (
  injury: Pick<Injury, 'kind' | 'classification'>,
  measured: Measured,
): readonly ComputedClass[] => {
  const m = asConfirmed(injury, measured);
  return gapAgainst(injury, m) === null && throughAgainst(injury, m) === null ? classesOf(injury, m) : [];
};
