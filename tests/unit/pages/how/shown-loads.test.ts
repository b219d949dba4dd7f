/** What question 2 shows of the frame: multiples and never megapascals, names for every part, every figure with its share. */
import { beforeAll, describe, expect, it, test } from 'vitest';
import { factsOf } from '../../../../src/cases';
import { type Explanation, explain } from '../../../../src/explain';
import type { ActivityId } from '../../../../src/ids';
import { rangeText, shareText, spreadShare } from '../../../../src/pages/how/figure-rows';
import { multipleOf, short, signedPercent } from '../../../../src/pages/how/multiples';
import { facetPressure } from '../../../../src/pages/how/PathTable';
import { jointsLeftOut, PART_NAMES, partName, partNameOf } from '../../../../src/pages/how/path-names';
import { cellText, nearest, STATION_COLUMNS } from '../../../../src/pages/how/strips';
import { toldBeside } from '../../../../src/pages/how/told-beside';
import { makeSay } from '../../../../src/pages/words';
import { content, demoOnDefaultFoot, findingsOf, foot } from '../../../tools/explained';

const say = makeSay(content.words);
/** An ensemble is some thousand frames. */
const BANDS_MS = 120_000;

const facts = factsOf(demoOnDefaultFoot('handball-zone-2'));
const told = (activity: ActivityId): Explanation => explain(content, facts, { activity }, foot);

let withBands: Explanation;
beforeAll(() => {
  withBands = explain(content, facts, {}, foot, { bands: 'all' });
}, BANDS_MS);

const loadsOf = (explanation: Explanation) => {
  if (explanation.loads === null) throw new Error('no frame was solved');
  return explanation.loads;
};

describe('multiples', () => {
  test.each([
    [60, 20, 3],
    [-30, 20, -1.5],
    [5, 0.9, null],
    [5, -3, null],
  ])('%d against a reference of %d is %s', (mpa, reference, multiple) => {
    expect(multipleOf(mpa, reference)).toBe(multiple);
  });

  test('zero has no sign, a minus is a minus sign, two figures are enough', () => {
    expect([short(-0.01), short(-3.14), short(0.96), short(114.4)]).toEqual(['0.0', '−3.1', '1.0', '114']);
    expect([signedPercent(1.004), signedPercent(1.26), signedPercent(0.77)]).toEqual(['0', '+26', '−23']);
  });

  it('is 1 for a bone in the reference task itself, at its largest pull', () => {
    const { told: walking, referenceMPa } = loadsOf(told('walking' as ActivityId));
    const column = STATION_COLUMNS.find(({ key }) => key === 'tension');
    for (const [i, table] of walking.tables.entries()) {
      const peak = nearest(table.stations, table.peakTension.sMm);
      const reference = referenceMPa[i] ?? Number.NaN;
      if (peak === undefined || column === undefined || reference < 1) continue;
      expect(cellText(column, peak, reference)).toBe('1.00');
    }
    expect(referenceMPa.filter((mpa) => mpa >= 1).length).toBeGreaterThan(2);
  });

  it('is not read outside beam theory, where forces still are', () => {
    const { told: now, referenceMPa } = loadsOf(withBands);
    const outside = now.tables[4]?.stations.find((station) => station.outsideBeamTheory && station.axialN !== 0);
    if (outside === undefined) throw new Error('no station is outside');
    const read = Object.fromEntries(
      STATION_COLUMNS.map((column) => [column.key, cellText(column, outside, referenceMPa[4] ?? 0)]),
    );
    expect(read).toMatchObject({ tension: null, compression: null });
    expect(read.axial).toMatch(/^−?\d+$/);
  });
});

