/**
 * Straight bones as hollow ellipses under forces at the head, through the frame solver and the stress over a section. The sizes of the
 * bones are drawn (from memory), what follows from them is closed form: nothing here says anything about real metatarsals.
 */
import { radians } from '../../src/units';
import { against, type Outside } from '../tools/against';
import { hollowEllipse, loadBone, stressOn } from '../tools/straight-bone';

const BENDING = {
  source: 'Straight beam under force and bending (strength of materials)',
  how: 'common practice',
} as const;
const second = { ...BENDING, where: 'N / A + M c / I; hollow ellipse 9 x 8, cortex 2, 17 GPa' };
const fifth = { ...BENDING, where: 'N / A + both M c / I; hollow ellipse 8 x 10, cortex 2.2, 17 GPa' };
const DIGITS = 'half a unit of the last digit that was worked out';
const E_MPA = 17000;
const MICRO = 1e6;

const MT2 = hollowEllipse(9, 8, 2);
const MT5 = hollowEllipse(8, 10, 2.2);

const row = (where: Outside, name: string, expected: number, got: number, tolerance: number): void =>
  against(where, name, () => ({ expected, got, tolerance, why: DIGITS }));

const TAPER = {
  source: 'Tapered round cantilever (strength of materials)',
  where: 'tip 8, root 12, L 60, P 100: 32 P L / pi d^3 at the root, which carries the most up to 1.5 times the tip',
  how: 'common practice',
} as const;
/** 100 N at the tip, cut so far from it, where the bar is 4 L-th parts thicker. */
const taperStress = (fromTipMm: number): number => {
  const cut = hollowEllipse(8 + fromTipMm / 15, 8 + fromTipMm / 15);
  return stressOn(cut, loadBone({ cut, lengthMm: fromTipMm, forceN: [0, 100, 0] }).forces).tensionMPa;
};
against(TAPER, 'tapered round cantilever: stress at the root', () => ({
  expected: 35.367765,
  got: taperStress(60),
  tolerance: 35.367765e-6,
  why: 'closed form; the ring of 7200 corners lies 6e-8 outside',
}));
against(TAPER, 'tapered round cantilever: where the stress is greatest, mm from the tip', () => ({
  expected: 60,
  got: [30, 40, 50, 55, 58, 60].reduce((a, b) => (taperStress(b) > taperStress(a) ? b : a)),
  tolerance: 0,
  why: 'the root itself is one of the places',
}));

const eccentric = stressOn(MT2, loadBone({ cut: MT2, lengthMm: 60, forceN: [-300, 0, 0], aboveMm: 2 }).forces);
row(second, 'bone pressed by 300 N, 2 mm above its axis: dorsal stress, MPa', -17.66143, eccentric.dorsal, 5e-6);
row(second, 'bone pressed by 300 N, 2 mm above its axis: plantar stress, MPa', 2.97021, eccentric.plantar, 5e-6);

const lifted = loadBone({ cut: MT2, lengthMm: 60, forceN: [0, 100, 0] });
const liftedStress = stressOn(MT2, lifted.forces);
row(second, 'bone of 60 mm, 100 N up at the head: moment, N mm', 6000, lifted.forces.bendingUpDownNmm, 6e-3);
row(second, 'bone of 60 mm, 100 N up at the head: plantar stress, MPa', 103.158, liftedStress.plantar, 5e-4);
row(second, 'bone of 60 mm, 100 N up at the head: dorsal stress, MPa', -103.158, liftedStress.dorsal, 5e-4);
row(second, 'bone of 60 mm, 100 N up at the head: microstrain', 6068, (MICRO * liftedStress.tensionMPa) / E_MPA, 0.5);
row(second, 'bone of 60 mm, 100 N up at the head: rise of the head, mm', 1.618168, lifted.riseMm, 5e-7);

