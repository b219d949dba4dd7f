/**
 * Every bone at both levels as a good surface: closed, in one piece, outward, nowhere through itself, no slivers; its volume and
 * area the same when the rays and triangles of an outside library (three) measure them; a left bone the mirror of the right one.
 */
import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  MeshBasicMaterial,
  Raycaster,
  Mesh as ThreeMesh,
  Triangle,
  Vector3,
} from 'three';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  eulerCharacteristic,
  type Foot,
  type FootForm,
  hOfFootLength,
  type Level,
  type Mesh,
  meshBounds,
  meshVolume,
  mirrorFoot,
  openEdges,
  prepareAnatomy,
} from '../../../src/anatomy';
import { patchesOf } from '../../../src/anatomy/angles/patches';
import { SKELETON_IDS, type SkeletonId } from '../../../src/ids';
import { builtFoot } from '../../tools/built-foot';
import { LONG, orAll } from '../../tools/long';
import { crossings, smallestAngle, trianglesOf } from '../../tools/triangles';
import { cornerForms, formInWords, sampleForms } from './any-form';

const LEVELS = ['display', 'fine'] as const;
const LEAST_ANGLE_DEG = 5;
const feet = new Map<Level, Foot>();
const meshesOf = ({ bones, leg }: Foot): ReadonlyMap<SkeletonId, Mesh> => new Map<SkeletonId, Mesh>([...bones, ...leg]);

beforeAll(async () => {
  await prepareAnatomy();
  for (const level of LEVELS) feet.set(level, builtFoot({}, 'standing', level));
}, 60_000);

describe('the test of crossings', () => {
  const mesh = (points: number[][], indices: number[]): Mesh => ({
    positions: new Float32Array(points.flat()),
    indices: new Uint32Array(indices),
  });
  const flat = [
    [0, 0, 0],
    [4, 0, 0],
    [0, 4, 0],
  ];

  test('sees a triangle that goes through another, and one through a corner that they share', () => {
    expect(crossings(mesh([...flat, [1, 1, -1], [1, 1, 1], [3, 3, 1]], [0, 1, 2, 3, 4, 5]))).toHaveLength(1);
    expect(crossings(mesh([...flat, [2, 1, -1], [2, 1, 1]], [0, 1, 2, 0, 3, 4]))).toHaveLength(1);
  });
  test('sees two that are folded on each other, and none where they only touch or lie apart', () => {
    expect(crossings(mesh([...flat, [1, -4, 0]], [0, 1, 2, 1, 0, 3]))).toHaveLength(0);
    expect(crossings(mesh([...flat, [1, 1, 0]], [0, 1, 2, 1, 0, 3]))).toHaveLength(1);
    expect(crossings(mesh([...flat, [1, -4, 3]], [0, 1, 2, 1, 0, 3]))).toHaveLength(0);
    expect(crossings(mesh([...flat, [1, 1, 1], [1, 1, 2], [3, 3, 1]], [0, 1, 2, 3, 4, 5]))).toHaveLength(0);
  });
});

