/** Area, second moments and bending of sections against books' examples, closed forms, and the solid that a mesh was made from. */
import { boneAxis } from '../../src/anatomy';
import { cutBone } from '../../src/anatomy/inside';
import type { Point2 } from '../../src/anatomy/inside/polygon';
import type { Mesh } from '../../src/anatomy/types';
import { bendingSectionOf } from '../../src/mechanics';
import { extremesOf, fieldOf } from '../../src/mechanics/stress';
import { against } from '../tools/against';
import { footOf, shelled } from '../tools/inside-material';
import { beside, ellipse, rectangle } from '../tools/members';
import { outlineAt } from '../tools/outline';
import { tubeFoot } from '../tools/tubes';

const PILKEY = {
  source: 'Pilkey, Analysis and Design of Elastic Beams, as in section-properties test_pilkey.py',
  where: 'example B.1, elliptic tube, mid-line semi-axes 8 and 5, wall 1',
  how: 'read',
} as const;
/** The same wall everywhere: half a millimetre to each side of the mid-line. */
const tube = bendingSectionOf(beside(5, 8, 0.5), [beside(5, 8, -0.5)]);
const SPLINE = 'the book lays splines through points of the mid-line: within 3e-4';
const near = (name: string, expected: number, got: number): void =>
  against(PILKEY, `elliptic tube: ${name}`, () => ({ expected, got, tolerance: 3e-4 * expected, why: SPLINE }));
near('area', 41.38626, tube.areaMm2);
near('second moment up-down', 580.42697, tube.iLateralMm4);
near('second moment sideways', 1180.3312, tube.iDorsalMm4);
near('greatest second moment', 1180.3312, tube.iMostMm4);
near('least second moment', 580.42697, tube.iLeastMm4);
near('section modulus up-down', 105.54076, tube.iLateralMm4 / tube.toDorsalMm);
near('section modulus sideways', 138.86247, tube.iDorsalMm4 / tube.toLateralMm);

const ELLIPSE = {
  source: 'Area and second moments of an ellipse',
  where: 'pi a b, pi/4 a b^3',
  how: 'common practice',
} as const;
const POLYGON = '720-gon of equal area: second moments within 1e-9';
const hollow = bendingSectionOf(ellipse(5.5, 8.5), [ellipse(4.5, 7.5)]);
against(ELLIPSE, 'space between two ellipses: area', () => ({
  expected: 40.8407,
  got: hollow.areaMm2,
  tolerance: 1e-4,
  why: `${POLYGON}; expected to six digits`,
}));
against(ELLIPSE, 'space between two ellipses: second moment up-down', () => ({
  expected: 573.9297,
  got: hollow.iLateralMm4,
  tolerance: 1e-3,
  why: POLYGON,
}));
against(ELLIPSE, 'space between two ellipses: second moment sideways', () => ({
  expected: 1161.8002,
  got: hollow.iDorsalMm4,
  tolerance: 1e-3,
  why: POLYGON,
}));

const CORNERS = "the 720-gon's corners lie 6e-6 outside the ellipse";
against(ELLIPSE, 'space between two ellipses: section modulus up-down', () => ({
  expected: 104.3509,
  got: hollow.iLateralMm4 / hollow.toDorsalMm,
  tolerance: 1e-3,
  why: CORNERS,
}));
against(ELLIPSE, 'space between two ellipses: section modulus sideways', () => ({
  expected: 136.6824,
  got: hollow.iDorsalMm4 / hollow.toLateralMm,
  tolerance: 1e-3,
  why: CORNERS,
}));

// A Z of 12 in with flanges of 2 in; x of the book is lateral here, y dorsal.
const PEERY = {
  source: 'Peery, Aircraft Structures, as in section-properties test_peery.py',
  where: 'section 7.2, example 1: Z section under two moments, in and psi',
  how: 'read',
} as const;
const z: Point2[] = (
  [
    [-1, -6],
    [5, -6],
    [5, -4],
    [1, -4],
    [1, 6],
    [-5, 6],
    [-5, 4],
    [-1, 4],
  ] as const
).map(([x, y]) => [y, x]);
const zSection = bendingSectionOf(z);
// Mx -100 000 presses what lies at +y, My 10 000 what lies at +x: with our signs, bending down and inwards.
const zField = fieldOf(zSection, 0, 1e5, -1e4);
const DIGITS = 'the book rounds to three digits';
const printed = (name: string, expected: number, got: number): void =>
  against(PEERY, `Z section: ${name}`, () => ({ expected, got, tolerance: 2e-3 * Math.abs(expected), why: DIGITS }));
printed('second moment about x', 693.3, zSection.iLateralMm4);
printed('second moment about y', 173.3, zSection.iDorsalMm4);
printed('product of inertia', -240, zSection.iProductMm4);
printed('greatest second moment', 787, zSection.iMostMm4);
printed('least second moment', 79.5, zSection.iLeastMm4);
for (const [point, x, y, stress] of [
  ['A', -5, 4, 1210],
  ['B', -5, 6, 580],
  ['C', 1, 6, -2384],
] as const) {
  printed(`stress at ${point}`, stress, zField[0] + zField[1] * y + zField[2] * x);
}

const ANGLE = { ...PILKEY, where: 'example B.3, L section of unequal legs' };
const [b, h, t] = [5.625, 7.625, 0.75];
const angle = bendingSectionOf(
  (
    [
      [-t / 2, -t / 2],
      [b, -t / 2],
      [b, t / 2],
      [t / 2, t / 2],
      [t / 2, h],
      [-t / 2, h],
    ] as const
  ).map(([x, y]) => [y, x]),
);
const SEVEN = 'printed to seven digits';
const exact = (name: string, expected: number, got: number): void =>
  against(ANGLE, `L section: ${name}`, () => ({ expected, got, tolerance: 1e-5 * Math.abs(expected), why: SEVEN }));
