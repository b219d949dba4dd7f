/**
 * The arch as two struts and a tie, through the frame solver; how bending the first toe back winds the fascia up, through the row of a
 * tie of the foot's frame; what the fascia may carry before its measured strength. Closed forms: nothing here says anything about feet.
 */

import { tieRow } from '../../src/mechanics/foot/assemble';
import { FASCIA_STRENGTH_N } from '../../src/mechanics/foot/loads';
import type { FrameNodes } from '../../src/mechanics/foot/nodes';
import type { FrameModel } from '../../src/mechanics/frame';
import { radians, STANDARD_GRAVITY, type Vec3 } from '../../src/units';
import { against } from '../tools/against';
import { ALL, solved } from '../tools/frames';

const TIED = {
  source: 'Tied arch of two struts (statics)',
  where: 'heel P (S - a) / S, forefoot P a / S, tie P a (S - a) / (S h); P 683, S 180, a 60, tie 203.7 per mm',
  how: 'common practice',
} as const;
const [LOAD_N, SPAN_MM, AT_MM, TIE_N_MM] = [683, 180, 60, 203.7];
const STIFF = { A: 1e5, Iy: 1e5, Iz: 1e5, J: 1e5 };

/** Hinged at heel, top and forefoot; the tie is a bar whose axial spring gives way. */
const arch = (heightMm: number) => {
  const bar = (id: string, i: string, j: string) => ({ id, i, j, section: 's', material: 'm' });
  const hinge = (end: 'i' | 'j') => ({ end, dof: 'rz' as const, k: 0 });
  const model: FrameModel = {
    nodes: [
      { id: 'heel', xyz: [0, 0, 0] },
      { id: 'top', xyz: [AT_MM, heightMm, 0] },
      { id: 'forefoot', xyz: [SPAN_MM, 0, 0] },
    ],
    materials: { m: { E: 2e5, G: 8e4 } },
    sections: { s: STIFF },
    members: [
      { ...bar('back', 'heel', 'top'), orientation: [0, 1, 0] },
      { ...bar('front', 'top', 'forefoot'), orientation: [0, 1, 0], endSprings: [hinge('i')] },
      {
        ...bar('tie', 'heel', 'forefoot'),
        orientation: [0, 1, 0],
        endSprings: [hinge('i'), hinge('j'), { end: 'j', dof: 'ux', k: TIE_N_MM }],
      },
    ],
    supports: [
      { node: 'heel', fixed: ALL.filter((dof) => dof !== 'rz') },
      { node: 'top', fixed: ['uz', 'rx', 'ry'] },
      { node: 'forefoot', fixed: ['uy', 'uz', 'rx', 'ry'] },
    ],
    nodalLoads: [{ node: 'top', F: [0, -LOAD_N, 0, 0, 0, 0] }],
  };
  const { reactions, memberEndForces, displacements } = solved(model);
  return {
    heelN: reactions.heel?.[1] ?? Number.NaN,
    forefootN: reactions.forefoot?.[1] ?? Number.NaN,
    tieN: memberEndForces.tie?.[6] ?? Number.NaN,
    stretchMm: displacements.forefoot?.[0] ?? Number.NaN,
  };
};
const low = arch(40);
const WHY = 'half a unit of the last digit; struts 1e6 times as stiff as the tie';
for (const [name, expected, got, tolerance] of [
  ['40 high: tie, N', 683, low.tieN, 0.05],
  ['40 high: heel, N', 455.33, low.heelN, 0.005],
  ['40 high: forefoot, N', 227.67, low.forefootN, 0.005],
  ['40 high: stretch of the tie, mm', 3.353, low.stretchMm, 5e-4],
  ['20 high: tie, N', 1366, arch(20).tieN, 0.05],
  ['60 high: tie, N', 455.33, arch(60).tieN, 0.005],
] as const)
  against(TIED, `tied arch ${name}`, () => ({ expected, got, tolerance, why: WHY }));

const WINDLASS = {
  source: 'Cord over a pulley: radius times turn (kinematics)',
  where: 'radius 10 mm; first toe bent back 52 and 64 degrees in slow and fast walking',
  how: 'common practice',
} as const;
/** Heel, underside of the head, toe: all level, the joint's axis so far above. Toes along +Z, bending back turns about -X. */
const RADIUS_MM = 10;
const places: readonly Vec3[] = [
  [0, 0, -150],
  [0, 0, 0],
  [0, 0, 20],
];
const AXIS: Vec3 = [0, RADIUS_MM, 0];
const nodes = { at: [places[0], AXIS, AXIS] } as Pick<FrameNodes, 'at'> as FrameNodes;
const row = tieRow(18, nodes, {
  id: 'slip',
  path: places.map((at, node) => ({ node, at })),
  stiffness: 1,
  slackMm: 0,
});
for (const [deg, expected] of [
  [52, 9.08],
  [64, 11.17],
] as const)
  against(WINDLASS, `slip under a head of radius 10 mm, toe bent back ${deg} degrees: taken up, mm`, () => ({
    expected,
    got: -radians(deg) * (row[15] as number),
    tolerance: 0.005,
    why: 'half a unit of the last digit',
  }));

const MARGIN = {
  source:
    'Kitaoka 1994, over what models of walking put on the fascia (Erdemir 2004: 0.96 body weights; another model 1.5)',
  where: 'strength 1189 N (abstract) over so many body weights of 72 kg',
  how: 'abstract',
  given: true,
} as const;
for (const [weights, expected] of [
  [0.96, 1.75],
  [1.5, 1.12],
] as const)
  against(MARGIN, `strength of the fascia over ${weights} body weights of 72 kg`, () => ({
    expected,
    got: FASCIA_STRENGTH_N / (weights * 72 * STANDARD_GRAVITY),
    tolerance: 0.005,
    why: 'half a unit of the last digit',
  }));
