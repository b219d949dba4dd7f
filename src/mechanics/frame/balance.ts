/** Whether a computed answer may be shown: every node in balance, the frame as a whole in balance, no motion beyond all sense. */
import { add, cross, length, subtract, type Vec3 } from '../../units';
import { DOFS } from './dofs';
import { type FrameProblem, problem } from './problem';
import type { ReadFrame } from './schema';
import { globalDof, type System } from './system';

/** Forces that should be nothing may be this share of the largest in the frame. Answers are wanted to 1e-6. */
const BALANCE = 1e-8;
/** `BALANCE` x this share of what a motion would take by itself cannot be told from none: a frame moved as a whole carries nothing. */
const ROUNDING = 1e-12;
/** The squares of smaller numbers lose their digits. */
const NOTHING = 1e-150;
/**
 * A node that moves ten times as far as the frame is large, or turns by ten radians, beyond what supports impose: the frame does not
 * resist its load. Pivots and balance cannot tell it: beside a rigid link a sound frame looks as soft as a near mechanism, and a near
 * mechanism balances its loads to the last digit; only motion against size can. Lower it may not be: answers are linear, and thin
 * wires under too much load are still right to be scaled (of 3000 random frames of 3 mm wires one in twenty moved by more than 0.7
 * sizes, one in 500 by more than ten; a portal on one spring of 1e-6 of its due moves by thousands).
 */
const ABSURD_SIZES = 10;
const ABSURD_TURN = 10;

export interface Answer {
  /** All 6 x nodes, global. */
  readonly motions: Float64Array;
  readonly inner: Float64Array;
  readonly reactions: Float64Array;
}

/** Diagonal of the box round all nodes. */
const extentOf = (frame: ReadFrame): number => {
  const side = (d: 0 | 1 | 2): number => {
    const all = frame.nodes.map(({ xyz }) => xyz[d]);
    return all.reduce((a, b) => Math.max(a, b)) - all.reduce((a, b) => Math.min(a, b));
  };
  return Math.hypot(side(0), side(1), side(2));
};

const largest = (values: Float64Array, straight: boolean): number =>
  values.reduce((most, value, i) => (i % 6 < 3 === straight ? Math.max(most, Math.abs(value)) : most), 0);

/** How far and by how much a node may move and turn. Nodes in one place have no size to be held against. */
const mostMotion = ({ held: { imposed } }: System, extent: number): readonly [move: number, turn: number] => {
  const turned = largest(imposed, false);
  const moved = largest(imposed, true) + turned * extent;
  return [extent === 0 ? Number.POSITIVE_INFINITY : moved + ABSURD_SIZES * extent, turned + ABSURD_TURN];
};

const absurdMotion = (frame: ReadFrame, system: System, motions: Float64Array, extent: number): FrameProblem | null => {
  const [move, turn] = mostMotion(system, extent);
  for (const [dof, value] of motions.entries()) {
    const straight = dof % 6 < 3;
    const most = straight ? move : turn;
    if (Math.abs(value) <= most) continue;
    const where = `node "${frame.nodes[Math.floor(dof / 6)]?.id}"`;
    const limit = straight ? `${ABSURD_SIZES} times the size of the frame` : `${ABSURD_TURN} radians`;
    const what = `${DOFS[dof % 6]} is ${value.toExponential(3)}, more than ${limit}: absurd, the frame hardly resists its load; support or stiffen it, or give a part of the load (answers grow with it)`;
    return problem('absurd', where, what);
  }
  return null;
};

const at = (values: Float64Array, start: number): Vec3 => [
  values[start] as number,
  values[start + 1] as number,
  values[start + 2] as number,
];

/** Sum of all that acts on the frame from outside: loads, reactions, ground springs, loads along members. Moments about the first node. */
const outerSum = (frame: ReadFrame, { members, held }: System, { motions, reactions }: Answer): [Vec3, Vec3] => {
  const acting = Float64Array.from(
    held.loads,
    (load, i) => load + (reactions[i] as number) - (held.ground[i] as number) * (motions[i] as number),
  );
  const pole = frame.nodes[0]?.xyz ?? [0, 0, 0];
  let [force, moment]: [Vec3, Vec3] = [
    [0, 0, 0],
    [0, 0, 0],
  ];
  const act = (f: Vec3, m: Vec3, place: Vec3): void => {
    force = add(force, f);
    moment = add(moment, add(m, cross(subtract(place, pole), f)));
  };
  frame.nodes.forEach(({ xyz }, n) => {
    act(at(acting, 6 * n), at(acting, 6 * n + 3), xyz);
  });
  for (const { load, loadAt } of members) act(load, [0, 0, 0], loadAt);
  return [force, moment];
};

/** The largest force that a node's motion would take if nothing else moved. */
const blocked = ({ members }: System, motions: Float64Array): number =>
  members.reduce(
    (most, member) =>
      member.sizes.reduce(
        (all, k, end) => Math.max(all, k * Math.abs(motions[globalDof(member, end)] as number)),
        most,
      ),
    0,
  );

/** The first reason not to show the answer; null when it holds. `endForces` are those of all members, twelve each. */
export const answerProblem = (
  frame: ReadFrame,
  system: System,
  answer: Answer,
  endForces: Float64Array,
): FrameProblem | null => {
  const size = extentOf(frame);
  const absurd = absurdMotion(frame, system, answer.motions, size);
  if (absurd) return absurd;
  const extent = size || 1;
  const all = [endForces, system.held.loads, answer.reactions];
  const [straight, turning] = [true, false].map((forces) =>
    Math.max(...all.map((values) => largest(values, forces))),
  ) as [number, number];
  const least = Math.max(NOTHING, ROUNDING * blocked(system, answer.motions));
  const force = Math.max(least, straight, turning / extent);
  const moment = force * extent;
  for (const dof of system.free) {
    const left = Math.abs((system.held.loads[dof] as number) - (answer.inner[dof] as number));
    if (left <= BALANCE * (dof % 6 < 3 ? force : moment)) continue;
    const where = `node "${frame.nodes[Math.floor(dof / 6)]?.id}"`;
    return problem(
      'unbalanced',
      where,
      `${DOFS[dof % 6]} is left unbalanced by ${left.toExponential(2)}: stiffnesses too far apart`,
    );
  }
  const [sumForce, sumMoment] = outerSum(frame, system, answer);
  const count = Math.max(1, frame.nodes.length);
  if (length(sumForce) <= BALANCE * count * force && length(sumMoment) <= BALANCE * count * moment) return null;
  return problem(
    'unbalanced',
    'frame',
    `loads and reactions leave ${length(sumForce).toExponential(2)} (force) and ${length(sumMoment).toExponential(2)} (moment)`,
  );
};
