/**
 * The frame solver against closed forms: beam tables, three moments, taper, shear deformation, statics. Plane frames lie in X-Y,
 * bending about Z.
 */
import type { Vec3 } from '../../src/units';
import { against } from '../tools/against';
import { ALL, solved } from '../tools/frames';
import { plane } from '../tools/plane-frame';

const [E, I] = [17000, 250];

const exact = (expected: number, got: number, why = 'closed form; arithmetic only') => ({
  expected,
  got,
  tolerance: Math.abs(expected) * 1e-6,
  why,
});

const BEAMS = {
  source: 'Beam tables (Roark; Gere and Timoshenko)',
  where: 'L 60, P 100, w 2, E I 4.25e6',
  how: 'common practice',
} as const;
const line = (...x: readonly number[]) => x.map((at) => [at, 0] as const);
const [L, P, W] = [60, 100, 2];
const EI = E * I;

const tip = plane({ points: line(0, L), held: { 0: 'xyt' }, loads: { 1: [0, -P, 0] } });
against(BEAMS, 'frame: cantilever, end load: tip P L^3 / 3 E I', () => exact(-1.694117647, tip.y(1)));
against(BEAMS, 'frame: cantilever, end load: slope P L^2 / 2 E I', () => exact(-0.0423529412, tip.turn(1)));
against(BEAMS, 'frame: cantilever, end load: root moment P L', () => exact(6000, tip.rm(0)));
const spread = plane({ points: line(0, L), held: { 0: 'xyt' }, w: W });
against(BEAMS, 'frame: cantilever, even load: tip w L^4 / 8 E I', () => exact(-0.762352941, spread.y(1)));
against(BEAMS, 'frame: cantilever, even load: root moment w L^2 / 2', () => exact(3600, spread.rm(0)));
const centre = plane({ points: line(0, 30, L), held: { 0: 'xy', 2: 'y' }, loads: { 1: [0, -P, 0] } });
against(BEAMS, 'frame: simple beam, centre load: P L^3 / 48 E I', () => exact(-0.105882353, centre.y(1)));
against(BEAMS, 'frame: simple beam, centre load: moment P L / 4', () => exact(1500, centre.moment(0, 1)));
// The largest deflection lies at sqrt((L^2 - a^2) / 3) from the far support: a node is put there.
const far = L - Math.sqrt((L ** 2 - 20 ** 2) / 3);
const off = plane({ points: line(0, 20, far, L), held: { 0: 'xy', 3: 'y' }, loads: { 1: [0, -P, 0] } });
against(BEAMS, 'frame: simple beam, load at a third: moment P a b / L', () => exact(1333.333333, off.moment(0, 1)));
against(BEAMS, 'frame: simple beam, load at a third: P a^2 b^2 / 3 E I L', () => exact(-0.083660131, off.y(1)));
against(BEAMS, 'frame: simple beam, load at a third: largest deflection', () => exact(-0.091077614, off.y(2)));
against(BEAMS, 'frame: simple beam, load at a third: level where it is largest', () => ({
  expected: 0,
  got: off.turn(2),
  tolerance: 1e-12,
  why: 'arithmetic only; slopes are some 1e-3',
}));
const even = plane({ points: line(0, 30, L), held: { 0: 'xy', 2: 'y' }, w: W });
against(BEAMS, 'frame: simple beam, even load: 5 w L^4 / 384 E I', () => exact(-0.079411765, even.y(1)));
against(BEAMS, 'frame: simple beam, even load: moment w L^2 / 8', () => exact(900, even.moment(0, 1)));
const propAt = L - L / Math.sqrt(5);
const propped = plane({ points: line(0, 30, propAt, L), held: { 0: 'xyt', 3: 'y' }, loads: { 1: [0, -P, 0] } });
against(BEAMS, 'frame: propped cantilever, centre load: prop 5 P / 16', () => exact(31.25, propped.ry(3)));
against(BEAMS, 'frame: propped cantilever, centre load: root 3 P L / 16', () => exact(1125, propped.rm(0)));
against(BEAMS, 'frame: propped cantilever, centre load: under load 5 P L / 32', () =>
  exact(937.5, propped.moment(0, 1)),
);
against(BEAMS, 'frame: propped cantilever, centre load: at load 7 P L^3 / 768 E I', () =>
  exact(-0.046323529, propped.y(1)),
);
against(BEAMS, 'frame: propped cantilever, centre load: largest P L^3 / 48 sqrt5 E I', () =>
  exact(-0.047352028, propped.y(2)),
);
const sag = L * (5 / 8);
const proppedEven = plane({ points: line(0, sag, L), held: { 0: 'xyt', 2: 'y' }, w: W });
against(BEAMS, 'frame: propped cantilever, even load: prop 3 w L / 8', () => exact(45, proppedEven.ry(2)));
against(BEAMS, 'frame: propped cantilever, even load: root w L^2 / 8', () => exact(900, proppedEven.rm(0)));
against(BEAMS, 'frame: propped cantilever, even load: sagging 9 w L^2 / 128', () =>
  exact(506.25, proppedEven.moment(0, 1)),
);
// Largest at (1 + sqrt 33) / 16 of the length from the prop.
const lowest = L - (L * (1 + Math.sqrt(33))) / 16;
const proppedLow = plane({ points: line(0, lowest, L), held: { 0: 'xyt', 2: 'y' }, w: W });
against(BEAMS, 'frame: propped cantilever, even load: largest 0.0054161 w L^4 / E I', () => ({
  expected: (-0.0054161 * W * L ** 4) / EI,
  got: proppedLow.y(1),
  tolerance: 3.3e-7,
  why: 'the table prints five digits: 1e-5 of it',
}));
const built = plane({ points: line(0, 30, L), held: { 0: 'xyt', 2: 'xyt' }, loads: { 1: [0, -P, 0] } });
against(BEAMS, 'frame: built-in beam, centre load: P L / 8', () => exact(750, built.moment(0, 1)));
against(BEAMS, 'frame: built-in beam, centre load: P L^3 / 192 E I', () => exact(-0.026470588, built.y(1)));
const builtEven = plane({ points: line(0, 30, L), held: { 0: 'xyt', 2: 'xyt' }, w: W });
against(BEAMS, 'frame: built-in beam, even load: ends w L^2 / 12', () => exact(600, builtEven.rm(0)));
against(BEAMS, 'frame: built-in beam, even load: w L^4 / 384 E I', () => exact(-0.015882353, builtEven.y(1)));
const up = 40 / Math.sqrt(3);
const over = plane({ points: line(0, up, 40, L), held: { 0: 'xy', 2: 'y' }, loads: { 3: [0, -P, 0] } });
against(BEAMS, 'frame: overhang: near support -P a / L', () => exact(-50, over.ry(0)));
against(BEAMS, 'frame: overhang: far support P (L + a) / L', () => exact(150, over.ry(2)));
against(BEAMS, 'frame: overhang: tip P a^2 (L + a) / 3 E I', () => exact(-0.188235294, over.y(3)));
against(BEAMS, 'frame: overhang: bow between the supports P a L^2 / 9 sqrt3 E I', () => exact(0.048301199, over.y(1)));
const two = plane({ points: line(0, 30, L), held: { 0: 'xy', 1: 'y', 2: 'y' }, w: W });
against(BEAMS, 'frame: two spans: -w L^2 / 8 over the middle', () => exact(-225, two.moment(0, 1)));
against(BEAMS, 'frame: two spans: ends 3 w L / 8', () => exact(22.5, two.ry(0)));
against(BEAMS, 'frame: two spans: middle 5 w L / 4', () => exact(75, two.ry(1)));

