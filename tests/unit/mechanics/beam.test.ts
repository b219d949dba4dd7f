import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boneAxis, fromBone } from '../../../src/anatomy';
import { type BeamInputsLike, fifthMetatarsalBeam, type LoadCaseLike, stressAt } from '../../../src/mechanics';
import { mirrored, tubeFoot } from '../../tools/tubes';

const inputs: BeamInputsLike = {
  canalAcrossMm: { value: 4.1, low: 3.2, high: 5 },
  canalUpDownMm: { value: 5.3, low: 4.2, high: 6.4 },
  cortexMetaphysisMm: { value: 1, low: 0.6, high: 1.5 },
  canalAtShare: { value: 0.585 },
  canalFromShare: { value: 0.4, low: 0.33, high: 0.47 },
  canalToShare: { value: 0.8, low: 0.75, high: 0.85 },
  brevisMedial: { value: 0.46 },
  brevisUp: { value: 0.213 },
  brevisBack: { value: 0.862 },
};
const load: LoadCaseLike = {
  headUp: { value: 0.4, low: 0.2, high: 0.8 },
  headMedial: { value: 0.2, low: 0.1, high: 0.4 },
  headAlong: { value: 0.1 },
  brevisPull: { value: 0.2 },
};
const scaled = (k: number): LoadCaseLike => ({
  headUp: { value: 0.4 * k },
  headMedial: { value: 0.2 * k },
  headAlong: { value: 0.1 * k },
  brevisPull: { value: 0.2 * k },
});
const foot = tubeFoot();
const axis = boneAxis(foot, 'metatarsal5');
const table = fifthMetatarsalBeam(foot, inputs, load, 75);

describe('fifthMetatarsalBeam', () => {
  test('stations run up the bone and sections are real ones', () => {
    for (const [i, s] of table.stations.entries()) {
      expect(s.sMm).toBeGreaterThan(table.stations[i - 1]?.sMm ?? 0);
      expect(s.section.areaMm2).toBeGreaterThan(0);
      expect(s.tensionMPa).toBeGreaterThanOrEqual(s.compressionMPa);
    }
  });

  test('a push up and inwards on the head stretches the bone plantar and lateral', () => {
    const peak = table.stations.find((s) => s.sMm === table.peakTension.sMm);
    expect(Math.cos(peak?.tensionAtRad ?? 0)).toBeLessThan(0);
    expect(Math.sin(peak?.tensionAtRad ?? 0)).toBeGreaterThan(0);
  });

  test('stress is proportional to the load and to body mass', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (k) => {
        const more = fifthMetatarsalBeam(foot, inputs, scaled(k), 75);
        const heavier = fifthMetatarsalBeam(foot, inputs, load, 75 * k);
        for (const [i, s] of table.stations.entries()) {
          expect(more.stations[i]?.tensionMPa).toBeCloseTo(s.tensionMPa * k, 6);
          expect(heavier.stations[i]?.compressionMPa).toBeCloseTo(s.compressionMPa * k, 6);
        }
        expect(heavier.peakTension.sMm).toBe(table.peakTension.sMm);
      }),
      { numRuns: 8 },
    );
  });

  test('the left foot carries the same as its mirror image, and twists the same way outwards', () => {
    const left = fifthMetatarsalBeam(mirrored(foot), inputs, load, 75);
    for (const [i, s] of table.stations.entries()) {
      const other = left.stations[i];
      expect(other?.tensionMPa).toBeCloseTo(s.tensionMPa, 3);
      expect(other?.bendingSidewaysNmm).toBeCloseTo(s.bendingSidewaysNmm, 1);
      expect(other?.torsionNmm).toBeCloseTo(s.torsionNmm, 1);
    }
  });

  test('holding the bone further out moves the peak further out', () => {
    const base = fifthMetatarsalBeam(foot, inputs, load, 75, { heldToShare: 0.4 });
    const moved = fifthMetatarsalBeam(foot, inputs, load, 75, { heldToShare: 0.55 });
    expect(moved.peakTension.sMm).toBeGreaterThan(base.peakTension.sMm + 3);
    expect(moved.heldMm[1]).toBeCloseTo(0.55 * axis.lengthMm, 6);
  });

  test('the held stretch, one depth beyond it and the head are outside beam theory', () => {
    for (const s of table.stations) {
      if (s.sMm < table.heldMm[1] + 10) expect(s.outsideBeamTheory).toBe(true);
      if (s.sMm > 66) expect(s.outsideBeamTheory).toBe(true);
    }
    expect(table.stations.some((s) => !s.outsideBeamTheory)).toBe(true);
  });

  test('a stub is outside beam theory everywhere, and its peak says that it is', () => {
    const stub = fifthMetatarsalBeam(foot, inputs, load, 75, { heldToShare: 0.8 });
    expect(stub.stations.every((s) => s.outsideBeamTheory)).toBe(true);
    expect(stub.peakTension.atEdgeOfTheory).toBe(true);
  });

  test('bands hold the value, and a wider canal or thinner cortex opens them upwards', () => {
    for (const peak of [table.peakTension, table.peakCompression]) {
      expect(peak.lowHighMPa[0]).toBeLessThan(peak.mpa);
      expect(peak.lowHighMPa[1]).toBeGreaterThan(peak.mpa);
      expect(peak.sLowHighMm[0]).toBeLessThanOrEqual(peak.sMm);
      expect(peak.sLowHighMm[1]).toBeGreaterThanOrEqual(peak.sMm);
    }
    const wide = fifthMetatarsalBeam(
      foot,
      { ...inputs, canalAcrossMm: { value: 6 }, canalUpDownMm: { value: 7.5 } },
      load,
      75,
    );
    expect(wide.peakTension.mpa).toBeGreaterThan(table.peakTension.mpa);
  });

  test('a mass or a share that no bone can have is an error', () => {
    for (const mass of [0, -70, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => fifthMetatarsalBeam(foot, inputs, load, mass)).toThrow('kg');
    }
    expect(() => fifthMetatarsalBeam(foot, inputs, load, 75, { heldToShare: 1.2 })).toThrow('held');
  });

  test('survives JSON', () => {
    expect(JSON.parse(JSON.stringify(table))).toEqual(table);
  });
});

describe('stressAt', () => {
  test('gives the station table back at its own stations, at the fibre where the extreme is', () => {
    const inside = table.stations.filter((s, i) => !s.outsideBeamTheory && !table.stations[i + 1]?.outsideBeamTheory);
    expect(inside.length).toBeGreaterThan(3);
    for (const s of inside) {
      const [y, z] = s.section.centroidMm;
      const p = fromBone(axis, s.sMm, y + 2, z - 1);
      expect(stressAt(table, p, axis)).toBeCloseTo(s.field[0] + 2 * s.field[1] - s.field[2], 3);
    }
  });

  test('is null outside beam theory and off the bone', () => {
    expect(stressAt(table, fromBone(axis, 10), axis)).toBeNull();
    expect(stressAt(table, fromBone(axis, -1), axis)).toBeNull();
    expect(stressAt(table, fromBone(axis, 75), axis)).toBeNull();
  });

  test('is continuous along the bone', () => {
    const [y, z] = [-5, 2];
    let before = stressAt(table, fromBone(axis, 46, y, z), axis) ?? 0;
    for (let s = 46.1; s < 52; s += 0.1) {
      const here = stressAt(table, fromBone(axis, s, y, z), axis) ?? Number.NaN;
      expect(Math.abs(here - before)).toBeLessThan(2);
      before = here;
    }
  });
});
