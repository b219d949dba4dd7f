/** Solves a space frame: small motions, linear material, Timoshenko members. */
import { answerProblem } from './balance';
import { carryLoads } from './carry-loads';
import { extentOf } from './extent';
import { modeForces } from './inner-forces';
import { mechanismOf } from './mechanism';
import { type FrameMember, frameMember } from './member';
import { nameProblem } from './names';
import type { FrameProblem } from './problem';
import { type FrameModel, type ReadFrame, readFrame } from './schema';
import { heldOf, systemOf } from './system';
import { END_DOFS, MODES, modesOf } from './timoshenko';

export interface FrameSolution {
  readonly ok: true;
  /** ux uy uz rx ry rz of every node, global axes. */
  readonly displacements: Readonly<Record<string, readonly number[]>>;
  /**
   * Force and moment of the support on every supported node, global axes; 0 where a motion is not fixed. Ground springs are no
   * supports: theirs is -k times the displacement and not in here.
   */
  readonly reactions: Readonly<Record<string, readonly number[]>>;
  /** Twelve forces and moments on the member from its nodes, member axes, at i then at j: tension is positive at j. */
  readonly memberEndForces: Readonly<Record<string, readonly number[]>>;
}

const endForcesOf = (member: FrameMember, m: number, deformations: Float64Array): Float64Array => {
  const forces = modeForces(member, m, deformations);
  const modes = modesOf(member.lengthMm);
  return Float64Array.from(member.endLoads, (load, end) => {
    let sum = load;
    for (let mode = 0; mode < MODES; mode++) sum += (modes[mode * END_DOFS + end] as number) * (forces[mode] as number);
    return sum;
  });
};

const membersOf = (frame: ReadFrame, at: ReadonlyMap<string, number>): FrameMember[] | FrameProblem => {
  const members: FrameMember[] = [];
  const extent = extentOf(frame);
  for (const each of frame.members) {
    const made = frameMember(frame, each, [at.get(each.i) ?? Number.NaN, at.get(each.j) ?? Number.NaN], extent);
    if (!made.ok) return made;
    members.push(made);
  }
  return members;
};

const six = (values: Float64Array, node: number): number[] => Array.from(values.subarray(6 * node, 6 * node + 6));

/** The frame solved, or the first thing that keeps it from being solved. Never throws for what stands in the model. */
export const solveFrame = (model: FrameModel): FrameSolution | FrameProblem => {
  const read = readFrame(model);
  if (!read.ok) return read;
  const { frame } = read;
  const names = nameProblem(frame);
  if (names) return names;
  const at = new Map(frame.nodes.map(({ id }, n) => [id, n]));
  const members = membersOf(frame, at);
  if ('ok' in members) return members;
  const held = heldOf(frame, at);
  const system = systemOf(frame, members, held);
  if (!system.ok) return system;
  const free = mechanismOf(frame, system);
  if (free) return free;
  const { motions, deformations, inner } = carryLoads(system);
  const reactions = held.loads.map((load, dof) => (held.fixed[dof] === 1 ? (inner[dof] as number) - load : 0));
  const endForces = members.map((member, m) => endForcesOf(member, m, deformations));
  const all = Float64Array.from(endForces.flatMap((forces) => Array.from(forces)));
  const wrong = answerProblem(frame, system, { motions, deformations, inner, reactions }, all);
  if (wrong) return wrong;
  const supported = new Set(frame.supports.map(({ node }) => node));
  return {
    ok: true,
    displacements: Object.fromEntries(frame.nodes.map(({ id }, n) => [id, six(motions, n)])),
    reactions: Object.fromEntries([...supported].map((id) => [id, six(reactions, at.get(id) ?? 0)])),
    memberEndForces: Object.fromEntries(members.map(({ id }, m) => [id, Array.from(endForces[m] ?? [])])),
  };
};
