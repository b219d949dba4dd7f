/** The waist of a phalanx: a groove down each flank, square to its length. */
import { add, scale, type Vec3 } from '../../units';
import type { Mass } from './mass';

export interface Waist {
  readonly at: Vec3;
  readonly side: Vec3;
  readonly top: Vec3;
  readonly width: number;
  /** How far the grooves run upwards and downwards, mm. */
  readonly tall: number;
  /** Radius of the grooves, mm. */
  readonly round: number;
}

const FLANKS = [
  { to: 1, name: 'innerFlank' },
  { to: -1, name: 'outerFlank' },
] as const;

export const flanks = (w: Waist): Mass[] =>
  FLANKS.map(({ to, name }) => {
    const middle = add(w.at, scale(w.side, to * (w.width / 2 + w.round)));
    return {
      is: 'rod',
      name,
      from: add(middle, scale(w.top, -w.tall)),
      to: add(middle, scale(w.top, w.tall)),
      radius: [w.round, w.round],
      join: 'fine',
    };
  });
