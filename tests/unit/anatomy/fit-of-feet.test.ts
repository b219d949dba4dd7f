/**
 * How the bones fit, by the definition the joint table was measured with (src/anatomy/fit): fine surfaces of standing feet of any shape
 * by the limits of the project, drawn ones by wider ones, and the poses at the ends of their motion. mm. UNDERFOOT_LONG looks at
 * hundreds of feet, as `npm run fit:many -- 300` does.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  buildFoot,
  DEFAULT_FOOT,
  type Fit,
  type FootForm,
  fitOf,
  hOfFootLength,
  prepareAnatomy,
} from '../../../src/anatomy';
import { brokenRules } from '../../../src/anatomy/fit/rules';
import type { Level, PoseName } from '../../../src/anatomy/types';
import { builtFoot, shape } from '../../tools/built-foot';
import { LONG, orAll } from '../../tools/long';
import { cornerForms, formInWords, sampleForms, sampleLengths } from './any-form';

/**
 * The corners that the short run keeps. Standing: of the first nine at 200 and 320 mm the one whose facets reach the smallest share of
 * their tabled areas (85 and 82 %); the others were not looked at. Turned: one of the flattest with the heel turned out; three like it
 * overlap by 0.78 mm as scanned, by 0.19 seated and not at all in the other poses.
 */
const SMALLEST_AREA = 1;
const DEEPEST = 3;

beforeAll(prepareAnatomy);

const gapsOutside = ({ joints }: Fit, [low, high]: readonly [number, number]): string[] =>
  joints
    .filter(({ articular, p5Mm, p95Mm }) => articular && !(p5Mm >= low && p95Mm <= high))
    .map(({ joint, p5Mm, p95Mm }) => `${joint}: ${p5Mm.toFixed(2)} to ${p95Mm.toFixed(2)} mm`);

const deeperThan = ({ overlaps }: Fit, limit: number): string[] =>
  overlaps
    .filter(({ depthMm }) => depthMm > limit)
    .map(({ bones, depthMm }) => `${bones.join(' and ')}: ${depthMm.toFixed(2)} mm`);

const smallerThan = ({ joints }: Fit, share: number): string[] =>
  joints
    .filter(({ articular, areaShare }) => articular && areaShare !== null && !(areaShare >= share))
    .map(({ joint, areaShare }) => `${joint}: ${(100 * (areaShare ?? 0)).toFixed(0)} %`);

describe.each(['fine', 'display'] as const)('the default foot standing, its surfaces: %s', (level) => {
  let fit: Fit;
  beforeAll(() => {
    fit = fitOf(shape, builtFoot({}, 'standing', level));
  }, 60_000);

  test('every articular joint of the table is found', () => {
    const found = fit.joints.map(({ joint }) => joint);
    expect(shape.joints.filter(({ articular, id }) => articular && !found.includes(id))).toEqual([]);
  });
  test('its bones lie 1.3 to 3.7 mm apart there, 5th to 95th percentile', () => {
    expect(gapsOutside(fit, [1.3, 3.7])).toEqual([]);
  });
  test('its facets reach 80 % of the tabled area', () => {
    expect(smallerThan(fit, 0.8)).toEqual([]);
  });
  test('no bone overlaps another', () => {
    expect(deeperThan(fit, 0)).toEqual([]);
  });
});

describe('poses', () => {
  const { poses } = shape.pose;
  test.each(poses.map(({ id }) => id))('%s: bones overlap by no more than 0.8 mm', (id) => {
    expect(deeperThan(fitOf(shape, builtFoot({}, id as 'seated', 'fine')), 0.8)).toEqual([]);
  });
});

describe('feet of any shape standing, their fine surfaces', () => {
  const forms = [...orAll(cornerForms, (_, i) => i === SMALLEST_AREA), ...(LONG ? sampleForms(300) : [])];
  test('no rule of fit is broken', () => {
    const faults = forms.flatMap((form) =>
      brokenRules(
        shape,
        fitOf(shape, buildFoot(shape, { ...DEFAULT_FOOT, ...form }, 'standing', 'fine')),
        'standing',
      ).map((fault) => `${fault} (${formInWords(form)})`),
    );
    expect(faults).toEqual([]);
  }, 2_400_000);
});

/**
 * Drawn surfaces of few triangles keep the same rules in the usual foot. In feet of other shapes the same triangles are moved along, and
 * a facet now and then is off them: in 14 of 120 feet (all corners at three lengths among them) one, least gap 1.19 mm, widest 3.64,
 * least area 78 %, no overlap. Each limit leaves a little for feet that were not among them.
 */
const DRAWN = { overlapMm: 0, gapsMm: [1.15, 3.7], areaShare: 0.76 } as const;

