/**
 * The frame solver against answers worked out by hand for frames of every kind that the file format knows: settlement, springs at an
 * angle, springs and releases at ends, loads over a part, arms at an angle in space, an arc. To 1e-6.
 */
import type { FrameModel } from '../../src/mechanics/frame';
import { add, cross, normalize, scale, type Vec3 } from '../../src/units';
import { against } from '../tools/against';
import { ALL, solved } from '../tools/frames';
import { plane } from '../tools/plane-frame';

const [E, I] = [17000, 250];
const EI = E * I;
const exact = (expected: number, got: number, why = 'closed form; arithmetic only') => ({
  expected,
  got,
  tolerance: Math.abs(expected) * 1e-6,
  why,
});
const how = 'common practice' as const;

// Slopes and settlement: both upper corners turn by t and sway by -t h / 2 (no shear in the columns), joints in balance:
// t (E I / h + 6 E I / L) = -6 E I / L x sinking / L.
const SLOPES = { source: 'Slope-deflection', where: 'portal 50 high, 80 wide, one foot sinks by 0.4', how };
const [H, W, SUNK] = [50, 80, 0.4];
const rigid = plane({
  points: [
    [0, 0],
    [0, H],
    [W, H],
    [W, 0],
  ],
  members: [
    { i: 0, j: 1 },
    { i: 1, j: 2 },
    { i: 2, j: 3 },
  ],
  A: 1e9,
  held: { 0: 'xyt', 3: 'xyt' },
  settled: { 3: -SUNK },
});
const turn = (-6 * (EI / W) * (SUNK / W)) / (EI / H + (6 * EI) / W);
const STIFF = 'closed form without stretch; its area is 1e9';
against(SLOPES, 'portal, one foot sinks: turn of a corner', () => exact(turn, rigid.turn(1), STIFF));
against(SLOPES, 'portal, one foot sinks: sway', () => exact((-turn * H) / 2, rigid.x(1), STIFF));
against(SLOPES, 'portal, one foot sinks: moment at the foot', () => exact((-EI / H) * turn, rigid.rm(0), STIFF));
against(SLOPES, 'portal, one foot sinks: push under the other', () =>
  exact((12 * (EI / W) * (turn + SUNK / W)) / W, rigid.ry(0), STIFF),
);

// A bar that only stretches holds the tip at an angle: u = C (P - k n (n . u)), so n . u = n.C.P / (1 + k n.C.n).
const INCLINED = {
  source: 'Cantilever with a spring at an angle',
  where: 'L 60, spring 30 degrees off, 40 per mm',
  how,
};
const [LENGTH, AREA, SPRING, BAR] = [60, 50, 40, 20];
const [fx, fy] = [7, -100];
const n: Vec3 = [Math.sin(Math.PI / 6), Math.cos(Math.PI / 6), 0];
const released = (end: 'i' | 'j', dofs: readonly ('rx' | 'ry' | 'rz')[]) => dofs.map((dof) => ({ end, dof, k: 0 }));
const far = add([LENGTH, 0, 0], scale(n, -BAR));
const held = solved({
  nodes: [
    { id: 'root', xyz: [0, 0, 0] },
    { id: 'tip', xyz: [LENGTH, 0, 0] },
    { id: 'ground', xyz: [...far] },
  ],
  materials: { m: { E, G: 6500 } },
  sections: { s: { A: AREA, Iy: I, Iz: I, J: 2 * I } },
  members: [
    { id: 'arm', i: 'root', j: 'tip', section: 's', material: 'm', orientation: [0, 1, 0] },
    {
      id: 'bar',
      i: 'ground',
      j: 'tip',
      section: 's',
      material: 'm',
      orientation: [0, 0, 1],
      endSprings: [
        { end: 'i', dof: 'ux', k: SPRING },
        ...released('i', ['ry', 'rz']),
        ...released('j', ['rx', 'ry', 'rz']),
      ],
    },
  ],
  supports: [
    { node: 'root', fixed: ALL },
    { node: 'ground', fixed: ALL },
  ],
  nodalLoads: [{ node: 'tip', F: [fx, fy, 0, 0, 0, 0] }],
});
const [cx, cy] = [LENGTH / (E * AREA), LENGTH ** 3 / (3 * EI)];
const k = 1 / (1 / SPRING + BAR / (E * AREA));
const along = (n[0] * cx * fx + n[1] * cy * fy) / (1 + k * (n[0] ** 2 * cx + n[1] ** 2 * cy));
against(INCLINED, 'arm on a spring at an angle: force in the spring', () =>
  exact(k * along, held.memberEndForces.bar?.[6] ?? Number.NaN),
);
against(INCLINED, 'arm on a spring at an angle: tip along the arm', () =>
  exact(cx * (fx - k * along * n[0]), held.displacements.tip?.[0] ?? Number.NaN),
);
against(INCLINED, 'arm on a spring at an angle: tip across', () =>
  exact(cy * (fy - k * along * n[1]), held.displacements.tip?.[1] ?? Number.NaN),
);

