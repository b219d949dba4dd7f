/**
 * Which arms of which studies may speak, and the range of what they printed. Arms read second-hand, weakly or from memory never
 * enter a range. One endpoint, one option at a time: mixing them does not compile where the endpoints are known, and throws
 * where they are not.
 */
import type { Endpoint, InjuryId, Level, OptionId, SourceId, StudyId } from '../ids';
import type { TimedArm, WeekRange } from './types';

/** What this folder needs of a study row of content/studies.yaml. */
export interface StudyLike {
  readonly id: StudyId;
  readonly source: SourceId;
  readonly mark: string;
  readonly read: string;
  /** Several: people of mixed zones, who speak of none of them alone unless the authors count these as one injury. */
  readonly injuries: readonly InjuryId[];
  readonly asOne?: boolean | undefined;
  /** The classes of the injury in which its people were counted; absent = not stated. */
  readonly classes?: readonly string[] | undefined;
  readonly option: OptionId;
  /** Rows with the same trial are about the same people, or about parts of them. */
  readonly trial: string;
  readonly design: TimedArm['design'];
  readonly population: string;
  readonly level: Level;
  readonly alsoLevels?: readonly Level[] | undefined;
  readonly n: number | null;
  readonly time: {
    readonly endpoint: Endpoint;
    readonly centreWeeks: number;
    readonly centre: 'mean' | 'median';
    readonly sdWeeks: number | null;
    readonly rangeWeeks: readonly number[] | null;
    readonly quartilesWeeks: readonly number[] | null;
    readonly branch: TimedArm['branch'];
    /** Weeks since a second treatment run on another clock and never speak. */
    readonly since?: 'first treatment' | 'second treatment' | 'diagnosis';
  } | null;
  readonly event: CountedEvent | null;
  /** Further events of the same people. */
  readonly events: readonly CountedEvent[];
}

export interface CountedEvent {
  readonly what: 'failure' | 'nonunion' | 'delayed union' | 'union' | 'refracture' | 'returned' | 'not returned';
  readonly count: number | null;
  readonly of: number | null;
  /** Absent: people. */
  readonly unit?: 'people' | 'breaks';
}

/** Read by us, in a primary report: only these may make a range. */
export const isQuotable = (study: Pick<StudyLike, 'mark' | 'read'>): boolean =>
  study.mark === 'seen' && study.read !== 'secondary';

const pairOf = (pair: readonly number[] | null): readonly [number, number] | null => {
  const [low, high] = pair ?? [];
  return low !== undefined && high !== undefined ? [low, high] : null;
};

/**
 * Whose people may speak of one case: of its injury alone, or of several that the authors count as one, and, where a row names
 * classes, of the class of the case.
 */
export interface PeopleFilter {
  readonly injury: InjuryId;
  /** Classes of the case; absent = not known, and then no row that names classes speaks. */
  readonly classes?: readonly string[];
}

export const isOfPeople = (
  { injuries, asOne, classes }: Pick<StudyLike, 'injuries' | 'asOne' | 'classes'>,
  people: PeopleFilter,
) =>
  (injuries.length === 1 || asOne === true) &&
  injuries.includes(people.injury) &&
  (classes === undefined || classes.some((each) => people.classes?.includes(each)));

export interface ArmFilter<E extends Endpoint> extends PeopleFilter {
  readonly option: OptionId;
  readonly endpoint: E;
  /** Only arms that studied this level; absent = every level. */
  readonly level?: Level;
}

export const armsFor = <E extends Endpoint>(studies: readonly StudyLike[], filter: ArmFilter<E>): TimedArm<E>[] =>
  studies.flatMap((s) => {
    const { time } = s;
    if (!time || time.endpoint !== filter.endpoint || s.option !== filter.option || !isQuotable(s)) return [];
    if (!isOfPeople(s, filter) || time.since === 'second treatment') return [];
    if (filter.level && s.level !== filter.level && !s.alsoLevels?.includes(filter.level)) return [];
    return [
      {
        id: s.id,
        source: s.source,
        option: s.option,
        population: s.population,
        level: s.level,
        n: s.n,
        endpoint: filter.endpoint,
        centreWeeks: time.centreWeeks,
        centre: time.centre,
        sdWeeks: time.sdWeeks,
        rangeWeeks: pairOf(time.rangeWeeks),
        quartilesWeeks: pairOf(time.quartilesWeeks),
        branch: time.branch,
        design: s.design,
      },
    ];
  });

type IsUnion<T, All = T> = T extends All ? ([All] extends [T] ? false : true) : never;
/** Two named endpoints at once are no endpoint. The whole list passes: then the endpoint is only known when it runs. */
export type OneEndpoint<E extends Endpoint> = Endpoint extends E ? E : IsUnion<E> extends true ? never : E;

/**
 * The spread of the printed centres (means or medians), null when no arm is left. It is not an interval for a person. Arms of
 * people whose bone did not heal as planned first are no part of it: they tell how long a problem lasts, not how long it takes.
 * Throws RangeError when arms of two endpoints or two options are given: they can't be compared.
 */
export const rangeOf = <E extends Endpoint>(
  arms: readonly TimedArm<E>[] & ([OneEndpoint<E>] extends [never] ? never : unknown),
): WeekRange<E> | null => {
  const given: readonly TimedArm<E>[] = arms;
  const list = given.filter((a) => a.branch !== 'problem');
  const [first] = list;
  if (!first) return null;
  if (given.some((a) => a.endpoint !== first.endpoint))
    throw new RangeError('rangeOf: arms count to different endpoints');
  if (given.some((a) => a.option !== first.option)) throw new RangeError('rangeOf: arms are of different options');
  const centres = list.map((a) => a.centreWeeks);
  return {
    endpoint: first.endpoint,
    option: first.option,
    lowWeeks: Math.min(...centres),
    highWeeks: Math.max(...centres),
    arms: list,
  };
};
