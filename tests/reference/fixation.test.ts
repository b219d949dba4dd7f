/**
 * Screws in bones and across gaps against strength of materials and sizes of published screws. Strengths and stiffnesses of whole
 * constructs are not checked: none was read that states bone, screw and load.
 */
import { shapeOf } from '../../src/explain/context';
import { compositeOf, partStressesOf, strainOf } from '../../src/mechanics';
import {
  bridgeOf,
  canalPlacesOf,
  gapStrainOf,
  gapTissueAt,
  longestIn,
  longestInArc,
  type Screw,
  screwInBone,
  screwInDraws,
  screwSectionOf,
  yieldMomentOf,
} from '../../src/mechanics/fixation';
import { against } from '../tools/against';
import { content, foot } from '../tools/explained';
import { ellipse, rectangle } from '../tools/members';

const TIMBER = {
  source: 'Timber beam with a steel plate on top, exercise 3A, transtutors.com',
  where: 'timber 140 x 400 (12.5 GPa), plate 200 x 8 (200 GPa), 30 kN m',
  how: 'read',
} as const;
const shifted = (points: readonly (readonly [number, number])[], y: number) =>
  points.map(([a, b]) => [a + y, b] as const);
const beam = compositeOf([
  { outline: shifted(rectangle(400, 140), 200), modulusMPa: 12500 },
  { outline: shifted(rectangle(8, 200), 404), modulusMPa: 200000 },
]);
const [timber, steel] = partStressesOf(beam, strainOf(beam, 0, 30e6, 0));
const THREE = 'printed to three digits';
against(TIMBER, 'timber and steel: stress at the top of the timber', () => ({
  expected: -2.76,
  got: timber?.compressionMPa ?? Number.NaN,
  tolerance: 0.005,
  why: THREE,
}));
against(TIMBER, 'timber and steel: stress at the bottom of the timber', () => ({
  expected: 5.36,
  got: timber?.tensionMPa ?? Number.NaN,
  tolerance: 0.005,
  why: THREE,
}));
against(TIMBER, 'timber and steel: stress in the steel', () => ({
  expected: -46.8,
  got: steel?.compressionMPa ?? Number.NaN,
  tolerance: 0.05,
  why: THREE,
}));

const BAR = {
  source: 'Round bar in bending (strength of materials)',
  where: 'I = pi d^4 / 64, yield moment = stress x 2 I / d',
  how: 'common practice',
} as const;
const titanium = (coreMm: number, cannulaMm = 0): Screw => ({ coreMm, cannulaMm, modulusMPa: 114000 });
const steelScrew = (coreMm: number): Screw => ({ coreMm, cannulaMm: 0, modulusMPa: 193000 });
/** Yield of Ti-6Al-4V ELI bar, ASTM F136, 795 MPa as a seller's page prints it. */
const YIELD = 795;
for (const [core, i, soft, stiff, yields] of [
  [4, 12.57, 1.43, 2.43, 5.0],
  [4.5, 20.13, 2.29, 3.88, 7.1],
  [5, 30.68, 3.5, 5.92, 9.8],
  [5.5, 44.92, 5.12, 8.67, 13.0],
  [6.5, 87.62, 9.99, 16.91, 21.4],
] as const) {
  const rows = [
    ['second moment, mm4', i, screwSectionOf(titanium(core)).iMm4, 0.005],
    ['stiffness in titanium of 114 GPa, N m2', soft, screwSectionOf(titanium(core)).eiNmm2 / 1e6, 0.005],
    ['stiffness in steel of 193 GPa, N m2', stiff, screwSectionOf(steelScrew(core)).eiNmm2 / 1e6, 0.005],
    ['yield moment in titanium, N m', yields, yieldMomentOf(titanium(core), YIELD) / 1e3, 0.05],
  ] as const;
  for (const [name, expected, got, tolerance] of rows) {
    against(BAR, `core ${core} mm: ${name}`, () => ({ expected, got, tolerance, why: 'printed to the digits given' }));
  }
}
against(BAR, 'a hole of 1.6 mm takes 1.6 % of the second moment of a 4.5 mm core', () => ({
  expected: 0.016,
  got: 1 - screwSectionOf(titanium(4.5, 1.6)).iMm4 / screwSectionOf(titanium(4.5)).iMm4,
  tolerance: 0.0005,
  why: THREE,
}));

const COMPOSITE = {
  source: 'Transformed section: screw in a hollow ellipse (strength of materials)',
  where: 'curvature = M / sum(E I), stress = E y times curvature',
  how: 'common practice',
} as const;
// 9.7 up-down, 9.1 across, canal 5.3 x 4.1; 17 GPa; core 4.5 of titanium of 114 GPa; 2 N m up-down. By hand: bone 377.7240 mm4.
const bone = { outline: ellipse(4.85, 4.55), holes: [ellipse(2.65, 2.05)], modulusMPa: 17000 };
const fixed = screwInBone(bone, titanium(4.5), [0, 0], { axialN: 0, bendingUpDownNmm: 2000, bendingSidewaysNmm: 0 });
const SIX = 'expected to six digits; corners of the 180-gon lie 1e-4 outside';
for (const [name, expected, got] of [
  ['curvature, 1/mm', 2.29463e-4, fixed.curvature],
  ['stress in the bone, MPa', 18.919, fixed.bone.tensionMPa],
  ['stress in the bone without the screw, MPa', 25.68, fixed.boneAlone.tensionMPa],
  ['stress in the screw, MPa', 58.857, fixed.screw.tensionMPa],
  ['share of the screw', 0.26327, fixed.shareUpDown],
] as const) {
  against(COMPOSITE, `screw of 4.5 mm in a whole bone: ${name}`, () => ({
    expected,
    got,
    tolerance: 2e-4 * expected,
    why: SIX,
  }));
}
against(COMPOSITE, 'screw of 4.5 mm across a gap: opening strain at 4.85 mm for 1 N m', () => ({
  expected: 0.002114,
  got: bridgeOf(titanium(4.5), 1, 4.85, 1000).openingStrain,
  tolerance: 1e-6,
  why: 'four digits',
}));
against(COMPOSITE, 'screw across a gap: the ends turn by M g / E I', () => ({
  expected: (2000 * 3) / (114000 * 20.128896),
  got: bridgeOf(titanium(4.5), 3, 4.85, 2000).rotationRad,
  tolerance: 1e-9,
  why: 'closed form',
}));

