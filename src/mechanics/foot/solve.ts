/**
 * The foot under a load case: one convex problem in the forces that can only pull or press, inside a short search for what follows
 * from balance (the calf's force, how the ground's shear is shared). Small displacements from the pose, which is taken as unloaded.
 *
 * Shear is shared in proportion to what each pad carries and never through springs that stick and slip: those cycle, and turn signs.
 */
import { add, cross, STANDARD_GRAVITY, scale, subtract, type Vec3 } from '../../units';
import { factorLdl } from '../frame/ldl';
import {
  type Assembled,
  addForce,
  assemble,
  LEG_SLIDE,
  type LegHold,
  padRow,
  tieRow,
  WEAK_LIFT,
  WEAK_PITCH,
} from './assemble';
import { badFigure } from './bad-figure';
import { type Complementarity, type Settled, solveComplementarity } from './complementarity';
import { complianceOf, type Factor, type Halves, halvesOf, reachOf } from './compliance';
import { finish, type Pass } from './finish';
import { type Guess, nextGuess } from './fixed-point';
import { awayOf, groundOf, twistForces } from './ground';
import type { FootMarks, PadName } from './landmarks';
import { type LoadCase, TENDONS } from './load-case';
import { type FrameNodes, frameNodes } from './nodes';
import type { FrameFigure, FrameFigures } from './parameter-names';
import type { Placing } from './placing';
import type { RaySections } from './ray-sections';
import { type Spring, springsOf } from './springs';
import { achillesUnit, type PointForce, tendonForces } from './tendons';
import { type Pad, padsOf, type Tie, tiesOf } from './ties';
import { carriedBy, type WeakHold, weakHolds } from './weak-holds';

export type FootProblem =
  | { readonly kind: 'centreOfPressureOutside'; readonly zMm: number; readonly fromMm: number; readonly toMm: number }
  | { readonly kind: 'noStiffness'; readonly where: string }
  /** A figure of the frame that is no number, below zero, or zero where nothing would hold. */
  | { readonly kind: 'badFigure'; readonly figure: FrameFigure; readonly value: number }
  /** Stiffnesses lie so far apart that forces no longer balance to the digits that are told. */
  | { readonly kind: 'inexact'; readonly residual: number }
  | { readonly kind: 'notSettled'; readonly passes: number }
  /** The balance asks the calf to push: a tendon only pulls, and what in a person would balance it is no part of this. */
  | { readonly kind: 'calfPushes'; readonly pushN: number }
  | { readonly kind: 'absurd'; readonly mm: number; readonly deg: number; readonly where: string }
  | { readonly kind: 'badMass'; readonly massKg: number };

/** A frame ready to be loaded: a foot in a pose on some ground, with one set of figures. */
export interface ReadyFrame {
  readonly marks: FootMarks;
  readonly placing: Placing;
  readonly nodes: FrameNodes;
  readonly springs: readonly Spring[];
  readonly assembled: Assembled;
  readonly hold: LegHold;
  readonly ties: readonly Tie[];
  readonly pads: readonly Pad[];
  readonly ground: Vec3;
  readonly factor: Factor;
  /** Rows of ties, then of pads: m x n. */
  readonly rows: readonly Float64Array[];
  readonly halves: Halves;
  /** m x m, 1/k on its diagonal. */
  readonly matrix: Float64Array;
  readonly weak: readonly WeakHold[];
}

export interface FootSolution {
  readonly ready: ReadyFrame;
  readonly weightN: number;
  readonly displacement: Float64Array;
  /** The loads put on, without ties, pads and supports. */
  readonly load: Float64Array;
  readonly tieN: Float64Array;
  readonly padN: Float64Array;
  readonly achillesN: number;
  /** What was put on the first toe with the heel up, across the ground. */
  readonly toeN: number;
  /** Forces at places: tendons, calf, leg on the talus, the ground's shear and the first toe's share. */
  readonly applied: readonly PointForce[];
  readonly passes: number;
  readonly pivots: number;
  /** Balance of every freedom, as a share of the largest load. */
  readonly residual: number;
}

