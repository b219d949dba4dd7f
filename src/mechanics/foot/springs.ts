/**
 * Joints of the frame: springs of six stiffnesses between two parts at one place. Normal and across keep the bones on each other,
 * rotations let them turn. mm, N, rad, foot frame. How far joints give way is the least known of all: see content/frame-figures.yaml.
 */
import { add, cross, normalize, scale, type Vec3 } from '../../units';
import { unitBlock, type Weighed } from './joint-blocks';
import { BASE_JOINTS, type FootMarks, RAYS } from './landmarks';
import { type FrameNodes, lever } from './nodes';
import type { FrameFigures } from './parameter-names';
import type { Placing } from './placing';

/** A joint in a pose, whatever its stiffness. */
interface JointPlace extends Pick<Weighed, 'alongBlock' | 'acrossBlock'> {
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly at: Vec3;
  /** Unit, from the first bone to the second. */
  readonly normal: Vec3;
}

export interface Spring extends JointPlace, Weighed {}

const jointOf = (marks: FootMarks, id: string): NonNullable<ReturnType<FootMarks['joints']['get']>> => {
  const joint = marks.joints.get(id);
  if (!joint) throw new RangeError(`this foot has no joint ${id}`);
  return joint;
};

/** Where a joint lies in the pose, halfway between where its two bones carry it. */
const placed = (marks: FootMarks, placing: Placing, id: string): { at: Vec3; normal: Vec3 } => {
  const joint = jointOf(marks, id);
  const [a, b] = [joint.first, joint.second].map((bone) => ({
    at: placing.point({ bone, at: joint.centre }),
    normal: placing.direction(bone, joint.normal),
  })) as [{ at: Vec3; normal: Vec3 }, { at: Vec3; normal: Vec3 }];
  return {
    at: scale(add(a.at, b.at), 0.5),
    normal: normalize(add(a.normal, b.normal)),
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

const facetPart = (i: number): string => `metatarsal4-metatarsal5-${i + 1}`;
const SUBTALAR = 'talus-calcaneus';
const FIRST_TOE = 'metatarsal1-phalanxProximal1';

const makePlaces = (marks: FootMarks, nodes: FrameNodes, placing: Placing): ReadonlyMap<string, JointPlace> => {
  const node = (bone: string, at: Vec3): number => nodes.nodeOf({ bone: bone as never, at });
  const places = new Map<string, JointPlace>();
  const put = (id: string, a: number, b: number, at: Vec3, normal: Vec3): void => {
    const [fromA, fromB] = [lever(nodes, a, at), lever(nodes, b, at)];
    const alongBlock = unitBlock([normal], fromA, fromB);
    places.set(id, { id, a, b, at, normal, alongBlock, acrossBlock: unitBlock(acrossOf(normal), fromA, fromB) });
  };
  const { at, normal } = subtalar(marks, placing);
  put(SUBTALAR, nodes.rigid.talus, nodes.rigid.calcaneus, at, normal);
  for (const [id] of [...TURNING_JOINTS, ...HOLDING_JOINTS]) {
    const { first, second, centre } = jointOf(marks, id);
    const joint = placed(marks, placing, id);
    put(id, node(first, centre), node(second, centre), joint.at, joint.normal);
  }
  const bases = placed(marks, placing, 'metatarsal4-metatarsal5');
  nodes.baseFacet.forEach(({ at: place, fourth, fifth }, i) => {
    put(facetPart(i), fourth, fifth, place, bases.normal);
  });
  const { head } = marks.rays[1];
  const toe = placed(marks, placing, FIRST_TOE);
  put(FIRST_TOE, node('metatarsal1', head.at), nodes.rigid.phalanxProximal1, placing.point(head), toe.normal);
  return places;
};

const keptPlaces = new WeakMap<FrameNodes, ReadonlyMap<string, JointPlace>>();

/** The same for every draw, so kept with the nodes, which are kept with the placing. */
const placesOf = (marks: FootMarks, nodes: FrameNodes, placing: Placing): ReadonlyMap<string, JointPlace> => {
  const places = keptPlaces.get(nodes) ?? makePlaces(marks, nodes, placing);
  keptPlaces.set(nodes, places);
  return places;
};

const NO_TURNING: Vec3 = [0, 0, 0];

/** Every spring of the frame in a pose, with the figures of one draw. */
export const springsOf = (
  marks: FootMarks,
  nodes: FrameNodes,
  placing: Placing,
  f: FrameFigures,
): readonly Spring[] => {
  const places = placesOf(marks, nodes, placing);
  // Field by field: spread over an object this long it took a tenth of a frame's time.
  const spring = (id: string, along: number, across: number, turning: Vec3): Spring => {
    const { a, b, at, normal, alongBlock, acrossBlock } = places.get(id) as JointPlace;
    return { id, a, b, at, normal, alongBlock, acrossBlock, along, across, turning };
  };
  const hold = (id: string, turning: Vec3): Spring => spring(id, f.jointAlong, f.jointAcross, turning);
  // The common factor is fixed by how far the arch gives way under load; what was measured there is up and down alone.
  const turned = (sagittal: number): Vec3 => [
    NMM * f.rotationFactor * sagittal,
    NMM * f.otherAxes * sagittal,
    NMM * f.otherAxes * sagittal,
  ];
  const share = 1 / nodes.baseFacet.length;
  return [
    hold(SUBTALAR, scale([f.otherAxes * f.subtalar, f.subtalarAxial, f.subtalar], NMM)),
    ...TURNING_JOINTS.map(([id, figure]) => hold(id, turned(f[figure]))),
    ...HOLDING_JOINTS.map(([id, along, across]) => spring(id, f[along], f[across], NO_TURNING)),
    ...nodes.baseFacet.map((_, i) =>
      spring(facetPart(i), f.baseFacetAlong * share, f.baseFacetAcross * share, NO_TURNING),
    ),
    hold(FIRST_TOE, [NMM * f.firstToe, NMM * f.firstToeSide, NMM * f.firstToeSide]),
  ];
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
