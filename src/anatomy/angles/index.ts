/** The measures of foot films, on the meshes of any foot: what `radiographicAngles` gives, each with the lines it is read between. */
import type { Vec3 } from '../../units';
import { mirrorFoot } from '../mirror';
import type { Foot } from '../types';
import type { Angle, Segment } from './angle';
import {
  calcanealPitch,
  calcaneusFirstMetatarsal,
  meary,
  metatarsalDeclination,
  talarDeclination,
  talocalcanealLateral,
} from './arch';
import { boehler, gissaneChordal, gissaneTangent } from './calcaneus-film';
import {
  halluxValgus,
  intermetatarsal12,
  intermetatarsal45,
  metatarsusAdductus,
  talocalcanealDorsoplantar,
  talonavicularCoverage,
  talusSecondMetatarsal,
} from './dorsoplantar';
import { hindfootAlignment } from './hindfoot';
import { normalisedNavicularHeight } from './navicular-height';
import { protrusion } from './protrusion';

const flip = (p: Vec3): Vec3 => [-p[0], p[1], p[2]];
const flipLine = ([a, b]: Segment): Segment => [flip(a), flip(b)];

const flipAngle = ({ vertex, ...angle }: Angle): Angle => ({
  ...angle,
  lines: [flipLine(angle.lines[0]), flipLine(angle.lines[1])],
  ...(vertex ? { vertex: flip(vertex) } : {}),
});

/**
 * Every measure of a foot of either side in any pose, in the order of `ANGLE_IDS`. Values in deg, mm or as a share; lines in mm in
 * the frame of that foot. Same foot, same numbers. Throws RangeError for a foot that lacks a bone or whose bones do not meet.
 */
export const radiographicAngles = (foot: Foot): readonly Angle[] => {
  if (foot.side === 'left') return radiographicAngles(mirrorFoot(foot)).map(flipAngle);
  const arcs = ([1, 3, 4, 5] as const).map((ray) => protrusion(foot, ray));
  return [
    calcanealPitch(foot),
    talarDeclination(foot),
    ...([1, 2, 3, 4, 5] as const).map((ray) => metatarsalDeclination(foot, ray)),
    meary(foot),
    calcaneusFirstMetatarsal(foot),
    talocalcanealLateral(foot),
    boehler(foot),
    gissaneChordal(foot),
    gissaneTangent(foot),
    normalisedNavicularHeight(foot),
    talocalcanealDorsoplantar(foot),
    talusSecondMetatarsal(foot),
    talonavicularCoverage(foot),
    metatarsusAdductus(foot),
    intermetatarsal12(foot),
    intermetatarsal45(foot),
    halluxValgus(foot),
    ...arcs.map(([mm]) => mm),
    ...arcs.map(([, share]) => share),
    hindfootAlignment(foot),
  ];
};

export { ANGLE_IDS, type Angle, type AngleId, type Segment, type View } from './angle';
export {
  boehler,
  calcanealPitch,
  calcaneusFirstMetatarsal,
  gissaneChordal,
  gissaneTangent,
  halluxValgus,
  hindfootAlignment,
  intermetatarsal12,
  intermetatarsal45,
  meary,
  metatarsalDeclination,
  metatarsusAdductus,
  normalisedNavicularHeight,
  protrusion,
  talarDeclination,
  talocalcanealDorsoplantar,
  talocalcanealLateral,
  talonavicularCoverage,
  talusSecondMetatarsal,
};
