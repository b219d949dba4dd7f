/** Torsion and shear of sections against books' tables and closed forms. Poisson's ratio nought in shear, as ours neglects it. */
import type { Point2 } from '../../src/anatomy/inside/polygon';
import { sectionOf } from '../../src/mechanics';
import { against } from '../tools/against';
import { beside, ellipse, rectangle } from '../tools/members';

const ELEMENTS = "elements of a wall's 0.6 or a 48th of the border: up to 0.2 %";
const STRESS = "mean stress over one element's length of border: up to 2 %";

const CLOSED = {
  source: 'Saint-Venant torsion of ellipses, closed form',
  where: 'J = pi a^3 b^3 (1 - q^4) / (a^2 + b^2), tau = 2 T / pi a b^2 (1 - q^4) at the ends of the short axis',
  how: 'common practice',
} as const;
const similar = sectionOf(ellipse(4, 5), [ellipse(2, 2.5)]);
against(CLOSED, 'similar ellipses 5 x 4, ratio 0.5: torsion constant', () => ({
  expected: 574.6816,
  got: similar.jMm4,
  tolerance: 0.002 * 574.6816,
  why: ELEMENTS,
}));
against(CLOSED, 'similar ellipses 5 x 4, ratio 0.5: shear stress of 1000 N mm', () => ({
  expected: 8.488264,
  got: 1000 * similar.torsionPeakPerNmm,
  tolerance: 0.02 * 8.488264,
  why: STRESS,
}));
against(CLOSED, 'similar ellipses 5 x 4: the stress is greatest at the short axis', () => ({
  expected: 'short axis',
  got: Math.abs(similar.torsionPeakAtMm[0]) > 3.9 ? 'short axis' : 'elsewhere',
}));

const SERIES = {
  source: 'Timoshenko and Goodier, Theory of Elasticity, torsion of rectangular bars',
  where: 'J = a b^3 / 3 (1 - 192 b / pi^5 a sum tanh(n pi a / 2 b) / n^5), n odd; tau = T / k2 a b^2',
  how: 'from memory',
} as const;
const seriesJ = (a: number, b: number): number => {
  let sum = 0;
  for (let n = 1; n < 60; n += 2) sum += Math.tanh((n * Math.PI * a) / (2 * b)) / n ** 5;
  return ((a * b ** 3) / 3) * (1 - ((192 * b) / (Math.PI ** 5 * a)) * sum);
};
for (const [ratio, k2] of [
  [1, 0.208],
  [1.5, 0.231],
  [2, 0.246],
  [3, 0.267],
  [4, 0.282],
  [10, 0.312],
] as const) {
  const bar = sectionOf(rectangle(10 * ratio, 10));
  against(SERIES, `rectangle ${ratio} to 1: torsion constant`, () => ({
    expected: seriesJ(10 * ratio, 10),
    got: bar.jMm4,
    tolerance: 0.002 * seriesJ(10 * ratio, 10),
    why: ELEMENTS,
  }));
  against(SERIES, `rectangle ${ratio} to 1: largest shear stress of a unit torque`, () => ({
    expected: 1 / (k2 * 1000 * ratio),
    got: bar.torsionPeakPerNmm,
    tolerance: 0.02 / (k2 * 1000 * ratio),
    why: STRESS,
  }));
}

const PILKEY = {
  source: 'Pilkey, Analysis and Design of Elastic Beams, as in section-properties test_pilkey.py',
  how: 'read',
} as const;
type Section = ReturnType<typeof sectionOf>;
const check = (where: string, tolerance: number, why: string, rows: readonly (readonly [string, number, number])[]) => {
  for (const [name, expected, got] of rows) {
    against({ ...PILKEY, where }, name, () => ({ expected, got, tolerance: tolerance * Math.abs(expected), why }));
  }
};
/** The book's x is lateral here, its y dorsal. */
const drawn = (points: readonly (readonly [number, number])[]): Section =>
  sectionOf(points.map(([x, y]): Point2 => [y, x]));
const most = (s: Section): number => s.areaMm2 / s.shearAreaMostMm2;
const least = (s: Section): number => s.areaMm2 / s.shearAreaLeastMm2;
const centre = (s: Section, i: 0 | 1): number => s.shearCentreMm[i] - s.centroidMm[i];

const tube = sectionOf(beside(5, 8, 0.5), [beside(5, 8, -0.5)]);
check('example B.1, elliptic tube, mid-line 8 x 5, wall 1', 0.003, 'elements, and the book lays splines: 0.3 %', [
  ['elliptic tube: torsion constant', 1537.38165, tube.jMm4],
  ['elliptic tube: shear coefficient along the long axis', 1.51457, most(tube)],
  ['elliptic tube: shear coefficient along the short axis', 3.05985, least(tube)],
]);

