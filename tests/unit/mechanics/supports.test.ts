/** Boot, sole and wedge on the frame of the shipped foot: what the same change alone does, by another way round. */
import { describe, expect, test } from 'vitest';
import { shapeOf } from '../../../src/explain/context';
import { activityIn, bandedCase } from '../../../src/explain/loads';
import { type ActivityId, idOf } from '../../../src/ids';
import { contributorsOf, loadDraws, loadedFoot, sectionLoadsOf, supportsOf } from '../../../src/mechanics';
import { content, foot } from '../../tools/explained';
import { freeFrames } from '../../tools/loaded-foot';

const MANY_RUNS_MS = 180_000;
const asTold = { speed: null, tiltDeg: null };
const taskOf = (id: string) => bandedCase(activityIn(content, idOf<ActivityId>(id)), asTold);
const [flat, pushOff] = [taskOf('midstance'), taskOf('walking')];
const person = { massKg: 70, carriedKg: 0, soleBending: 0 };

describe('supports', () => {
  const on = loadedFoot(shapeOf(content), foot, true);
  const draws = loadDraws(freeFrames(4, 1), flat, pushOff, 1);

  test(
    'the outer wedge is the same step as the contributor takes, told alone',
    () => {
      const supports = supportsOf(on, draws, flat, pushOff, person, 5);
      const contributors = contributorsOf(on, loadDraws(freeFrames(1, 1), pushOff, pushOff, 1), pushOff, person, 5);
      const told = (id: string) => contributors.find((c) => c.id === id)?.ratio.told;
      const ratio = (id: string) => supports.find((s) => s.id === id)?.ratio.told;
      expect(supports.map((s) => s.id)).toEqual(['boot', 'stiffSole', 'outerWedge', 'innerWedge']);
      expect(ratio('outerWedge')).toBeCloseTo(told('tilt') ?? Number.NaN, 9);
      // Wedges to either side of level ground do the opposite.
      expect(((ratio('outerWedge') ?? 1) - 1) * ((ratio('innerWedge') ?? 1) - 1)).toBeLessThan(0);
      // With the heel down the long lever of push-off is gone.
      expect(ratio('boot')).toBeLessThan(0.6);
    },
    MANY_RUNS_MS,
  );

  test(
    'a section carries what its own draw puts on it, and nothing is told beyond the member',
    () => {
      const all = sectionLoadsOf(on, draws, pushOff, person, 5, 40);
      expect(all).toHaveLength(draws.length);
      all.forEach((load, i) => {
        expect(load?.cortexMPa).toBe(1000 * (draws[i]?.values.cortexYoung ?? Number.NaN));
        expect(load?.wall).toBe(draws[i]?.values.wall);
      });
      // Pushing off bends the bone so that its sole side is pulled.
      expect(all[0]?.bendingUpDownNmm).toBeGreaterThan(0);
      expect(sectionLoadsOf(on, draws.slice(0, 1), pushOff, person, 5, 0)).toEqual([null]);
    },
    MANY_RUNS_MS,
  );
});
