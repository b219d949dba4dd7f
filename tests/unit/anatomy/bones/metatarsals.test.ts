/** The five metatarsals: what an anatomist names them by, measured on the built surfaces. As scanned, mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import { prepareAnatomy } from '../../../../src/anatomy';
import { integralsOf } from '../../../../src/anatomy/inside/polygon';
import { verticesOf } from '../../../../src/anatomy/mesh';
import { dot, subtract, type Vec3 } from '../../../../src/units';
import {
  acrossSection,
  type BuiltBone,
  type BuiltSection,
  builtBone,
  builtJoint,
  stations,
} from '../../../tools/built-bone';

const RAYS = [1, 2, 3, 4, 5] as const;
type Ray = (typeof RAYS)[number];
const bones = new Map<Ray, BuiltBone>();
const bone = (k: Ray): BuiltBone => bones.get(k) as BuiltBone;
beforeAll(async () => {
  await prepareAnatomy();
  for (const k of RAYS) bones.set(k, builtBone(`metatarsal${k}`));
}, 60_000);

/** Place along the long axis of a bone, from its base. */
const stationIn = ({ axis }: BuiltBone, p: Vec3): number => dot(subtract(p, axis.origin), axis.axis);
/** Ratio of the long to the short way of a section, and how far its long way is turned from upright to the outer side, deg. */
const turnOf = (s: BuiltSection): { ratio: number; outwards: number } => {
  const { area, aa, bb, ab } = integralsOf([s.points]);
  const [up, across, both] = [
    aa / area - s.centre[0] ** 2,
    bb / area - s.centre[1] ** 2,
    ab / area - s.centre[0] * s.centre[1],
  ];
  const [middle, half] = [(up + across) / 2, Math.hypot((up - across) / 2, both)];
  return {
    ratio: Math.sqrt((middle + half) / (middle - half)),
    outwards: (Math.atan2(2 * both, up - across) * 90) / Math.PI,
  };
};
const soleAt = (s: BuiltSection, share: number): number => acrossSection(s, 0, s.centre[1] + (share * s.width) / 2)[0];
const outerAt = (s: BuiltSection, share: number): number => acrossSection(s, 1, s.centre[0] + share * s.height)[1];

describe('all', () => {
  test('the second is the longest, the first by far the stoutest', () => {
    const long = RAYS.map((k) => bone(k).axis.lengthMm);
    expect(Math.max(...long)).toBe(long[1]);
    expect(Math.min(...long)).toBe(long[0]);
    // The measured ones are 140 against 60, 65, 61 and 86 mm2 (one of the four feet, metatarsal-sections.test.ts): 1.63 times the fifth.
    for (const k of [2, 3, 4, 5] as const) expect(bone(1).at(0.5).area).toBeGreaterThan(1.5 * bone(k).at(0.5).area);
  });

  test.each([2, 3, 4, 5] as const)('%i: narrowest near 70 %% of its length', (k) => {
    const thin = stations(0.35, 0.86, 52).reduce((a, b) => (bone(k).at(b).area < bone(k).at(a).area ? b : a));
    expect(thin).toBeGreaterThan(0.63);
    expect(thin).toBeLessThan(0.78);
  });

  test.each(RAYS)('%i: bowed upwards by one to two millimetres', (k) => {
    const [base, middle, head] = [0.2, 0.5, 0.8].map((t) => bone(k).at(t).centre[0]) as [number, number, number];
    expect(middle - (base + head) / 2).toBeGreaterThan(0.7);
    expect(middle - (base + head) / 2).toBeLessThan(2.6);
  });

  test.each([2, 3, 4, 5] as const)(
    '%i: head pressed in from the sides, hollow there, two condyles at its sole',
    (k) => {
      const heads = [0.86, 0.88, 0.9].map((t) => bone(k).at(t));
      const narrow = Math.max(...heads.map((s) => s.height / s.width));
      expect(narrow).toBeGreaterThan(1.08);
      const notch = Math.max(...heads.map((s) => soleAt(s, 0) - Math.max(soleAt(s, -0.6), soleAt(s, 0.6))));
      expect(notch).toBeGreaterThan(0.35);
      const wide = (t: number, share: number): number => {
        const s = bone(k).at(t);
        const [low, high] = acrossSection(s, 1, s.centre[0] + share * s.height);
        return high - low;
      };
      const pit = Math.min(...[0.84, 0.86, 0.88, 0.9].map((t) => wide(t, 0) - Math.max(wide(t, 0.2), wide(t, -0.3))));
      expect(pit).toBeLessThan(-0.3);
    },
  );
});

describe('heads', () => {
  /** Width at a share of the height of the section, from its middle. */
  const wide = (k: Ray, t: number, share: number): number => {
    const s = bone(k).at(t);
    const [low, high] = acrossSection(s, 1, s.centre[0] + share * s.height);
    return high - low;
  };
  test.each([2, 3, 4] as const)('%i: a tubercle on each side stands out behind and above the flat sides', (k) => {
    const tubercles = Math.max(...stations(0.78, 0.88, 11).map((t) => wide(k, t, 0.2)));
    const sides = Math.min(...stations(0.86, 0.93, 8).map((t) => wide(k, t, -0.1)));
    expect(tubercles - sides).toBeGreaterThan(1.2);
  });
});

