/** A member of a frame made ready: its axes, how the motions of its nodes deform it, what it does then, and its own load. */
import { add, dot, length, scale, subtract, type Vec3 } from '../../units';
import { type Axes, localAxes } from './axes';
import { DOFS, dofIndex } from './dofs';
import { type Flexing, withEndSprings } from './end-springs';
import { chainFlexibility, type MemberSegment } from './flexible-member';
import { factorLdl, invert } from './ldl';
import { type FrameProblem, problem } from './problem';
import type { ReadFrame, ReadMember, ReadSection } from './schema';
import { END_DOFS, MODES, modeStiffness, modesOf, type Prism } from './timoshenko';

export interface FrameMember extends Flexing {
  readonly ok: true;
  readonly id: string;
  /** Places of its nodes in the list of nodes. */
  readonly nodes: readonly [i: number, j: number];
  readonly axes: Axes;
  readonly lengthMm: number;
  /** Deformations from the motions of both nodes in global axes, 6 x 12 row-major. */
  readonly modes: Float64Array;
  /** Diagonal of its 12 x 12 in global axes before any end spring or release: what rounding is measured by. */
  readonly sizes: Float64Array;
  /** Without its end springs. */
  readonly bare: Pick<Flexing, 'stiffness' | 'fixed'>;
  /** Its own load, whole, global axes, acting at `loadAt`. */
  readonly load: Vec3;
  readonly loadAt: Vec3;
}

const prismOf = (section: ReadSection, material: { readonly E: number; readonly G: number }): Prism => ({
  areaMm2: section.A,
  iyMm4: section.Iy,
  izMm4: section.Iz,
  jMm4: section.J,
  shearYMm2: section.Asy,
  shearZMm2: section.Asz,
  youngMPa: material.E,
  shearMPa: material.G,
});

/** Local modes turned to global axes: every three columns are one point's motion or turn. */
const turned = (local: Float64Array, axes: Axes): Float64Array => {
  const modes = new Float64Array(MODES * END_DOFS);
  for (let mode = 0; mode < MODES; mode++)
    for (let group = 0; group < END_DOFS; group += 3)
      for (let g = 0; g < 3; g++)
        for (let l = 0; l < 3; l++) {
          const at = mode * END_DOFS + group;
          modes[at + g] = (modes[at + g] as number) + (local[at + l] as number) * (axes[l]?.[g] as number);
        }
  return modes;
};

/** Stiffness of the six modes of a chain: what gives way at the middle of the line between its ends, turned round. */
const chainModeStiffness = (
  segments: readonly MemberSegment[],
  [from, to]: readonly [Vec3, Vec3],
  axes: Axes,
): Float64Array | null => {
  const middle = scale(add(from, to), 0.5);
  const turn = (v: Vec3): Vec3 => [dot(v, axes[0]), dot(v, axes[1]), dot(v, axes[2])];
  const seen = (place: Vec3): Vec3 => turn(subtract(place, middle));
  const flexibility = chainFlexibility(
    segments.map((each) => ({ ...each, from: seen(each.from), to: seen(each.to), y: turn(each.y) })),
    [0, 0, 0],
  );
  const factor = factorLdl(flexibility, MODES);
  if (!factor.ok || !flexibility.every(Number.isFinite)) return null;
  const middleStiffness = invert(flexibility, MODES);
  const half = length(subtract(to, from)) / 2;
  /** Which motion at the middle each mode is, and how much of it a unit of the mode. */
  const motions = [
    [0, 1],
    [3, 1],
    [5, 1],
    [1, -half],
    [4, 1],
    [2, half],
  ] as const;
  const stiffness = new Float64Array(MODES * MODES);
  motions.forEach(([i, unitI], a) => {
    motions.forEach(([j, unitJ], b) => {
      stiffness[a * MODES + b] = unitI * unitJ * (middleStiffness[i * 6 + j] as number);
    });
  });
  return stiffness;
};

/** Sum of the distributed loads, in the member's axes. */
const ownLoad = (member: ReadMember, axes: Axes): Vec3 =>
  member.distributed.reduce<Vec3>(
    (sum, { axes: given, q }) => add(sum, given === 'local' ? q : [dot(q, axes[0]), dot(q, axes[1]), dot(q, axes[2])]),
    [0, 0, 0],
  );

/**
 * An even load q: simply supported, each end takes half; held, the ends turn back with q L^2 / 12, a bow and no sway. By symmetry
 * shear deformation changes neither.
 */
const underLoad = ([x, y, z]: Vec3, lengthMm: number): Pick<Flexing, 'fixed' | 'endLoads'> => {
  const half = (q: number): number => (-q * lengthMm) / 2;
  const held = (q: number): number => (q * lengthMm * lengthMm) / 12;
  const ends = [half(x), half(y), half(z), 0, 0, 0];
  return {
    fixed: Float64Array.of(0, 0, held(y), 0, -held(z), 0),
    endLoads: Float64Array.of(...ends, ...ends),
  };
};

