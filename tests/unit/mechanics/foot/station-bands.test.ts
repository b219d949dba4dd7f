/** Every station over the draws: what is told lies in its table, bands are those of the draws, a sign is counted over all that were run. */
import { expect, test } from 'vitest';
import { caseOf, isSolved, loadBands, loadDraws } from '../../../../src/mechanics/foot/bands';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { quantile } from '../../../../src/mechanics/foot/draws';
import { loadsOf } from '../../../../src/mechanics/foot/loads';
import { type RayStation, rayStations } from '../../../../src/mechanics/foot/recover';
import { bandsOfStations, stationRow } from '../../../../src/mechanics/foot/station-bands';
import { signMayBeTold } from '../../../../src/mechanics/foot/types';
import { peakOf } from '../../../../src/mechanics/stations';
import { bandedCase, freeFrames, modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const station = (axialN: number, tensionMPa: number): RayStation =>
  ({
    axialN,
    shearDorsalN: 0,
    shearLateralN: 0,
    bendingUpDownNmm: 0,
    bendingSidewaysNmm: 0,
    torsionNmm: 0,
    tensionMPa,
    compressionMPa: -2 * tensionMPa,
  }) as RayStation;

test('bands of made stations; stress over two pulls; a draw without an answer agrees with no sign', () => {
  const rows = [-10, -8, 4].map((axial, i) => stationRow([station(axial, 6)], 6, 3 + i));
  const [band] = bandsOfStations([12], stationRow([station(-9, 5)], 5, 2), rows, 4);
  expect(band?.sMm).toBe(12);
  expect(band?.forces.axial).toEqual({
    told: -9,
    low: expect.closeTo(-9.6, 9),
    high: expect.closeTo(1.6, 9),
    share: 0.5,
  });
  expect(band?.ofReference.tension).toMatchObject({ told: 2.5, high: expect.closeTo(2 - 0.2 * 0.5, 9), share: 0.75 });
  expect(band?.ofReference.compression.told).toBe(-5);
  expect(band?.ofMost.tension).toEqual({ told: 1, low: 1, high: 1, share: 0.75 });
  // Nothing at all is neither pushed nor pulled, and all draws agree on that.
  expect(band?.forces.torsion).toEqual({ told: 0, low: 0, high: 0, share: 0.75 });
  expect([0.79, 0.8].map((share) => signMayBeTold({ share }))).toEqual([false, true]);
});

const foot = modelLoadedFoot();

test('on the foot: told as in its table of stations, bands and signs as draw by draw', () => {
  const [standing, walking] = [bandedCase('standing'), bandedCase('walking')];
  const draws = loadDraws(freeFrames(12, 5), standing, walking, 5);
  const bands = loadBands(foot, draws, standing, walking, PERSON, 2, { seed: 5, tried: 12 });
  const told = runCase(foot, toldCaseOf('standing'), TOLD, PERSON);
  if (bands === null || 'kind' in told) throw new Error('no answer');
  const { tables } = loadsOf({ ...foot, placing: foot.placing('standing') }, told, toldCaseOf('standing'));
  const table = tables[1];
  expect(bands.stations.map(({ sMm }) => sMm)).toEqual(table?.stations.map(({ sMm }) => sMm));
  const [middle, each] = [16, 1];
  const rows = draws.slice(each).flatMap(({ values }, i) => {
    const [own, base] = (['case', 'reference'] as const).map((which) =>
      runCase(
        foot,
        caseOf(draws[i + each] as (typeof draws)[number], which === 'case' ? standing : walking, which),
        values,
        PERSON,
      ),
    );
    if (own === undefined || base === undefined || !isSolved(own) || !isSolved(base)) return [];
    const of = rayStations(own, foot.sections, 2, values.wall);
    const pulled = peakOf(rayStations(base, foot.sections, 2, values.wall), 'tensionMPa').mpa;
    return peakOf(of, 'tensionMPa').mpa > 0 && pulled > 0 ? [{ of, pulled }] : [];
  });
  expect(rows.length).toBe(draws.length - each - bands.unsolved);
  expect(rows.length).toBeGreaterThan(6);
  const [here, band] = [table?.stations[middle], bands.stations[middle]];
  if (here === undefined || band === undefined) throw new Error('no station');
  const forces = [
    ['axial', 'axialN'],
    ['shearUp', 'shearDorsalN'],
    ['shearSide', 'shearLateralN'],
    ['bendUp', 'bendingUpDownNmm'],
    ['bendSide', 'bendingSidewaysNmm'],
    ['torsion', 'torsionNmm'],
  ] as const;
  for (const [name, key] of forces) {
    const values = rows.map(({ of }) => of[middle]?.[key] ?? Number.NaN);
    expect(band.forces[name].told).toBeCloseTo(here[key], 6);
    expect(band.forces[name].low).toBe(quantile(values, 0.1));
    expect(band.forces[name].high).toBe(quantile(values, 0.9));
    const same = values.filter((value) => Math.sign(value) === Math.sign(here[key])).length;
    expect(band.forces[name].share).toBe(same / (draws.length - each));
  }
  const shares = rows.map(({ of, pulled }) => (of[middle]?.compressionMPa ?? Number.NaN) / pulled);
  expect(band.ofReference.compression.low).toBe(quantile(shares, 0.1));
  expect(bands.stations.some(({ forces: f }) => Object.values(f).some((one) => !signMayBeTold(one)))).toBe(true);
});
