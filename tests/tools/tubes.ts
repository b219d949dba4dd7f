/** Meshes with known answers: closed tapered elliptic bars, and a one-bone foot made of such a bar. mm, foot frame. */
import { DEFAULT_FOOT } from '../../src/anatomy/parameters';
import type { Foot, Joint, Mesh, Reference } from '../../src/anatomy/types';
import { readShape } from '../../src/cli/read-shape';
import { type BoneId, idOf, type JointId } from '../../src/ids';
import type { Vec3 } from '../../src/units';

export interface Bar {
  readonly lengthMm: number;
  /** Semi-axes [across (X), up-down (Y)] at a share of the length. */
  readonly semi: (share: number) => readonly [x: number, y: number];
  /** Centre [x, y] of the section at a share of the length. */
  readonly centre?: (share: number) => readonly [x: number, y: number];
  readonly around?: number;
  readonly along?: number;
  readonly from?: Vec3;
}

/** Bar along +Z from `from`, flat ends, vertices on the ellipses: its polygons lie inside the true ellipse. */
export const barMesh = ({
  lengthMm,
  semi,
  centre = () => [0, 0],
  around = 64,
  along = 40,
  from = [0, 0, 0],
}: Bar): Mesh => {
  const positions: number[] = [];
  for (let j = 0; j <= along; j++) {
    const share = j / along;
    const [a, b] = semi(share);
    const [cx, cy] = centre(share);
    for (let i = 0; i < around; i++) {
      const t = (2 * Math.PI * i) / around;
      positions.push(from[0] + cx + a * Math.cos(t), from[1] + cy + b * Math.sin(t), from[2] + share * lengthMm);
    }
  }
  const indices: number[] = [];
  const at = (j: number, i: number) => j * around + (i % around);
  for (let j = 0; j < along; j++)
    for (let i = 0; i < around; i++) {
      indices.push(at(j, i), at(j, i + 1), at(j + 1, i + 1), at(j, i), at(j + 1, i + 1), at(j + 1, i));
    }
  for (const [j, share] of [
    [0, 0],
    [along, 1],
  ] as const) {
    const [cx, cy] = centre(share);
    const middle = positions.length / 3;
    positions.push(from[0] + cx, from[1] + cy, from[2] + share * lengthMm);
    for (let i = 0; i < around; i++) {
      if (j === 0) indices.push(middle, at(j, i + 1), at(j, i));
      else indices.push(middle, at(j, i), at(j, i + 1));
    }
  }
  return { positions: Float32Array.from(positions), indices: Uint32Array.from(indices) };
};

const joint = (
  first: BoneId,
  second: BoneId,
  centre: Vec3,
  normal: Vec3,
  major: Vec3,
  extents: [number, number],
): Joint => ({
  id: idOf<JointId>(`${first}-${second}`),
  first,
  second,
  centre,
  normal,
  major,
  extentsMm: extents,
  radiiMm: [0, 0],
});

const { regions, lookAlikes, strands } = readShape();
/** A foot whose bones lie as they are told on the reference foot. */
export const UNMOVED: Reference = { motions: new Map(), scale: 1, regions, lookAlikes, strands };

/**
 * A foot with a fifth metatarsal only: an elliptic bar 70 long, 12 x 13 at the base, 9 x 11 at two thirds, 12 x 13 at the head,
 * with the facet to the fourth metatarsal from 18 to 30 mm (bone faces bone to 38) and that to the cuboid from 6 to 16 mm.
 */
export const tubeFoot = (bar: Partial<Bar> = {}): Foot => {
  const semi = (u: number): readonly [number, number] => {
    const k = 1 + 0.6 * (u - 0.62) ** 2 * 4;
    return [4.5 * k, 5.5 * k];
  };
  const mesh = barMesh({ lengthMm: 70, semi, from: [-35, 12, 75], ...bar });
  const joints = [
    joint('metatarsal4', 'metatarsal5', [-30, 12, 99], [-1, 0, 0], [0, 0, 1], [12, 10]),
    joint('cuboid', 'metatarsal5', [-30, 12, 86], [-1, 0, 0], [0, 0, 1], [10, 10]),
    joint('metatarsal5', 'phalanxProximal5', [-35, 12, 145], [0, 0, 1], [1, 0, 0], [9, 9]),
  ];
  return {
    parameters: { ...DEFAULT_FOOT, heelToSecondHeadMm: 167 },
    pose: 'standing',
    side: 'right',
    level: 'display',
    bones: new Map([['metatarsal5', mesh]]),
    leg: new Map(),
    joints: new Map(joints.map((j) => [j.id, j])),
    outline: { positions: new Float32Array(), indices: new Uint32Array() },
    reference: UNMOVED,
  };
};

/** The mirror image of a foot, for tests that hold both sides against each other. */
export const mirrored = (foot: Foot): Foot => {
  const flip = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
  const mesh = (m: Mesh): Mesh => ({
    positions: m.positions.map((v, i) => (i % 3 === 0 ? -v : v)),
    indices: m.indices.map((_, i) => m.indices[i % 3 === 1 ? i + 1 : i % 3 === 2 ? i - 1 : i] ?? 0),
  });
  return {
    ...foot,
    side: foot.side === 'right' ? 'left' : 'right',
    bones: new Map([...foot.bones].map(([id, m]) => [id, mesh(m)])),
    joints: new Map(
      [...foot.joints].map(([id, j]) => [
        id,
        { ...j, centre: flip(j.centre), normal: flip(j.normal), major: flip(j.major) },
      ]),
    ),
  };
};
