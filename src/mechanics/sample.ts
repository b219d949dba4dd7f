/** Stress at any point of the bone from its station table: what the stage colours. MPa, tension +. */
import { stationOf } from '../anatomy';
import type { BoneAxis } from '../anatomy/types';
import type { Vec3 } from '../units';
import type { StationTable } from './types';

/**
 * Stress at p (foot frame), between stations by linear interpolation of the field and its centroid. Null beyond the stations and
 * where beam theory does not hold: drawn hatched, never coloured. No allocation: it runs once a vertex.
 */
export const stressAt = (table: StationTable, p: Vec3, axis: BoneAxis): number | null => {
  const { stations } = table;
  const s = stationOf(axis, p);
  let low = 0;
  let high = stations.length - 1;
  const first = stations[low];
  const last = stations[high];
  if (!first || !last || s < first.sMm || s > last.sMm) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((stations[middle]?.sMm ?? 0) <= s) low = middle;
    else high = middle;
  }
  const a = stations[low];
  const b = stations[high];
  if (!a || !b || a.outsideBeamTheory || b.outsideBeamTheory) return null;
  const t = b.sMm === a.sMm ? 0 : (s - a.sMm) / (b.sMm - a.sMm);
  const [dx, dy, dz] = [p[0] - axis.origin[0], p[1] - axis.origin[1], p[2] - axis.origin[2]];
  const ya = dx * axis.dorsal[0] + dy * axis.dorsal[1] + dz * axis.dorsal[2];
  const za = dx * axis.lateral[0] + dy * axis.lateral[1] + dz * axis.lateral[2];
  const [ca, cb] = [a.section.centroidMm, b.section.centroidMm];
  const y = ya - (ca[0] + t * (cb[0] - ca[0]));
  const z = za - (ca[1] + t * (cb[1] - ca[1]));
  const [fa, fb] = [a.field, b.field];
  return fa[0] + t * (fb[0] - fa[0]) + (fa[1] + t * (fb[1] - fa[1])) * y + (fa[2] + t * (fb[2] - fa[2])) * z;
};
