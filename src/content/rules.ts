/** What a record must hold to beyond its form: figures that can be true, and a source wherever one is claimed. */
import type { Kind } from './kinds';
import { evidenceIn } from './references';
import type { Figure, Injury, Study } from './schema';
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

const injury = (r: Injury): Breach[] =>
  r.stages.flatMap((s, i) =>
    s.weeksFrom !== null && s.weeksTo !== null ? ordered(s.weeksFrom, s.weeksTo, ['stages', i, 'weeksFrom']) : [],
  );

const percent = (value: number | null, path: Path): Breach[] =>
  value === null || (value >= 0 && value <= 100)
    ? []
    : [{ path, expected: 'a percentage 0 to 100', got: String(value) }];

const study = (r: Study): Breach[] => {
  const breaches: Breach[] = [];
  if (!r.time && !r.event) breaches.push({ path: ['time'], expected: 'a time, an event or both', got: 'neither' });
  const t = r.time;
  if (t && t.centreWeeks <= 0) {
    breaches.push({ path: ['time', 'centreWeeks'], expected: 'more than 0 weeks', got: String(t.centreWeeks) });
  }
  const [lo, hi] = t?.rangeWeeks ?? [];
  if (t && lo !== undefined && hi !== undefined) {
    breaches.push(...ordered(lo, hi, ['time', 'rangeWeeks']));
    if (lo <= hi && (t.centreWeeks < lo || t.centreWeeks > hi)) {
      breaches.push({
        path: ['time', 'centreWeeks'],
        expected: `a centre inside ${lo} to ${hi}`,
        got: String(t.centreWeeks),
      });
    }
  }
  const e = r.event;
  if (!e) return breaches;
  const [eLo, eHi] = e.lowHighPercent ?? [];
  breaches.push(...percent(e.percent, ['event', 'percent']));
  if (eLo !== undefined && eHi !== undefined) breaches.push(...ordered(eLo, eHi, ['event', 'lowHighPercent']));
  if (e.count !== null && e.of !== null && (e.count < 0 || e.count > e.of)) {
    breaches.push({ path: ['event', 'count'], expected: `a count from 0 to ${e.of}`, got: String(e.count) });
  }
  if (e.count === null && e.percent === null) {
    breaches.push({ path: ['event', 'percent'], expected: 'a count or a percentage', got: 'neither' });
  }
  return breaches;
};

export const breachesOf = (kind: Kind, record: object): Breach[] => [
  ...sourced(record),
  ...figures(record),
  ...(kind === 'injuries' ? injury(record as Injury) : []),
  ...(kind === 'studies' ? study(record as Study) : []),
];
