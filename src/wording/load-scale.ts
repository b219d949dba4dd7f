/**
 * The load as it is told on the picture, beside it and in words: on the bone in multiples of walking, on the foot in body weights.
 * Never a stress of a person. Pure.
 */
import type { ExplainedLoads, Explanation } from '../explain/types';

/** Six equal steps of the bands on the bone, in multiples of the bone's largest pull in walking. */
export interface WalkingScale {
  readonly stepTimes: number;
  readonly topTimes: number;
  /** The top in the unit of the stations' fields. */
  readonly topMPa: number;
}

export const BANDS = 6;
/** Widths of a step that give borders easy to read, and near enough to each other to use five of the six steps. Beyond: by halves. */
const STEPS = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.75, 0.9, 1] as const;

const stepFor = (most: number): number => {
  // A peak on the border of a step needs no further one.
  const least = most / BANDS - 1e-9;
  return STEPS.find((step) => step >= least) ?? Math.ceil(2 * least) / 2;
};

/**
 * Null where there are no stations, or where walking does not pull the bone at all in the model, so that nothing can be a multiple
 * of it: such a bone gets no bands.
 */
export const walkingScale = ({ stations, loads }: Pick<Explanation, 'stations' | 'loads'>): WalkingScale | null => {
  if (stations === null || loads === null) return null;
  const ray = loads.told.tables.findIndex(({ bone }) => bone === stations.bone);
  const referenceMPa = loads.referenceMPa[ray] ?? 0;
  if (referenceMPa <= 0) return null;
  const mostMPa = Math.max(Math.abs(stations.peakTension.mpa), Math.abs(stations.peakCompression.mpa));
  // Where only ranks may be told the steps run from none to the most, and carry no numbers.
  const stepTimes = loads.ranksOnly ? mostMPa / referenceMPa / BANDS : stepFor(mostMPa / referenceMPa);
  return { stepTimes, topTimes: BANDS * stepTimes, topMPa: BANDS * stepTimes * referenceMPa };
};

/** What the way of the load comes to, newtons; each is the sum of its parts, and 0 where nothing is carried. */
export interface MainLoads {
  readonly tibiaN: number;
  readonly achillesN: number;
  readonly fasciaN: number;
  readonly forefootN: number;
  readonly outerEdgeN: number;
  readonly heelN: number;
}

export type MainLoad = keyof MainLoads;

/** Which sum a part of the way belongs to; null for joints, bones, ligaments and the other tendons, which stand alone. */
export const mainLoadOf = ({ kind, id }: { readonly kind: string; readonly id: string }): MainLoad | null => {
  switch (kind) {
    case 'leg':
      return 'tibiaN';
    case 'tendon':
      return id === 'achilles' ? 'achillesN' : null;
    case 'tie':
      return id.startsWith('fascia') ? 'fasciaN' : null;
    case 'ground':
      return id.startsWith('heel') ? 'heelN' : id === 'base5' ? 'outerEdgeN' : 'forefootN';
    default:
      return null;
  }
};

/** The widest line of the way stands for this: its largest part, or sum of parts. Newtons. */
export const widestOf = (loads: Pick<ExplainedLoads, 'told'>): number =>
  Math.max(0, ...loads.told.path.map(({ forceN }) => forceN), ...Object.values<number>({ ...mainLoadsOf(loads) }));

/** Width as a share of the widest: by the square root, so that what is twice as wide is four times the force. */
export const widthFor = (forceN: number, widestN: number): number => Math.sqrt(forceN / widestN);

/** Below this share no block and no thread is legible. */
export const LEAST_WIDTH = 1 / 3;

export const mainLoadsOf = ({ told }: Pick<ExplainedLoads, 'told'>): MainLoads => {
  const sums = { tibiaN: 0, achillesN: 0, fasciaN: 0, forefootN: 0, outerEdgeN: 0, heelN: 0 };
  for (const part of told.path) {
    const main = mainLoadOf(part);
    if (main !== null) sums[main] += part.forceN;
  }
  return sums;
};
