/**
 * More elements, the same foot: stress along every bone and the forces of ties and pads go to one answer as metatarsals are cut into
 * 12, 24, 48 and 96 elements, each from its own sections, and what 24 of them leave is known. Held against 192.
 */
import { describe, expect, test } from 'vitest';
import { RAYS } from '../../../../src/mechanics/foot/landmarks';
import { ELEMENTS, withElements } from '../../../../src/mechanics/foot/nodes';
import { allStations } from '../../../../src/mechanics/foot/recover';
import { type FootSolution, readyFrame, solveFoot } from '../../../../src/mechanics/foot/solve';
import { modelLoadedFoot, PERSON, TOLD, TOLD_CASES, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const { marks, sections } = foot;

const solvedWith = (id: string, elements: number): FootSolution => {
  const loadCase = toldCaseOf(id);
  const placing = withElements(marks, sections, foot.placing(loadCase.pose), elements);
  const ready = readyFrame({ marks, sections, placing }, TOLD, loadCase);
  if ('kind' in ready) throw new Error(`${id}: ${ready.kind}`);
  const solved = solveFoot(ready, loadCase, PERSON.massKg);
  if ('kind' in solved) throw new Error(`${id}: ${solved.kind}`);
  return solved;
};

/** Largest pull and push at every station, of each bone as a share of its largest of both; then ties and pads in body weights. */
const toldBy = (id: string, elements: number): { stress: readonly number[][]; forces: readonly number[] } => {
  const solved = solvedWith(id, elements);
  const rays = allStations(solved, sections, TOLD.wall);
  return {
    stress: RAYS.map((ray) =>
      rays[ray].filter((s) => !s.outsideBeamTheory).flatMap((s) => [s.tensionMPa, s.compressionMPa]),
    ),
    forces: [...solved.tieN, ...solved.padN].map((force) => force / solved.weightN),
  };
};

const FINEST = 192;
const COUNTS = [12, ELEMENTS, 48, 96] as const;

describe.each(TOLD_CASES.map(({ id }) => id))('%s', (id) => {
  const finest = toldBy(id, FINEST);
  const off = COUNTS.map((count) => {
    const { stress, forces } = toldBy(id, count);
    return {
      // The worst station of any bone.
      stress: Math.max(
        ...stress.map((bone, i) => {
          const last = finest.stress[i] as number[];
          expect(bone).toHaveLength(last.length);
          return (
            Math.max(...bone.map((mpa, k) => Math.abs(mpa - (last[k] as number)))) / Math.max(...last.map(Math.abs))
          );
        }),
      ),
      force: Math.max(...forces.map((force, i) => Math.abs(force - (finest.forces[i] as number)))),
    };
  });

  test('each step brings stress and forces nearer to the finest', () => {
    for (let i = 1; i < off.length; i++) {
      expect(off[i]?.stress).toBeLessThan(off[i - 1]?.stress ?? 0);
      expect(off[i]?.force).toBeLessThan(off[i - 1]?.force ?? 0);
    }
  });

  test('the last by more than half, and half of that is still to come at most: the order is above one', () => {
    const [before, last] = off.slice(-2).map(({ stress }) => stress) as [number, number];
    expect(last / before).toBeLessThan(0.5);
  });

  test('24 leave under 0.5 % of the largest stress of any bone, and under 0.2 % of body weight in any tie or pad', () => {
    const at = off[COUNTS.indexOf(ELEMENTS)];
    expect(at?.stress).toBeLessThan(0.005);
    expect(at?.force).toBeLessThan(0.002);
  });
});

test('where the outer bases hold each other does not hang on how many elements there are', () => {
  const stops = (elements: number): readonly number[] =>
    ([4, 5] as const).flatMap((ray) => {
      const { knots, stops: of } = solvedWith('standing', elements).ready.nodes.rays[ray];
      return of.map((stop) => knots[stop]?.sMm ?? Number.NaN);
    });
  const [usual, ...others] = [ELEMENTS, 12, 96].map(stops);
  for (const other of others) expect(other).toEqual(usual);
});