const BREDT = {
  source: 'Bredt, torsion of thin closed walls',
  where: '4 Am^2 t / U; mid-line 8 x 5, wall 1: Am 125.663706, U 41.386276',
  how: 'common practice',
} as const;
against(BREDT, 'elliptic tube: torsion constant as a thin wall', () => ({
  expected: 1526.242,
  got: tube.jMm4,
  tolerance: 13.8,
  why: 'the formula leaves out how the wall itself twists: U t^3 / 3 at most',
}));

const round = sectionOf(ellipse(4, 4, 128), [ellipse(3.75, 3.75, 128)]);
check('example 5.7, round tube 8 x 0.25', 0.005, 'elements round 128 facets; the book prints three digits', [
  ['thin round tube: torsion constant', 91.49, round.jMm4],
  ['thin round tube: shear stress of a unit torque', 0.0437, round.torsionPeakPerNmm],
]);
const arc = (r: number, sense: 1 | -1): Point2[] =>
  Array.from({ length: 129 }, (_, i) => {
    const t = sense * (Math.PI - 1e-3 / r) * (i / 64 - 1);
    return [r * Math.cos(t), r * Math.sin(t)];
  });
const slit = sectionOf([...arc(4, 1), ...arc(3.75, -1)]);
check('example 5.7, the same tube slit', 0.06, 'the book prints two digits and takes the wall as thin: 6 %', [
  ['slit tube: torsion constant', 0.13, slit.jMm4],
  ['slit tube: shear stress of a unit torque', 1.92, slit.torsionPeakPerNmm],
]);

const third = Math.sqrt(3) / 2;
const triangle = drawn([
  [-0.5, 0],
  [0.5, 0],
  [0, third],
]);
check('example 5.6, equilateral triangle', 0.002, ELEMENTS, [
  ['equilateral triangle: torsion constant h^4 / 15 sqrt 3', third ** 4 / (15 * Math.sqrt(3)), triangle.jMm4],
]);

const square = sectionOf(rectangle(2, 1));
check('example 6.5, rectangle, Poisson ratio 0', 0.001, ELEMENTS, [
  ['rectangle: shear coefficient along the long side', 1.2, most(square)],
  ['rectangle: shear coefficient along the short side', 1.2, least(square)],
]);

const trapezium = drawn([
  [-0.5, -1],
  [0.5, -1],
  [0.5, 2],
  [-0.5, 1],
]);
check('example 6.6, trapezium, Poisson ratio 0', 0.002, ELEMENTS, [
  ['trapezium: shear coefficient across its length', 1.323148, least(trapezium)],
  ['trapezium: shear coefficient along its length', 1.15978, most(trapezium)],
  ['trapezium: shear centre from the centroid, x', -0.06946, centre(trapezium, 1)],
  ['trapezium: shear centre from the centroid, y', -0.072013, centre(trapezium, 0)],
  ['trapezium: roll, degrees', 4.860108, (Math.abs(trapezium.rollRad) * 180) / Math.PI],
]);

const leg = (up: number): Section =>
  drawn([
    [0, 0],
    [10.5, 0],
    [10.5, 1],
    [1, 1],
    [1, up],
    [0, up],
  ]);
const [even, uneven] = [leg(10.5), leg(15.5)];
const CORNER = 'the stress has no bound in the corner that points inwards, and even elements feel it: 0.8 %';
check('example 6.7, L sections, Poisson ratio 0', 0.008, CORNER, [
  ['L of even legs: torsion constant', 6.539189, even.jMm4],
  ['L of even legs: shear centre from the centroid', -2.46475, centre(even, 0)],
  ['L of even legs: shear coefficient from leg to leg', 2.301059 - 0.014969, most(even)],
  ['L of even legs: shear coefficient through the corner', 2.301059 + 0.014969, least(even)],
  ['L of uneven legs: torsion constant', 8.211705, uneven.jMm4],
  ['L of uneven legs: shear centre from the centroid, x', -1.997641, centre(uneven, 1)],
  ['L of uneven legs: shear centre from the centroid, y', -4.423925, centre(uneven, 0)],
]);

const channel = drawn([
  [-0.5, -9.5],
  [8, -9.5],
  [8, -8.5],
  [0.5, -8.5],
  [0.5, 8.5],
  [8, 8.5],
  [8, 9.5],
  [-0.5, 9.5],
]);
check('example B.2, channel, Poisson ratio 1/3', 0.008, CORNER, [
  ['channel: torsion constant', 11.28862, channel.jMm4],
  ['channel: shear centre', -2.86769, channel.shearCentreMm[1]],
  ['channel: shear coefficient along the flanges', 3.40789, least(channel)],
  ['channel: shear coefficient along the web', 2.15337, most(channel)],
]);

const COWPER = {
  source: 'Cowper 1966, J Appl Mech 33:335, shear coefficient of a circle',
  where: '6 (1 + nu) / (7 + 6 nu) at nu = 0',
  how: 'from memory',
} as const;
const circle = sectionOf(ellipse(5, 5));
against(COWPER, 'circle: shear area over area', () => ({
  expected: 6 / 7,
  got: circle.shearAreaMostMm2 / circle.areaMm2,
  tolerance: 0.001,
  why: ELEMENTS,
}));