// Both ends on turning springs under an even load: the end moment of a built-in beam over 1 + 2 E I / k L.
const SPRINGS = { source: 'Beam on turning springs, even load', where: 'w L^2 / 12 (1 + 2 E I / k L); L 60, w 2', how };
const TURNING = 2e5;
/** A beam of the length under the even load, its ends held but for what is said of them. */
const loadedBeam = (endSprings: NonNullable<FrameModel['members'][number]['endSprings']>) =>
  plane({
    points: [
      [0, 0],
      [LENGTH, 0],
    ],
    held: { 0: 'xyt', 1: 'xyt' },
    members: [{ i: 0, j: 1, endSprings }],
    w: 2,
  });
const onSprings = loadedBeam((['i', 'j'] as const).map((end) => ({ end, dof: 'rz' as const, k: TURNING })));
against(SPRINGS, 'beam on turning springs: moment at an end', () =>
  exact((2 * LENGTH ** 2) / 12 / (1 + (2 * EI) / (TURNING * LENGTH)), onSprings.rm(0)),
);

// One end pinned to a support that gives way, the other built in: the prop's force of a built-in beam with a spring under its end.
const PROP = { source: 'Propped cantilever on a spring', where: '(w L^4 / 8 E I) / (L^3 / 3 E I + 1 / k); k 100', how };
const onProp = loadedBeam([
  { end: 'j', dof: 'uy', k: 100 },
  { end: 'j', dof: 'rz', k: 0 },
]);
against(PROP, 'release and spring at one end: force in the spring', () =>
  exact((2 * LENGTH ** 4) / (8 * EI) / (LENGTH ** 3 / (3 * EI) + 1 / 100), onProp.ry(1)),
);
against(PROP, 'release and spring at one end: no moment beside it', () => ({
  expected: 0,
  got: onProp.rm(1),
  tolerance: 1e-9,
  why: 'arithmetic only; the other end has hundreds',
}));

// Macaulay: E I y = R x^3 / 6 - w <x - a>^4 / 24 + w <x - b>^4 / 24 + C x, C from y(L) = 0.
const PARTIAL = { source: 'Macaulay, simple beam loaded over a part', where: 'w 2 from 12 to 40 of 60', how };
const [A, B, LOAD] = [12, 40, 2];
const R = (LOAD * (B - A) * (LENGTH - (A + B) / 2)) / LENGTH;
const power = (x: number, p: number): number => Math.max(0, x) ** p;
const bent = (x: number): number => (R * x ** 3) / 6 - (LOAD * power(x - A, 4)) / 24 + (LOAD * power(x - B, 4)) / 24;
const partly = plane({
  points: [
    [0, 0],
    [A, 0],
    [B, 0],
    [LENGTH, 0],
  ],
  held: { 0: 'xy', 3: 'y' },
  members: [0, 1, 2].map((i) => ({
    i,
    j: i + 1,
    ...(i === 1 ? { distributed: [{ axes: 'local' as const, q: [0, -LOAD, 0] as [number, number, number] }] } : {}),
  })),
});
against(PARTIAL, 'simple beam loaded over a part: reaction', () => exact(R, partly.ry(0)));
for (const [node, x] of [
  [1, A],
  [2, B],
] as const)
  against(PARTIAL, `simple beam loaded over a part: deflection at ${x}`, () =>
    exact((bent(x) - (bent(LENGTH) / LENGTH) * x) / EI, partly.y(node)),
  );

