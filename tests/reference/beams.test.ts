/** The beam core against closed forms of the strength-of-materials textbooks and published answers. mm, N, MPa. */
import { deflectionsOf } from '../../src/mechanics';
import { internalForcesAt } from '../../src/mechanics/forces';
import { against } from '../tools/against';
import { ellipse, even, membersStations, push, rectangle } from '../tools/members';

const TEXTBOOK = {
  source: 'Roark, Formulas for Stress and Strain (cantilever, end and even load)',
  where: 'beam table',
  how: 'common practice',
} as const;
const ROUNDING = 'closed form, curvature integrated over 240 stretches';

// L 60, P 100, w 2, E 17000, I 250: a rectangle 10 x 3 has I 250.
const [LENGTH, E] = [60, 17000];
const bar = { lengthMm: LENGTH, outline: () => rectangle(10, 3) };
const end = membersStations(bar, push(LENGTH, { dorsalN: 100 }));
const spread = membersStations(bar, even(LENGTH, 2));
const tip = <T>(list: readonly T[]): T => list[list.length - 1] as T;

against(TEXTBOOK, 'cantilever, end load: moment at the root P L', () => ({
  expected: 6000,
  got: end[0]?.bendingUpDownNmm ?? Number.NaN,
  tolerance: 1e-9,
  why: 'one multiplication',
}));
against(TEXTBOOK, 'cantilever, end load: tip deflection P L^3 / 3 E I', () => ({
  expected: 1.694117647,
  got: tip(deflectionsOf(end, E)).dorsalMm,
  tolerance: 1e-6,
  why: `${ROUNDING}; exact for a linear moment`,
}));
against(TEXTBOOK, 'cantilever, end load: tip slope P L^2 / 2 E I', () => ({
  expected: 0.042352941,
  got: tip(deflectionsOf(end, E)).slopeDorsal,
  tolerance: 1e-8,
  why: ROUNDING,
}));
against(TEXTBOOK, 'cantilever, even load: moment at the root w L^2 / 2', () => ({
  expected: 3600,
  got: spread[0]?.bendingUpDownNmm ?? Number.NaN,
  tolerance: 1e-9,
  why: 'closed integral of the load',
}));
against(TEXTBOOK, 'cantilever, even load: tip deflection w L^4 / 8 E I', () => ({
  expected: 0.762352941,
  got: tip(deflectionsOf(spread, E)).dorsalMm,
  tolerance: 2e-5,
  why: 'moment is quadratic, taken as linear within 240 stretches: error about 1 in 50 000',
}));

// Round cantilever, 8 at the tip, 12 at the root, L 60, P 100.
const TAPER = {
  source: 'Gere and Timoshenko, Mechanics of Materials (tapered round cantilever)',
  where: 'deflection of nonprismatic beams',
  how: 'from memory',
} as const;
const tapered = membersStations(
  { lengthMm: LENGTH, outline: (s) => ellipse(6 - (2 * s) / LENGTH, 6 - (2 * s) / LENGTH), count: 240 },
  push(LENGTH, { dorsalN: 100 }),
);
against(TAPER, 'tapered round cantilever: tip deflection 64 P L^3 / 3 pi E d0 d1^3', () => ({
  expected: 0.624137032,
  got: tip(deflectionsOf(tapered, E)).dorsalMm,
  tolerance: 2e-5,
  why: 'curvature is curved within a stretch, and the circle is a 720-gon',
}));
against(TAPER, 'tapered round cantilever: stress at the root 32 P L / pi d1^3', () => ({
  expected: 35.367765,
  got: tapered[0]?.tensionMPa ?? Number.NaN,
  tolerance: 1e-3,
  why: 'corners of the 720-gon of equal area lie 1 in 80 000 outside the circle',
}));

// Tip 4, root 12: the peak is where the diameter is 1.5 times that of the tip, 15 mm behind it, not at the root.
const k = 8 / LENGTH;
const slim = membersStations(
  { lengthMm: LENGTH, outline: (s) => ellipse(6 - (4 * s) / LENGTH, 6 - (4 * s) / LENGTH, 360), count: 240 },
  push(LENGTH, { dorsalN: 100 }),
);
const peak = slim.reduce((a, b) => (b.tensionMPa > a.tensionMPa ? b : a));
against(TAPER, 'strong taper: the peak lies d0 / 2k behind the tip', () => ({
  expected: 4 / (2 * k),
  got: LENGTH - peak.sMm,
  tolerance: 0.25,
  why: 'one station',
}));
against(TAPER, 'strong taper: the peak is 128 P / 27 pi k d0^2', () => ({
  expected: ((128 / 27) * 100) / (Math.PI * k * 16),
  got: peak.tensionMPa,
  tolerance: 0.02,
  why: 'flat top between stations, 360-gon',
}));

const FREE = { source: 'Equilibrium of a rigid body', where: 'Newton, statics', how: 'common practice' } as const;
against(FREE, 'an eccentric pull bends: N e', () => ({
  expected: 600,
  got: internalForcesAt(push(40, { alongN: -300, at: [2, 0] }), 10, [0, 0]).bendingUpDownNmm,
  tolerance: 1e-9,
  why: 'one multiplication',
}));
