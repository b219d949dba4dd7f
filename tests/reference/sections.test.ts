/** Sections against a book's tube, closed forms of ellipses, and the cuts of a mesh against the solid it was made from. */
import { boneAxis } from '../../src/anatomy';
import { cutBone } from '../../src/anatomy/inside';
import type { Mesh } from '../../src/anatomy/types';
import { sectionOf } from '../../src/mechanics';
import { outlineAt } from '../../src/mechanics/member';
import { extremesOf, fieldOf } from '../../src/mechanics/stress';
import { against } from '../tools/against';
import { footOf, shelled } from '../tools/inside-material';
import { ellipse, rectangle } from '../tools/members';
import { tubeFoot } from '../tools/tubes';

const PILKEY = {
  source: 'Pilkey, Analysis and Design of Elastic Beams, as in section-properties test_pilkey.py',
  where: 'example B.1, elliptic tube, mid-line semi-axes 8 and 5, wall 1',
  how: 'read',
} as const;
// The book's tube has a constant wall; ours is the space between ellipses 8.5 x 5.5 and 7.5 x 4.5, thinner between the axes.
const tube = sectionOf(ellipse(5.5, 8.5), { centre: [0, 0], semiDorsalMm: 4.5, semiLateralMm: 7.5 });
const SHAPE = 'wall between two ellipses against a constant wall: up to 2 %';
against(PILKEY, 'elliptic tube: area', () => ({ expected: 41.386, got: tube.areaMm2, tolerance: 0.83, why: SHAPE }));
against(PILKEY, 'elliptic tube: second moment about the long axis', () => ({
  expected: 580.4,
  got: tube.iLateralMm4,
  tolerance: 11.6,
  why: SHAPE,
}));
against(PILKEY, 'elliptic tube: second moment about the short axis', () => ({
  expected: 1180.3,
  got: tube.iDorsalMm4,
  tolerance: 23.6,
  why: SHAPE,
}));
against(PILKEY, 'elliptic tube: torsion constant', () => ({
  expected: 1537.4,
  got: tube.jMm4,
  tolerance: 30.7,
  why: 'our torsion constant is exact for similar ellipses only; and the wall as above: 2 %',
}));
against(PILKEY, 'elliptic tube: section modulus up-down', () => ({
  expected: 105.541,
  got: tube.iLateralMm4 / tube.toDorsalMm,
  tolerance: 2.2,
  why: SHAPE,
}));
against(PILKEY, 'elliptic tube: section modulus sideways', () => ({
  expected: 138.862,
  got: tube.iDorsalMm4 / tube.toLateralMm,
  tolerance: 2.8,
  why: SHAPE,
}));

const ROUND_TUBE = { ...PILKEY, where: 'example 5.7, round tube 8 x 0.25' };
const round = sectionOf(ellipse(4, 4), { centre: [0, 0], semiDorsalMm: 3.75, semiLateralMm: 3.75 });
against(ROUND_TUBE, 'thin round tube: torsion constant', () => ({
  expected: 91.49,
  got: round.jMm4,
  tolerance: 0.02,
  why: 'exact for circles; the book prints four digits',
}));

const ELLIPSE = {
  source: 'Area and second moments of an ellipse',
  where: 'pi a b, pi/4 a b^3, pi a^3 b^3 / (a^2 + b^2)',
  how: 'common practice',
} as const;
const POLYGON = '720-gon of equal area: second moments within 1e-9';
const hollow = sectionOf(ellipse(5.5, 8.5), { centre: [0, 0], semiDorsalMm: 4.5, semiLateralMm: 7.5 });
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
const similar = sectionOf(ellipse(4, 5), { centre: [0, 0], semiDorsalMm: 2, semiLateralMm: 2.5 });
against(ELLIPSE, 'similar ellipses 5 x 4, ratio 0.5: torsion constant', () => ({
  expected: 574.6816,
  got: similar.jMm4,
  tolerance: 1e-3,
  why: POLYGON,
}));

const UNSYMMETRIC = {
  source: 'Unsymmetric bending of a rectangle turned against its axes',
  where: 'moment resolved on the principal axes: M cos / W1 + M sin / W2',
  how: 'common practice',
} as const;
const turn = 0.4;
const turned = rectangle(12, 5).map(
  ([y, z]) => [y * Math.cos(turn) - z * Math.sin(turn), y * Math.sin(turn) + z * Math.cos(turn)] as const,
);
const turnedSection = sectionOf(turned, null);
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
  return sectionOf(outlineAt(mesh, axis, s).points, null);
};
for (const s of [21.3, 35, 52.1]) {
  const [a, b] = [6 - s / 70, 5.5];
  against(CUT, `mesh cut at ${s} mm: area`, () => ({
    expected: Math.PI * a * b,
    got: cut(s).areaMm2,
    tolerance: 2e-3 * Math.PI * a * b,
    why: FLAT,
  }));
  against(CUT, `mesh cut at ${s} mm: second moment up-down`, () => ({
    expected: (Math.PI / 4) * a * b ** 3,
    got: cut(s).iLateralMm4,
    tolerance: 4e-3 * (Math.PI / 4) * a * b ** 3,
    why: FLAT,
  }));
  against(CUT, `mesh cut at ${s} mm: second moment sideways`, () => ({
    expected: (Math.PI / 4) * a ** 3 * b,
    got: cut(s).iDorsalMm4,
    tolerance: 4e-3 * (Math.PI / 4) * a ** 3 * b,
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
const outside = Array.from({ length: 240 }, (_, i): [number, number] => {
  const t = (2 * Math.PI * i) / 240;
  const [x, y] = [8 * Math.cos(t), 5 * Math.sin(t)];
  const [nx, ny] = [x / 64, y / 25];
  const k = 0.5 / Math.hypot(nx, ny);
  return [x + k * nx, y + k * ny];
});
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
