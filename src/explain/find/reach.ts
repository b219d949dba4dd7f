/** How far what negates or asks reaches in a text: over which words before it or behind it. */
import { type Cut, goesOn, type Met } from './cues';

/** Words of content/find-words.yaml at which a reach ends or goes on, and those that name a place or something that happened. */
export interface Marks {
  readonly ends: ReadonlySet<string>;
  readonly degree: ReadonlySet<string>;
  readonly alone: ReadonlySet<string>;
  readonly hurting: ReadonlySet<string>;
  readonly goesWith: ReadonlySet<string>;
  readonly finding: ReadonlySet<string>;
  readonly healed: ReadonlySet<string>;
  readonly imaging: ReadonlySet<string>;
  readonly shows: ReadonlySet<string>;
  readonly places: ReadonlySet<string>;
  readonly events: ReadonlySet<string>;
}

/** A part of a list is short: what is longer begins something new. */
const MOST_IN_LIST = 3;
/** "No significant displacement": the word of degree stands among the first. */
const DEGREE_WITHIN = 3;
/** "But a later MRI did": what takes back is said in a few words. */
const MOST_TAKING_BACK = 6;
const JOINS: ReadonlySet<string> = new Set(['or', 'nor']);
const BEFORE_PLACE: ReadonlySet<string> = new Set(['of', 'in', 'at', 'to']);
const BEFORE_NOUN: ReadonlySet<string> = new Set(['a', 'an', 'the']);

export interface Reach {
  /** From the first word that a cue reaches to past the last one, whichever side of it they stand on. */
  readonly of: (met: Met) => readonly [first: number, end: number];
  /** Whether what follows says that a picture showed it all the same. */
  readonly takenBack: (first: number, end: number) => boolean;
  /** Whether what is told of old is a fall or a twist and nothing that heals: then it is how the present injury came. */
  readonly isHowItCame: (first: number, end: number) => boolean;
  /** Whether any of these words tells something apart. */
  readonly names: (first: number, end: number) => boolean;
}

