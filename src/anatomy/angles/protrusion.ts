/**
 * How far each metatarsal head reaches beyond or falls short of the second's on the dorsoplantar film, by arcs: about the point
 * where the axis of the second metatarsal's shaft meets the transverse line of the tarsus (lateral end of the calcaneocuboid to medial
 * end of the talonavicular joint line), an arc is drawn through the farthest
 * point of each head. mm, and as a share of the arc through the second head (what the source divides by was not read; see the
 * note beside the norm).
 */
import { dot, subtract, type Vec3 } from '../../units';
import { meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import type { Foot } from '../types';
import type { Angle, Segment } from './angle';
import { shaftLine } from './shaft';
import { tarsalEnds } from './tarsus';

type LesserRay = 1 | 3 | 4 | 5;

/** Where two lines cross as seen from above, at the height of the first. Throws RangeError for parallel lines. */
const crossing = ([a, b]: Segment, [c, d]: Segment): Vec3 => {
  const [u, v, w] = [subtract(b, a), subtract(d, c), subtract(c, a)];
  const turn = u[0] * v[2] - u[2] * v[0];
  if (Math.abs(turn) < 1e-9) throw new RangeError('the second metatarsal runs along the transverse line of the tarsus');
  const t = (w[0] * v[2] - w[2] * v[0]) / turn;
  return [a[0] + t * u[0], a[1] + t * u[1], a[2] + t * u[2]];
};

/** Distance as seen from above. */
const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[2] - b[2]);

const tipOf = (foot: Foot, ray: 2 | LesserRay, centre: Vec3): Vec3 => {
  const [from, to] = shaftLine(foot, `metatarsal${ray}`);
  const along = subtract(to, from);
  const half = (dot(from, along) + dot(to, along)) / 2;
  const [first, ...rest] = verticesOf(meshOf(foot, `metatarsal${ray}`)).filter((p) => dot(p, along) > half);
  if (!first) throw new RangeError(`metatarsal${ray} has no head`);
  return rest.reduce((tip, p) => (apart(p, centre) > apart(tip, centre) ? p : tip), first);
};

/** In mm and as a share, in this order. */
export const protrusion = (foot: Foot, ray: LesserRay): readonly [Angle, Angle] => {
  const { lateralBack, medialBack } = tarsalEnds(foot);
  const centre = crossing([lateralBack, medialBack], shaftLine(foot, 'metatarsal2'));
  const [second, tip] = [tipOf(foot, 2, centre), tipOf(foot, ray, centre)];
  const [radius, own] = [apart(second, centre), apart(tip, centre)];
  const common = {
    view: 'dorsoplantar',
    lines: [
      [centre, second],
      [centre, tip],
    ],
    vertex: centre,
  } as const;
  return [
    { id: `protrusion${ray}`, value: own - radius, unit: 'mm', ...common },
    { id: `protrusionShare${ray}`, value: (own - radius) / radius, unit: 'share', ...common },
  ];
};
