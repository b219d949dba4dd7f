/**
 * How long a straight rod fits into a bowed canal. In an arc by Pythagoras; in a bone's own canal plane by plane: seen from above
 * and from the side the rod is a band that stays within the canal's borders, and it fits when both views have one. Taking views
 * apart is generous where the rod touches in both at once: by up to a fifth of the play (width less rod). mm.
 */
export interface Arc {
  /** Radius of the canal's centre line. */
  readonly radiusMm: number;
  readonly canalMm: number;
}

/** Longest rod of a diameter in a canal of even width along an arc: 2 sqrt((R + D/2)^2 - (R - D/2 + d)^2). */
export const longestInArc = ({ radiusMm, canalMm }: Arc, rodMm: number): number => {
  if (!(radiusMm > 0 && rodMm > 0)) throw new RangeError(`a rod of ${rodMm} mm in an arc of ${radiusMm} mm`);
  if (rodMm > canalMm) return 0;
  return 2 * Math.sqrt((radiusMm + canalMm / 2) ** 2 - (radiusMm - canalMm / 2 + rodMm) ** 2);
};

/** The canal at a station: its centre off the bone's axis and its widths. */
export interface CanalPlace {
  readonly sMm: number;
  readonly dorsalMm: number;
  readonly lateralMm: number;
  readonly upDownMm: number;
  readonly acrossMm: number;
}

export interface Rod {
  readonly fromMm: number;
  readonly toMm: number;
  readonly lengthMm: number;
}

type Strip = readonly [s: number, low: number, high: number];

const stripsOf = (canal: readonly CanalPlace[], rodMm: number): readonly [upDown: Strip[], across: Strip[]] => {
  const strip = (sMm: number, centre: number, width: number): Strip => {
    const play = (width - rodMm) / 2;
    return [sMm, centre - play, centre + play];
  };
  return [
    canal.map((c) => strip(c.sMm, c.dorsalMm, c.upDownMm)),
    canal.map((c) => strip(c.sMm, c.lateralMm, c.acrossMm)),
  ];
};

/**
 * True when some straight line passes through all strips: every pair of them bounds its slope from below and above, and pairs are
 * enough.
 */
const isStraight = (strips: readonly Strip[]): boolean => {
  let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [i, [s, low, high]] of strips.entries()) {
    if (low > high) return false;
    for (const [t, lowBefore, highBefore] of strips.slice(0, i)) {
      least = Math.max(least, (low - highBefore) / (s - t));
      most = Math.min(most, (high - lowBefore) / (s - t));
    }
  }
  return least <= most;
};

/**
 * The longest rod between places of a canal; null where none passes two of them. For a screw that goes in at a place, hand over the
 * canal from there on.
 */
export const longestIn = (canal: readonly CanalPlace[], rodMm: number): Rod | null => {
  const [upDown, across] = stripsOf(canal, rodMm);
  const fits = (i: number, j: number): boolean =>
    isStraight(upDown.slice(i, j + 1)) && isStraight(across.slice(i, j + 1));
  let best: Rod | null = null;
  let j = 0;
  for (let i = 0; i < canal.length; i++) {
    j = Math.max(j, i);
    // What fits from a place on fits from the next: the far end never has to come back.
    while (j < canal.length && fits(i, j)) j++;
    const [a, b] = [canal[i], canal[j - 1]];
    if (!a || !b || j - 1 <= i) continue;
    const lengthMm = b.sMm - a.sMm;
    if (best === null || lengthMm > best.lengthMm) best = { fromMm: a.sMm, toMm: b.sMm, lengthMm };
  }
  return best;
};
