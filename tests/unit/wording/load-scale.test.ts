/** Multiples of walking on the bone, sums of the way of the load, and both in words. */
import { describe, expect, it } from 'vitest';
import type { Explanation } from '../../../src/explain/types';
import { type ActivityId, idOf, READERS } from '../../../src/ids';
import { describePicture } from '../../../src/wording';
import { BANDS, mainLoadsOf, walkingScale, widestOf, widthFor } from '../../../src/wording/load-scale';
import { content, DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';
import { readingOf } from '../../tools/reading-grade';

const handball = explained(demoOnDefaultFoot('handball-zone-2'));
const { loads, stations } = handball;
if (loads === null || stations === null) throw new Error('the demo has no loads');

/** A cut is beyond the theory, so only its order is told; of walking sizes are told too. */
const walking = explained(demoOnDefaultFoot('handball-zone-2'), { activity: idOf<ActivityId>('walking') });

/** The same with peaks so many times those of walking. */
const timesOf = (times: number): Pick<Explanation, 'stations' | 'loads'> => {
  const reference = loads.referenceMPa[4] ?? 0;
  const peak = { ...stations.peakTension, mpa: times * reference };
  return { loads, stations: { ...stations, peakTension: peak, peakCompression: { ...peak, mpa: -0.5 * peak.mpa } } };
};

describe('the scale of the bands', () => {
  it('holds the largest and gives at least four of its six steps to what is there', () => {
    for (let times = 0.2; times < 40; times += 0.13) {
      const scale = walkingScale(timesOf(times));
      expect(scale?.topTimes ?? 0, String(times)).toBeGreaterThanOrEqual(times - 1e-6);
      expect(times / (scale?.topTimes ?? Number.POSITIVE_INFINITY), String(times)).toBeGreaterThan(
        times < 0.5 ? 0.3 : 4 / 6,
      );
    }
  });

  it('is in multiples of this bone’s own pull in walking', () => {
    const scale = walkingScale(timesOf(3));
    expect(scale?.topTimes).toBeCloseTo(3, 9);
    expect(scale?.topMPa).toBeCloseTo(3 * (loads.referenceMPa[4] ?? 0), 6);
    expect(scale?.stepTimes).toBeCloseTo(3 / BANDS, 9);
  });

  it('counts pressing as well', () => {
    const pressed = timesOf(1);
    if (pressed.stations === null) throw new Error('no stations');
    const mpa = -6 * (loads.referenceMPa[4] ?? 0);
    const more = { ...pressed.stations, peakCompression: { ...pressed.stations.peakCompression, mpa } };
    expect(walkingScale({ loads, stations: more })?.topTimes).toBeCloseTo(6, 9);
  });

  it('is none where walking does not pull the bone: nothing is a multiple of that', () => {
    const none = { ...loads, referenceMPa: [0, 0, 0, 0, -2.5] };
    expect(walkingScale({ stations, loads: none })).toBeNull();
    expect(walkingScale({ stations: null, loads })).toBeNull();
    expect(walkingScale({ stations, loads: null })).toBeNull();
  });
});

describe('the sums of the way', () => {
  it('are those of the frame', () => {
    const sums = mainLoadsOf(loads);
    expect(sums.tibiaN).toBeCloseTo(loads.told.tibiaN, 6);
    expect(sums.achillesN).toBeCloseTo(Math.abs(loads.told.achillesN), 6);
    // Slips that carry under a hundredth of the body's weight are no parts of the way.
    expect(Math.abs(sums.fasciaN - loads.told.fasciaN)).toBeLessThan(0.05 * loads.told.weightN);
  });

  it('leave out nothing the ground presses', () => {
    const { forefootN, outerEdgeN, heelN } = mainLoadsOf(loads);
    const all = loads.told.path.filter(({ kind }) => kind === 'ground').reduce((sum, { forceN }) => sum + forceN, 0);
    expect(forefootN + outerEdgeN + heelN).toBeCloseTo(all, 6);
  });

  it('twice as wide is four times the force', () => {
    const widest = widestOf(loads);
    expect(widthFor(widest, widest)).toBe(1);
    expect(widthFor(widest / 4, widest)).toBe(0.5);
  });
});

describe('the picture of the load in words', () => {
  const long = (reader: (typeof READERS)[number], explanation: Explanation = handball) =>
    describePicture(content, explanation, 'how', reader).long;

  it('tells the way from shin to ground in body weights', () => {
    const told = walking.loads?.told;
    if (told === undefined) throw new Error('walking has loads');
    const times = (newtons: number) => `${Math.round((10 * newtons) / told.weightN) / 10} times body weight`;
    expect(long('patient', walking)).toContain(`The shin presses the ankle bone with ${times(told.tibiaN)}`);
    expect(long('patient', walking)).toContain(`heel cord pulls the heel up with ${times(told.achillesN)}`);
    expect(long('patient', walking)).toContain('The ground presses up:');
    expect(long('patient', walking)).toMatch(/blocks are pressed, .*threads are pulled/);
  });

  it('tells newtons in study only, and a stress of a person to nobody', () => {
    expect(long('study', walking)).toContain(`${Math.round(walking.loads?.told.tibiaN ?? Number.NaN)} N (`);
    expect(long('patient', walking)).not.toMatch(/\d N\b/);
    expect(long('study')).not.toMatch(/\d N\b|body weight/);
    for (const reader of READERS) {
      expect(long(reader)).not.toMatch(/MPa/i);
      // A cut is beyond the theory: more and less, no size. Walking is not.
      expect(long(reader)).toMatch(/from none to the most/);
      expect(long(reader, walking)).toMatch(/from 0 to [\d.]+ times the largest pull of walking/);
    }
  });

  it('says no way and no bands where no model speaks', () => {
    const spiral = explained(demoOnDefaultFoot('dancer-spiral'));
    expect(spiral.loads).toBeNull();
    expect(long('patient', spiral)).not.toMatch(/body weight|way of the load/);
    expect(long('patient', spiral)).toMatch(/No stress is drawn/);
  });

  it('reads at grade eight or below for a patient', () => {
    for (const demo of DEMOS) {
      const text = long('patient', explained(demoOnDefaultFoot(demo)));
      expect(readingOf(text).grade, text).toBeLessThanOrEqual(8);
    }
  });
});
