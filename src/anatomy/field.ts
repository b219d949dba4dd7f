/**
 * Signed distance fields of the masses a bone is joined from: negative inside, mm. Distances are exact for rods and blocks
 * and close to it near the surface for the rest, which is all the sampling needs.
 * Smooth join: quadratic polynomial of width k (I. Quilez, "smooth minimum").
 */
import { add, cross, dot, length, normalize, radians, scale, subtract, type Vec3 } from '../units';
import type { Mass } from './bones/mass';

export type Field = (x: number, y: number, z: number) => number;
export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

export const smoothMin = (a: number, b: number, k: number): number => {
  const h = Math.max(k - Math.abs(a - b), 0);
  return Math.min(a, b) - (h * h) / (4 * k);
};
export const smoothMax = (a: number, b: number, k: number): number => -smoothMin(-a, -b, k);

/** Math.hypot guards against overflow at many times the cost of this. */
const distance = (a: number, b: number, c = 0): number => Math.sqrt(a * a + b * b + c * c);

/** Right-handed frame: l along, u as near to `up` as it can be, m across (medial for a bone lying straight ahead). */
export const frameOf = (along: Vec3, up: Vec3): readonly [m: Vec3, u: Vec3, l: Vec3] => {
  const l = normalize(along);
  const across = cross(up, l);
  const m = length(across) < 1e-6 ? normalize(cross([1, 0, 0], l)) : normalize(across);
  return [m, cross(l, m), l];
};

type Sized = Extract<Mass, { size: unknown }>;

const boxed = (s: Sized, centre: Vec3, round: number | null): Field => {
  const [m, u, l] = frameOf(s.along ?? [0, 0, 1], s.up ?? [0, 1, 0]);
  const c = add(centre, s.at);
  const [a, b, d] = [s.size[0] / 2, s.size[1] / 2, s.size[2] / 2];
  return (x, y, z) => {
    const px = x - c[0];
    const py = y - c[1];
    const pz = z - c[2];
    const i = px * m[0] + py * m[1] + pz * m[2];
    const j = px * u[0] + py * u[1] + pz * u[2];
    const k = px * l[0] + py * l[1] + pz * l[2];
    if (round === null) {
      const k0 = distance(i / a, j / b, k / d);
      const k1 = distance(i / (a * a), j / (b * b), k / (d * d));
      return k1 < 1e-9 ? -Math.min(a, b, d) : (k0 * (k0 - 1)) / k1;
    }
    const qi = Math.abs(i) - a + round;
    const qj = Math.abs(j) - b + round;
    const qk = Math.abs(k) - d + round;
    return distance(Math.max(qi, 0), Math.max(qj, 0), Math.max(qk, 0)) + Math.min(Math.max(qi, qj, qk), 0) - round;
  };
};

export const rod = (from: Vec3, to: Vec3, radius: readonly [number, number]): Field => {
  const way = subtract(to, from);
  const square = dot(way, way);
  return (x, y, z) => {
    const px = x - from[0];
    const py = y - from[1];
    const pz = z - from[2];
    const t = Math.min(1, Math.max(0, (px * way[0] + py * way[1] + pz * way[2]) / square));
    return distance(px - way[0] * t, py - way[1] * t, pz - way[2] * t) - (radius[0] + (radius[1] - radius[0]) * t);
  };
};

/** A cylinder whose ends go apart from behind to the front. */
const drum = (s: Extract<Mass, { is: 'drum' }>, centre: Vec3): Field => {
  const axis = normalize(s.along);
  const front = normalize(subtract(s.front, scale(axis, dot(s.front, axis))));
  const c = add(centre, s.at);
  const [behind, ahead] = s.width;
  const half = (behind + ahead) / 4;
  /** How much each wall goes outwards for a step ahead. */
  const splay = (ahead - behind) / (4 * s.radius);
  const steep = Math.sqrt(1 + splay * splay);
  return (x, y, z) => {
    const px = x - c[0];
    const py = y - c[1];
    const pz = z - c[2];
    const along = px * axis[0] + py * axis[1] + pz * axis[2];
    const forwards = px * front[0] + py * front[1] + pz * front[2];
    const out = distance(px - axis[0] * along, py - axis[1] * along, pz - axis[2] * along) - s.radius + s.round;
    const end = (Math.abs(along) - half - splay * forwards) / steep + s.round;
    return distance(Math.max(out, 0), Math.max(end, 0)) + Math.min(Math.max(out, end), 0) - s.round;
  };
};