for (const [slopeDeg, moment, dorsal, plantar] of [
  [15, 9659.258, -167.656, 164.488],
  [25, 9063.078, -158.409, 153.235],
  [35, 8191.52, -144.348, 137.326],
] as const) {
  const { forces } = loadBone({ cut: MT2, lengthMm: 40, slopeRad: radians(slopeDeg), forceN: [0, 250, 0] });
  const stress = stressOn(MT2, forces);
  const name = `bone at ${slopeDeg} degrees to the ground, 250 N up 40 mm ahead`;
  row(second, `${name}: moment, N mm`, moment, forces.bendingUpDownNmm, 5e-4);
  row(second, `${name}: dorsal stress, MPa`, dorsal, stress.dorsal, 5e-4);
  row(second, `${name}: plantar stress, MPa`, plantar, stress.plantar, 5e-4);
}

const outwards = loadBone({ cut: MT5, lengthMm: 50, forceN: [-30, 100, -50] });
const both = stressOn(MT5, outwards.forces);
const only = (part: 'bendingUpDownNmm' | 'bendingSidewaysNmm'): number =>
  stressOn(MT5, {
    ...outwards.forces,
    axialN: 0,
    bendingUpDownNmm: 0,
    bendingSidewaysNmm: 0,
    [part]: outwards.forces[part],
  }).tensionMPa;
const pushed = 'bone of 50 mm, head pushed 100 N up, 50 N inwards, 30 N back';
row(fifth, `${pushed}: stress of up-down bending, MPa`, 83.857, only('bendingUpDownNmm'), 5e-4);
row(fifth, `${pushed}: stress of sideways bending, MPa`, 34.562, only('bendingSidewaysNmm'), 5e-4);
row(fifth, `${pushed}: stress of the push back, MPa`, -0.638, outwards.forces.axialN / MT5.section.areaMm2, 5e-4);
row(fifth, `${pushed}: largest pull, MPa`, 90.06, both.tensionMPa, 5e-3);
row(fifth, `${pushed}: largest pressure, MPa`, -91.34, both.compressionMPa, 5e-3);
row(fifth, `${pushed}: microstrain of the pull`, 5298, (MICRO * both.tensionMPa) / E_MPA, 0.5);
const sideOf = (rad: number): string =>
  `${Math.cos(rad) < 0 ? 'plantar' : 'dorsal'}-${Math.sin(rad) > 0 ? 'lateral' : 'medial'}`;
against(fifth, `${pushed}: side that is pulled most`, () => ({
  expected: 'plantar-lateral',
  got: sideOf(both.tensionAtRad),
}));
against(fifth, `${pushed}: side that is pressed most`, () => ({
  expected: 'dorsal-medial',
  got: sideOf(both.compressionAtRad),
}));

const ANGLE = {
  ...BENDING,
  where: 'bending goes with the part of the force across the bone: sin 30.29 / sin 40.29 degrees',
} as const;
const bendingAt = (deg: number): number => {
  const forceN = [-250 * Math.cos(radians(deg)), 250 * Math.sin(radians(deg)), 0] as const;
  const { forces } = loadBone({ cut: MT2, lengthMm: 40, forceN });
  return stressOn(MT2, { ...forces, axialN: 0 }).tensionMPa;
};
row(
  ANGLE,
  'force at 30.29 over one at 40.29 degrees to the bone: bending stress',
  0.78,
  bendingAt(30.29) / bendingAt(40.29),
  5e-4,
);

const BRIDGE = { ...BENDING, where: 'M = E strain I / c on the hollow ellipse 9 x 8, cortex 2, 17 GPa' };
const microstrainOf = (nm: number): number =>
  (MICRO *
    stressOn(MT2, {
      axialN: 0,
      shearDorsalN: 0,
      shearLateralN: 0,
      torsionNmm: 0,
      bendingSidewaysNmm: 0,
      bendingUpDownNmm: 1000 * nm,
    }).tensionMPa) /
  E_MPA;
for (const [microstrain, nm] of [
  [1534, 1.517],
  [1897, 1.876],
] as const)
  row(
    BRIDGE,
    `moment that strains the bone by ${microstrain} microstrain, N m`,
    nm,
    microstrain / microstrainOf(1),
    5e-4,
  );
for (const [nm, microstrain] of [
  [2, 2023],
  [6, 6068],
] as const)
  row(BRIDGE, `microstrain of ${nm} N m`, microstrain, microstrainOf(nm), 0.5);
