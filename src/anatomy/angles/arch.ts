/**
 * The arch on the lateral film: inclination of calcaneus, talus and metatarsals against the ground and against each other. Declined
 * (front end lower) is positive for talus and metatarsals, inclined (front end higher) for the calcaneus. deg, foot frame.
 */
import { add, length, subtract } from '../../units';
import type { Foot } from '../types';
import { type Angle, type Segment, slopeIn } from './angle';
import { plantarLine } from './heel-film';
import { shaftLine } from './shaft';
import { talarAxisLateral } from './talar-axis';

/** Straight forwards from a point, as long as a line. */
const level = ([from, to]: Segment): Segment => [from, add(from, [0, 0, length(subtract(to, from))])];

const pitchOf = (foot: Foot): number => slopeIn('lateral', plantarLine(foot));
const declinationOf = (line: Segment): number => -slopeIn('lateral', line);

/** Plantar line of the calcaneus against the ground. */
export const calcanealPitch = (foot: Foot): Angle => {
  const line = plantarLine(foot);
  return {
    id: 'calcanealPitch',
    value: slopeIn('lateral', line),
    unit: 'deg',
    view: 'lateral',
    lines: [line, level(line)],
    vertex: line[0],
  };
};

/** Axis of the talus (halving the tangents to its dorsal and plantar border) against the ground. */
export const talarDeclination = (foot: Foot): Angle => {
  const line = talarAxisLateral(foot);
  return {
    id: 'talarDeclination',
    value: declinationOf(line),
    unit: 'deg',
    view: 'lateral',
    lines: [line, level(line)],
    vertex: line[0],
  };
};

/** Axis of the shaft of a metatarsal against the ground. */
export const metatarsalDeclination = (foot: Foot, ray: 1 | 2 | 3 | 4 | 5): Angle => {
  const line = shaftLine(foot, `metatarsal${ray}`);
  return {
    id: `metatarsalDeclination${ray}`,
    value: declinationOf(line),
    unit: 'deg',
    view: 'lateral',
    lines: [line, level(line)],
    vertex: line[0],
  };
};

/** Declination of the talus less that of the first metatarsal: positive sags (flat), negative arches (high). */
export const meary = (foot: Foot): Angle => {
  const [talus, ray] = [talarAxisLateral(foot), shaftLine(foot, 'metatarsal1')];
  return {
    id: 'meary',
    value: declinationOf(talus) - declinationOf(ray),
    unit: 'deg',
    view: 'lateral',
    lines: [talus, ray],
  };
};

/** The open angle under the arch between plantar line of the calcaneus and axis of the first metatarsal. */
export const calcaneusFirstMetatarsal = (foot: Foot): Angle => {
  const [heel, ray] = [plantarLine(foot), shaftLine(foot, 'metatarsal1')];
  return {
    id: 'calcaneusFirstMetatarsal',
    value: 180 - pitchOf(foot) - declinationOf(ray),
    unit: 'deg',
    view: 'lateral',
    lines: [heel, ray],
  };
};

/** Declination of the talus plus pitch of the calcaneus. */
export const talocalcanealLateral = (foot: Foot): Angle => {
  const [talus, heel] = [talarAxisLateral(foot), plantarLine(foot)];
  return {
    id: 'talocalcanealLateral',
    value: declinationOf(talus) + slopeIn('lateral', heel),
    unit: 'deg',
    view: 'lateral',
    lines: [talus, heel],
  };
};