/** A roller is a drum with parallel ends, whichever way its front is. */
const straight = ({ name, at, along, radius, width, round }: Extract<Mass, { is: 'roller' }>) => {
  const [, front] = frameOf(along, [0, 1, 0]);
  return { is: 'drum', name, at, along, front, radius, width: [width, width], round } as const;
};

interface Station {
  readonly at: Vec3;
  readonly m: Vec3;
  readonly u: Vec3;
  readonly w: number;
  readonly h: number;
  readonly corner: number;
}

const PER_SPAN = 4;
/** Catmull-Rom value at t in [0, 1] between b and c. */
const spline = (a: number, b: number, c: number, d: number, t: number): number =>
  b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));

const stationsOf = (s: Extract<Mass, { is: 'shaft' }>, centre: Vec3): readonly Station[] => {
  const rows = s.sections.map((q) => [...add(centre, q.at), q.width / 2, q.height / 2, q.roll ?? 0, q.corner ?? 2.3]);
  const raw: number[][] = [];
  const row = (i: number): number[] => rows[Math.min(rows.length - 1, Math.max(0, i))] ?? [];
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let j = 0; j < PER_SPAN + (i + 2 === rows.length ? 1 : 0); j++) {
      const [a, b, c, d] = [row(i - 1), row(i), row(i + 1), row(i + 2)];
      raw.push(b.map((_, k) => spline(a[k] ?? 0, b[k] ?? 0, c[k] ?? 0, d[k] ?? 0, j / PER_SPAN)));
    }
  }
  const point = (i: number): Vec3 => {
    const r = raw[Math.min(raw.length - 1, Math.max(0, i))] ?? [];
    return [r[0] ?? 0, r[1] ?? 0, r[2] ?? 0];
  };
  return raw.map((r, i) => {
    const [m0, u0, l] = frameOf(subtract(point(i + 1), point(i - 1)), s.up ?? [0, 1, 0]);
    const roll = radians(r[5] ?? 0);
    const m = add(scale(m0, Math.cos(roll)), scale(u0, Math.sin(roll)));
    return { at: point(i), m, u: cross(l, m), w: r[3] ?? 1, h: r[4] ?? 1, corner: r[6] ?? 2 };
  });
};

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