const holdOf = (marks: FootMarks, placing: Placing, f: FrameFigures, contact: LoadCase['contact']): LegHold => ({
  at: placing.point(marks.ankle),
  slide: [LEG_SLIDE, WEAK_LIFT, LEG_SLIDE],
  // With the heel up the heads lie in a line: the pose is held, and the calf found from what holding it would take.
  turn: [contact === 'forefoot' ? HELD_PITCH : WEAK_PITCH, HELD_AXIAL, 1000 * f.legFrontal],
});

const HELD_PITCH = 1e9;
/** About its own length the leg holds the foot: its turning comes from hip and trunk, which are no part of this. N mm/rad */
const HELD_AXIAL = 1e9;

export interface FrameOf {
  readonly marks: FootMarks;
  readonly sections: RaySections;
  readonly placing: Placing;
}

/** Factors a frame once for a pose, a ground and a set of figures. */
export const readyFrame = (
  { marks, sections, placing }: FrameOf,
  f: FrameFigures,
  loadCase: LoadCase,
): ReadyFrame | FootProblem => {
  const bad = badFigure(f);
  if (bad) return bad;
  const nodes = frameNodes(marks, sections, placing);
  const springs = springsOf(marks, nodes, placing, f);
  const hold = holdOf(marks, placing, f, loadCase.contact);
  const assembled = assemble(marks, nodes, placing, sections, f, springs, hold);
  const { n } = assembled;
  const factor = factorLdl(assembled.stiffness, n);
  if (!factor.ok) return { kind: 'noStiffness', where: nodes.name(Math.floor(factor.at / 6)) };
  const ground = groundOf(loadCase.figures.tilt);
  // A tie or pad of no stiffness is not there.
  const ties = tiesOf(marks, nodes, f, placing).filter((tie) => tie.stiffness > 0);
  const pads = padsOf(marks, nodes, f, placing, awayOf(marks, placing, loadCase)).filter((pad) => pad.stiffness > 0);
  const rows = [...ties.map((tie) => tieRow(n, nodes, tie)), ...pads.map((pad) => padRow(n, nodes, pad, ground))];
  const m = rows.length;
  const halves = halvesOf(factor, rows);
  const matrix = complianceOf(halves, n);
  [...ties, ...pads].forEach((each, i) => {
    matrix[i * m + i] = (matrix[i * m + i] as number) + 1 / each.stiffness;
  });
  const weak = weakHolds(factor, halves, nodes, hold);
  return { marks, placing, nodes, springs, assembled, hold, ties, pads, ground, factor, rows, halves, matrix, weak };
};

/** X component of the moment of a force about a point: pitch. */
const pitchOf = (about: Vec3, at: Vec3, force: Vec3): number => cross(subtract(at, about), force)[0];

const PASSES = 40;
/** Passes that a guess learns from. */
const MEMORY = 5;
/** Passes end when calf and shear change by less than this share of body weight. */
const SETTLED = 1e-10;
/** A push below this share of body weight is rounding: a foot in the press has nothing for its calf to do. */
const NO_PUSH = 1e-6;
const isProblem = <T extends object>(value: T | FootProblem): value is FootProblem => 'kind' in value;