exact('second moment about x', 63.42455, angle.iLateralMm4);
exact('second moment about y', 30.72142, angle.iDorsalMm4);
exact('product of inertia', -25.85377, angle.iProductMm4);
exact('greatest second moment', 77.66369, angle.iMostMm4);
exact('least second moment', 16.48228, angle.iLeastMm4);
exact('roll, degrees', -28.84407, (angle.rollRad * 180) / Math.PI);

const UNSYMMETRIC = {
  source: 'Unsymmetric bending of a rectangle turned against its axes',
  where: 'moment resolved on the principal axes: M cos / W1 + M sin / W2',
  how: 'common practice',
} as const;
const turn = 0.4;
const turned = rectangle(12, 5).map(
  ([y, z]) => [y * Math.cos(turn) - z * Math.sin(turn), y * Math.sin(turn) + z * Math.cos(turn)] as const,
);
const turnedSection = bendingSectionOf(turned);
against(UNSYMMETRIC, 'rectangle 12 x 5 turned 0.4 rad, 1000 N mm up-down: extreme stress', () => ({
  expected: (1000 * Math.cos(turn) * 6) / (5 * 144) + ((1000 * Math.sin(turn) * 2.5 * 12) / (12 * 12 * 125)) * 12,
  got: extremesOf(turnedSection, turned, fieldOf(turnedSection, 0, 1000, 0)).tensionMPa,
  tolerance: 1e-9,
  why: 'two exact ways to the same stress',
}));

// A bone's cut: an elliptic bar as a mesh of 64 flat sides, cut between its rows of vertices, against the ellipse it stands for.
const CUT = { ...ELLIPSE, source: 'Area and second moments of an ellipse, cut from a mesh' } as const;
const FLAT = '64 flat sides inside the ellipse: area 1.6e-3 below, second moments 3.2e-3 below';
const foot = tubeFoot({ lengthMm: 70, semi: (u) => [6 - u, 5.5] });
const axis = boneAxis(foot, 'metatarsal5');
const mesh = foot.bones.get('metatarsal5');
const cut = (s: number) => {
  if (!mesh) throw new Error('no mesh');
  return bendingSectionOf(outlineAt(mesh, axis, s));
};
for (const s of [21.3, 35, 52.1]) {
  const [p, q] = [6 - s / 70, 5.5];
  against(CUT, `mesh cut at ${s} mm: area`, () => ({
    expected: Math.PI * p * q,
    got: cut(s).areaMm2,
    tolerance: 2e-3 * Math.PI * p * q,
    why: FLAT,
  }));
  against(CUT, `mesh cut at ${s} mm: second moment up-down`, () => ({
    expected: (Math.PI / 4) * p * q ** 3,
    got: cut(s).iLateralMm4,
    tolerance: 4e-3 * (Math.PI / 4) * p * q ** 3,
    why: FLAT,
  }));
  against(CUT, `mesh cut at ${s} mm: second moment sideways`, () => ({
    expected: (Math.PI / 4) * p ** 3 * q,
    got: cut(s).iDorsalMm4,
    tolerance: 4e-3 * (Math.PI / 4) * p ** 3 * q,
    why: FLAT,
  }));
}

// A cut through a bone under an even cortex, against the book's tube of constant wall: its outline lies half a millimetre outside
// the ellipse 8 x 5, the border half a millimetre inside.
const prism = (outline: readonly (readonly [number, number])[], lengthMm: number): Mesh => {
  const n = outline.length;
  const ends = [0, lengthMm].flatMap((z) => [...outline, [0, 0] as const].map(([x, y]) => [x, y, z]));
  const sides = outline.flatMap((_, i) => {
    const [a, b, c, d] = [i, (i + 1) % n, n + 1 + ((i + 1) % n), n + 1 + i];
    return [a, b, c, a, c, d, n, b, a, 2 * n + 1, d, c];
  });
  return { positions: Float32Array.from(ends.flat()), indices: Uint32Array.from(sides) };
};
const outside = beside(5, 8, 0.5, 240).map(([y, x]): [number, number] => [x, y]);
const oval = footOf(prism(outside, 60));
const wallAcross = () => {
  const found = cutBone(oval, 'metatarsal5', [0, 0, 30], [0, 0, 1], shelled(1));
  if (!found) throw new Error('no cut');
  return found.properties.cortex;
};
const CUT_TUBE = { ...PILKEY, where: `${PILKEY.where}, cut from a mesh` };
const PRINTED = 'border sampled every 0.3 mm, 240 flat sides, and the book builds its tube of pieces: 0.25 %';
against(CUT_TUBE, 'elliptic tube of constant wall, cut: area', () => ({
  expected: 41.386,
  got: wallAcross().areaMm2,
  tolerance: 0.11,
  why: PRINTED,
}));
against(CUT_TUBE, 'elliptic tube of constant wall, cut: second moment about the long axis', () => ({
  expected: 580.4,
  got: wallAcross().principal.smallestMm4,
  tolerance: 1.5,
  why: PRINTED,
}));
against(CUT_TUBE, 'elliptic tube of constant wall, cut: second moment about the short axis', () => ({
  expected: 1180.3,
  got: wallAcross().principal.largestMm4,
  tolerance: 3,
  why: PRINTED,
}));