describe('the way of the load', () => {
  it('has a name in words for every part, in every task, for either reader', () => {
    const unnamed = content.activities.flatMap(({ id }) =>
      (told(id).loads?.told.path ?? []).flatMap((part) =>
        [true, false]
          .map((study) => partName(say, content, study, part))
          .filter((name) => name === part.id || /^part\.|[{}]/.test(name)),
      ),
    );
    expect(unnamed).toEqual([]);
  });

  it('tells rays of ties and tendons, and knows no name that is in no list', () => {
    expect(partNameOf('deep-transverse-3-4')).toEqual({ name: 'deepTransverse', rays: ['3', '4'] });
    expect(partNameOf('head2')).toEqual({ name: 'head', rays: ['2'] });
    const used = loadsOf(withBands).told.path.filter(({ kind }) => kind !== 'joint' && kind !== 'bone');
    for (const { id } of used) expect(PART_NAMES).toContain(partNameOf(id).name);
  });

  it('says which joints are no parts of it: those of the small toes and the sesamoids, and none that is', () => {
    const modelled = loadsOf(withBands).told.joints.map(({ id }) => id);
    const left = jointsLeftOut(content, modelled).map(({ id }) => id);
    expect(left).toEqual(expect.arrayContaining(['metatarsal2-phalanxProximal2', 'metatarsal1-sesamoidMedial']));
    expect(left.filter((id) => modelled.includes(id) || id.startsWith('talus-calcaneus'))).toEqual([]);
  });

  it('gives a force by its facet only where bones are pressed together on a measured one', () => {
    const { told: now } = loadsOf(withBands);
    for (const part of now.path.filter(({ kind }) => kind === 'joint')) {
      const joint = now.joints.find(({ id }) => id === part.id);
      const pressure = facetPressure(now, part);
      const pressed = joint !== undefined && joint.normalN < 0 && joint.facetMm2 !== null;
      expect(pressure !== null).toBe(pressed);
      if (pressure !== null) expect(pressure * (joint?.facetMm2 ?? 0)).toBeCloseTo(-(joint?.normalN ?? 0), 6);
    }
    expect(now.path.filter(({ kind }) => kind !== 'joint').every((part) => facetPressure(now, part) === null)).toBe(
      true,
    );
  });

  it('is balanced: pads together press as the task says, in body weights', () => {
    const { told: now, activity } = loadsOf(withBands);
    const task = content.activities.find(({ id }) => id === activity);
    const pads = now.path.filter(({ kind }) => kind === 'ground').reduce((sum, { forceN }) => sum + forceN, 0);
    // Pads below a hundredth of body weight are left out of the path, ten at most.
    expect(Math.abs(pads / now.weightN - (task?.figures.total.value ?? 0))).toBeLessThan(0.1);
  });
});

describe('figures', () => {
  it('all have a row, and those with a band a share, or that chance alone may show as much', () => {
    const bands = loadsOf(withBands).bands;
    const { activity, reference } = loadsOf(withBands);
    const ofTask = (id: ActivityId, which: string) =>
      Object.entries(content.activities.find((each) => each.id === id)?.figures ?? {}).map(
        ([name, figure]) => [`${which}.${name}`, figure] as const,
      );
    const rows = [
      ...content.frame.map(({ id, figure }) => [id, figure] as const),
      ...ofTask(activity, 'case'),
      ...ofTask(reference, 'reference'),
    ];
    const shown = new Set(rows.map(([id]) => id));
    expect(bands?.sensitivity.map(({ figure }) => figure).filter((id) => !shown.has(id))).toEqual([]);
    const shares = rows.map(([id, figure]) => spreadShare(bands, id, figure));
    expect(rows.filter(([, figure], i) => rangeText(figure) !== '' && shares[i] === null)).toEqual([]);
    const told = shares.filter((share) => typeof share === 'number');
    expect(told.length).toBeGreaterThan(0);
    expect(told.every((share) => share > (bands?.chanceShare ?? 1))).toBe(true);
    // Of some seventy figures nearly all are not told from chance: a column of percents would rank noise.
    expect(shares.filter((share) => share === 'chance').length).toBeGreaterThan(50);
  });

  it('have no share before it is worked out', () => {
    const [first] = content.frame;
    if (first === undefined) throw new Error('no figures');
    expect(spreadShare(null, first.id, first.figure)).toBeNull();
    expect([shareText(null), shareText(0.152)]).toEqual(['–', '15 %']);
  });
});

it('leaves to the long list what has no place of its own, and nothing out', () => {
  const ids = findingsOf(withBands, 'how').map(({ id }) => id);
  const beside = ids.filter((id) => toldBeside(id, 'study'));
  expect(beside).toEqual(expect.arrayContaining(['how.loadRatio', 'how.oneStep', 'how.contributor.tilt.published.1']));
  expect(beside).not.toContain('how.loadPull');
  expect(ids.filter((id) => toldBeside(id, 'patient'))).not.toContain('how.loadSide');
});
