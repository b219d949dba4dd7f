/** Marks laid over the bone: cord and blocks of the load, the screw, the zones' numbers. Screen shapes from stations. Pure. */
import { fromBone } from '../../anatomy/bone-axis';
import type { BoneAxis } from '../../anatomy/types';
import { add, cross, dot, length, normalize, scale, type Vec3 } from '../../units';
import type { ScrewScene } from '../scene/scene';
import type { Point, StationTable } from '../types';
import { blocks, cord, lengthPx, line } from './cord-and-blocks';
import type { Shape } from './shapes';

/** Foot point -> picture. */
export type Project = (p: Vec3) => Point;

type Station = StationTable['stations'][number];

/** How far along the bone a cord or a row of blocks reaches to either side of its peak, and how far off the surface it runs. */
const REACH_MM = 11;
const OFF_MM = 2.6;
const LEAST_PX = 44;

const stationNear = (stations: StationTable, sMm: number): Station | undefined =>
  stations.stations.reduce<Station | undefined>(
    (best, s) => (best === undefined || Math.abs(s.sMm - sMm) < Math.abs(best.sMm - sMm) ? s : best),
    undefined,
  );

/** Half the width of a section as the eye sees it, mm: `across` is the picture's direction across the bone, in the foot's frame. */
const halfWidth = ({ section }: Station, axis: BoneAxis, across: Vec3): number => {
  const [d, l] = [dot(axis.dorsal, across), dot(axis.lateral, across)];
  const toD = d > 0 ? section.toDorsalMm : section.toPlantarMm;
  const toL = l > 0 ? section.toLateralMm : section.toMedialMm;
  return Math.hypot(d * toD, l * toL);
};

/**
 * A line beside the bone's edge in the picture, on the side of the stressed fibre, so that no band is covered. The direction
 * round the section is rad from dorsal towards lateral.
 */
const besideBone = (
  stations: StationTable,
  axis: BoneAxis,
  sMm: number,
  rad: number,
  project: Project,
  eye: Vec3,
): Point[] => {
  const fibre = add(scale(axis.dorsal, Math.cos(rad)), scale(axis.lateral, Math.sin(rad)));
  const sideways = cross(axis.axis, eye);
  // Looking along the bone there is no edge to run beside.
  if (length(sideways) < 0.35) return [];
  const across = scale(normalize(sideways), dot(fibre, sideways) < 0 ? -1 : 1);
  return [-1, -0.5, 0, 0.5, 1].map((k) => {
    const s = Math.min(axis.lengthMm, Math.max(0, sMm + k * REACH_MM));
    const station = stationNear(stations, s);
    const off = (station === undefined ? 5 : halfWidth(station, axis, across)) + OFF_MM;
    const [d, l] = station?.section.centroidMm ?? [0, 0];
    return project(add(fromBone(axis, s, d, l), scale(across, off)));
  });
};

/** Beside the bone in question, where its surface is pulled and pressed most. Too short to read: left out. */
export const loadShapes = (stations: StationTable, axis: BoneAxis, project: Project, eye: Vec3, k: number): Shape[] => {
  const pulled = stationNear(stations, stations.peakTension.sMm);
  const pressed = stationNear(stations, stations.peakCompression.sMm);
  const beside = (station: Station | undefined, rad: number | undefined): Point[] => {
    if (station === undefined || rad === undefined) return [];
    const points = besideBone(stations, axis, station.sMm, rad, project, eye);
    return lengthPx(points) > LEAST_PX * k ? points : [];
  };
  return [
    ...blocks(beside(pressed, pressed?.compressionAtRad), { widthPx: 11 * k, heads: 'both' }),
    ...cord(beside(pulled, pulled?.tensionAtRad), { widthPx: 10 * k, heads: 'both' }),
  ];
};

/** Drawn, not measured: it shows what lies in the canal, not which screw. mm. */
const SCREW = { headPerShaft: 1.7, headLongMm: 2.4, threadFromShare: 0.6, pitchMm: 2.2 } as const;

export const screwShapes = (screw: ScrewScene, project: Project, mmPerPx: number): Shape[] => {
  const start = project(screw.from);
  const end = project(screw.to);
  const way = Math.hypot(end[0] - start[0], end[1] - start[1]) || 1;
  const d: Point = [(end[0] - start[0]) / way, (end[1] - start[1]) / way];
  const at = (along: number, across: number): Point => [
    start[0] + d[0] * along - d[1] * across,
    start[1] + d[1] * along + d[0] * across,
  ];
  const half = screw.widthMm / 2 / mmPerPx;
  const head = (SCREW.headPerShaft * screw.widthMm) / 2 / mmPerPx;
  const headLong = SCREW.headLongMm / mmPerPx;
  const shaft: Shape = {
    kind: 'area',
    points: [at(0, -half), at(way - half * 1.4, -half), at(way, 0), at(way - half * 1.4, half), at(0, half)],
    fill: 'plate',
    stroke: 'ink',
    width: 1.7,
    opacity: 1,
  };
  const threads: Shape[] = [];
  // Looking along the screw there is no length to draw threads on.
  const lengthMm = way * mmPerPx;
  for (let s = lengthMm * SCREW.threadFromShare; s < lengthMm - 3; s += SCREW.pitchMm) {
    const x = s / mmPerPx;
    threads.push(line([at(x, -half * 1.3), at(x + half * 0.5, half * 1.3)], 'ink', 2));
  }
  return [
    shaft,
    ...threads,
    {
      kind: 'area',
      points: [at(-headLong, -head * 0.7), at(0, -head), at(0, head), at(-headLong, head * 0.7)],
      fill: 'ink',
      stroke: 'plate',
      width: 1.5,
      opacity: 1,
    },
  ];
};