export const reachIn = ({ words, gaps, colons, textAt }: Cut, met: readonly Met[], marks: Marks): Reach => {
  const firstsOf = (counts: (each: Met) => boolean): ReadonlySet<number> =>
    new Set(met.filter(counts).map(({ from }) => from));
  /** A denial goes on over what is of old, "no previous fracture", and what is of old ends at a denial. */
  const starts = firstsOf(({ cue }) => cue.is === 'not' || cue.is === 'asked');
  const startsOld = firstsOf(({ cue }) => cue.is !== 'no negation');
  const ahead = (i: number): boolean => marks.ends.has(textAt(i)) || marks.goesWith.has(textAt(i));
  const isFinding = (i: number): boolean => marks.finding.has(textAt(i));
  const isOfPlace = (i: number): boolean =>
    !JOINS.has(textAt(i)) && !isFinding(i) && (words[i]?.filler === true || marks.places.has(textAt(i)));

  /** After a comma a list goes on where a short part follows, and the list has an "or" or a "nor". */
  const listGoesOn = (after: number): boolean => {
    let part = 0;
    for (let i = after; i < words.length && !starts.has(i); i++) {
      if (JOINS.has(textAt(i))) return true;
      if (ahead(i) || ++part > MOST_IN_LIST || gaps[i] === 'end') return false;
      if (gaps[i] === 'comma') part = 0;
    }
    return false;
  };

  /** "No fracture of the calcaneus, talus and navicular": places only since the "of", and to the end of the list. */
  const placesGoOn = (from: number, at: number): boolean => {
    let of = at - 1;
    while (of > from && isOfPlace(of) && !BEFORE_PLACE.has(textAt(of))) of -= 1;
    if (!BEFORE_PLACE.has(textAt(of)) || textAt(at - 1) === textAt(of)) return false;
    let [joined, places] = [false, 0];
    for (let i = at; i < words.length && !starts.has(i); i++) {
      const joins = textAt(i) === 'and' || JOINS.has(textAt(i));
      if (joins) joined = true;
      else if (marks.hurting.has(textAt(i))) return false;
      else if (ahead(i)) break;
      else if (!isOfPlace(i)) return false;
      else if (marks.places.has(textAt(i))) places += 1;
      if (gaps[i] === 'end') break;
    }
    return joined && places > 0;
  };

  /** "No fall heel hurts": the heel is what hurts, and only the fall is denied. */
  const beforeHurting = (from: number, end: number): number => {
    let first = end;
    while (first > from && isOfPlace(first - 1)) first -= 1;
    const happened = first > from && (marks.events.has(textAt(first - 1)) || isFinding(first - 1));
    return happened ? first : end;
  };

  /** Past the last word that a cue reaches. */
  const toAhead = ({ cue, to: from }: Met): number => {
    const isStart = (i: number): boolean => (cue.is === 'earlier' ? startsOld : starts).has(i);
    if (!goesOn(gaps[from - 1])) return from;
    const verb = textAt(from).endsWith('ly') ? from + 1 : from;
    if (cue.binds === 'next word' || (cue.binds === 'verb' && marks.alone.has(textAt(verb)))) {
      let last = cue.binds === 'verb' ? verb : from;
      while (gaps[last] === 'hyphen') last += 1;
      return last + 1;
    }
    for (let i = from; i < words.length; i++) {
      const listed = i > from && textAt(i) === 'and' && placesGoOn(from, i);
      if (isStart(i)) return i;
      if (i > from && ahead(i) && !listed) return marks.hurting.has(textAt(i)) ? beforeHurting(from, i) : i;
      // "Without displacement of the fifth": the bone is meant all the same.
      if (marks.degree.has(textAt(i)) && i - from < DEGREE_WITHIN && !JOINS.has(textAt(i + 1))) return i + 1;
      if (gaps[i] === 'end') return i + 1;
      if (gaps[i] === 'comma' && !listGoesOn(i + 1) && !placesGoOn(from, i + 1)) return i + 1;
    }
    return words.length;
  };
  /** The first word that a cue behind them reaches. */
  const toBack = ({ cue, from: to, to: past }: Met): number => {
    /** "Fracture of the calcaneus, healed": what is of old or in doubt may stand alone behind a comma. */
    const isAlone = cue.is !== 'not' && gaps[to - 1] === 'comma' && !goesOn(gaps[past - 1]);
    const isNear = (i: number): boolean => goesOn(gaps[i - 1]) || (isAlone && i === to);
    const taken = new Set(met.flatMap((each) => (each.to <= to ? [each.to - 1] : [])));
    const isFree = (i: number): boolean => i > 0 && gaps[i - 1] !== 'end' && !taken.has(i - 1);
    /** Where the list of places begins of which the last "and" stands here; null where it is no such list. */
    const listFrom = (and: number): number | null => {
      let first: number | null = null;
      for (let i = and; isFree(i) && textAt(and) === 'and'; i--) {
        if (!isOfPlace(i - 1) || (marks.ends.has(textAt(i - 1)) && textAt(i - 1) !== 'and')) break;
        if (!isFree(i - 1) || gaps[i - 2] === 'comma') first = i - 1;
      }
      return first;
    };
    let from = to;
    while (isFree(from) && isNear(from)) {
      // "Talus, navicular and cuboid are normal": it is said of each.
      const listed = listFrom(from - 1);
      if (listed !== null) return listed;
      if (marks.ends.has(textAt(from - 1))) break;
      from -= 1;
    }
    return from;
  };

  /** "Ruled out: Lisfranc, Jones and cuboid": all of the clause that a heading stands before. */
  const underHeading = (from: number): number => {
    for (let i = from; i < words.length; i++) {
      if (starts.has(i) || (ahead(i) && textAt(i) !== 'and')) return i;
      if (gaps[i] === 'end') return i + 1;
    }
    return words.length;
  };
  const clauseFrom = (end: number): number => {
    let from = end;
    while (from > 0 && (from === end || gaps[from - 1] !== 'end')) from -= 1;
    return from;
  };
  const tells = (first: number, end: number): boolean =>
    words.slice(first, end).some(({ filler, text }) => !filler || marks.finding.has(text));

  const names = (first: number, end: number): boolean => words.slice(first, end).some(({ filler }) => !filler);
  /** The first that is named is a place: none is in a normal shoe, and of a film only "of the navicular" is one. */
  const isPlaceFirst = (from: number, end: number): boolean => {
    if (marks.imaging.has(textAt(from)) && !BEFORE_PLACE.has(textAt(from + 1))) return false;
    const named = words.slice(from, end).find(({ filler }) => !filler);
    return named !== undefined && marks.places.has(named.text);
  };
  /** An adjective before its noun: "with a normal calcaneus". */
  const isBeforeNoun = (i: number): boolean =>
    goesOn(gaps[i - 1]) && (marks.goesWith.has(textAt(i - 1)) || BEFORE_NOUN.has(textAt(i - 1)));

  return {
    of: (each) => {
      const { cue, from, to } = each;
      const [begins, endsClause] = [from === 0 || gaps[from - 1] === 'end', gaps[to - 1] === 'end'];
      // "Lisfranc: negative": alone behind a colon.
      if (cue.is === 'not' && endsClause && colons.has(from - 1)) return [clauseFrom(from), from];
      if (colons.has(to - 1) && (cue.behind ? begins : cue.is === 'asked')) return [to, underHeading(to)];
      if (!cue.behind) {
        const end = toAhead(each);
        if (cue.binds !== 'either side' || names(to, end)) return [to, end];
        // "Calcaneus: old fracture"; "Jones fracture, old".
        if (colons.has(from - 1)) return [clauseFrom(from), from];
        return goesOn(gaps[end - 1]) ? [to, end] : [toBack(each), from];
      }
      const first = toBack(each);
      const [stands, goes] = [tells(first, from), goesOn(gaps[to - 1])];
      // "MRI ruled out a Jones fracture": what stands before it is the picture.
      if (cue.binds === 'either side' && !stands && goes) return [to, toAhead(each)];
      if (cue.binds === 'noun' && goes && (!stands || isBeforeNoun(from))) {
        const end = toAhead(each);
        // Normal shoes, or a normal film, say nothing of a place of the foot.
        return isPlaceFirst(to, end) ? [to, end] : [to, to];
      }
      return [first, from];
    },
    names,
    isHowItCame: (first, end) => {
      const told = words.slice(first, end).map(({ text }) => text);
      return told.some((text) => marks.events.has(text)) && !told.some((text) => marks.healed.has(text));
    },
    takenBack: (first, end) => {
      // What was looked for is something that a picture shows.
      let from = first;
      while (from > 0 && gaps[from - 1] !== 'end') from -= 1;
      const before = words.slice(from, end).map(({ text }) => text);
      if (!before.some((text) => marks.imaging.has(text) || marks.finding.has(text))) return false;
      let last = end;
      while (last < words.length - 1 && goesOn(gaps[last])) last += 1;
      const clause = words.slice(end, last + 1);
      const has = (wanted: ReadonlySet<string>): boolean => clause.some(({ text }) => wanted.has(text));
      return (
        clause.length <= MOST_TAKING_BACK &&
        clause.every(({ filler, text }) => (filler && !marks.finding.has(text)) || marks.ends.has(text)) &&
        !clause.some((_, i) => starts.has(end + i)) &&
        has(marks.imaging) &&
        has(marks.shows)
      );
    },
  };
};
