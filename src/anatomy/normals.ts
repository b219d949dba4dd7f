/** Directions out of a bone's surface at the vertices of its mesh, from the field that the bone is, not from its facets. */
import { length, type Vec3 } from '../units';
import type { Field } from './field';
import { vertexOf } from './mesh';
import type { Mesh } from './types';

/** Half of what a difference of the field is taken over, mm: a cell of the grid, over which creases are rounded. */
const HALF_MM = 1.2;

/** Unit normals, 3 numbers a vertex, in the frame of the mesh and the field. */
export const normalsFrom = (field: Field, mesh: Mesh): Float32Array => {
  const normals = new Float32Array(mesh.positions.length);
  for (let i = 0; i < normals.length; i += 3) {
    const [x, y, z] = vertexOf(mesh, i / 3);
    const out: Vec3 = [
      field(x + HALF_MM, y, z) - field(x - HALF_MM, y, z),
      field(x, y + HALF_MM, z) - field(x, y - HALF_MM, z),
      field(x, y, z + HALF_MM) - field(x, y, z - HALF_MM),
    ];
    const size = length(out) || 1;
    normals.set(
      out.map((d) => d / size),
      i,
    );
  }
  return normals;
};