const PYTHAGORAS = {
  source: 'Chord of a ring: longest straight rod in an arc',
  where: '2 sqrt((R + D/2)^2 - (R - D/2 + d)^2)',
  how: 'common practice',
} as const;
for (const [radius, canal, expected] of [
  [150, 5, 24.678],
  [200, 5.3, 35.978],
] as const) {
  against(PYTHAGORAS, `rod of 4.5 mm in a canal of ${canal} mm along an arc of ${radius} mm`, () => ({
    expected,
    got: longestInArc({ radiusMm: radius, canalMm: canal }, 4.5),
    tolerance: 0.001,
    why: 'five digits',
  }));
  const places = Array.from({ length: 601 }, (_, i) => {
    const sMm = (i - 300) * 0.1;
    const sag = radius - Math.sqrt(radius ** 2 - sMm ** 2);
    return { sMm, dorsalMm: 0, lateralMm: sag, upDownMm: canal, acrossMm: canal };
  });
  against(PYTHAGORAS, `the same arc of ${radius} mm as places of a canal`, () => ({
    expected,
    got: longestIn(places, 4.5)?.lengthMm ?? 0,
    tolerance: 0.6,
    why: 'widths across the axis instead of across the arc; places 0.1 mm apart',
  }));
}

const BAR_IN_TUBE = {
  source: 'Round bar in a concentric tube: shares go with E I, a bar alone yields at yield stress x 2 I / d',
  where: 'tube 10 outside and 6 inside, 17 GPa; bar 4.0, 114 GPa, 795 MPa; I = pi (D^4 - d^4) / 64',
  how: 'common practice',
} as const;
const tube = { outline: ellipse(5, 5, 360), canals: [ellipse(3, 3, 360)] };
const bending = {
  axialN: 0,
  bendingUpDownNmm: 2500,
  bendingSidewaysNmm: 0,
  wall: 0,
  cortexMPa: 17000,
  outsideBeamTheory: false,
  beyond: false,
};
const inTube = screwInDraws(
  { thick: tube, usual: tube, thin: tube },
  { coreMm: 4, cannulaMm: 0, modulusMPa: 114000 },
  795,
  [bending, bending],
);
// By hand: I tube 427.257, I bar 12.566 mm4; 114 x 12.566 / (17 x 427.257 + 114 x 12.566) = 0.16474; 795 x 2 x 12.566 / 4 = 4995 N mm.
for (const [name, expected, got] of [
  ['share of the bar', 0.16474, inTube?.shareUpDown.told],
  ['pull in the tube over that without the bar', 1 - 0.16474, inTube?.boneRatio.told],
  ['bar alone under 2.5 N m, of its yield moment', 0.5005, inTube?.aloneOfYield.told],
  ['opening at 5 mm from the axis for 1 N m', 0.00349, inTube?.openingPerNm],
] as const) {
  against(BAR_IN_TUBE, name, () => ({
    expected,
    got: got ?? Number.NaN,
    tolerance: 5e-5,
    why: 'four digits; the tube is a polygon of 360 corners',
  }));
}

const DESANDIS = {
  source: 'DeSandis, Multiplanar CT Analysis of Fifth Metatarsal Morphology, Foot Ankle Int, PMID 26678426',
  where: 'on average the screw should be 40 mm or less; most canals take 4.0 or 4.5 mm',
  how: 'abstract',
} as const;
against(DESANDIS, 'straight rod of 4.5 mm in the bowed canal of the drawn bone ends', () => {
  const reach = longestIn(canalPlacesOf(foot, 'metatarsal5', shapeOf(content), 'usual'), 4.5)?.toMm ?? 0;
  const told = '40 mm from the tip or less';
  return { expected: told, got: reach > 0 && reach <= 40 ? told : `${reach.toFixed(1)} mm from the tip` };
});

const STRAIN = {
  source: 'Interfragmentary strain, rule of thumb (dnborthopaedics.wordpress.com)',
  where: '2 % bone, 10 % fibrocartilage, 100 % granulation',
  how: 'common practice',
} as const;
for (const [movement, strain, tissue] of [
  [0.02, 0.01, 'bone'],
  [0.2, 0.1, 'fibrocartilage'],
] as const) {
  against(STRAIN, `a gap of 2 mm moved by ${movement} mm: strain`, () => ({
    expected: strain,
    got: gapStrainOf(movement, 2),
    tolerance: 1e-12,
    why: 'one division',
  }));
  against(STRAIN, `a gap of 2 mm moved by ${movement} mm: what may form`, () => ({
    expected: tissue,
    got: gapTissueAt(gapStrainOf(movement, 2)),
  }));
}
