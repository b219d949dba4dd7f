/**
 * Integrals over plane figures with straight sides, by Green's theorem: exact for the figure. A figure is a set of closed loops,
 * holes running the other way round than what they are cut from. Coordinates a and b are any two axes at right angles.
 */
export type Point2 = readonly [a: number, b: number];
export type Loop2 = readonly Point2[];

/** Area, first and second moments about the origin: aa is the integral of a squared, ab of a times b. */
export interface Integrals {
  readonly area: number;
  readonly a: number;
  readonly b: number;
  readonly aa: number;
  readonly bb: number;
  readonly ab: number;
}

const combine = (x: Integrals, y: Integrals, k: number): Integrals => ({
  area: x.area + k * y.area,
  a: x.a + k * y.a,
  b: x.b + k * y.b,
  aa: x.aa + k * y.aa,
  bb: x.bb + k * y.bb,
  ab: x.ab + k * y.ab,
});

export const NOTHING: Integrals = { area: 0, a: 0, b: 0, aa: 0, bb: 0, ab: 0 };

/** What is left of a figure when another, lying in it, is taken away. */
export const without = (whole: Integrals, part: Integrals): Integrals => combine(whole, part, -1);

const integralsOfLoop = (loop: Loop2): Integrals => {
  let [area, a, b, aa, bb, ab] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < loop.length; i++) {
    const [a0, b0] = loop[i] ?? [0, 0];
    const [a1, b1] = loop[(i + 1) % loop.length] ?? [0, 0];
    const c = a0 * b1 - a1 * b0;
    area += c / 2;
    a += (c * (a0 + a1)) / 6;
    b += (c * (b0 + b1)) / 6;
    aa += (c * (a0 * a0 + a0 * a1 + a1 * a1)) / 12;
    bb += (c * (b0 * b0 + b0 * b1 + b1 * b1)) / 12;
    ab += (c * (a0 * b1 + 2 * a0 * b0 + 2 * a1 * b1 + a1 * b0)) / 24;
  }
  return { area, a, b, aa, bb, ab };
};

/** Either way round: the area comes out positive. */
export const integralsOf = (loops: readonly Loop2[]): Integrals => {
  const sum = loops.reduce((total, loop) => combine(total, integralsOfLoop(loop), 1), NOTHING);
  return sum.area < 0 ? combine(NOTHING, sum, -1) : sum;
};

/** Moments about the figure's own centroid. */
export interface Moments {
  readonly area: number;
  readonly centroid: Point2;
  readonly aa: number;
  readonly bb: number;
  readonly ab: number;
}

/** Throws RangeError for a figure without area: it has no centroid. */
export const momentsOf = (figure: Integrals): Moments => {
  if (!(figure.area > 0)) throw new RangeError(`a figure of ${figure.area} mm2 has no centroid`);
  const [a, b] = [figure.a / figure.area, figure.b / figure.area];
  return {
    area: figure.area,
    centroid: [a, b],
    aa: figure.aa - figure.area * a * a,
    bb: figure.bb - figure.area * b * b,
    ab: figure.ab - figure.area * a * b,
  };
};

/** The two directions in which the product of inertia vanishes. */
export interface Principal {
  /** Greatest and least integral of the squared distance along a direction of the plane. */
  readonly most: number;
  readonly least: number;
  /** Unit vector of the direction in which the figure spreads most. */
  readonly along: Point2;
}

export const principalOf = ({ aa, bb, ab }: Moments): Principal => {
  const [mean, half] = [(aa + bb) / 2, Math.hypot((aa - bb) / 2, ab)];
  const turn = Math.atan2(2 * ab, aa - bb) / 2;
  return { most: mean + half, least: mean - half, along: [Math.cos(turn), Math.sin(turn)] };
};
