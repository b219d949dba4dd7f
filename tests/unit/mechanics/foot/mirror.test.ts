/** A left foot, its marks mirrored by hand, in a mirrored task: the mirrored answer. A wrong sign anywhere across the foot shows here. */
import { expect, test } from 'vitest';
import type { BoneAxis } from '../../../../src/anatomy/types';
import type { FootMarks, OnBone, RayMarks } from '../../../../src/mechanics/foot/landmarks';
import type { LoadCase } from '../../../../src/mechanics/foot/load-case';
import type { Placing } from '../../../../src/mechanics/foot/placing';
import { allStations, type RayStation } from '../../../../src/mechanics/foot/recover';
import { type FootSolution, type FrameOf, readyFrame, solveFoot } from '../../../../src/mechanics/foot/solve';
import type { Vec3 } from '../../../../src/units';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const other = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
const otherPlace = ({ bone, at }: OnBone): OnBone => ({ bone, at: other(at) });
const mapped = <K extends string, A, B>(record: Readonly<Record<K, A>>, by: (value: A) => B): Record<K, B> =>
  Object.fromEntries(Object.entries(record).map(([key, value]) => [key, by(value as A)])) as Record<K, B>;
const otherAxis = (axis: BoneAxis): BoneAxis => ({
  ...axis,
  origin: other(axis.origin),
  axis: other(axis.axis),
  dorsal: other(axis.dorsal),
  lateral: other(axis.lateral),
});
const otherRay = (ray: RayMarks): RayMarks => ({
  bone: ray.bone,
  axis: otherAxis(ray.axis),
  base: otherPlace(ray.base),
  head: otherPlace(ray.head),
  plantarBase: otherPlace(ray.plantarBase),
  plantarHead: otherPlace(ray.plantarHead),
  toeBase: otherPlace(ray.toeBase),
});
const { marks } = foot;
const leftMarks: FootMarks = {
  joints: new Map(
    [...marks.joints].map(([id, j]) => [
      id,
      { ...j, centre: other(j.centre), normal: other(j.normal), major: other(j.major) },
    ]),
  ),
  rays: {
    1: otherRay(marks.rays[1]),
    2: otherRay(marks.rays[2]),
    3: otherRay(marks.rays[3]),
    4: otherRay(marks.rays[4]),
    5: otherRay(marks.rays[5]),
  },
  ankle: otherPlace(marks.ankle),
  middles: mapped(marks.middles, other),
  places: mapped(marks.places, otherPlace),
  pads: mapped(marks.pads, otherPlace),
};
const leftPlacing = (right: Placing): Placing => ({
  point: (place) => other(right.point(otherPlace(place))),
  standing: (place) => other(right.standing(otherPlace(place))),
  direction: (bone, d) => other(right.direction(bone, other(d))),
});

const solve = (frame: FrameOf, loadCase: LoadCase): FootSolution => {
  const ready = readyFrame(frame, TOLD, loadCase);
  const solved = 'kind' in ready ? ready : solveFoot(ready, loadCase, PERSON.massKg);
  if ('kind' in solved) throw new Error(solved.kind);
  return solved;
};

test.each(['side-step-cut', 'running', 'inversion-roll-pointed-foot', 'landing-outer-edge'])('%s', (id) => {
  const told = toldCaseOf(id);
  const loadCase = { ...told, figures: { ...told.figures, twist: 6 } };
  const turned = {
    ...told,
    figures: { ...told.figures, twist: -6, tilt: -told.figures.tilt, sideways: -told.figures.sideways },
  };
  const placing = foot.placing(told.pose);
  const right = solve({ ...foot, placing }, loadCase);
  const left = solve({ marks: leftMarks, sections: foot.sections, placing: leftPlacing(placing) }, turned);
  const most = Math.max(...right.displacement.map(Math.abs));
  // Translations change sign along X; turns, the other way round, about Y and Z.
  const signs = [-1, 1, 1, 1, -1, -1];
  right.displacement.forEach((value, i) => {
    expect(Math.abs((left.displacement[i] as number) - (signs[i % 6] as number) * value) / most).toBeLessThan(1e-9);
  });
  for (const part of ['tieN', 'padN'] as const)
    right[part].forEach((force, i) => {
      expect(Math.abs((left[part][i] as number) - force) / right.weightN).toBeLessThan(1e-9);
    });
  const [a, b] = [allStations(right, foot.sections, 0), allStations(left, foot.sections, 0)];
  for (const ray of [1, 2, 3, 4, 5] as const)
    a[ray].forEach((station, i) => {
      const mirrored = b[ray][i] as RayStation;
      for (const force of ['axialN', 'shearDorsalN', 'shearLateralN'] as const)
        expect(Math.abs(mirrored[force] - station[force]) / right.weightN).toBeLessThan(1e-9);
      // Along, dorsal, lateral are right-handed on a right foot alone, on which all is computed: moments turn round in the mirror.
      for (const moment of ['bendingUpDownNmm', 'bendingSidewaysNmm', 'torsionNmm'] as const)
        expect(Math.abs(mirrored[moment] + station[moment]) / (100 * right.weightN)).toBeLessThan(1e-9);
    });
});