// Two arms at a right angle, pushed across their plane: bending of both, and torsion of the first by the second's length. Set askew.
const ARMS = {
  source: 'Bent arm out of its plane (strength of materials)',
  where: 'P (a^3 + b^3) / 3 E I + P a b^2 / G J; a 40, b 30, askew in space',
  how,
};
const first = normalize([2, -1, 3]);
const across = normalize(cross(first, [0.3, 1, -0.4]));
const second = cross(across, first);
const [a, b, P, G, J] = [40, 30, 5, 6500, 300];
const elbow = scale(first, a);
const arms: FrameModel = {
  nodes: [
    { id: 'root', xyz: [0, 0, 0] },
    { id: 'elbow', xyz: [...elbow] },
    { id: 'tip', xyz: [...add(elbow, scale(second, b))] },
  ],
  materials: { m: { E, G } },
  sections: { s: { A: 50, Iy: I, Iz: 90, J } },
  // Local y in the plane of the arms, so that Iy resists the push.
  members: [
    { id: 'one', i: 'root', j: 'elbow', section: 's', material: 'm', orientation: [...second] },
    { id: 'two', i: 'elbow', j: 'tip', section: 's', material: 'm', orientation: [...first] },
  ],
  supports: [{ node: 'root', fixed: ALL }],
  nodalLoads: [{ node: 'tip', F: [...scale(across, P), 0, 0, 0] }],
};
const armed = solved(arms);
const tip = armed.displacements.tip ?? [];
against(ARMS, 'bent arm askew in space: tip along the push', () =>
  exact(
    (P * (a ** 3 + b ** 3)) / (3 * EI) + (P * a * b ** 2) / (G * J),
    across.reduce((sum, c, i) => sum + c * (tip[i] ?? Number.NaN), 0),
  ),
);
against(ARMS, 'bent arm askew in space: torque in the first arm', () =>
  exact(P * b, Math.abs(armed.memberEndForces.one?.[9] ?? Number.NaN)),
);

// A quarter of a circle as a curved member, built in at one end: in its plane and across it.
const ARC = {
  source: 'Curved cantilever, quarter circle (Castigliano)',
  where:
    'along its root pi P R^3 / 4 E I, across it P R^3 (3 pi / 4 - 2) / E I; out of its plane P R^3 (pi / 4 E I + (3 pi / 4 - 2) / G J); R 50',
  how,
};
const [RADIUS, PIECES] = [50, 2000];
const arc = (F: Vec3) => {
  const at = (i: number): [number, number, number] => {
    const t = (Math.PI / 2) * (i / PIECES);
    return [RADIUS * Math.sin(t), RADIUS * (1 - Math.cos(t)), 0];
  };
  const { displacements } = solved({
    nodes: [
      { id: 'root', xyz: at(0) },
      { id: 'tip', xyz: at(PIECES) },
    ],
    materials: { m: { E, G } },
    sections: { s: { A: 1e9, Iy: I, Iz: I, J } },
    members: [
      {
        id: 'arc',
        i: 'root',
        j: 'tip',
        material: 'm',
        orientation: [0, 0, 1],
        segments: Array.from({ length: PIECES }, (_, i) => ({
          section: 's',
          ...(i + 1 < PIECES ? { to: at(i + 1) } : {}),
        })),
      },
    ],
    supports: [{ node: 'root', fixed: ALL }],
    nodalLoads: [{ node: 'tip', F: [...F, 0, 0, 0] }],
  });
  return displacements.tip ?? [];
};
const CHORDS = '2000 chords: the error falls with the square of their number, under 2e-7 here';
against(ARC, 'quarter circle, pushed along its root: tip', () =>
  exact((Math.PI * P * RADIUS ** 3) / (4 * EI), arc([P, 0, 0])[0] ?? Number.NaN, CHORDS),
);
against(ARC, 'quarter circle, pushed in its plane across its root: tip', () =>
  exact((P * RADIUS ** 3 * ((3 * Math.PI) / 4 - 2)) / EI, arc([0, P, 0])[1] ?? Number.NaN, CHORDS),
);
against(ARC, 'quarter circle, pushed out of its plane: tip', () =>
  exact(
    P * RADIUS ** 3 * (Math.PI / (4 * EI) + ((3 * Math.PI) / 4 - 2) / (G * J)),
    arc([0, 0, P])[2] ?? Number.NaN,
    CHORDS,
  ),
);
