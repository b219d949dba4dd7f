/**
 * Forces inside the frame, summed member by member from deformations. Deformations of successive corrections add up by themselves:
 * taken from the sum of the motions they would carry the rounding of a rigid motion that can be far larger.
 */
import type { FrameMember } from './member';
import { globalDof, type System } from './system';
import { END_DOFS, MODES } from './timoshenko';

type Frame = Pick<System, 'members' | 'held'>;

/** How each member deforms in its six modes (6 x members) for motions of all nodes (6 x nodes, global). */
export const deformationsOf = ({ members }: Frame, motions: Float64Array): Float64Array => {
  const deformations = new Float64Array(MODES * members.length);
  members.forEach(({ modes, nodes: [i, j] }, m) => {
    for (let mode = 0; mode < MODES; mode++) {
      const row = mode * END_DOFS;
      let sum = 0;
      for (let d = 0; d < 3; d++) {
        const [near, far] = [motions[6 * i + d] as number, motions[6 * j + d] as number];
        sum += (modes[row + 6 + d] as number) * (far - near);
      }
      for (let d = 3; d < 6; d++) {
        sum += (modes[row + d] as number) * (motions[6 * i + d] as number);
        sum += (modes[row + 6 + d] as number) * (motions[6 * j + d] as number);
      }
      deformations[m * MODES + mode] = sum;
    }
  });
  return deformations;
};

/** Forces of the six modes of member `m` of the list. */
export const modeForces = (member: FrameMember, m: number, deformations: Float64Array): Float64Array => {
  const own = deformations.subarray(m * MODES, m * MODES + MODES);
  return Float64Array.from(member.fixed, (fixed, a) =>
    own.reduce((sum, value, b) => sum + (member.stiffness[a * MODES + b] as number) * value, fixed),
  );
};

/** What the nodes must bring up to hold members and ground springs so: 6 x nodes, global. */
export const innerForces = (
  { members, held }: Frame,
  motions: Float64Array,
  deformations: Float64Array,
): Float64Array => {
  const sum = held.ground.map((k, dof) => k * (motions[dof] as number));
  members.forEach((member, m) => {
    const forces = modeForces(member, m, deformations);
    for (let end = 0; end < END_DOFS; end++) {
      const dof = globalDof(member, end);
      let force = sum[dof] as number;
      for (let mode = 0; mode < MODES; mode++)
        force += (member.modes[mode * END_DOFS + end] as number) * (forces[mode] as number);
      if (end % 6 < 3) force -= (member.load[end % 6] as number) / 2;
      sum[dof] = force;
    }
  });
  return sum;
};

/** Twice the energy that these motions put into members and ground springs, without the members' own loads. */
export const twiceEnergy = (frame: Frame, motions: Float64Array): number => {
  const deformations = deformationsOf(frame, motions);
  const ground = frame.held.ground.reduce((sum, k, dof) => sum + k * (motions[dof] as number) ** 2, 0);
  return frame.members.reduce((sum, { stiffness }, m) => {
    let energy = 0;
    for (let a = 0; a < MODES; a++) {
      // The force first: of a released pair both are exact opposites, and rounding counts squared.
      let force = 0;
      for (let b = 0; b < MODES; b++)
        force += (stiffness[a * MODES + b] as number) * (deformations[m * MODES + b] as number);
      energy += (deformations[m * MODES + a] as number) * force;
    }
    return sum + energy;
  }, ground);
};
