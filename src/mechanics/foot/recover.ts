/**
 * What the solved frame says of its parts: forces in joints, ties and pads, and stations along every metatarsal. Forces in newtons on
 * the part towards the toes; stations as in ../types.ts, in the bone's own axes.
 */
import { fromBone } from '../../anatomy';
import { add, cross, dot, scale, subtract, type Vec3 } from '../../units';
import type { InternalForces } from '../forces';
import { isSlenderAt } from '../section';
import { extremesOf, fieldOf } from '../stress';
import type { MemberPart } from './assemble';
import { metatarsalOf, RAYS, type Ray } from './landmarks';
import { type RaySection, type RaySections, sectionOfCut } from './ray-sections';
import type { FootSolution } from './solve';
import { acrossOf, leversOf, type Spring } from './springs';

/** Force in a joint: what the first bone does to the second, at the middle of the joint. */
export interface JointForce {
  readonly id: string;
  readonly at: Vec3;
  readonly force: Vec3;
  /** Along the joint's normal: pressing the bones together is negative. */
  readonly normalN: number;
  readonly shearN: number;
}

const moved = (u: Float64Array, node: number, from: Vec3): Vec3 => {
  const turn: Vec3 = [u[6 * node + 3] as number, u[6 * node + 4] as number, u[6 * node + 5] as number];
  return add([u[6 * node] as number, u[6 * node + 1] as number, u[6 * node + 2] as number], cross(turn, from));
};

export const jointForceOf = ({ ready, displacement: u }: FootSolution, spring: Spring): JointForce => {
  const [ra, rb] = leversOf(ready.nodes, spring);
  const gap = subtract(moved(u, spring.b, rb), moved(u, spring.a, ra));
  const [v, w] = acrossOf(spring.normal);
  const normalN = spring.along * dot(gap, spring.normal);
  const [sv, sw] = [spring.across * dot(gap, v), spring.across * dot(gap, w)];
  const onSecond = scale(add(scale(spring.normal, normalN), add(scale(v, sv), scale(w, sw))), -1);
  return { id: spring.id, at: spring.at, force: onSecond, normalN, shearN: Math.hypot(sv, sw) };
};

export const jointForces = (solution: FootSolution): readonly JointForce[] =>
  solution.ready.springs.map((spring) => jointForceOf(solution, spring));

/** Force and moment that the frame puts on the last end of a part of a metatarsal, about its node. */
const endOf = (u: Float64Array, part: MemberPart): { force: Vec3; moment: Vec3 } => {
  const ends = new Float64Array(12);
  for (let i = 0; i < 12; i++) ends[i] = u[6 * (part.nodes[i < 6 ? 0 : 1] as number) + (i % 6)] as number;
  const out = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < 6; i++) {
    let sum = 0;
    for (let j = 0; j < 12; j++) sum += (part.stiffness[(6 + i) * 12 + j] as number) * (ends[j] as number);
    out[i] = sum;
  }
  return {
    force: [out[0] as number, out[1] as number, out[2] as number],
    moment: [out[3] as number, out[4] as number, out[5] as number],
  };
};

export interface RayStation extends InternalForces {
  readonly sMm: number;
  readonly section: RaySection;
  readonly field: readonly [number, number, number];
  readonly tensionMPa: number;
  readonly tensionAtRad: number;
  readonly compressionMPa: number;
  readonly compressionAtRad: number;
  /** No part of the member, near a held end, or no slender member there: drawn hatched, never coloured. */
  readonly outsideBeamTheory: boolean;
}

const NOTHING: InternalForces = {
  axialN: 0,
  shearDorsalN: 0,
  shearLateralN: 0,
  bendingUpDownNmm: 0,
  bendingSidewaysNmm: 0,
  torsionNmm: 0,
};

/**
 * Stations of one metatarsal. Inside the frame's member forces follow by balance from its last end; beyond its ends (the tip behind
 * the joint, the head) there is no member, and nothing is said. `wall` as in the solved figures.
 */
export const rayStations = (solution: FootSolution, sections: RaySections, ray: Ray, wall: number): RayStation[] => {
  const { ready, displacement } = solution;
  const { marks, placing, nodes } = ready;
  const { axis } = marks.rays[ray];
  const bone = metatarsalOf(ray);
  const { knots, stops, firstNode } = nodes.rays[ray];
  const parts = ready.assembled.members.filter((part) => part.ray === ray);
  const ends = parts.map((part) => endOf(displacement, part));
  const [along, dorsal, lateral] = [axis.axis, axis.dorsal, axis.lateral].map((d) => placing.direction(bone, d)) as [
    Vec3,
    Vec3,
    Vec3,
  ];
  const [from, to] = [knots[0]?.sMm ?? 0, knots.at(-1)?.sMm ?? 0];
  const held = stops.map((stop) => knots[stop]?.sMm ?? 0);
  return sections[ray].usual.map((cut, i) => {
    const section = sectionOfCut(sections[ray], i, wall);
    const within = cut.sMm >= from && cut.sMm <= to;
    const p = Math.max(
      0,
      parts.findIndex((part) => cut.sMm <= (knots[part.to]?.sMm ?? 0)),
    );
    const [end, node] = [ends[p], nodes.at[firstNode + p + 1]];
    let forces = NOTHING;
    if (within && end !== undefined && node !== undefined) {
      const about = placing.point({ bone, at: fromBone(axis, cut.sMm, ...section.centroidMm) });
      const moment = add(end.moment, cross(subtract(node, about), end.force));
      forces = {
        axialN: dot(end.force, along),
        shearDorsalN: dot(end.force, dorsal),
        shearLateralN: dot(end.force, lateral),
        bendingUpDownNmm: dot(moment, lateral),
        bendingSidewaysNmm: dot(moment, dorsal),
        torsionNmm: dot(moment, along),
      };
    }
    const field = fieldOf(section, forces.axialN, forces.bendingUpDownNmm, forces.bendingSidewaysNmm);
    return {
      sMm: cut.sMm,
      ...forces,
      section,
      field,
      ...extremesOf(section, cut.outline, field),
      outsideBeamTheory: !within || !isSlenderAt(cut, to - from, held),
    };
  });
};

/** Newtons pressed on the ground under each named pad, both slopes together. */
export const padForces = ({ ready, padN }: FootSolution): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>();
  ready.pads.forEach((pad, i) => {
    sums.set(pad.pad, (sums.get(pad.pad) ?? 0) + (padN[i] as number));
  });
  return sums;
};

/** The frame's places moved with its loads, mm. */
export const movementAt = ({ ready, displacement }: FootSolution, node: number, at: Vec3): Vec3 =>
  moved(displacement, node, subtract(at, ready.nodes.at[node] as Vec3));

export const allStations = (solution: FootSolution, sections: RaySections, wall: number): Record<Ray, RayStation[]> =>
  Object.fromEntries(RAYS.map((ray) => [ray, rayStations(solution, sections, ray, wall)])) as Record<Ray, RayStation[]>;
