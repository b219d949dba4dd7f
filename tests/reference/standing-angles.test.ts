/** The standing default foot against weight-bearing angles; each angle by the definition stated at the check. */
import { boneAxis, sliceMesh } from '../../src/anatomy';
import { verticesOf } from '../../src/anatomy/mesh';
import type { BoneId } from '../../src/ids';
import { add, degrees, length, scale, subtract, type Vec3 } from '../../src/units';
import { against } from '../tools/against';
import { modelFoot } from '../tools/model-foot';

const foot = modelFoot();
const meshOf = (bone: BoneId) => {
  const mesh = foot.bones.get(bone);
  if (!mesh) throw new Error(`no ${bone}`);
  return mesh;
};

/** Centre of a closed outline, by length. */
const middleOf = (loop: readonly Vec3[]): Vec3 => {
  let sum: Vec3 = [0, 0, 0];
  let round = 0;
  for (const [i, p] of loop.entries()) {
    const q = loop[(i + 1) % loop.length] ?? p;
    const l = length(subtract(q, p));
    round += l;
    sum = add(sum, scale(add(p, q), l / 2));
  }
  return scale(sum, 1 / round);
};

/** Direction of a shaft: least squares through the middles of its sections from 20 to 80 % of the bone. */
const shaft = (bone: BoneId): Vec3 => {
  const a = boneAxis(foot, bone);
  const shares = Array.from({ length: 25 }, (_, i) => 0.2 + 0.025 * i);
  return shares.reduce<Vec3>(
    (sum, share) => {
      const [loop = []] = sliceMesh(meshOf(bone), add(a.origin, scale(a.axis, share * a.lengthMm)), a.axis);
      return add(sum, scale(middleOf(loop), share - 0.5));
    },
    [0, 0, 0],
  );
};
const declination = (d: Vec3): number => degrees(Math.atan2(-d[1], d[2]));
const inwards = (d: Vec3): number => degrees(Math.atan2(d[0], d[2]));

/** Lateral view: lowest point of the back 45 % to the lowest point of the front 20 % of the calcaneus. */
const calcanealPitch = (): number => {
  const points = verticesOf(meshOf('calcaneus'));
  const back = Math.min(...points.map((p) => p[2]));
  const long = Math.max(...points.map((p) => p[2])) - back;
  const lowest = (inside: (share: number) => boolean): Vec3 =>
    points.filter((p) => inside((p[2] - back) / long)).reduce((a, b) => (b[1] < a[1] ? b : a));
  const [a, b] = [lowest((s) => s < 0.45), lowest((s) => s > 0.8)];
  return degrees(Math.atan2(b[1] - a[1], b[2] - a[2]));
};

const MURLEY = 'Murley GS, Menz HB, Landorf KB. J Foot Ankle Res 2009;2:22, doi:10.1186/1757-1146-2-22';
against({ source: MURLEY, where: 'normal-arched adults', how: 'abstract' }, 'calcaneal pitch, deg', () => ({
  expected: 20.9,
  got: calcanealPitch(),
  tolerance: 3.4,
  why: 'one standard deviation of the normal-arched group',
}));
against(
  { source: MURLEY, where: 'calcaneal-first metatarsal angle, normal-arched adults', how: 'abstract' },
  'calcaneus to first metatarsal, deg',
  () => ({
    expected: 132.8,
    got: 180 - calcanealPitch() - declination(shaft('metatarsal1')),
    tolerance: 8,
    why: 'two standard deviations; their line along the bone is drawn on a film, ours through sections of the shaft',
  }),
);
against(
  { source: 'radiology encyclopaedia entry', where: 'first metatarsal declination 20 to 21 deg', how: 'from memory' },
  'first metatarsal declination, deg',
  () => ({
    expected: 20.5,
    got: declination(shaft('metatarsal1')),
    tolerance: 3,
    why: 'a rule of teaching without a spread; 3 deg is the reading error of such an angle, from memory',
  }),
);
const GRADES = { source: 'J Foot Ankle Res 2009;2:15', where: 'Table 1', how: 'abstract' } as const;
against(GRADES, 'hallux valgus is below 15 deg', () => ({
  expected: 'normal',
  got: inwards(shaft('metatarsal1')) - inwards(shaft('phalanxProximal1')) < 15 ? 'normal' : 'valgus',
}));
against(GRADES, 'first intermetatarsal angle is below 9 deg', () => ({
  expected: 'normal',
  got: inwards(shaft('metatarsal1')) - inwards(shaft('metatarsal2')) < 9 ? 'normal' : 'spread',
}));
against(
  {
    source: 'Fallat LM, Buckholz J, J Am Podiatry Assoc 1980;70:597, as quoted by others (original not read)',
    where: 'fourth intermetatarsal angle, normal 6.2 to 6.5, pathologic above 8.7 deg',
    how: 'from memory',
  },
  'fourth intermetatarsal angle, deg',
  () => ({
    expected: 6.4,
    got: inwards(shaft('metatarsal4')) - inwards(shaft('metatarsal5')),
    tolerance: 2.3,
    why: 'up to the value quoted as pathologic',
  }),
);
