/** How long the frame solver takes by number of members: five rays side by side, tied across, as in a foot. ms; never a timed test. */
import { type FrameModel, solveFrame } from '../../src/mechanics/frame';
import { median, RUNS } from './runs';

const RAYS = 5;

const rays = (pieces: number): FrameModel => {
  const id = (ray: number, at: number): string => `${ray} ${at}`;
  const all = Array.from({ length: RAYS }, (_, ray) =>
    Array.from({ length: pieces + 1 }, (_, at) => [ray, at] as const),
  ).flat();
  const bone = { section: 'bone', material: 'bone', orientation: [0, 1, 0] as [number, number, number] };
  return {
    nodes: all.map(([ray, at]) => ({
      id: id(ray, at),
      xyz: [14 * ray, 30 * Math.cos(at / pieces), (80 * at) / pieces],
    })),
    materials: { bone: { E: 17000, G: 6500 } },
    sections: { bone: { A: 40, Iy: 250, Iz: 250, J: 500, Asy: 20, Asz: 20 } },
    members: [
      ...all
        .filter(([, at]) => at < pieces)
        .map(([ray, at]) => ({ ...bone, id: `along ${id(ray, at)}`, i: id(ray, at), j: id(ray, at + 1) })),
      ...all
        .filter(([ray]) => ray < RAYS - 1)
        .map(([ray, at]) => ({ ...bone, id: `across ${id(ray, at)}`, i: id(ray, at), j: id(ray + 1, at) })),
    ],
    supports: Array.from({ length: RAYS }, (_, ray) => ({
      node: id(ray, 0),
      fixed: ['ux', 'uy', 'uz', 'rx', 'ry', 'rz'],
    })),
    nodalLoads: Array.from({ length: RAYS }, (_, ray) => ({ node: id(ray, pieces), F: [0, 100, 0, 0, 0, 0] })),
  };
};

export const timesOfSpaceFrames = (): string => {
  // The first runs of a function are not its speed.
  for (let run = 0; run < 20; run++) solveFrame(rays(5));
  const rows = [5, 10, 20, 40].map((pieces) => {
    const model = rays(pieces);
    const times = Array.from({ length: RUNS }, () => {
      const start = performance.now();
      if (!solveFrame(model).ok) throw new Error('the frame of the bench does not solve');
      return performance.now() - start;
    });
    return { members: model.members.length, ms: median(times) };
  });
  const [last, before] = [rows.at(-1), rows.at(-2)];
  const growth = last && before ? Math.log(last.ms / before.ms) / Math.log(last.members / before.members) : Number.NaN;
  const list = rows.map(({ members, ms }) => `${members} members ${ms.toFixed(1)} ms`).join(', ');
  return `space frame: ${list}; at the end time grows as members^${growth.toFixed(1)}`;
};