const THREE = {
  source: 'Clapeyron, theorem of three moments with settlements',
  where: 'spans 24 and 36, w 2',
  how: 'common practice',
} as const;
const settled = plane({
  points: line(0, 24, L),
  held: { 0: 'xy', 1: 'y', 2: 'y' },
  settled: { 1: -0.05, 2: -0.02 },
  w: W,
});
against(THREE, 'frame: unequal spans, two supports sink: moment over the middle', () => {
  const [a, b, d2, d3] = [24, 36, -0.05, -0.02];
  const right = -(W * a ** 3 + W * b ** 3) / 4 + 6 * EI * ((0 - d2) / a + (d3 - d2) / b);
  return exact(right / (2 * (a + b)), settled.moment(0, 1));
});

const cantilever = (segments: number, shear: boolean): number => {
  const diameter = (share: number): number => 12 - 4 * share;
  const round = (d: number) => ({
    A: (Math.PI * d ** 2) / 4,
    Iy: (Math.PI * d ** 4) / 64,
    Iz: (Math.PI * d ** 4) / 64,
    J: (Math.PI * d ** 4) / 32,
  });
  const parts = Array.from({ length: segments }, (_, i) => i);
  const { displacements } = solved({
    nodes: [
      { id: 'root', xyz: [0, 0, 0] },
      { id: 'tip', xyz: [0, 0, L] },
    ],
    materials: { m: { E, G: 3300 } },
    sections: Object.fromEntries(
      parts.map((i) => [
        i,
        { ...round(shear ? 12 : diameter((i + 0.5) / segments)), ...(shear ? { Asy: 56.5, Asz: 56.5 } : {}) },
      ]),
    ),
    members: [
      {
        id: 'taper',
        i: 'root',
        j: 'tip',
        material: 'm',
        orientation: [0, 1, 0],
        segments: parts.map((i) => ({
          section: i,
          ...(i < segments - 1 ? { to: [0, 0, (L * (i + 1)) / segments] as [number, number, number] } : {}),
        })),
      },
    ],
    supports: [{ node: 'root', fixed: ALL }],
    nodalLoads: [{ node: 'tip', F: [0, P, 0, 0, 0, 0] }],
  });
  return displacements.tip?.[1] ?? Number.NaN;
};
const TAPER = {
  source: 'Gere and Timoshenko, Mechanics of Materials (tapered round cantilever)',
  where: '64 P L^3 / 3 pi E d0 d1^3',
  how: 'from memory',
} as const;
against(TAPER, 'frame: tapered cantilever in 1000 segments: tip', () =>
  exact(0.624137032, cantilever(1000, false), 'steps: the error falls with the square of their number, 4e-7 at 1000'),
);
const TIMOSHENKO = {
  source: 'Timoshenko beam: P L^3 / 3 E I + P L / G As',
  where: 'cantilever with shear deformation',
  how: 'common practice',
} as const;
against(TIMOSHENKO, 'frame: cantilever with shear deformation: tip', () =>
  exact((P * L ** 3) / (3 * E * ((Math.PI * 12 ** 4) / 64)) + (P * L) / (3300 * 56.5), cantilever(1, true)),
);

const STATICS = { source: 'Equilibrium of a rigid body', where: 'Newton, statics', how: 'common practice' } as const;
const place: Vec3 = [30, 40, 50];
const bent = solved({
  nodes: [
    { id: 'a', xyz: [0, 0, 0] },
    { id: 'b', xyz: [...place] },
  ],
  materials: { m: { E, G: 6500 } },
  sections: { s: { A: 50, Iy: I, Iz: 120, J: 300 } },
  members: [{ id: 'm', i: 'a', j: 'b', section: 's', material: 'm', orientation: [0, 0, 1] }],
  supports: [{ node: 'a', fixed: ALL }],
  nodalLoads: [{ node: 'b', F: [3, -2, 7, 0, 0, 0] }],
});
[-3, 2, -7, -380, 60, 180].forEach((expected, i) => {
  against(STATICS, `frame: skew cantilever, reaction ${ALL[i]}: minus the load, minus place x load`, () =>
    exact(expected, bent.reactions.a?.[i] ?? Number.NaN, 'arithmetic only'),
  );
});
