/**
 * Angles of the dorsoplantar film. Every line is looked at from above; a line that points more to the medial side has the greater
 * direction. deg, foot frame.
 */
import type { BoneId } from '../../ids';
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, fromBone, meshOf } from '../bone-axis';
import { meshCentroid } from '../mesh';
import type { Foot } from '../types';
import { type Angle, type AngleId, type Segment, slopeIn, turnBetween } from './angle';
import { jointEnd } from './facing';
import { lookOf } from './looks';
import { patchesOf } from './patches';
import { shaftLine } from './shaft';
import { talarAxis } from './talar-axis';

const MEDIAL: Vec3 = [1, 0, 0];
const LATERAL: Vec3 = [-1, 0, 0];

/** How much further inwards the second line points than the first. */
const inwards = (id: AngleId, from: Segment, to: Segment): Angle => ({
  id,
  value: turnBetween(slopeIn('dorsoplantar', from), slopeIn('dorsoplantar', to)),
  unit: 'deg',
  view: 'dorsoplantar',
  lines: [to, from],
});

/** Long axis (first principal axis of the solid), over the bone's length. */
const longAxis = (foot: Foot, bone: BoneId): Segment => {
  const axis = boneAxis(foot, bone);
  return [axis.origin, fromBone(axis, axis.lengthMm)];
};

/** Long axis of the calcaneus to axis of the talus (halving the tangents to its medial and lateral border). */
export const talocalcanealDorsoplantar = (foot: Foot): Angle =>
  inwards('talocalcanealDorsoplantar', longAxis(foot, 'calcaneus'), talarAxis(foot, 'dorsoplantar'));

/** Axis of the second metatarsal's shaft to axis of the talus. */
export const talusSecondMetatarsal = (foot: Foot): Angle =>
  inwards('talusSecondMetatarsal', shaftLine(foot, 'metatarsal2'), talarAxis(foot, 'dorsoplantar'));

/** Axis of the second metatarsal's shaft to that of the first. */
export const intermetatarsal12 = (foot: Foot): Angle =>
  inwards('intermetatarsal12', shaftLine(foot, 'metatarsal2'), shaftLine(foot, 'metatarsal1'));

/** Axis of the fifth metatarsal's shaft to that of the fourth. */
export const intermetatarsal45 = (foot: Foot): Angle =>
  inwards('intermetatarsal45', shaftLine(foot, 'metatarsal5'), shaftLine(foot, 'metatarsal4'));

/** Axis of the first proximal phalanx's shaft to that of the first metatarsal: positive when the toe points outwards. */
export const halluxValgus = (foot: Foot): Angle =>
  inwards('halluxValgus', shaftLine(foot, 'phalanxProximal1'), shaftLine(foot, 'metatarsal1'));

/** Medial and lateral ends of the joint lines that bound the tarsus in front of talus and calcaneus. */
const tarsus = (foot: Foot) => ({
  medialBack: jointEnd(foot, 'talus', 'navicular', MEDIAL),
  medialFront: jointEnd(foot, 'cuneiformMedial', 'metatarsal1', MEDIAL),
  lateralBack: jointEnd(foot, 'calcaneus', 'cuboid', LATERAL),
  lateralFront: jointEnd(foot, 'cuboid', 'metatarsal5', LATERAL),
});

const mean = (a: Vec3, b: Vec3): Vec3 => scale(add(a, b), 0.5);

/** From the lateral end of the calcaneocuboid joint line to the medial end of the talonavicular one. */
export const transverseTarsalLine = (foot: Foot): Segment => [
  jointEnd(foot, 'calcaneus', 'cuboid', LATERAL),
  jointEnd(foot, 'talus', 'navicular', MEDIAL),
];

/**
 * Long axis of the lesser tarsus to axis of the second metatarsal's shaft. The lesser tarsus' axis is square to the line from the
 * middle of its lateral border (calcaneocuboid to fifth tarsometatarsal joint) to the middle of its medial border (talonavicular to
 * first tarsometatarsal joint).
 */
export const metatarsusAdductus = (foot: Foot): Angle => {
  const { medialBack, medialFront, lateralBack, lateralFront } = tarsus(foot);
  const [medial, lateral] = [mean(medialBack, medialFront), mean(lateralBack, lateralFront)];
  const ray = shaftLine(foot, 'metatarsal2');
  const [dx, , dz] = subtract(medial, lateral);
  const middle = mean(medial, lateral);
  return inwards('metatarsusAdductus', [middle, add(middle, [-dz, 0, dx])], ray);
};

/** The talar head begins at the first share of the bone's length and counts fully from the second: no triangle falls in or out at once. */
const HEAD = [0.65, 0.8] as const;
/** Half the width of a chord drawn across a joint surface, mm: for the picture only. */
const HALF_CHORD = 12;

const chord = (at: Vec3, looks: Vec3): Segment => {
  const across = normalize([looks[2], 0, -looks[0]]);
  return [add(at, scale(across, -HALF_CHORD)), add(at, scale(across, HALF_CHORD))];
};

/**
 * How far the head of the talus looks inwards past the cup of the navicular. On a film the two are chords between the edges of the
 * joint surfaces; here each chord lies square to the way its surface looks as a whole.
 */
export const talonavicularCoverage = (foot: Foot): Angle => {
  const { origin, axis, lengthMm } = boneAxis(foot, 'talus');
  const inFront = patchesOf(meshOf(foot, 'talus')).map((p) => {
    const share = dot(subtract(p.at, origin), axis) / lengthMm;
    return { ...p, area: p.area * Math.min(1, Math.max(0, (share - HEAD[0]) / (HEAD[1] - HEAD[0]))) };
  });
  const behind = subtract(meshCentroid(meshOf(foot, 'talus')), meshCentroid(meshOf(foot, 'navicular')));
  const head = lookOf(inFront, axis);
  const cup = lookOf(patchesOf(meshOf(foot, 'navicular')), behind);
  return inwards('talonavicularCoverage', chord(cup.at, scale(cup.looks, -1)), chord(head.at, head.looks));
};
