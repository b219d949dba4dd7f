/** Plane frames for tests, told in a few words, and what is asked of them. */
import type { FrameModel } from '../../src/mechanics/frame';
import { type Member, type Six, solved } from './frames';

/** A frame in X-Y: out of its plane nothing moves. Members join points in order unless told; every value 1 that does not count. */
export interface Plane {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly E?: number;
  readonly I?: number;
  readonly A?: number;
  readonly members?: readonly (Partial<Member> & { readonly i: number; readonly j: number })[];
  /** Node: what is held of x, y, turn; as letters. */
  readonly held: Readonly<Record<number, string>>;
  readonly settled?: Readonly<Record<number, number>>;
  readonly loads?: Readonly<Record<number, readonly [fx: number, fy: number, mz: number]>>;
  /** Downwards, per unit of length, on every member. */
  readonly w?: number;
}

export const plane = ({ points, members, held, settled = {}, loads = {}, w = 0, ...values }: Plane) => {
  const letters = { x: 'ux', y: 'uy', t: 'rz' } as const;
  const all = members ?? points.slice(1).map((_, i) => ({ i, j: i + 1 }));
  const model: FrameModel = {
    nodes: points.map(([x, y], id) => ({ id, xyz: [x, y, 0] })),
    materials: { m: { E: values.E ?? 17000, G: 6500 } },
    sections: { s: { A: values.A ?? 50, Iy: 1, Iz: values.I ?? 250, J: 1 } },
    members: all.map((member, id) => ({
      id,
      section: 's',
      material: 'm',
      orientation: points[member.i]?.[0] === points[member.j]?.[0] ? [-1, 0, 0] : [0, 1, 0],
      ...(w === 0 ? {} : { distributed: [{ axes: 'global' as const, q: [0, -w, 0] as [number, number, number] }] }),
      ...member,
    })),
    supports: points.map((_, node) => ({
      node,
      fixed: ['uz', 'rx', 'ry', ...[...(held[node] ?? '')].map((letter) => letters[letter as keyof typeof letters])],
      ...(settled[node] === undefined ? {} : { imposed: { uy: settled[node] } }),
    })) as FrameModel['supports'],
    nodalLoads: Object.entries(loads).map(([node, [fx, fy, mz]]) => ({ node, F: [fx, fy, 0, 0, 0, mz] as Six })),
  };
  const solution = solved(model);
  const at = (table: Readonly<Record<string, readonly number[]>>, row: number, i: number): number =>
    table[String(row)]?.[i] ?? Number.NaN;
  return {
    x: (node: number) => at(solution.displacements, node, 0),
    y: (node: number) => at(solution.displacements, node, 1),
    turn: (node: number) => at(solution.displacements, node, 5),
    rx: (node: number) => at(solution.reactions, node, 0),
    ry: (node: number) => at(solution.reactions, node, 1),
    rm: (node: number) => at(solution.reactions, node, 5),
    /** Moment at the beginning or end of a member, sagging positive. */
    moment: (member: number, end: 0 | 1) => (end === 0 ? -1 : 1) * at(solution.memberEndForces, member, 5 + 6 * end),
  };
};
