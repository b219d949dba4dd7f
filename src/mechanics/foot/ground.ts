/** The ground: how it lies under the pads, and how its push along itself is shared among them. mm, N, N mm, foot frame. */
import { add, cross, dot, radians, scale, subtract, type Vec3 } from '../../units';
import { type FootMarks, PAD_NAMES, type PadName } from './landmarks';
import type { LoadCase } from './load-case';
import type { Placing } from './placing';
import type { Pad } from './ties';

/** Unit normal out of the ground, tilted by deg: higher under the outer edge when positive. */
export const groundOf = (tiltDeg: number): Vec3 => [Math.sin(radians(tiltDeg)), Math.cos(radians(tiltDeg)), 0];

/** Pads in reach of the ground and how far it is from each: tilted ground meets one edge first. */
export const awayOf = (marks: FootMarks, placing: Placing, loadCase: LoadCase): Partial<Record<PadName, number>> => {
  const pads = PAD_NAMES.filter((pad) =>
    loadCase.contact === 'whole sole' ? true : pad !== 'firstToe' && pad !== 'base5' && !pad.startsWith('heel'),
  );
  const rise = Math.sin(radians(loadCase.figures.tilt));
  const across = pads.map((pad) => placing.point(marks.pads[pad])[0] * rise);
  const nearest = Math.min(...across);
  return Object.fromEntries(pads.map((pad, i) => [pad, (across[i] as number) - nearest]));
};

/** A free moment as shear round the pads' common middle, in proportion to what each carries and to its distance. */
export const twistForces = (
  pads: readonly Pad[],
  shares: Float64Array,
  ground: Vec3,
  momentNmm: number,
): readonly Vec3[] => {
  const none: Vec3 = [0, 0, 0];
  if (momentNmm === 0) return pads.map(() => none);
  let [whole, middle] = [0, none];
  pads.forEach((pad, i) => {
    whole += shares[i] as number;
    middle = add(middle, scale(pad.at, shares[i] as number));
  });
  middle = scale(middle, 1 / whole);
  const around = pads.map((pad) => cross(ground, subtract(pad.at, middle)));
  const spread = around.reduce((sum, r, i) => sum + (shares[i] as number) * dot(r, r), 0);
  return around.map((r, i) => (spread === 0 ? none : scale(r, (momentNmm * (shares[i] as number)) / spread)));
};