describe('feet of any shape standing, as drawn', () => {
  const forms = LONG ? [...sampleForms(300), ...cornerForms] : sampleForms(1);
  const fits = new Map<FootForm, Fit>();
  beforeAll(() => {
    for (const form of forms) fits.set(form, fitOf(shape, buildFoot(shape, { ...DEFAULT_FOOT, ...form }, 'standing')));
  }, 2_400_000);
  const all = (faults: (fit: Fit) => string[]): string[] =>
    [...fits].flatMap(([form, fit]) => faults(fit).map((fault) => `${fault} (${formInWords(form)})`));

  test('no bone overlaps another', () => {
    expect(fits.size).toBe(forms.length);
    expect(all((fit) => deeperThan(fit, DRAWN.overlapMm))).toEqual([]);
  });
  test('joints stay 1.15 to 3.7 mm wide, 5th to 95th percentile', () => {
    expect(all((fit) => gapsOutside(fit, DRAWN.gapsMm))).toEqual([]);
  });
  test('facets reach 76 % of the tabled area', () => {
    expect(all((fit) => smallerThan(fit, DRAWN.areaShare))).toEqual([]);
  });
});

describe('feet of any shape in other poses', () => {
  const forms = [...orAll(cornerForms, (_, i) => i === DEEPEST), ...(LONG ? sampleForms(60) : [])];
  const faults = (pose: PoseName, level: Level, feet: readonly FootForm[]): string[] =>
    feet.flatMap((form) =>
      deeperThan(fitOf(shape, buildFoot(shape, { ...DEFAULT_FOOT, ...form }, pose, level)), 0.8).map(
        (fault) => `${fault} (${formInWords(form)})`,
      ),
    );
  describe.each(['seated', 'heelRaise', 'pushOff', 'inversion'] as const)('%s', (pose) => {
    test('as drawn, bones overlap by no more than 0.8 mm', () => {
      expect(faults(pose, 'display', forms)).toEqual([]);
    }, 2_400_000);
    test.runIf(LONG || pose === 'seated')(
      'nor do their fine surfaces',
      () => {
        expect(faults(pose, 'fine', forms)).toEqual([]);
      },
      2_400_000,
    );
  });
  /** Seen of 40 feet, all corners among them: 0.78 mm, heel bone and cuboid of the flattest with the heel turned out. */
  test('as scanned: bones overlap by no more than 0.8 mm, and no toe leaves its joint', () => {
    const toes = /phalanx|sesamoid/;
    for (const form of forms) {
      const fit = fitOf(shape, buildFoot(shape, { ...DEFAULT_FOOT, ...form }, 'asScanned', 'fine'));
      expect(deeperThan(fit, 0.8), formInWords(form)).toEqual([]);
      const ofToes = { ...fit, joints: fit.joints.filter(({ joint }) => toes.test(joint)) };
      expect(ofToes.joints.length).toBe(shape.joints.filter(({ id }) => toes.test(id)).length);
      // Least seen 1.13: a sesamoid under the first head of a corner.
      expect(gapsOutside(ofToes, [1, 3.7]), formInWords(form)).toEqual([]);
    }
  }, 2_400_000);
});

/**
 * Cartilage is as thick in a long foot as in a short one: gaps hold in millimetres at any length, while a tabled area grows with the
 * square of the length. The limits are the same as for the usual length.
 */
describe('feet of other lengths standing, their fine surfaces', () => {
  const faultsOf = (lengthMm: number, form: FootForm): string[] => {
    const parameters = { ...form, heelToSecondHeadMm: hOfFootLength(lengthMm) };
    const fit = fitOf(shape, builtFoot(parameters, 'standing', 'fine'));
    return brokenRules(shape, fit, 'standing').map((fault) => `${fault} (${lengthMm} mm, ${formInWords(form)})`);
  };

  test.each(orAll([200, 225, 260, 280, 300, 320], (lengthMm) => lengthMm === 320))(
    '%i mm long, the usual shape: no rule is broken',
    (lengthMm) => {
      expect(faultsOf(lengthMm, DEFAULT_FOOT)).toEqual([]);
    },
    60_000,
  );
  test.each(orAll([200, 320], (lengthMm) => lengthMm === 320))(
    '%i mm long, other shapes: no rule is broken',
    (lengthMm) => {
      const forms = orAll(cornerForms, (_, i) => i === SMALLEST_AREA);
      expect(forms.flatMap((form) => faultsOf(lengthMm, form))).toEqual([]);
    },
    2_400_000,
  );
  test.runIf(LONG)(
    'of any length and shape: no rule is broken',
    () => {
      const feet = sampleLengths(300);
      expect(feet.flatMap(({ lengthMm, form }) => faultsOf(lengthMm, form))).toEqual([]);
    },
    2_400_000,
  );
});