/** Solves one case on a ready frame. `massKg` sets the body weight. */
export const solveFoot = (ready: ReadyFrame, loadCase: LoadCase, massKg: number): FootSolution | FootProblem => {
  if (!(massKg > 0 && Number.isFinite(massKg))) return { kind: 'badMass', massKg };
  const { marks, placing, nodes, ground, ties, pads, assembled } = ready;
  const { figures: g, contact } = loadCase;
  const weightN = massKg * STANDARD_GRAVITY;
  const ankle = ready.hold.at;
  const padAt = (pad: PadName): Vec3 => placing.point(marks.pads[pad]);
  const level = pads.reduce((sum, pad) => sum + pad.at[1], 0) / pads.length;
  const heelZ = 0;
  const spanZ = placing.point(marks.rays[2].head)[2] - heelZ;
  const [fromMm, toMm] = [Math.min(...pads.map((p) => p.at[2])), Math.max(...pads.map((p) => p.at[2]))];
  const centreZ = heelZ + g.centre * spanZ;
  if (contact === 'whole sole' && !(centreZ > fromMm && centreZ < toMm))
    return { kind: 'centreOfPressureOutside', zMm: centreZ, fromMm, toMm };
  const totalN = g.total * weightN;
  const sideways: Vec3 = [ground[1], -ground[0], 0];
  const shear: Vec3 = [sideways[0] * g.sideways * weightN, sideways[1] * g.sideways * weightN, g.forwards * weightN];
  const tendons = TENDONS.flatMap((tendon) =>
    g[tendon] === 0 ? [] : tendonForces(marks, placing, tendon, g[tendon] * weightN),
  );
  const calf = achillesUnit(marks, placing);
  const calfPitch = pitchOf(ankle, calf.at, calf.force);
  const tendonPitch = tendons.reduce((sum, t) => sum + pitchOf(ankle, t.at, t.force), 0);
  const toe: PointForce[] =
    contact === 'forefoot'
      ? [
          {
            place: marks.pads.firstToe,
            at: padAt('firstToe'),
            force: add(scale(ground, g.toeShare * totalN), scale(shear, g.toeShare)),
          },
        ]
      : [];

  const gaps = [...ties.map((t) => t.slackMm), ...pads.map((p) => p.gapMm)];
  const ankleNode = nodes.nodeOf(marks.ankle);
  /** A force at a place, and the leg that keeps the foot from rising with it. */
  const pushOn = (load: Float64Array, node: number, at: Vec3, force: Vec3): void => {
    addForce(load, nodes, node, at, force);
    addForce(load, nodes, ankleNode, ankle, [0, -force[1], 0]);
  };
  const toePart = contact === 'forefoot' ? g.toeShare : 0;
  const padsUp = totalN * (1 - toePart) * ground[1];
  const [always, ofCalf] = [new Float64Array(assembled.n), new Float64Array(assembled.n)];
  for (const { place, at, force } of [...tendons, ...toe]) pushOn(always, nodes.nodeOf(place), at, force);
  addForce(always, nodes, ankleNode, ankle, [0, -padsUp, 0]);
  pushOn(ofCalf, nodes.nodeOf(calf.place), calf.at, calf.force);

  /** What the ground pushes along itself at each pad. */
  const shearedBy = (shares: Float64Array): readonly Vec3[] => {
    const turning = twistForces(pads, shares, ground, g.twist * weightN);
    return pads.map((_, i) => add(scale(shear, shares[i] as number), turning[i] as Vec3));
  };

  const unitOf = ({ leverMm }: WeakHold): number => weightN * leverMm;
  const run = (guess: Float64Array, sheared: readonly Vec3[], hint?: Settled): Pass | FootProblem => {
    const achillesN = (guess[0] as number) * weightN;
    const load = always.map((x, i) => x + achillesN * (ofCalf[i] as number));
    ready.weak.forEach((hold, w) => {
      const put = (guess[1 + pads.length + w] as number) * unitOf(hold);
      for (let i = 0; i < load.length; i++) load[i] = (load[i] as number) + put * (hold.unit[i] as number);
    });
    let up = 0;
    pads.forEach(({ node, at }, i) => {
      const push = sheared[i] as Vec3;
      addForce(load, nodes, node, at, push);
      up += push[1];
    });
    addForce(load, nodes, ankleNode, ankle, [0, -up, 0]);
    const reach = reachOf(ready.factor, ready.halves, load);
    gaps.forEach((gap, i) => {
      reach[i] = (reach[i] as number) - gap;
    });
    const problem: Complementarity = { m: gaps.length, matrix: ready.matrix, reach };
    const solved = solveComplementarity(problem, hint);
    if (!solved.ok)
      return solved.reason === 'singular'
        ? { kind: 'noStiffness', where: 'ties and pads' }
        : { kind: 'notSettled', passes: 0 };
    return {
      load,
      tieN: solved.force.slice(0, ties.length),
      padN: solved.force.slice(ties.length),
      pivots: solved.pivots,
      settled: solved.settled,
    };
  };

  /** The same, told place by place. */
  const applied = (achillesN: number, sheared: readonly Vec3[]): readonly PointForce[] => {
    const pushed = [
      ...tendons,
      { ...calf, force: scale(calf.force, achillesN) },
      ...toe,
      ...pads.map(({ pad, at }, i): PointForce => ({ place: marks.pads[pad], at, force: sheared[i] as Vec3 })),
    ];
    const up = pushed.reduce((sum, { force }) => sum + force[1], padsUp);
    return [...pushed, { place: marks.ankle, at: ankle, force: [0, -up, 0] }];
  };

  const toePitch = toe.reduce((sum, t) => sum + pitchOf(ankle, t.at, t.force), 0);
  const centrePitch = contact === 'whole sole' ? pitchOf(ankle, [0, level, centreZ], scale(ground, totalN)) : 0;
  const padPitch = pads.map(({ at }) => (contact === 'forefoot' ? pitchOf(ankle, at, ground) : 0));
  /** What the ground's push asks of the calf, by balance about the ankle. */
  const calfFor = (padN: Float64Array, sheared: readonly Vec3[]): number => {
    const ofPads = pads.reduce(
      (sum, { at }, i) => sum + (padPitch[i] as number) * (padN[i] as number) + pitchOf(ankle, at, sheared[i] as Vec3),
      0,
    );
    return -(toePitch + centrePitch + ofPads + tendonPitch) / calfPitch;
  };

  // Of a guess: the calf in body weights, each pad's share of the shear, what the weak springs would carry; how far loads follow each.
  const matters = Math.abs(g.sideways) + Math.abs(g.forwards) + Math.abs(g.twist) / 100;
  const weights = Float64Array.of(1, ...pads.map(() => matters), ...ready.weak.map(() => 1));
  const evenly = new Float64Array(pads.length).fill(1 / pads.length);
  const evenN = evenly.map((x) => x * totalN * (1 - toePart));
  let guess: Float64Array = Float64Array.from([
    calfFor(evenN, shearedBy(evenly)) / weightN,
    ...evenly,
    ...ready.weak.map(() => 0),
  ]);
  let tried: readonly Guess[] = [];
  let least = Number.POSITIVE_INFINITY;
  let settled: Settled | undefined;
  for (let passes = 1; passes <= PASSES; passes++) {
    const [achillesN, sheared] = [(guess[0] as number) * weightN, shearedBy(guess.subarray(1, 1 + pads.length))];
    const pass = run(guess, sheared, settled);
    if (isProblem(pass)) return pass;
    const carried = pass.padN.reduce((a, b) => a + b, 0) + toePart * totalN;
    if (!(carried > 0)) return { kind: 'centreOfPressureOutside', zMm: centreZ, fromMm, toMm };
    const next = pass.padN.map((x) => x / carried);
    const off = Float64Array.from(
      [
        calfFor(pass.padN, shearedBy(next)) / weightN,
        ...next,
        ...ready.weak.map((hold) => carriedBy(hold, pass.load, pass.tieN, pass.padN) / unitOf(hold)),
      ],
      (x, i) => x - (guess[i] as number),
    );
    const change = off.reduce((most, x, i) => Math.max(most, Math.abs(x) * (weights[i] as number)), 0);
    if (change < SETTLED) {
      if (achillesN < -NO_PUSH * weightN) return { kind: 'calfPushes', pushN: -achillesN };
      const done = finish(ready, weightN, pass, achillesN, applied(achillesN, sheared), passes);
      return isProblem(done) ? done : { ...done, toeN: toePart * totalN };
    }
    // What was learnt elsewhere, with other ties and pads at work, no longer helps where it leads away.
    tried = [...(change < least ? tried : []), { at: guess, off }].slice(-MEMORY);
    least = Math.min(least, change);
    guess = nextGuess(tried, weights);
    settled = pass.settled;
  }
  return { kind: 'notSettled', passes: PASSES };
};
