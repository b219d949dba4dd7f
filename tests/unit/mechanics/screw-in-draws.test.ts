import { describe, expect, test } from 'vitest';
import type { SectionLoad } from '../../../src/mechanics';
import { type CutWalls, screwInBone, screwInDraws, yieldMomentOf } from '../../../src/mechanics/fixation';
import { ellipse } from '../../tools/members';

const bone = (canalMm: number) => ({ outline: ellipse(5, 4.5, 90), canals: [ellipse(canalMm, canalMm, 90)] });
const cuts: CutWalls = { thick: bone(2), usual: bone(2.6), thin: bone(3.2) };
const screw = { coreMm: 4, cannulaMm: 0, modulusMPa: 114000 };
const YIELD_MPA = 795;
const load = (wall: number, cortexMPa: number, k = 1): SectionLoad => ({
  axialN: 0,
  bendingUpDownNmm: 2000 * k,
  bendingSidewaysNmm: 900 * k,
  wall,
  cortexMPa,
  outsideBeamTheory: false,
  beyond: false,
});
const draws = (k = 1) => [load(0, 17000, k), load(-0.8, 25000, k), load(0.2, 12000, k), load(0.9, 11000, k)];
const figures = (loads: readonly (SectionLoad | null)[], walls = cuts) => {
  const found = screwInDraws(walls, screw, YIELD_MPA, loads);
  if (found === null) throw new Error('no figures');
  return found;
};

describe('a screw over draws', () => {
  test('says how many of its loads are beyond what may be stated as a size; one without an answer is too', () => {
    const beyond = (one: SectionLoad): SectionLoad => ({ ...one, beyond: true });
    const [told, ...rest] = draws() as [SectionLoad, ...SectionLoad[]];
    expect(figures([told, ...rest])).toMatchObject({ ranks: false, beyond: 0 });
    expect(figures([beyond(told), ...rest])).toMatchObject({ ranks: true, beyond: 0 });
    expect(figures([told, ...rest.slice(0, 2), null]).beyond).toBeCloseTo(1 / 3, 12);
    expect(figures([told, ...rest.map(beyond)]).beyond).toBe(1);
  });

  test('what its draws agree on: the bone is pulled less with it, and alone it bears more', () => {
    expect(figures(draws())).toMatchObject({
      boneLess: { holds: true, share: 1, against: 0 },
      aloneMore: { holds: true, share: 1, against: 0 },
    });
  });

  test('the told draw is the screw in that bone, each draw has its own bone, and the band takes them in', () => {
    const { shareUpDown, boneRatio } = figures(draws());
    const told = screwInBone(
      { outline: cuts.usual.outline, holes: cuts.usual.canals, modulusMPa: 17000 },
      screw,
      [0, 0],
      load(0, 17000),
    );
    expect(shareUpDown.told).toBeCloseTo(told.shareUpDown, 6);
    expect(boneRatio.told).toBeCloseTo(told.bone.tensionMPa / told.boneAlone.tensionMPa, 6);
    expect(shareUpDown.low).toBeLessThan(shareUpDown.told);
    expect(shareUpDown.high).toBeGreaterThan(shareUpDown.told);
    // Soft bone and a thin wall leave more to the screw than stiff bone and a thick wall.
    const stiff = figures([load(0, 17000), load(-0.8, 25000)]).shareUpDown.high;
    expect(figures([load(0, 17000), load(0.9, 11000)]).shareUpDown.low).toBeGreaterThan(stiff);
  });

  test('twice the load is twice the stress and the opening, and the same shares', () => {
    const [one, two] = [figures(draws()), figures(draws(2))];
    expect(two.ofYield.told / one.ofYield.told).toBeCloseTo(2, 9);
    expect(two.aloneOfYield.high / one.aloneOfYield.high).toBeCloseTo(2, 9);
    expect(two.opening.low / one.opening.low).toBeCloseTo(2, 9);
    expect(two.shareSideways).toEqual(one.shareSideways);
    expect(two.openingPerNm).toBe(one.openingPerNm);
  });

  test('alone, it carries the whole bending', () => {
    const moment = Math.hypot(2000, 900);
    expect(figures(draws()).aloneOfYield.told).toBeCloseTo(moment / yieldMomentOf(screw, YIELD_MPA), 12);
    const { opening, openingPerNm } = figures(draws());
    expect(opening.told).toBeCloseTo((openingPerNm * moment) / 1000, 12);
  });

  test('a canal too narrow is drilled: the bone loses what the screw takes the place of', () => {
    const narrow: CutWalls = { thick: bone(1), usual: bone(1.2), thin: bone(1.5) };
    const fitting: CutWalls = { thick: bone(2), usual: bone(2), thin: bone(2) };
    expect(figures(draws(), narrow).shareUpDown.told).toBeCloseTo(figures(draws(), fitting).shareUpDown.told, 3);
  });

  test('without an answer, or a canal, there are no figures', () => {
    expect(screwInDraws(cuts, screw, YIELD_MPA, [null, ...draws()])).toBeNull();
    expect(screwInDraws(cuts, screw, YIELD_MPA, draws().slice(0, 1))).toBeNull();
    const solid = { ...cuts, usual: { ...cuts.usual, canals: [] } };
    expect(screwInDraws(solid, screw, YIELD_MPA, draws())).toBeNull();
    expect(figures([load(0, 17000), null, load(0.9, 11000)]).shareUpDown.told).toBeGreaterThan(0);
  });
});
