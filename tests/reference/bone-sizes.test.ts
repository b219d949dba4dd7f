/**
 * The bones as scanned against bones measured on CT surfaces of four feet (two women), everything divided by H.
 * Length: extent of the vertices along the first principal axis of the solid; width: along the horizontal across it; height:
 * along the third direction. A centre has no natural size to take a share of (a share of its coordinates would depend on where
 * the origin lies), so it is held to a share of H on each axis, and so are the joints: the middle of what faces the other bone, on
 * the built surfaces. The centres and joints of content/anatomy are these same means, so both check the building, not the data;
 * sizes were set by hand beside them.
 */
import { readFileSync } from 'node:fs';
import { DEFAULT_FOOT, type Mesh, meshCentroid, meshVolume, prepareAnatomy, principalExtents } from '../../src/anatomy';
import { BONE_IDS, type BoneId, isBoneId } from '../../src/ids';
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../src/units';
import { against } from '../tools/against';
import { builtFoot, shape } from '../tools/built-foot';
import { closestOn } from '../tools/surface';
import { trianglesOf } from '../tools/triangles';

interface Measured {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly volume: number;
  readonly forwardLateralUp: readonly number[];
}
const read = <T>(name: string): T => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8')) as T;
const measured = read<Record<BoneId, Measured>>('./bone-sizes.fixture.json');
const joints = read<Record<string, readonly number[]>>('./joint-centres.fixture.json');

const CT = {
  source: 'VSDFullBodyBoneModels v3.0: Fischer MCM, Sci Data 2023;10:763, doi:10.1038/s41597-023-02669-z',
  where: 'own measurement on the surfaces of subjects z013 and z027, both feet, mean divided by H',
  how: 'read',
} as const;
/** Largest deviation of one of the four feet from their mean: length 13 %, width 11 %, height 12 %, volume 16 %, of small toe bones 30 % and 47 %. */
const LARGE = { share: 0.12, why: 'the four feet differ from their mean by up to 13 %' };
const SMALL = { share: 0.2, why: 'small bones of toes differ between the four feet by 15 to 30 %' };
const VOLUME = {
  share: 0.2,
  why: 'the four feet differ from their mean by up to 16 %, small bones of toes by up to 47 %',
};
const PLACE = {
  tolerance: 0.04,
  why: 'the centre of a bone differs between the four feet by up to 0.036 H on an axis',
};
const AXES = ['forward', 'to the outer side', 'up'] as const;

await prepareAnatomy();
const foot = builtFoot({}, 'asScanned', 'fine');
const H = DEFAULT_FOOT.heelToSecondHeadMm;
const meshOf = (bone: BoneId): Mesh => {
  const mesh = foot.bones.get(bone);
  if (!mesh) throw new Error(`${bone} was not built`);
  return mesh;
};

const expectPlace = (what: string, expected: readonly number[], [x, y, z]: Vec3): void => {
  for (const [k, name] of AXES.entries()) {
    against({ ...CT, given: true }, `${what}: centre ${name} / H`, () => ({
      expected: expected[k] ?? Number.NaN,
      got: ([z, -x, y][k] ?? Number.NaN) / H,
      ...PLACE,
    }));
  }
};

for (const bone of BONE_IDS) {
  const mesh = meshOf(bone);
  const m = measured[bone];
  const e = principalExtents(mesh);
  const sizes = { length: e.lengthMm, width: e.widthMm, height: e.heightMm };
  const { share, why } = /^(phalanx|sesamoid)/.test(bone) ? SMALL : LARGE;
  for (const name of ['length', 'width', 'height'] as const) {
    against(CT, `${bone}: ${name} / H`, () => ({
      expected: m[name],
      got: sizes[name] / H,
      tolerance: share * m[name],
      why,
    }));
  }
  against(CT, `${bone}: volume / H cubed`, () => ({
    expected: m.volume,
    got: meshVolume(mesh) / H ** 3,
    tolerance: VOLUME.share * m.volume,
    why: VOLUME.why,
  }));
  expectPlace(bone, m.forwardLateralUp, meshCentroid(mesh));
}

/**
 * A point of one bone faces the other where that lies as near as this and ahead (cosine to the normal). The four feet were measured
 * with the normals of both sides; where two bones are a few millimetres apart that is the same part of the surface.
 */
const NEAR = { mm: 3.2, beyondLeast: 1.6 };
/** Of two facets between the same bones only what really touches. */
const NEAR_SPLIT = { mm: 2.4, beyondLeast: 1.2 };
const AHEAD = 0.55;
const facingMiddle = (from: Mesh, to: Mesh, mine: (p: Vec3) => boolean, { mm, beyondLeast }: typeof NEAR): Vec3 => {
  const near = trianglesOf(from).flatMap(([a, b, c]) => {
    const at = scale(add(add(a, b), c), 1 / 3);
    if (!mine(at)) return [];
    const out = cross(subtract(b, a), subtract(c, a));
    const way = subtract(closestOn(to, at), at);
    const gap = length(way);
    return dot(way, normalize(out)) > AHEAD * gap ? [{ at, area: length(out) / 2, gap }] : [];
  });
  const limit = Math.max(mm, Math.min(...near.map(({ gap }) => gap)) + beyondLeast);
  const facing = near.filter(({ gap }) => gap < limit);
  return scale(
    facing.reduce<Vec3>((sum, f) => add(sum, scale(f.at, f.area)), [0, 0, 0]),
    1 / facing.reduce((sum, f) => sum + f.area, 0),
  );
};

for (const j of shape.joints) {
  const expected = joints[j.id];
  // The ankle is built neutral; the four feet hung down in it, so that their leg lies elsewhere: not compared.
  if (!j.articular || !isBoneId(j.first) || !isBoneId(j.second)) continue;
  if (expected === undefined) throw new Error(`${j.id} was not measured`);
  const rivals = shape.joints.filter(({ first, second }) => first === j.first && second === j.second);
  const away = (p: Vec3, centre: Vec3): number => length(subtract(p, centre));
  // Nothing of a facet lies farther from its middle than this; of two between the same bones a point belongs to the nearer.
  const reach = j.extents[0] + 5;
  const mine = (p: Vec3): boolean =>
    away(p, j.centre) < reach && rivals.every(({ centre }) => away(p, j.centre) <= away(p, centre));
  const near = rivals.length > 1 ? NEAR_SPLIT : NEAR;
  const sides = [
    facingMiddle(meshOf(j.first), meshOf(j.second), mine, near),
    facingMiddle(meshOf(j.second), meshOf(j.first), mine, near),
  ] as const;
  expectPlace(j.id, expected, scale(add(...sides), 0.5));
}
