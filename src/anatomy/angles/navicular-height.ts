/**
 * Height of the arch as a share of the foot's length without toes: height of the navicular tuberosity (the most medial point of the
 * navicular) above the ground, divided by the distance along the ground from the back of the heel to the first metatarsophalangeal
 * joint. Here both are measured on bare bones: no skin and fat below and behind.
 */
import { add, scale, type Vec3 } from '../../units';
import { meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import type { Foot } from '../types';
import type { Angle } from './angle';
import { facingPoints } from './facing';

const outermost = (points: readonly Vec3[], measure: (p: Vec3) => number): Vec3 =>
  points.reduce((out, p) => (measure(p) > measure(out) ? p : out));

export const normalisedNavicularHeight = (foot: Foot): Angle => {
  const tuberosity = outermost(verticesOf(meshOf(foot, 'navicular')), (p) => p[0]);
  const heel = outermost(verticesOf(meshOf(foot, 'calcaneus')), (p) => -p[2]);
  const joint = facingPoints(foot, 'metatarsal1', 'phalanxProximal1').flat();
  if (joint.length === 0) throw new RangeError('the first toe does not meet its metatarsal');
  const ball = scale(joint.reduce(add), 1 / joint.length);
  return {
    id: 'normalisedNavicularHeight',
    value: tuberosity[1] / (ball[2] - heel[2]),
    unit: 'share',
    view: 'lateral',
    lines: [
      [[tuberosity[0], 0, tuberosity[2]], tuberosity],
      [
        [tuberosity[0], 0, heel[2]],
        [tuberosity[0], 0, ball[2]],
      ],
    ],
    vertex: [tuberosity[0], 0, tuberosity[2]],
  };
};
