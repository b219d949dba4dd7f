/**
 * Repeated loading compared, never counted: damage goes with the number of cycles and with strain to a power (N = C strain^-n and
 * linear summation, Palmgren-Miner, common practice). C and the life that it stands for are not known for a metatarsal, so nothing
 * here is a life, a risk or a probability; only ratios come out. The power is taken over a range, because it magnifies every error:
 * at 6.6, 10 % more strain is 88 % more damage.
 */

/** Cycles of one foot over a distance: a stride is two steps, each foot lands once in it. */
export const stridesOf = (distanceM: number, strideM: number): number => {
  if (!(distanceM >= 0 && strideM > 0))
    throw new RangeError(`${distanceM} m in strides of ${strideM} m: give a stride above nought`);
  return distanceM / strideM;
};

/** Damage over damage, for so many times the cycles at so many times the strain. */
export const damageRatio = (cycleRatio: number, strainRatio: number, exponent: number): number => {
  if (!(cycleRatio >= 0 && strainRatio >= 0 && exponent > 0)) {
    throw new RangeError(
      `damage of ${cycleRatio} times the cycles at ${strainRatio} times the strain to the power ${exponent}`,
    );
  }
  return cycleRatio * strainRatio ** exponent;
};

/** Strain ratio at which so many times the cycles do the same damage. */
export const offsettingStrain = (cycleRatio: number, exponent: number): number => {
  if (!(cycleRatio > 0 && exponent > 0)) throw new RangeError(`${cycleRatio} times the cycles, power ${exponent}`);
  return cycleRatio ** (-1 / exponent);
};
