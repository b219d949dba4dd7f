/**
 * The leg does not keep the talus from rising or, with the heel down, from pitching: weak springs stand there only so that the frame
 * can be factored. What they would carry is put on against them, so that ground, leg and calf balance without them. mm, N, rad.
 */
import { solveLdlInto } from '../frame/ldl';
import { addForce, type LegHold, WEAK_LIFT, WEAK_PITCH } from './assemble';
import { complianceWith, type Factor, type Halves, halvesOf } from './compliance';
import type { FrameNodes } from './nodes';

export interface WeakHold {
  readonly of: 'lift' | 'pitch';
  readonly stiffness: number;
  /** One unit put on along it: the load (n), what it moves (n), and each tie and pad (m). */
  readonly unit: Float64Array;
  readonly moved: Float64Array;
  readonly reach: Float64Array;
  /** A force of one body weight, or a moment of as much at so many mm, counts as one. */
  readonly leverMm: number;
}

const LEVER_MM = 100;

export const weakHolds = (factor: Factor, halves: Halves, nodes: FrameNodes, hold: LegHold): readonly WeakHold[] => {
  const node = nodes.rigid.talus;
  const lift = new Float64Array(factor.n);
  addForce(lift, nodes, node, hold.at, [0, 1, 0]);
  const pitch = new Float64Array(factor.n);
  pitch[6 * node + 3] = 1;
  const holdOf = (of: WeakHold['of'], stiffness: number, unit: Float64Array, leverMm: number): WeakHold => {
    const moved = Float64Array.from(unit);
    solveLdlInto(factor, moved);
    const reach = complianceWith(halves, halvesOf(factor, [unit]), factor.n);
    return { of, stiffness, unit, moved, reach, leverMm };
  };
  return [
    ...(hold.slide[1] === WEAK_LIFT ? [holdOf('lift', WEAK_LIFT, lift, 1)] : []),
    ...(hold.turn[0] === WEAK_PITCH ? [holdOf('pitch', WEAK_PITCH, pitch, LEVER_MM)] : []),
  ];
};

/** What such a spring carries under a load with these forces in ties and pads: N, or N mm. */
export const carriedBy = (
  { stiffness, moved, reach }: WeakHold,
  load: Float64Array,
  tieN: Float64Array,
  padN: Float64Array,
): number => {
  let way = 0;
  for (let k = 0; k < load.length; k++) way += (moved[k] as number) * (load[k] as number);
  for (let i = 0; i < tieN.length; i++) way -= (reach[i] as number) * (tieN[i] as number);
  for (let i = 0; i < padN.length; i++) way -= (reach[tieN.length + i] as number) * (padN[i] as number);
  return stiffness * way;
};
