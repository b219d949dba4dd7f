/** What a record must hold to beyond its form: figures that can be true, and a source wherever one is claimed. */
import type { Kind } from './kinds';
import { evidenceIn } from './references';
import { classBreaches, codeBreaches, usualBreaches } from './rules-classes';
import { factorBreaches } from './rules-factor';
import { patternBreaches, vesselBreaches } from './rules-vessels';
import type { Caution, Factor, Figure, Injury, Stage, StageSheet, Study, Vessel, VesselPattern } from './schema';
import type { Path } from './yaml-file';

export interface Breach {
  readonly path: Path;
  readonly expected: string;
  readonly got: string;
}

const ordered = (low: number, high: number, path: Path): Breach[] =>
  low <= high ? [] : [{ path, expected: 'low first, then high', got: `${low}, ${high}` }];

const sourced = (record: object): Breach[] =>
  evidenceIn(record)
    .filter(({ evidence }) => evidence.source === null && (evidence.mark === 'seen' || evidence.mark === 'weak'))
    .map(({ path, evidence }) => ({
      path: [...path, 'source'],
      expected: `a source, because the mark is "${evidence.mark}"`,
      got: 'none',
    }));

const figures = (value: unknown, path: Path = []): Breach[] => {
  if (value === null || typeof value !== 'object') return [];
  const inner = Object.entries(value).flatMap(([k, v]) => figures(v, [...path, Array.isArray(value) ? Number(k) : k]));
  if (!('value' in value && 'unit' in value)) return inner;
  const f = value as Figure;
  const band = f.low !== undefined && f.high !== undefined ? ordered(f.low, f.high, [...path, 'low']) : [];
  const inside = (f.low === undefined || f.low <= f.value) && (f.high === undefined || f.value <= f.high);
  return [
    ...inner,
    ...band,
    ...(inside ? [] : [{ path: [...path, 'value'], expected: 'a value inside its own band', got: String(f.value) }]),
  ];
};

const injury = (r: Injury): Breach[] => [
  ...r.stages.flatMap((s, i) =>
    s.weeksFrom !== null && s.weeksTo !== null ? ordered(s.weeksFrom, s.weeksTo, ['stages', i, 'weeksFrom']) : [],
  ),
  ...r.notSeen.flatMap(({ againWeeks }, i) => {
    const [low, high] = againWeeks ?? [];
    return low === undefined || high === undefined ? [] : ordered(low, high, ['notSeen', i, 'againWeeks']);
  }),
  ...classBreaches(r),
  ...usualBreaches(r),
  ...codeBreaches(r),
];

const stage = (r: Stage): Breach[] => [
  ...r.today.weights.flatMap((w, i) =>
    w.share === null ? [] : ordered(w.share.low, w.share.high, ['today', 'weights', i, 'share']),
  ),
  ...r.today.exercises.flatMap(({ id }, i) =>
    r.today.exercises.findIndex((other) => other.id === id) === i
      ? []
      : [{ path: ['today', 'exercises', i, 'id'], expected: 'an id that no other exercise of the stage has', got: id }],
  ),
];

const stageSheet = (r: StageSheet): Breach[] =>
  r.weeksFrom !== null && r.weeksTo !== null ? ordered(r.weeksFrom, r.weeksTo, ['weeksFrom']) : [];

const caution = (r: Caution): Breach[] =>
  r.kind === 'treatment danger' && r.act === undefined
    ? [{ path: ['act'], expected: 'how fast to act on a danger of the treatment', got: 'none' }]
    : [];

const percent = (value: number | null, path: Path): Breach[] =>
  value === null || (value >= 0 && value <= 100)
    ? []
    : [{ path, expected: 'a percentage 0 to 100', got: String(value) }];

type Pair = readonly number[] | null;

/** A pair of weeks in order, with the centre between them where the centre has to be. */
const pairOfWeeks = (pair: Pair, centre: number, inside: boolean, name: string): Breach[] => {
  const [low, high] = pair ?? [];
  if (low === undefined || high === undefined) return [];
  const path = ['time', name];
  if (low < 0) return [{ path, expected: 'weeks from 0', got: String(low) }];
  if (low > high || !inside || (low <= centre && centre <= high)) return ordered(low, high, path);
  return [{ path: ['time', 'centreWeeks'], expected: `a centre inside ${low} to ${high}`, got: String(centre) }];
};

const timeBreaches = (t: NonNullable<Study['time']>): Breach[] => {
  const { centreWeeks: centre, sdWeeks: sd } = t;
  const more = (value: number | null, name: string): Breach[] =>
    value === null || value > 0 ? [] : [{ path: ['time', name], expected: 'more than 0 weeks', got: String(value) }];
  return [
    ...more(centre, 'centreWeeks'),
    ...more(sd, 'sdWeeks'),
    ...pairOfWeeks(t.rangeWeeks, centre, true, 'rangeWeeks'),
    // A mean may lie outside the quartiles, a median never.
    ...pairOfWeeks(t.quartilesWeeks, centre, t.centre === 'median', 'quartilesWeeks'),
  ];
};

const eventBreaches = (e: Study['events'][number], path: Path): Breach[] => {
  const [low, high] = e.lowHighPercent ?? [];
  const breaches = percent(e.percent, [...path, 'percent']);
  if (low !== undefined && high !== undefined) breaches.push(...ordered(low, high, [...path, 'lowHighPercent']));
  if (e.count !== null && e.of !== null && (e.count < 0 || e.count > e.of))
    breaches.push({ path: [...path, 'count'], expected: `a count from 0 to ${e.of}`, got: String(e.count) });
  if (e.count === null && e.percent === null)
    breaches.push({ path: [...path, 'percent'], expected: 'a count or a percentage', got: 'neither' });
  return breaches;
};

const study = (r: Study): Breach[] => [
  ...(r.time || r.event ? [] : [{ path: ['time'], expected: 'a time, an event or both', got: 'neither' }]),
  ...(r.time ? timeBreaches(r.time) : []),
  ...(r.event ? eventBreaches(r.event, ['event']) : []),
  ...r.events.flatMap((e, i) => eventBreaches(e, ['events', i])),
];

export const breachesOf = (kind: Kind, record: object): Breach[] => [
  ...sourced(record),
  ...figures(record),
  ...(kind === 'injuries' ? injury(record as Injury) : []),
  ...(kind === 'stages' ? stage(record as Stage) : []),
  ...(kind === 'stageSheets' ? stageSheet(record as StageSheet) : []),
  ...(kind === 'cautions' ? caution(record as Caution) : []),
  ...(kind === 'studies' ? study(record as Study) : []),
  ...(kind === 'vessels' ? vesselBreaches(record as Vessel) : []),
  ...(kind === 'vesselPatterns' ? patternBreaches(record as VesselPattern) : []),
  ...(kind === 'factors' ? factorBreaches(record as Factor) : []),
];