const shaft = (s: Extract<Mass, { is: 'shaft' }>, centre: Vec3): Field => {
  const stations = stationsOf(s, centre);
  const last = stations.length - 2;
  // Flat numbers, 7 a segment: start, way, 1 / way squared. The search for the nearest is most of the time of a build.
  const segments = new Float64Array(7 * (last + 1));
  for (let i = 0; i <= last; i++) {
    const from = (stations[i] as Station).at;
    const way = subtract((stations[i + 1] as Station).at, from);
    segments.set([...from, ...way, 1 / dot(way, way)], 7 * i);
  }
  return (x, y, z) => {
    let best = Number.POSITIVE_INFINITY;
    let at = 0;
    let share = 0;
    for (let i = 0, o = 0; i <= last; i++, o += 7) {
      const ax = x - (segments[o] as number);
      const ay = y - (segments[o + 1] as number);
      const az = z - (segments[o + 2] as number);
      const wx = segments[o + 3] as number;
      const wy = segments[o + 4] as number;
      const wz = segments[o + 5] as number;
      let t = (ax * wx + ay * wy + az * wz) * (segments[o + 6] as number);
      t = t < 0 ? 0 : Math.min(t, 1);
      const dx = ax - wx * t;
      const dy = ay - wy * t;
      const dz = az - wz * t;
      const d = dx * dx + dy * dy + dz * dz;
      if (d < best) {
        best = d;
        at = i;
        share = t;
      }
    }
    const p = stations[at] as Station;
    const q = stations[at + 1] as Station;
    const px = x - mix(p.at[0], q.at[0], share);
    const py = y - mix(p.at[1], q.at[1], share);
    const pz = z - mix(p.at[2], q.at[2], share);
    const a = px * mix(p.m[0], q.m[0], share) + py * mix(p.m[1], q.m[1], share) + pz * mix(p.m[2], q.m[2], share);
    const b = px * mix(p.u[0], q.u[0], share) + py * mix(p.u[1], q.u[1], share) + pz * mix(p.u[2], q.u[2], share);
    const w = mix(p.w, q.w, share);
    const h = mix(p.h, q.h, share);
    const n = mix(p.corner, q.corner, share);
    const flat = distance(a, b);
    const near = flat < 2 * (w + h);
    // Far off the exact shape of the section does not matter.
    const r = near ? (Math.abs(a / w) ** n + Math.abs(b / h) ** n) ** (1 / n) : flat / Math.max(w, h);
    const side = r < 0.15 ? -Math.min(w, h) * (1 - r) : flat * (1 - 1 / r);
    // Only past an end: the frames lean with the bow, so that between the ends the nearest point is not quite across.
    const past = (at === 0 && share === 0) || (at === last && share === 1);
    const beyond = past ? Math.sqrt(Math.max(0, best - flat * flat)) : 0;
    return beyond < 1e-6 ? side : distance(Math.max(side, 0), beyond) + Math.min(side, 0) * 0.02;
  };
};

const around = (points: readonly Vec3[], reach: number): Box => ({
  min: [0, 1, 2].map((k) => Math.min(...points.map((p) => p[k] ?? 0)) - reach) as unknown as Vec3,
  max: [0, 1, 2].map((k) => Math.max(...points.map((p) => p[k] ?? 0)) + reach) as unknown as Vec3,
});

const sizedBox = (s: Sized, centre: Vec3, rounded: boolean): Box => {
  const axes = frameOf(s.along ?? [0, 0, 1], s.up ?? [0, 1, 0]);
  const half = [0, 1, 2].map((k) => {
    const terms = axes.map((a, i) => Math.abs((a[k] ?? 0) * (s.size[i] ?? 0)) / 2);
    return rounded ? terms.reduce((sum, t) => sum + t, 0) : Math.hypot(...terms);
  }) as unknown as Vec3;
  const c = add(centre, s.at);
  return { min: subtract(c, half), max: add(c, half) };
};

/** The field of one mass and the box that holds it. */
export const fieldOf = (s: Mass, centre: Vec3): { readonly field: Field; readonly box: Box } => {
  switch (s.is) {
    case 'ellipsoid':
      return { field: boxed(s, centre, null), box: sizedBox(s, centre, false) };
    case 'block':
      return {
        field: boxed(s, centre, Math.min(s.round, ...s.size.map((q) => q / 2))),
        box: sizedBox(s, centre, true),
      };
    case 'rod': {
      const ends = [add(centre, s.from), add(centre, s.to)] as const;
      return { field: rod(ends[0], ends[1], s.radius), box: around(ends, Math.max(...s.radius)) };
    }
    case 'roller':
      return { field: drum(straight(s), centre), box: around([add(centre, s.at)], distance(s.radius, s.width / 2)) };
    case 'drum':
      return { field: drum(s, centre), box: around([add(centre, s.at)], distance(s.radius, Math.max(...s.width))) };
    case 'shaft': {
      const reach = Math.max(...s.sections.map((q) => Math.max(q.width, q.height))) * 0.6;
      return {
        field: shaft(s, centre),
        box: around(
          s.sections.map((q) => add(centre, q.at)),
          reach,
        ),
      };
    }
  }
};
