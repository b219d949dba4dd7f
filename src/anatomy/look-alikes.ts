/**
 * What on a film looks like a break and is none, placed on the foot at hand from landmarks of its bones: a small closed bone beside
 * the surface, or the line of a growing or undivided part. Told in content/anatomy/look-alikes.yaml; mm, foot frame.
 */
import type { BoneId } from '../ids';
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { meshOf } from './bone-axis';
import type { LookAlikeId, LookAlikeRule } from './look-alike-schema';
import { carried, placeOn, scaleOn } from './places';
import { sliceMesh } from './slice';
import type { Foot, Mesh } from './types';

interface Common {
  readonly id: LookAlikeId;
  readonly bone: BoneId;
  /** Its middle, or for a line the point of the surface it goes round. */
  readonly at: Vec3;
}
export type LookAlike =
  | (Common & { readonly is: 'ossicle'; readonly mesh: Mesh })
  /** Both edges of the cleft, each a closed loop on the bone's surface. */
  | (Common & { readonly is: 'line'; readonly loops: readonly (readonly Vec3[])[] });

/** Times an icosahedron's faces are divided: 80 facets, as coarse as the bones. */
const DIVIDED = 1;

const icosahedron = (): { points: Vec3[]; faces: [number, number, number][] } => {
  const g = (1 + Math.sqrt(5)) / 2;
  const points: Vec3[] = [];
  for (const a of [-1, 1]) for (const b of [-g, g]) points.push([0, a, b], [a, b, 0], [b, 0, a]);
  const faces: [number, number, number][] = [];
  const near = (i: number, j: number): boolean => {
    const d = subtract(points[i] as Vec3, points[j] as Vec3);
    return Math.abs(dot(d, d) - 4) < 1e-9;
  };
  for (let i = 0; i < 12; i++)
    for (let j = i + 1; j < 12; j++)
      for (let k = j + 1; k < 12; k++) {
        if (!near(i, j) || !near(j, k) || !near(i, k)) continue;
        const [a, b, c] = [points[i], points[j], points[k]] as [Vec3, Vec3, Vec3];
        faces.push(dot(a, cross(subtract(b, a), subtract(c, a))) > 0 ? [i, j, k] : [i, k, j]);
      }
  return { points: points.map(normalize), faces };
};

/** A unit sphere of facets. */
const sphere = (): { points: readonly Vec3[]; faces: readonly (readonly [number, number, number])[] } => {
  let { points, faces } = icosahedron();
  for (let n = 0; n < DIVIDED; n++) {
    const middles = new Map<string, number>();
    const middle = (i: number, j: number): number => {
      const key = i < j ? `${i} ${j}` : `${j} ${i}`;
      const known = middles.get(key);
      if (known !== undefined) return known;
      points = [...points, normalize(add(points[i] as Vec3, points[j] as Vec3))];
      middles.set(key, points.length - 1);
      return points.length - 1;
    };
    faces = faces.flatMap(([a, b, c]): [number, number, number][] => {
      const [d, e, f] = [middle(a, b), middle(b, c), middle(c, a)];
      return [
        [a, d, f],
        [d, b, e],
        [f, e, c],
        [d, e, f],
      ];
    });
  }
  return { points, faces };
};

const ossicleOn = (
  foot: Foot,
  rule: LookAlikeRule,
  shape: Extract<LookAlikeRule['shape'], { is: 'ossicle' }>,
): LookAlike => {
  const { at: surface, out } = placeOn(foot, rule.bone, shape);
  const k = scaleOn(foot, rule.bone);
  const [long, wide, deep] = [shape.size[0] * k, shape.size[1] * k, shape.size[2] * k];
  const at = add(surface, scale(out, shape.gap * k + (shape.flat * deep) / 2));
  const way = carried(foot, rule.bone, shape.along);
  const along = normalize(subtract(way, scale(out, dot(way, out))));
  const across = cross(out, along);
  const { points, faces } = sphere();
  const placed = points.map(([x, y, z]) =>
    add(
      at,
      add(
        add(scale(along, (x * long) / 2), scale(across, (y * wide) / 2)),
        scale(out, (Math.max(z, -shape.flat) * deep) / 2),
      ),
    ),
  );
  return {
    id: rule.id,
    bone: rule.bone,
    is: 'ossicle',
    at,
    mesh: { positions: Float32Array.from(placed.flat()), indices: Uint32Array.from(faces.flat()) },
  };
};

const nearest = (loops: readonly Vec3[][], p: Vec3): Vec3[] | null => {
  let [best, found]: [number, Vec3[] | null] = [Number.POSITIVE_INFINITY, null];
  for (const loop of loops)
    for (const q of loop) {
      const d = subtract(q, p);
      if (dot(d, d) < best) [best, found] = [dot(d, d), loop];
    }
  return found;
};

const lineOn = (foot: Foot, rule: LookAlikeRule, shape: Extract<LookAlikeRule['shape'], { is: 'line' }>): LookAlike => {
  const { at } = placeOn(foot, rule.bone, shape);
  const k = scaleOn(foot, rule.bone);
  const normal = normalize(carried(foot, rule.bone, shape.normal));
  const loops = [-1, 1].map((side) => {
    const through = add(at, scale(normal, -shape.inset * k + (side * shape.cleft * k) / 2));
    const loop = nearest(sliceMesh(meshOf(foot, rule.bone), through, normal), at);
    if (loop === null) throw new RangeError(`${rule.id}: the plane misses the bone`);
    return loop;
  });
  return { id: rule.id, bone: rule.bone, is: 'line', at, loops };
};

/** A look-alike on this foot. Throws RangeError for one that is not told. */
export const lookAlike = (foot: Foot, id: LookAlikeId): LookAlike => {
  const rule = foot.reference.lookAlikes.find((r) => r.id === id);
  if (!rule) throw new RangeError(`no look-alike ${id}`);
  return rule.shape.is === 'ossicle' ? ossicleOn(foot, rule, rule.shape) : lineOn(foot, rule, rule.shape);
};
