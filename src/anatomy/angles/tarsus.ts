/** Where the joint lines that bound the tarsus end on its medial and lateral border. mm, foot frame. */
import type { Vec3 } from '../../units';
import type { Foot } from '../types';
import { jointEnd } from './facing';

const MEDIAL: Vec3 = [1, 0, 0];
const LATERAL: Vec3 = [-1, 0, 0];

interface TarsalEnds {
  /** Medial ends of the talonavicular and the first tarsometatarsal joint. */
  readonly medialBack: Vec3;
  readonly medialFront: Vec3;
  /** Lateral ends of the calcaneocuboid joint and of the one between cuboid and fourth metatarsal. */
  readonly lateralBack: Vec3;
  readonly lateralFront: Vec3;
}

/** Several measures of one foot ask for the same ends, and finding them is most of the work. */
const kept = new WeakMap<Foot, TarsalEnds>();

export const tarsalEnds = (foot: Foot): TarsalEnds => {
  const ends = kept.get(foot) ?? {
    medialBack: jointEnd(foot, 'talus', 'navicular', MEDIAL),
    medialFront: jointEnd(foot, 'cuneiformMedial', 'metatarsal1', MEDIAL),
    lateralBack: jointEnd(foot, 'calcaneus', 'cuboid', LATERAL),
    lateralFront: jointEnd(foot, 'cuboid', 'metatarsal4', LATERAL),
  };
  kept.set(foot, ends);
  return ends;
};
