/**
 * Angles of the dorsoplantar film. Every line is looked at from above; a line that points more to the medial side has the greater
 * direction. deg, foot frame.
 */
import type { BoneId } from '../../ids';
import { add, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, fromBone, meshOf } from '../bone-axis';
import { meshCentroid } from '../mesh';
import type { Foot } from '../types';
import { type Angle, type AngleId, type Segment, slopeIn, turnBetween } from './angle';
import { lookOf } from './looks';
import { patchesOf } from './patches';
import { shaftLine } from './shaft';
import { bodyToHead, talarHead } from './talar-axis';
import { tarsalEnds } from './tarsus';

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

/** Long axis of the calcaneus to the line from the centre of the talar body to the centre of its head. */
export const talocalcanealDorsoplantar = (foot: Foot): Angle =>
  inwards('talocalcanealDorsoplantar', longAxis(foot, 'calcaneus'), bodyToHead(foot));

/** Axis of the second metatarsal's shaft to the way the head of the talus looks, which is square to the chord across the head. */
export const talusSecondMetatarsal = (foot: Foot): Angle => {
  const { at, looks } = talarHead(foot);
  const { lengthMm } = boneAxis(foot, 'talus');
  const head: Segment = [add(at, scale(looks, -lengthMm)), at];
  return inwards('talusSecondMetatarsal', shaftLine(foot, 'metatarsal2'), head);
};

/** Axis of the second metatarsal's shaft to that of the first. */
export const intermetatarsal12 = (foot: Foot): Angle =>
  inwards('intermetatarsal12', shaftLine(foot, 'metatarsal2'), shaftLine(foot, 'metatarsal1'));

/** Axis of the fifth metatarsal's shaft to that of the fourth. */
export const intermetatarsal45 = (foot: Foot): Angle =>
  inwards('intermetatarsal45', shaftLine(foot, 'metatarsal5'), shaftLine(foot, 'metatarsal4'));

/** Axis of the first proximal phalanx's shaft to that of the first metatarsal: positive when the toe points outwards. */
export const halluxValgus = (foot: Foot): Angle =>
  inwards('halluxValgus', shaftLine(foot, 'phalanxProximal1'), shaftLine(foot, 'metatarsal1'));

const mean = (a: Vec3, b: Vec3): Vec3 => scale(add(a, b), 0.5);

/**
 * Long axis of the lesser tarsus to axis of the second metatarsal's shaft. The lesser tarsus' axis is square to the line from the
 * middle of its lateral border (calcaneocuboid joint to the joint of cuboid and fourth metatarsal) to the middle of its medial
 * border (talonavicular to first tarsometatarsal joint).
 */
export const metatarsusAdductus = (foot: Foot): Angle => {
  const { medialBack, medialFront, lateralBack, lateralFront } = tarsalEnds(foot);
  const [medial, lateral] = [mean(medialBack, medialFront), mean(lateralBack, lateralFront)];
  const ray = shaftLine(foot, 'metatarsal2');
  const [dx, , dz] = subtract(medial, lateral);
  const middle = mean(medial, lateral);
  return inwards('metatarsusAdductus', [middle, add(middle, [-dz, 0, dx])], ray);
};

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
  const behind = subtract(meshCentroid(meshOf(foot, 'talus')), meshCentroid(meshOf(foot, 'navicular')));
  const head = talarHead(foot);
  const cup = lookOf(patchesOf(meshOf(foot, 'navicular')), behind);
  return inwards('talonavicularCoverage', chord(cup.at, scale(cup.looks, -1)), chord(head.at, head.looks));
};
