/** What leaves the project of a person: no megapascal, no newton of one head, no size where only more and less may be told. */
import { describe, expect, it, test } from 'vitest';
import { asTold, type ToldExplanation } from '../../../src/explain/as-told';
import { DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

/** Every key and every text of plain data. */
const walk = (value: unknown, key: string, meet: (key: string, value: unknown) => void): void => {
  meet(key, value);
  if (Array.isArray(value)) for (const each of value) walk(each, key, meet);
  else if (typeof value === 'object' && value !== null)
    for (const [name, each] of Object.entries(value)) walk(each, name, meet);
};
/** Pads by their ids. */
const PAD = /^(head\d|heel|hallux|sesamoid.*|base5)$/;
const found = (data: unknown): readonly string[] => {
  const out: string[] = [];
  walk(data, '', (key, value) => {
    if (/mpa$/i.test(key) || /[a-z0-9]N(mm)?$/.test(key) || key === 'forces' || key === 'field') out.push(key);
    if (key === 'id' && typeof value === 'string' && PAD.test(value)) out.push(value);
    if (key === 'unit' && value === 'MPa') out.push('unit MPa');
  });
  return [...new Set(out)];
};

describe.each(DEMOS)('%s', (demo) => {
  const whole = explained(demoOnDefaultFoot(demo), {}, { bands: 'ratio' });
  const told: ToldExplanation = JSON.parse(JSON.stringify(asTold(whole)));

  it('holds no megapascal, no newton of a part and no pad of its own', () => {
    expect(found(told)).toEqual([]);
    // What is looked for is there before: a frame was solved and has all of them.
    if (whole.loads !== null)
      expect(found(whole)).toEqual(expect.arrayContaining(['tensionMPa', 'referenceMPa', 'mpa', 'forceN', 'head2']));
  });

  it('is the same explanation in everything else', () => {
    const { stations: _s, loads: _l, ...rest } = whole;
    const { stations: _ts, loads: _tl, ...toldRest } = told;
    expect(toldRest).toEqual(JSON.parse(JSON.stringify(rest)));
    expect(told.stations?.bone).toBe(whole.stations?.bone);
  });
});

const handball = explained(demoOnDefaultFoot('handball-zone-2'), {}, { bands: 'all' });

test('where only ranks may be told no size stands anywhere, and stress is a share of the run’s own most', () => {
  const loads = asTold(handball).loads;
  if (loads === null || handball.loads === null) throw new Error('no frame was solved');
  expect([loads.ranksOnly, loads.stressOf, loads.bands?.ratio]).toEqual([true, 'itself', null]);
  expect(loads.contributors?.every(({ ratio, shift }) => ratio === null && shift.mm === null)).toBe(true);
  const peak = asTold(handball).stations?.peakTension;
  expect(peak?.times).toBeCloseTo(1, 12);
  expect(loads.bands?.parts.find(({ id }) => id === 'ground')).toBeDefined();
});

test('where sizes may be told they are multiples and body weights', () => {
  const { loads, stations } = handball;
  if (loads === null || stations === null || loads.bands === null) throw new Error('no frame was solved');
  const sized = asTold({ ...handball, loads: { ...loads, ranksOnly: false, forcesRank: false } }).loads;
  expect(sized?.bands?.ratio).toEqual(loads.bands.ratio);
  const ray = loads.told.tables.indexOf(stations);
  const at = stations.stations.findIndex(({ sMm }) => sMm === stations.peakTension.sMm);
  expect(sized?.tables[ray]?.stations[at]?.tension).toBeCloseTo(
    stations.peakTension.mpa / (loads.referenceMPa[ray] ?? Number.NaN),
    12,
  );
  expect(sized?.bands?.achilles?.told).toBeCloseTo(loads.bands.achilles.told / loads.told.weightN, 12);
});
