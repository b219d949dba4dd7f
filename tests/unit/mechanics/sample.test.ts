/** Stress at a point of the surface, from the station table that the stage is given. */
import { expect, test } from 'vitest';
import { boneAxis, fromBone } from '../../../src/anatomy';
import { contextOf } from '../../../src/explain/context';
import { toldLoads } from '../../../src/explain/loads';
import { type ActivityId, idOf } from '../../../src/ids';
import { stressAt } from '../../../src/mechanics';
import { content, foot } from '../../tools/explained';

const told = toldLoads(contextOf(content, foot), {
  foot: foot.parameters,
  activity: idOf<ActivityId>('side-step-cut'),
  massKg: 75,
  carriedKg: 0,
  soleBending: 0,
  speed: null,
  tiltDeg: null,
});
if (!('loads' in told)) throw new Error('no answer');
const table = told.loads.tables[4];
if (table === undefined) throw new Error('no fifth metatarsal');
const axis = boneAxis(foot, 'metatarsal5');

test('gives the field of the table back at its own stations', () => {
  table.stations.forEach((station, i) => {
    const neighbours = [table.stations[i - 1], station, table.stations[i + 1]];
    if (neighbours.some((s) => s === undefined || s.outsideBeamTheory)) return;
    const [dorsal, lateral] = station.section.centroidMm;
    const at = (up: number, out: number) =>
      stressAt(table, fromBone(axis, station.sMm, dorsal + up, lateral + out), axis);
    expect(at(0, 0)).toBeCloseTo(station.field[0], 6);
    expect(at(2, -1)).toBeCloseTo(station.field[0] + 2 * station.field[1] - station.field[2], 6);
  });
});

test('is null outside beam theory and off the bone', () => {
  const outside = table.stations.find((s) => s.outsideBeamTheory);
  expect(outside).toBeDefined();
  expect(stressAt(table, fromBone(axis, outside?.sMm ?? 0), axis)).toBeNull();
  expect(stressAt(table, fromBone(axis, -5), axis)).toBeNull();
  expect(stressAt(table, fromBone(axis, axis.lengthMm + 5), axis)).toBeNull();
});
