/**
 * What is known of a task before anything is computed: totals, where the ground pushes, how the muscles share. The sharing among
 * heads, joints and ties is computed. Forces in body weights, angles in degrees, as content/activities.yaml gives them.
 */
import type { PoseName } from '../../anatomy/types';

export const TENDONS = [
  'fibularisLongus',
  'fibularisBrevis',
  'tibialisPosterior',
  'flexorHallucis',
  'flexorDigitorum',
] as const;
export type Tendon = (typeof TENDONS)[number];

/** The figures of a case, one value each: the base or one draw. */
export interface LoadCaseFigures extends Readonly<Record<Tendon, number>> {
  /** Across the ground, in all, and along it: towards the inner side and the toes positive, as the ground pushes the foot. */
  readonly total: number;
  readonly sideways: number;
  readonly forwards: number;
  /** Free moment about the ground's normal, as a lever of body weight: about the upward normal, right foot: positive turns the forefoot inwards. mm */
  readonly twist: number;
  /** Ground higher under the outer edge (positive) or the inner one, deg. */
  readonly tilt: number;
  /** Heel to second head = 1: where the ground's push is centred. Used where the heel is down. */
  readonly centre: number;
  /** Share of the total under the first toe. Used where the heel is up. */
  readonly toeShare: number;
}

export interface LoadCase {
  readonly id: string;
  readonly pose: PoseName;
  /** With the heel down the centre of pressure is imposed; with the heel up the first toe's share, and the calf finds its own force. */
  readonly contact: 'whole sole' | 'forefoot';
  readonly figures: LoadCaseFigures;
}

/** In the order in which an ensemble draws them. */
export const CASE_FIGURES = [
  'total',
  'sideways',
  'forwards',
  'twist',
  'tilt',
  'centre',
  'toeShare',
  ...TENDONS,
] as const satisfies readonly (keyof LoadCaseFigures)[];
export type CaseFigure = (typeof CASE_FIGURES)[number];