const segmentsOf = (
  member: ReadMember,
  ends: readonly [Vec3, Vec3],
  prism: (section: string) => Prism,
): MemberSegment[] | FrameProblem => {
  const parts = member.segments ?? [];
  const where = `member "${member.id}"`;
  const segments: MemberSegment[] = [];
  let from = ends[0];
  for (const [at, part] of parts.entries()) {
    const last = at === parts.length - 1;
    if (last !== (part.to === undefined))
      return problem(
        'form',
        where,
        `segment ${at + 1} ${last ? 'is the last and ends at node j: leave out' : 'needs'} "to"`,
      );
    const to = part.to ?? ends[1];
    if (localAxes(from, to, member.orientation) === null)
      return problem('geometry', where, `segment ${at + 1} has no length, or the orientation runs along it`);
    segments.push({ from, to, y: member.orientation, ...prism(part.section) });
    from = to;
  }
  return segments;
};

/** Two nodes nearer than this share of the size of the frame, or of their distance from the origin, are one place. */
const ONE_PLACE = 1e-12;

/** Makes a member ready. Its names must be known. A problem for no length, an orientation along it, or a release too many. */
export const frameMember = (
  frame: ReadFrame,
  member: ReadMember,
  nodes: readonly [number, number],
  extent: number,
): FrameMember | FrameProblem => {
  const where = `member "${member.id}"`;
  const place = (node: number): Vec3 => frame.nodes[node]?.xyz ?? [Number.NaN, Number.NaN, Number.NaN];
  const [from, to] = [place(nodes[0]), place(nodes[1])];
  const lengthMm = length(subtract(to, from));
  if (lengthMm <= ONE_PLACE * Math.max(extent, length(from), length(to)))
    return problem(
      'geometry',
      where,
      lengthMm === 0
        ? `it has no length: its ends lie at ${from.join(', ')}`
        : `it has no length in a frame of ${extent.toPrecision(3)}: its ends lie ${lengthMm.toPrecision(3)} apart at ${from.join(', ')}`,
    );
  const axes = localAxes(from, to, member.orientation);
  if (axes === null)
    return problem(
      'geometry',
      where,
      `the orientation ${member.orientation.join(', ')} runs along it or has no length`,
    );
  const prism = (section: string): Prism =>
    prismOf(frame.sections[section] as ReadSection, frame.materials[member.material] as ReadFrame['materials'][string]);
  const local = modesOf(lengthMm);
  const modes = turned(local, axes);
  let stiffness: Float64Array;
  if (member.section === undefined) {
    const segments = segmentsOf(member, [from, to], prism);
    if ('ok' in segments) return segments;
    const chain = chainModeStiffness(segments, [from, to], axes);
    if (chain === null)
      return problem(
        'unbalanced',
        where,
        'what its segments give way lies too far apart for the arithmetic: put nodes where they meet, or make them more alike',
      );
    stiffness = chain;
  } else stiffness = modeStiffness(prism(member.section), lengthMm);
  const q = ownLoad(member, axes);
  const bare: Flexing = { stiffness, ...underLoad(q, lengthMm) };
  const springs = member.endSprings.map(({ end, dof, k }) => ({ at: dofIndex(dof) + (end === 'j' ? 6 : 0), k }));
  const sprung = withEndSprings(bare, local, springs);
  if (!sprung.ok) {
    const { at } = sprung.spring;
    const what = `with ${DOFS[at % 6]} released at end ${at < 6 ? 'i' : 'j'} it moves freely between its nodes (mechanism)`;
    return problem('mechanism', where, `${what}: keep one of its releases closed`);
  }
  return {
    ok: true,
    id: member.id,
    nodes,
    axes,
    lengthMm,
    modes,
    bare,
    sizes: diagonal(stiffness, modes),
    load: scale(
      axes.reduce<Vec3>((sum, axis, i) => add(sum, scale(axis, q[i] as number)), [0, 0, 0]),
      lengthMm,
    ),
    loadAt: scale(add(from, to), 0.5),
    ...sprung.member,
  };
};

const diagonal = (stiffness: Float64Array, modes: Float64Array): Float64Array =>
  Float64Array.from({ length: END_DOFS }, (_, i) => {
    let sum = 0;
    for (let a = 0; a < MODES; a++)
      for (let b = 0; b < MODES; b++)
        sum +=
          (modes[a * END_DOFS + i] as number) *
          (stiffness[a * MODES + b] as number) *
          (modes[b * END_DOFS + i] as number);
    return sum;
  });
