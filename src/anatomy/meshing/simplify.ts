/**
 * From a dense surface to the few facets that are drawn. meshoptimizer's simplifier is WebAssembly: await `prepareAnatomy`
 * once before building (in the browser only inside a worker whose policy allows it).
 */
import { openEdges } from '../mesh';
import type { Mesh } from '../types';

type Simplifier = typeof import('meshoptimizer/simplifier').MeshoptSimplifier;

/** Loaded only when a foot is built: the page itself may not run WebAssembly, and reads its usual foot from a file. */
let simplifier: Simplifier | null = null;

export const prepareAnatomy = async (): Promise<void> => {
  const { MeshoptSimplifier } = await import('meshoptimizer/simplifier');
  await MeshoptSimplifier.ready;
  simplifier = MeshoptSimplifier;
};

/** Largest connected piece: a stray island of the field is not a bone. */
export const largestPiece = (mesh: Mesh): Mesh => {
  const parent = Uint32Array.from({ length: mesh.positions.length / 3 }, (_, i) => i);
  const root = (i: number): number => {
    let r = i;
    while ((parent[r] ?? r) !== r) r = parent[r] ?? r;
    parent[i] = r;
    return r;
  };
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((e) => root(mesh.indices[t + e] ?? 0)) as [number, number, number];
    parent[b] = a;
    parent[root(c)] = a;
  }
  const count = new Map<number, number>();
  for (const i of mesh.indices) count.set(root(i), (count.get(root(i)) ?? 0) + 1);
  const [main] = [...count].sort((p, q) => q[1] - p[1]);
  return { positions: mesh.positions, indices: mesh.indices.filter((i) => root(i) === main?.[0]) };
};

/** Drops vertices that no triangle uses and numbers the rest in order of use. */
const compact = (mesh: Mesh): Mesh => {
  const place = new Map<number, number>();
  const positions: number[] = [];
  const indices = mesh.indices.map((i) => {
    const known = place.get(i);
    if (known !== undefined) return known;
    place.set(i, place.size);
    positions.push(mesh.positions[3 * i] ?? 0, mesh.positions[3 * i + 1] ?? 0, mesh.positions[3 * i + 2] ?? 0);
    return place.size - 1;
  });
  return { positions: new Float32Array(positions), indices };
};

/**
 * Closed surface with about so many triangles, or null. The simplifier now and then leaves an edge that four triangles share; then a
 * few triangles less are asked for, at last without regard to their form. Await `prepareAnatomy` before.
 */
export const closedWith = (whole: Mesh, triangles: number): Mesh | null => {
  if (simplifier === null) throw new Error('Call prepareAnatomy once before building a bone');
  for (const flags of [['RegularizeLight'], []] as const)
    for (let less = 0; less < 24; less += 2) {
      const count = 3 * (triangles - less);
      const [indices] = simplifier.simplify(whole.indices, whole.positions, 3, count, 1, [...flags]);
      const mesh = compact({ positions: whole.positions, indices });
      if (openEdges(mesh) === 0) return mesh;
    }
  return null;
};
