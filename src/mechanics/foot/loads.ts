/** One load case on one foot: solved, and told as plain data. */
import type { BoneId } from '../../ids';
import { length, type Vec3 } from '../../units';
import { peakOf } from '../stations';
import type { StationTable } from '../types';
import { metatarsalOf, RAYS, type Ray } from './landmarks';
import { legHoldOf } from './leg-hold';
import type { LoadCase, LoadCaseFigures } from './load-case';
import { pathOf } from './path';
import { tibiaOf } from './path-forces';
import { allStations, type JointForce, jointForces, type RayStation } from './recover';
import type { FootSolution, FrameOf } from './solve';
import { type FootLoads, type JointLoad, LARGE_TURN_DEG, type LoadFlag } from './types';

/** Fascia strength in the laboratory, N: 1189 (SD 244), Kitaoka 1994 (abstract). */
export const FASCIA_STRENGTH_N = 1189;

/** Ground's push along over across beyond which a shoe slips on most floors (from memory). */
const SLIP_SHARE = 0.8;

const jointLoads = (solution: FootSolution, joints: readonly JointForce[]): JointLoad[] => {
  const { marks } = solution.ready;
  const facetOf = (id: string): number | null => {
    const named = [...marks.joints.values()].filter(
      (j) => j.id === id || (id === 'talus-calcaneus' && j.id.startsWith(`${id}-`)),
    );
    if (named.length === 0) return null;
    return named.reduce((sum, j) => sum + (Math.PI / 4) * j.extentsMm[0] * j.extentsMm[1], 0);
  };
  const byJoint = new Map<string, JointForce[]>();
  for (const joint of joints) {
    const id = joint.id.replace(/-\d$/, '');
    byJoint.set(id, [...(byJoint.get(id) ?? []), joint]);
  }
  return [...byJoint].map(([id, parts]) => ({
    id,
    bones: id.split('-') as [BoneId, BoneId],
    normalN: parts.reduce((sum, p) => sum + p.normalN, 0),
    shearN: parts.reduce((sum, p) => sum + p.shearN, 0),
    facetMm2: facetOf(id),
  }));
};

const tableOf = (
  { sections }: FrameOf,
  ray: Ray,
  stations: readonly RayStation[],
  heldMm: readonly [number, number],
): StationTable => {
  const full = stations.map((station, i) => ({ ...station, section: sections[ray].usual[i]?.section ?? never(ray) }));
  return {
    bone: metatarsalOf(ray),
    stations: full,
    peakTension: peakOf(full, 'tensionMPa'),
    peakCompression: peakOf(full, 'compressionMPa'),
    heldMm,
  };
};

const never = (ray: Ray): never => {
  throw new RangeError(`ray ${ray} lacks a cut`);
};

const turnOf = ({ displacement: u }: FootSolution, node: number): Vec3 =>
  [u[6 * node + 3], u[6 * node + 4], u[6 * node + 5]] as unknown as Vec3;

/** Of the bones from the ankle to the heads: the first toe hangs on its joint and hands on the force that it was given. */
const largestTurn = (solution: FootSolution): number => {
  const { nodes } = solution.ready;
  return nodes.at.reduce(
    (most, _, node) => (node === nodes.rigid.phalanxProximal1 ? most : Math.max(most, length(turnOf(solution, node)))),
    0,
  );
};

/** All slips together, N. */
export const fasciaOf = ({ ready, tieN }: FootSolution): number =>
  ready.ties.reduce((sum, tie, k) => (tie.id.startsWith('fascia') ? sum + (tieN[k] as number) : sum), 0);

/** Horizontal over vertical where the ground is level; on a tilted one along it over across it, which is what makes a shoe slip. */
export const sidewaysOf = (g: LoadCaseFigures): number => Math.hypot(g.sideways, g.forwards) / g.total;

/** Where a run is more than the theory, or the tissue, can bear. */
export const flagsOf = (solution: FootSolution, g: LoadCaseFigures): LoadFlag[] => {
  const flags: LoadFlag[] = [];
  if (fasciaOf(solution) > FASCIA_STRENGTH_N) flags.push('fasciaAboveStrength');
  if (largestTurn(solution) > (LARGE_TURN_DEG * Math.PI) / 180) flags.push('largeTurns');
  if (sidewaysOf(g) > SLIP_SHARE) flags.push('slips');
  return flags;
};

/** Tells a solved case. `solution` must come from the told figures (wall 0), for tables carry the usual sections. */
export const loadsOf = (frame: FrameOf, solution: FootSolution, loadCase: LoadCase): FootLoads => {
  const { ready } = solution;
  const { figures: g } = loadCase;
  const joints = jointForces(solution);
  const stations = allStations(solution, frame.sections, 0);
  const fasciaN = fasciaOf(solution);
  const largestTurnRad = largestTurn(solution);
  const flags = flagsOf(solution, g);
  const leg = legHoldOf(solution);
  return {
    weightN: solution.weightN,
    tables: RAYS.map((ray) => {
      const { knots, stops } = ready.nodes.rays[ray];
      const heldTo = stops.length > 2 ? (stops.at(-2) ?? 0) : 0;
      return tableOf(frame, ray, stations[ray], [knots[0]?.sMm ?? 0, knots[heldTo]?.sMm ?? 0]);
    }),
    path: pathOf(solution, joints, stations, g),
    joints: jointLoads(solution, joints),
    fasciaN,
    achillesN: solution.achillesN,
    tibiaN: tibiaOf(solution),
    legAlongN: leg.alongN,
    legFrontalNmm: leg.frontalNmm,
    sidewaysShare: sidewaysOf(g),
    largestTurnRad,
    flags,
    solved: {
      residual: solution.residual,
      smallestPivotRatio: ready.factor.smallestPivotRatio,
      passes: solution.passes,
      pivots: solution.pivots,
    },
  };
};