describe.each(LEVELS)('%s', (level) => {
  const meshes = (): ReadonlyMap<SkeletonId, Mesh> => meshesOf(feet.get(level) as Foot);

  test('closed, one surface without a tunnel, outward', () => {
    expect([...meshes().keys()]).toEqual([...SKELETON_IDS]);
    for (const [bone, mesh] of meshes()) {
      expect(openEdges(mesh), bone).toBe(0);
      expect(eulerCharacteristic(mesh), bone).toBe(2);
      expect(meshVolume(mesh), bone).toBeGreaterThan(0);
    }
  });

  test('no angle of a triangle is below 5 deg', () => {
    const slivers = [...meshes()]
      .map(([bone, mesh]) => [bone, Math.min(...trianglesOf(mesh).map(smallestAngle))] as const)
      .filter(([, least]) => least < LEAST_ANGLE_DEG)
      .map(([bone, least]) => `${bone} ${least.toFixed(2)} deg`);
    expect(slivers).toEqual([]);
  });

  test('no bone goes through itself', () => {
    const through = [...meshes()]
      .map(([bone, mesh]) => [bone, crossings(mesh).length] as const)
      .filter(([, count]) => count > 0)
      .map(([bone, count]) => `${bone}: ${count} pairs`);
    expect(through).toEqual([]);
  });

  test('area as three has it', () => {
    for (const [bone, mesh] of meshes()) {
      const ours = patchesOf(mesh).reduce((sum, { area }) => sum + area, 0);
      const theirs = trianglesOf(mesh).reduce(
        (sum, corners) =>
          sum + new Triangle(...(corners.map((p) => new Vector3(...p)) as [Vector3, Vector3, Vector3])).getArea(),
        0,
      );
      expect(ours / theirs, bone).toBeCloseTo(1, 6);
    }
  });

  /** Columns a side; by hand on spheres of so many facets the sum of columns is right within 1 %. */
  const COLUMNS = 28;
  test('volume as the rays of three have it, column by column', () => {
    const ray = new Raycaster();
    const up = new Vector3(0, 1, 0);
    for (const [bone, mesh] of meshes()) {
      const geometry = new BufferGeometry();
      geometry.setAttribute('position', new BufferAttribute(mesh.positions, 3));
      geometry.setIndex(new BufferAttribute(mesh.indices, 1));
      const solid = new ThreeMesh(geometry, new MeshBasicMaterial({ side: DoubleSide }));
      const { min, max } = meshBounds(mesh);
      const [dx, dz] = [(max[0] - min[0]) / COLUMNS, (max[2] - min[2]) / COLUMNS];
      let sum = 0;
      for (let i = 0; i < COLUMNS; i++)
        for (let j = 0; j < COLUMNS; j++) {
          ray.set(new Vector3(min[0] + dx * (i + 0.5), min[1] - 5, min[2] + dz * (j + 0.5)), up);
          for (const { distance, face } of ray.intersectObject(solid)) {
            sum += Math.sign(face?.normal.y ?? 0) * distance * dx * dz;
          }
        }
      expect(Math.abs(sum / meshVolume(mesh) - 1), bone).toBeLessThan(0.015);
    }
  }, 60_000);

  test('the left bone is the right one mirrored, as good a surface', () => {
    const right = feet.get(level) as Foot;
    const left = meshesOf(mirrorFoot(right));
    for (const [bone, mesh] of meshesOf(right)) {
      const other = left.get(bone) as Mesh;
      expect(openEdges(other), bone).toBe(0);
      expect(meshVolume(other) / meshVolume(mesh), bone).toBeCloseTo(1, 5);
      expect(
        other.positions.every((p, i) => p === (i % 3 === 0 ? -1 : 1) * (mesh.positions[i] ?? Number.NaN)),
        bone,
      ).toBe(true);
    }
  });
});

/** What is wrong with the surfaces of a foot, bone by bone. */
const faultsOf = (foot: Foot, words: string): string[] =>
  [...meshesOf(foot)].flatMap(([bone, mesh]) => {
    const least = Math.min(...trianglesOf(mesh).map(smallestAngle));
    const through = crossings(mesh).length;
    const found = [
      ...(openEdges(mesh) === 0 && eulerCharacteristic(mesh) === 2 && meshVolume(mesh) > 0 ? [] : ['not closed']),
      ...(through > 0 ? [`${through} pairs of triangles cross`] : []),
      ...(least < LEAST_ANGLE_DEG ? [`an angle of ${least.toFixed(2)} deg`] : []),
    ];
    return found.map((fault) => `${bone}: ${fault} (${words})`);
  });

test('feet of any shape keep good surfaces, as drawn', () => {
  const forms = sampleForms(LONG ? 200 : 1);
  expect(forms.flatMap((form) => faultsOf(builtFoot(form), formInWords(form)))).toEqual([]);
}, 1_800_000);

/** Joints of a longer foot are drawn together: in a short bone of a toe what two of them ask for meets in its middle. */
test.each(orAll([200, 262, 290, 320], (lengthMm) => lengthMm === 320))(
  'feet %d mm long keep good surfaces, whatever their shape',
  (lengthMm) => {
    const forms: Partial<FootForm>[] = [{}, ...orAll(cornerForms, (_, i) => i === 0)];
    const heelToSecondHeadMm = hOfFootLength(lengthMm);
    const faults = forms.flatMap((form) =>
      LEVELS.flatMap((level) =>
        faultsOf(builtFoot({ ...form, heelToSecondHeadMm }, 'standing', level), `${level}, ${JSON.stringify(form)}`),
      ),
    );
    expect(faults).toEqual([]);
  },
  1_800_000,
);