describe('first', () => {
  test('its base is a tall kidney, hollow on the outer side', () => {
    const base = bone(1).at(0.1);
    expect(base.height / base.width).toBeGreaterThan(1.45);
    const hollow = Math.max(
      ...[0, -0.08, -0.15].map((h) => (outerAt(base, 0.2) + outerAt(base, -0.3)) / 2 - outerAt(base, h)),
    );
    expect(hollow).toBeGreaterThan(1);
  });

  test('its shaft is a prism with an edge below: it fills less of its box than an ellipse', () => {
    const s = bone(1).at(0.3);
    const share = (at: number): number => {
      const [low, high] = acrossSection(s, 1, s.centre[0] + at * s.height);
      return high - low;
    };
    expect(share(-0.38) / share(0.3)).toBeLessThan(0.9);
  });

  test('a crista stands between two sesamoid grooves', () => {
    const { axis } = bone(1);
    const places = (['Medial', 'Lateral'] as const).map((side) => builtJoint(`metatarsal1-sesamoid${side}`));
    const at = places.map((p) => dot(subtract(p, axis.origin), axis.lateral)) as [number, number];
    const [inMm = 0, outMm = 0] = places.map((p) => stationIn(bone(1), p));
    const s = bone(1).at((inMm + outMm) / 2 / axis.lengthMm);
    const floor = (lateral: number): number => acrossSection(s, 0, lateral)[0];
    const crista = Math.min(...stations(at[0] + 2, at[1] - 2, 15).map(floor));
    for (const groove of at) expect(floor(groove) - crista).toBeGreaterThan(0.9);
    // Towards the edges of the head the sole does not rise away as a round head's would.
    const [inner, outer] = [floor(at[0]), floor(at[1])];
    expect(floor(at[1] + 3.2) - outer).toBeLessThan(0.8);
    expect(floor(at[0] - 2.5) - inner).toBeLessThan(1.8);
  });
});

describe('second to fourth', () => {
  test('the base of the second is locked: it lies behind those of its neighbours', () => {
    const hind = (k: Ray): number => Math.min(...verticesOf(bone(k).mesh).map((p) => p[2]));
    expect(hind(1) - hind(2)).toBeGreaterThan(3);
    const front = (id: string): number => builtJoint(id)[2];
    expect(front('cuneiformMedial-metatarsal1') - front('cuneiformIntermediate-metatarsal2')).toBeGreaterThan(4);
  });

  test('the base of the second is a wedge, broad above', () => {
    const base = bone(2).at(0.1);
    const wide = (share: number): number => {
      const [low, high] = acrossSection(base, 1, base.centre[0] + share * base.height);
      return high - low;
    };
    expect(wide(0.15) / wide(-0.3)).toBeGreaterThan(1.3);
  });

  test('bases lean outwards more and more from the first ray to the fourth, as the arch across the foot has them', () => {
    const lean = ([1, 2, 3, 4] as const).map((k) => turnOf(bone(k).at(0.12)).outwards);
    expect(lean[1]).toBeGreaterThan((lean[0] ?? 0) + 5);
    expect(lean[2]).toBeGreaterThan((lean[1] ?? 0) + 10);
    expect(lean[3]).toBeGreaterThan(35);
    expect(lean[3]).toBeLessThan(55);
  });

  test.each([3, 4] as const)('%i: slender, with flat sides', (k) => {
    const s = bone(k).at(0.55);
    expect(s.height / s.width).toBeGreaterThan(1.12);
    expect(s.area).toBeLessThan(70);
  });
});

describe('fifth', () => {
  test('its base is flat and rolled, its outer side down', () => {
    for (const t of [0.18, 0.22, 0.26]) {
      const { ratio, outwards } = turnOf(bone(5).at(t));
      expect(ratio).toBeGreaterThan(1.2);
      // A flat base without roll lies across (90); rolled, its long way runs from inner-upper to outer-lower.
      expect(90 + outwards).toBeGreaterThan(20);
      expect(90 + outwards).toBeLessThan(50);
    }
  });

  test('its tuberosity overhangs the cuboid backwards and outwards', () => {
    const facet = builtJoint('cuboid-metatarsal5');
    const tip = verticesOf(bone(5).mesh).reduce((a, b) => (stationIn(bone(5), b) < stationIn(bone(5), a) ? b : a));
    expect(stationIn(bone(5), facet) - stationIn(bone(5), tip)).toBeGreaterThan(8);
    expect(facet[0] - tip[0]).toBeGreaterThan(6);
  });

  test('the tuberosity flares outwards: its border is hollow between it and the head', () => {
    const outermost = (t: number): number =>
      Math.max(
        ...bone(5)
          .at(t)
          .points.map((p) => p[1]),
      );
    const [tuberosity, head] = [outermost(0.08), outermost(0.88)];
    const hollow = (t: number): number => tuberosity + ((t - 0.08) / 0.8) * (head - tuberosity) - outermost(t);
    expect(hollow(0.25)).toBeGreaterThan(1.5);
    for (const t of [0.3, 0.35, 0.4, 0.5, 0.6]) expect(hollow(t), `${t}`).toBeGreaterThan(1.9);
  });

  test('its shaft is bowed outwards', () => {
    const [base, middle, head] = [0.3, 0.5, 0.8].map((t) => bone(5).at(t).centre[1]) as [number, number, number];
    expect(middle - (base + head) / 2).toBeGreaterThan(0.3);
  });
});
