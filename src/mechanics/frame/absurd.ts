/**
 * Motions beyond all sense that pivots and balance cannot tell: beside a rigid link a sound frame looks as soft as a near mechanism,
 * and a near mechanism balances its loads to the last digit.
 *
 * A large motion alone is no reason, short of a million sizes: answers are linear, thin wires under too much load and frames in units
 * of one are still right to be scaled. What tells a near mechanism is that its members hardly deform while its nodes go far: they turn
 * about a spring of nearly nothing, or about bars that nearly lie in one line. So a motion is absurd when it is both large against the
 * frame and many times what all members together give way under the forces they carry, each turn taken along the whole frame: where
 * supports and joints hold, no node can go further than the members on its way to a support give way.
 */
import { DOFS } from './dofs';
import { modeForces } from './inner-forces';
import { factorLdl, solveLdl } from './ldl';
import { type FrameProblem, problem } from './problem';
import type { ReadFrame } from './schema';
import type { System } from './system';
import { MODES } from './timoshenko';

/** Ten times the size of the frame, or ten radians, beyond what supports impose. */
const ABSURD_SIZES = 10;
const ABSURD_TURN = 10;
/**
 * Times what all members give way. Of 364 random frames that were solved, with springs from 1e-6 of the members' stiffness to far above
 * it, the middle one moved by 0.2 times that, nine in ten by less than 0.8, 95 in 100 by five or less; the rest stood on soft springs. A
 * portal of hinges on one spring moved by 40 000 times with a spring of 3e-6 of its column's stiffness and by 400 with one of 3e-4; two
 * bars in line but for 1e-6 of their length by more than a thousand.
 */
const ABSURD_SHARE = 1000;

/** Sizes of the frame, or radians, that no frame is meant to move, whatever its members give way: a slip in units or a section. */
const ABSURD_ANYHOW = 1e6;

const largest = (values: Float64Array, straight: boolean): number =>
  values.reduce((most, value, i) => (i % 6 < 3 === straight ? Math.max(most, Math.abs(value)) : most), 0);

/** What supports impose, as a move and as a turn: the frame may follow by so much. */
const imposedMotion = ({ held: { imposed } }: System, extent: number): readonly [move: number, turn: number] => {
  const turned = largest(imposed, false);
  return [largest(imposed, true) + turned * extent, turned];
};

/** What the members' own bodies, without their springs, give way under the forces they carry, each turn taken along the whole frame. */
const membersGive = ({ members }: System, deformations: Float64Array, extent: number): number =>
  members.reduce((sum, member, m) => {
    const forces = modeForces(member, m, deformations).map((force, a) => force - (member.bare.fixed[a] as number));
    const factor = factorLdl(member.bare.stiffness, MODES, 0);
    if (!factor.ok) return sum;
    return solveLdl(factor, forces).reduce((all, give, mode) => all + Math.abs(give) * (mode === 0 ? 1 : extent), sum);
  }, 0);

export const absurdMotion = (
  frame: ReadFrame,
  system: System,
  { motions, deformations }: { readonly motions: Float64Array; readonly deformations: Float64Array },
  extent: number,
): FrameProblem | null => {
  const [move, turn] = imposedMotion(system, extent);
  // Nodes in one place have no size to be held against.
  if (extent === 0) return null;
  /** In sizes of the frame or radians, beyond what is imposed. */
  const sizes = motions.map((value, dof) => (dof % 6 < 3 ? (Math.abs(value) - move) / extent : Math.abs(value) - turn));
  const over = sizes.reduce((most, value, dof) => (value > (sizes[most] as number) ? dof : most), 0);
  const size = sizes[over] as number;
  const straight = over % 6 < 3;
  if (!(size > (straight ? ABSURD_SIZES : ABSURD_TURN))) return null;
  const times = (size * extent) / membersGive(system, deformations, extent);
  if (times <= ABSURD_SHARE && size <= ABSURD_ANYHOW) return null;
  const where = `node "${frame.nodes[Math.floor(over / 6)]?.id}"`;
  const moved = `${DOFS[over % 6]} is ${(motions[over] as number).toExponential(3)}`;
  const far = (limit: number): string => `more than ${limit} ${straight ? 'times the size of the frame' : 'radians'}`;
  const why =
    times > ABSURD_SHARE
      ? `${far(ABSURD_SIZES)} and ${times.toExponential(0)} times what its members give way: absurd, the frame is nearly a mechanism; support or stiffen it`
      : `${far(ABSURD_ANYHOW)}: absurd, the frame hardly resists its load; check units, moduli and sections`;
  const what = `${moved}, ${why}, or give a part of the load (answers grow with it)`;
  return problem('absurd', where, what);
};
