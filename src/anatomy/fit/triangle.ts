/**
 * A point or a stretch against one triangle, without vectors: asked for hundreds of thousands of times. A triangle is nine numbers
 * of `p` from `o` on: its corners a, b, c. Any unit of length.
 */

/** What of a triangle is nearest: its inside, an edge (ab, bc, ca) or a corner (a, b, c). */
export const FEATURE = { face: 0, ab: 1, bc: 2, ca: 3, a: 4, b: 5, c: 6 } as const;

/** What was found: the way from the nearest place to the point, its length squared, and what of the triangle that place lies on. */
export interface FoundNearest {
  x: number;
  y: number;
  z: number;
  squared: number;
  feature: number;
}

/** The nearest place of a triangle, put into `out` (Ericson, Real-Time Collision Detection, 5.1.5, from memory). */
export const nearestOfTriangle = (
  p: Float64Array,
  o: number,
  x: number,
  y: number,
  z: number,
  out: FoundNearest,
): void => {
  const [ax, ay, az] = [p[o] as number, p[o + 1] as number, p[o + 2] as number];
  const [ux, uy, uz] = [(p[o + 3] as number) - ax, (p[o + 4] as number) - ay, (p[o + 5] as number) - az];
  const [vx, vy, vz] = [(p[o + 6] as number) - ax, (p[o + 7] as number) - ay, (p[o + 8] as number) - az];
  const [qx, qy, qz] = [x - ax, y - ay, z - az];
  const d1 = ux * qx + uy * qy + uz * qz;
  const d2 = vx * qx + vy * qy + vz * qz;
  const uu = ux * ux + uy * uy + uz * uz;
  const uv = ux * vx + uy * vy + uz * vz;
  const vv = vx * vx + vy * vy + vz * vz;
  const [d3, d4, d5, d6] = [d1 - uu, d2 - uv, d1 - uv, d2 - vv];
  const [va, vb, vc] = [d3 * d6 - d5 * d4, d5 * d2 - d1 * d6, d1 * d4 - d3 * d2];
  let s = 0;
  let t = 0;
  let feature: number = FEATURE.a;
  if (d1 <= 0 && d2 <= 0) feature = FEATURE.a;
  else if (d3 >= 0 && d4 <= d3) {
    s = 1;
    feature = FEATURE.b;
  } else if (d6 >= 0 && d5 <= d6) {
    t = 1;
    feature = FEATURE.c;
  } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
    s = d1 / (d1 - d3);
    feature = FEATURE.ab;
  } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
    t = d2 / (d2 - d6);
    feature = FEATURE.ca;
  } else if (va <= 0 && d4 >= d3 && d5 >= d6) {
    t = (d4 - d3) / (d4 - d3 + d5 - d6);
    s = 1 - t;
    feature = FEATURE.bc;
  } else {
    s = vb / (va + vb + vc);
    t = vc / (va + vb + vc);
    feature = FEATURE.face;
  }
  out.x = qx - s * ux - t * vx;
  out.y = qy - s * uy - t * vy;
  out.z = qz - s * uz - t * vz;
  out.squared = out.x * out.x + out.y * out.y + out.z * out.z;
  out.feature = feature;
};

/** Borders of a triangle count as inside, so that a stretch through an edge between two triangles meets at least one. */
const EDGE = 1e-9;

/** Share of the way from (x, y, z) along (dx, dy, dz) at which the triangle is crossed, or null (Moeller and Trumbore 1997, from memory). */
export const crossingOfTriangle = (
  p: Float64Array,
  o: number,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number | null => {
  const [ax, ay, az] = [p[o] as number, p[o + 1] as number, p[o + 2] as number];
  const [ux, uy, uz] = [(p[o + 3] as number) - ax, (p[o + 4] as number) - ay, (p[o + 5] as number) - az];
  const [vx, vy, vz] = [(p[o + 6] as number) - ax, (p[o + 7] as number) - ay, (p[o + 8] as number) - az];
  const [hx, hy, hz] = [dy * vz - dz * vy, dz * vx - dx * vz, dx * vy - dy * vx];
  const det = ux * hx + uy * hy + uz * hz;
  if (det === 0) return null;
  const [sx, sy, sz] = [x - ax, y - ay, z - az];
  const s = (sx * hx + sy * hy + sz * hz) / det;
  if (!(s >= -EDGE && s <= 1 + EDGE)) return null;
  const [qx, qy, qz] = [sy * uz - sz * uy, sz * ux - sx * uz, sx * uy - sy * ux];
  const t = (dx * qx + dy * qy + dz * qz) / det;
  if (!(t >= -EDGE && s + t <= 1 + EDGE)) return null;
  const way = (vx * qx + vy * qy + vz * qz) / det;
  return way >= 0 && way <= 1 ? way : null;
};
