/**
 * The field of one bone: named masses joined smoothly, a pad under each facet, less the hollows and flat cuts, less what lies
 * beyond the joint surfaces shared with the neighbours. The order matters: joints are cut last. Reference foot, as scanned.
 */
import type { BoneId } from '../ids';
import { add, normalize, type Vec3 } from '../units';
import { type Box, type Field, fieldOf, smoothMax, smoothMin } from './field';
import { cutAt, jointSurface, padAt } from './joint-surface';
import type { BoneShape, Shape } from './shape';

const DEFAULT_PAD = 4;
/** Width of the smooth join of pads and of joint cuts, mm. */
const PAD_JOIN = 4;
const CUT_JOIN = 0.8;

const union = (a: Box, b: Box): Box => ({
  min: [0, 1, 2].map((k) => Math.min(a.min[k] ?? 0, b.min[k] ?? 0)) as unknown as Vec3,
  max: [0, 1, 2].map((k) => Math.max(a.max[k] ?? 0, b.max[k] ?? 0)) as unknown as Vec3,
});

export const boneShapeOf = (shape: Shape, bone: BoneId): BoneShape => {
  const found = shape.tarsals[bone] ?? shape.metatarsals[bone] ?? shape.toes[bone];
  if (!found) throw new RangeError(`no shape parameters for ${bone}`);
  return found;
};

export const boneField = (shape: Shape, bone: BoneId): { readonly field: Field; readonly box: Box } => {
  const s = boneShapeOf(shape, bone);
  const masses = s.masses.map((m) => ({ ...fieldOf(m, s.centre), join: m.join ?? s.join }));
  const hollows = (s.hollows ?? []).map((m) => ({ ...fieldOf(m, s.centre), join: m.join ?? s.join }));
  const cuts = (s.cuts ?? []).map((c) => ({ at: add(s.centre, c.at), n: normalize(c.normal), join: c.join }));
  const depth = s.pad ?? DEFAULT_PAD;
  const joints = shape.joints
    .filter((j) => j.first === bone || j.second === bone)
    .map((j) => ({
      surface: jointSurface(j),
      sign: j.first === bone ? (1 as const) : (-1 as const),
      padded: j.articular && depth > 0,
      seen: { side: 0, radius: 0 },
    }));
  const box = masses.map((m) => m.box).reduce(union);
  const [first, ...rest] = masses;
  if (!first) throw new RangeError(`${bone} has no mass`);
  const field: Field = (x, y, z) => {
    let d = first.field(x, y, z);
    for (const m of rest) d = smoothMin(d, m.field(x, y, z), m.join);
    for (const j of joints) {
      j.surface.look(x, y, z, j.seen);
      if (j.padded) d = smoothMin(d, padAt(j.surface, j.sign, depth, j.seen), PAD_JOIN);
    }
    for (const h of hollows) d = smoothMax(d, -h.field(x, y, z), h.join);
    for (const c of cuts) {
      d = smoothMax(d, (x - c.at[0]) * c.n[0] + (y - c.at[1]) * c.n[1] + (z - c.at[2]) * c.n[2], c.join);
    }
    for (const j of joints) d = smoothMax(d, cutAt(j.surface, j.sign, j.seen), CUT_JOIN);
    return d;
  };
  const reach = 3;
  return {
    field,
    box: {
      min: [box.min[0] - reach, box.min[1] - reach, box.min[2] - reach],
      max: [box.max[0] + reach, box.max[1] + reach, box.max[2] + reach],
    },
  };
};
