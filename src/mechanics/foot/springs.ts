/**
 * Joints of the frame: springs of six stiffnesses between two parts at one place. Normal and across keep the bones on each other,
 * rotations let them turn. mm, N, rad, foot frame. How far joints give way is the least known of all: see content/frame-figures.yaml.
 */
import { add, cross, normalize, scale, type Vec3 } from '../../units';
import { BASE_JOINTS, type FootMarks, RAYS } from './landmarks';
import { type FrameNodes, lever } from './nodes';
import type { FrameFigures } from './parameter-names';
import type { Placing } from './placing';

export interface Spring {
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly at: Vec3;
  /** Unit, from the first bone to the second. */
  readonly normal: Vec3;
  /** N/mm along the normal and across it. */
  readonly along: number;
  readonly across: number;
  /** N mm/rad about X, Y and Z. */
  readonly turning: Vec3;
}

/** Where a joint lies in the pose, halfway between where its two bones carry it. */
const placed = (
  marks: FootMarks,
  placing: Placing,
  id: string,
): { at: Vec3; normal: Vec3; nodes: readonly [string, string] } => {
  const joint = marks.joints.get(id);
  if (!joint) throw new RangeError(`this foot has no joint ${id}`);
  const [a, b] = [joint.first, joint.second].map((bone) => ({
    at: placing.point({ bone, at: joint.centre }),
    normal: placing.direction(bone, joint.normal),
  })) as [{ at: Vec3; normal: Vec3 }, { at: Vec3; normal: Vec3 }];
  return {
    at: scale(add(a.at, b.at), 0.5),
    normal: normalize(add(a.normal, b.normal)),
    nodes: [joint.first, joint.second],
  };
};

/** Rotations that the figures give in N m/rad, by joint. */
const TURNING_JOINTS = [
  ['talus-navicular', 'talonavicular'],
  ['calcaneus-cuboid', 'calcaneocuboid'],
  ['navicular-cuneiformMedial', 'naviculocuneiform'],
  ['navicular-cuneiformIntermediate', 'naviculocuneiform'],
  ['navicular-cuneiformLateral', 'naviculocuneiform'],
  ['cuneiformMedial-cuneiformIntermediate', 'intercuneiform'],
  ['cuneiformIntermediate-cuneiformLateral', 'intercuneiform'],
  ['cuneiformLateral-cuboid', 'intercuneiform'],
  ['navicular-cuboid', 'naviculocuboid'],
  ...RAYS.map((ray) => [BASE_JOINTS[ray], `tarsometatarsal${ray}`] as const),
] as const;

/** The second base is locked between its neighbours; the other bases lie against each other. They hold without turning. */
const HOLDING_JOINTS = [
  ['cuneiformMedial-metatarsal2', 'keystoneAlong', 'keystoneAcross'],
  ['cuneiformLateral-metatarsal2', 'keystoneAlong', 'keystoneAcross'],
  ['metatarsal2-metatarsal3', 'baseFacetAlong', 'baseFacetAcross'],
  ['metatarsal3-metatarsal4', 'baseFacetAlong', 'baseFacetAcross'],
] as const;

const NMM = 1000;

/** The two facets under the talus turn as one joint, midway by their areas. */
const subtalar = (marks: FootMarks, placing: Placing) => {
  const back = placed(marks, placing, 'talus-calcaneus-posterior');
  const front = placed(marks, placing, 'talus-calcaneus-middleAnterior');
  const area = (id: string): number => {
    const extents = marks.joints.get(id)?.extentsMm ?? [0, 0];
    return extents[0] * extents[1];
  };
  const [w, v] = [area('talus-calcaneus-posterior'), area('talus-calcaneus-middleAnterior')];
  return {
    at: scale(add(scale(back.at, w), scale(front.at, v)), 1 / (w + v)),
    normal: normalize(add(scale(back.normal, w), scale(front.normal, v))),
  };
};

/** Every spring of the frame in a pose, with the figures of one draw. */
export const springsOf = (
  marks: FootMarks,
  nodes: FrameNodes,
  placing: Placing,
  f: FrameFigures,
): readonly Spring[] => {
  const node = (bone: string, at: Vec3): number => nodes.nodeOf({ bone: bone as never, at });
  const ends = (id: string): readonly [number, number] => {
    const joint = marks.joints.get(id);
    if (!joint) throw new RangeError(`this foot has no joint ${id}`);
    return [node(joint.first, joint.centre), node(joint.second, joint.centre)];
  };
  // The common factor is fixed by how far the arch gives way under load; what was measured there is up and down alone.
  const turned = (sagittal: number): Vec3 => [
    NMM * f.rotationFactor * sagittal,
    NMM * f.otherAxes * sagittal,
    NMM * f.otherAxes * sagittal,
  ];
  const springs: Spring[] = [];
  const hold = { along: f.jointAlong, across: f.jointAcross };
  springs.push({
    id: 'talus-calcaneus',
    a: nodes.rigid.talus,
    b: nodes.rigid.calcaneus,
    ...subtalar(marks, placing),
    ...hold,
    turning: scale([f.otherAxes * f.subtalar, f.subtalarAxial, f.subtalar], NMM),
  });
  for (const [id, figure] of TURNING_JOINTS) {
    const { at, normal } = placed(marks, placing, id);
    const [a, b] = ends(id);
    const sagittal = f[figure as keyof FrameFigures];
    springs.push({ id, a, b, at, normal, ...hold, turning: turned(sagittal) });
  }
  for (const [id, along, across] of HOLDING_JOINTS) {
    const { at, normal } = placed(marks, placing, id);
    const [a, b] = ends(id);
    springs.push({ id, a, b, at, normal, along: f[along], across: f[across], turning: [0, 0, 0] });
  }
  const bases = placed(marks, placing, 'metatarsal4-metatarsal5');
  nodes.baseFacet.forEach((place, i) => {
    const share = 1 / nodes.baseFacet.length;
    springs.push({
      id: `metatarsal4-metatarsal5-${i + 1}`,
      a: place.fourth,
      b: place.fifth,
      at: place.at,
      normal: bases.normal,
      along: f.baseFacetAlong * share,
      across: f.baseFacetAcross * share,
      turning: [0, 0, 0],
    });
  });
  const head = marks.rays[1].head;
  springs.push({
    id: 'metatarsal1-phalanxProximal1',
    a: node('metatarsal1', head.at),
    b: nodes.rigid.phalanxProximal1,
    at: placing.point(head),
    normal: placed(marks, placing, 'metatarsal1-phalanxProximal1').normal,
    ...hold,
    turning: [NMM * f.firstToe, NMM * f.firstToeSide, NMM * f.firstToeSide],
  });
  return springs;
};

/** Two unit vectors across a normal. */
export const acrossOf = (normal: Vec3): readonly [Vec3, Vec3] => {
  const helper: Vec3 = Math.abs(normal[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0];
  const u = normalize(cross(normal, helper));
  return [u, cross(normal, u)];
};

export const leversOf = (nodes: FrameNodes, spring: Spring): readonly [Vec3, Vec3] => [
  lever(nodes, spring.a, spring.at),
  lever(nodes, spring.b, spring.at),
];
