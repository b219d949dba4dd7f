/** Whether a computed answer may be shown: every node in balance, the frame as a whole in balance, no motion beyond all sense. */
import { add, cross, length, subtract, type Vec3 } from '../../units';
import { absurdMotion } from './absurd';
import { DOFS } from './dofs';
import { extentOf } from './extent';
import { type FrameProblem, problem } from './problem';
import type { ReadFrame } from './schema';
import { globalDof, type System } from './system';

/** Forces that should be nothing may be this share of the largest in the frame. Answers are wanted to 1e-6. */
const BALANCE = 1e-8;
/** `BALANCE` x this share of what a motion would take by itself cannot be told from none: a frame moved as a whole carries nothing. */
const ROUNDING = 1e-12;
/** The squares of smaller numbers lose their digits. */
const NOTHING = 1e-150;
export interface Answer {
  /** All 6 x nodes, global. */
  readonly motions: Float64Array;
  /** 6 x members. */
  readonly deformations: Float64Array;
  readonly inner: Float64Array;
  readonly reactions: Float64Array;
}

const largest = (values: Float64Array, straight: boolean): number =>
  values.reduce((most, value, i) => (i % 6 < 3 === straight ? Math.max(most, Math.abs(value)) : most), 0);

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
  const absurd = absurdMotion(frame, system, answer, size);
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
      `${DOFS[dof % 6]} is left unbalanced by ${left.toExponential(2)}: a mechanism there that rounding hides, or stiffnesses too far apart for the arithmetic`,
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
