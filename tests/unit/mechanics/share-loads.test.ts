/** A share of body weight on the frame: nothing but the load is changed, and the more of it, the more the bone is pulled. */
import { describe, expect, it } from 'vitest';
import { loadDraws } from '../../../src/mechanics/foot/bands';
import { shareLoadsOf, underShare } from '../../../src/mechanics/foot/share-loads';
import { bandedCase, freeFrames, modelLoadedFoot, PERSON, toldCaseOf } from '../../tools/loaded-foot';

const foot = modelLoadedFoot();
const pushOff = bandedCase('walking');
const COUNT = 8;
const drawsWith = (id: string) => ({
  banded: bandedCase(id),
  draws: loadDraws(freeFrames(COUNT, 1), bandedCase(id), pushOff, 1),
});
const asked = (shares: readonly number[], sMm: number | null) =>
  shareLoadsOf(foot, {
    standing: drawsWith('standing'),
    flat: drawsWith('midstance'),
    pushOff,
    person: PERSON,
    ray: 5,
    shares,
    sMm,
  });

describe('a share of body weight', () => {
  it('moves every force with the total, and nothing else', () => {
    const walking = toldCaseOf('walking');
    const half = underShare(walking, walking.figures.total / 2).figures;
    for (const [name, value] of Object.entries(walking.figures))
      expect(half[name as keyof typeof half], name).toBeCloseTo(
        ['tilt', 'centre', 'toeShare'].includes(name) ? value : value / 2,
        12,
      );
  });

  const WHOLE = pushOff.figures.total.value;
  const found = asked([0.2, 0.5, WHOLE], null);
  const of = (id: string) => found.filter((each) => each.id === id);

  it('rolling over the ball under the whole force of walking is walking itself', () => {
    const [, , whole] = of('shoe');
    expect(whole?.ratio.told).toBeCloseTo(1, 6);
  });

  it('pulls more with each share, whatever is on the foot', () => {
    for (const id of ['standing', 'shoe', 'boot', 'stiffSole']) {
      const told = of(id).map((each) => each.ratio.told);
      expect(told, id).toHaveLength(3);
      expect(told).toEqual(told.toSorted((a, b) => a - b));
      expect(told[0], id).toBeGreaterThan(0);
    }
  });

  it('is less in a boot than in a soft shoe', () => {
    of('boot').forEach((boot, i) => {
      expect(boot.ratio.told).toBeLessThan(of('shoe')[i]?.ratio.told ?? 0);
    });
  });

  it('speaks of the break where beam theory does, else of the bone', () => {
    // The middle of the shaft is slender; the tip lies behind the joint, where the frame has no member.
    expect(new Set(asked([0.5], 45).map((each) => each.at))).toEqual(new Set(['break']));
    expect(new Set(asked([0.5], 2).map((each) => each.at))).toEqual(new Set(['bone']));
  });
});
