/** Each part of the way of the load over the draws: what is told lies among them, pads are one, and a part may be missing in some. */
import { expect, test } from 'vitest';
import { loadBands, loadDraws } from '../../../../src/mechanics/foot/bands';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { loadsOf } from '../../../../src/mechanics/foot/loads';
import { bandsOfParts } from '../../../../src/mechanics/foot/part-bands';
import type { PathForce } from '../../../../src/mechanics/foot/path-forces';
import { bandedCase, freeFrames, modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const part = (id: string, forceN: number, kind: PathForce['kind'], sense: PathForce['sense']): PathForce => ({
  id,
  forceN,
  kind,
  sense,
});

test('pads are told as one; which way a part acts is held against what is told; a missing part carries nothing', () => {
  const told = [
    part('a', 10, 'bone', 'pressed'),
    part('head1', 3, 'ground', 'pressed'),
    part('head2', 4, 'ground', 'pressed'),
  ];
  const drawn = [
    [part('a', 12, 'bone', 'pressed'), part('head1', 5, 'ground', 'pressed'), part('head2', 4, 'ground', 'pressed')],
    [part('a', 2, 'bone', 'pulled'), part('head1', 7, 'ground', 'pressed')],
    [part('head1', 7, 'ground', 'pressed')],
  ];
  // One more draw found no answer.
  const [bone, ground] = bandsOfParts(told, drawn, 4);
  expect(bone).toEqual({
    id: 'a',
    forceN: { told: 10, low: expect.closeTo(0.4, 9), high: expect.closeTo(10, 9) },
    sense: { holds: true, share: 0.25, against: 0.5 },
  });
  expect(ground).toMatchObject({ id: 'ground', forceN: { told: 7 }, sense: { share: 0.75 } });
});

const foot = modelLoadedFoot();

test('every part that is told has a band, and what is carried besides goes through the pads', () => {
  const person = { ...PERSON, carriedKg: 15 };
  const [walking, banded] = [toldCaseOf('walking'), bandedCase('walking')];
  const solved = runCase(foot, walking, TOLD, person);
  if ('kind' in solved) throw new Error(solved.kind);
  const { path, tibiaN } = loadsOf({ ...foot, placing: foot.placing('heelRaise') }, solved, walking);
  const bands = loadBands(foot, loadDraws(freeFrames(4, 1), banded, banded, 1), banded, banded, person, 5, {
    seed: 1,
    tried: 4,
  });
  const of = (id: string) => bands?.parts.find((each) => each.id === id)?.forceN.told ?? Number.NaN;
  for (const each of path) if (each.kind !== 'ground') expect(of(each.id)).toBeCloseTo(each.forceN, 6);
  expect(of('tibia')).toBeCloseTo(tibiaN, 6);
  const given = walking.figures.total * solved.weightN * (1 + 15 / PERSON.massKg);
  expect(of('ground') / given).toBeCloseTo(1, 2);
});
