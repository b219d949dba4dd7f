/**
 * The parts of the frame: bones that move as one piece have one node, each metatarsal a node at its base and its head and, on the
 * fourth and fifth, three where their bases lie against each other. Six freedoms a node: ux uy uz (mm), rx ry rz (rad), foot frame.
 */
import { stationOf } from '../../anatomy';
import { cross, dot, scale, subtract, type Vec3 } from '../../units';
import { type FootMarks, metatarsalOf, type OnBone, RAYS, type Ray, RIGID_BONES, type RigidBone } from './landmarks';
import type { Placing } from './placing';
import { centroidAt, type RaySections } from './ray-sections';

/** Elements of a metatarsal between the joint at its base and the middle of its head. */
export const ELEMENTS = 24;
const BASE_FACET = 'metatarsal4-metatarsal5';
/** The facet between the fourth and fifth bases and its ligaments hold at three places of its length, a third of their stiffness each. */
export const FACET_PLACES = [-2 / 3, 0, 2 / 3] as const;

export interface RayNodes {
  readonly ray: Ray;
  /** Knots of the chain, base to head: ELEMENTS + 1 places with their stations along the bone. */
  readonly knots: readonly { readonly sMm: number; readonly at: Vec3 }[];
  /** Knots that are nodes of the frame, ascending; the first is 0, the last ELEMENTS. */
  readonly stops: readonly number[];
  /** Number of the first of these nodes; the others follow. */
  readonly firstNode: number;
}

export interface FrameNodes {
  readonly at: readonly Vec3[];
  readonly rigid: Readonly<Record<RigidBone, number>>;
  readonly rays: Readonly<Record<Ray, RayNodes>>;
  /** Places between the fourth and fifth bases, and the node of either bone that each is fixed to. */
  readonly baseFacet: readonly { readonly at: Vec3; readonly fourth: number; readonly fifth: number }[];
  /** The bone that a node stands for, to be named in a problem. */
  readonly name: (node: number) => string;
  /** The node that a place moves with. */
  readonly nodeOf: (place: OnBone) => number;
}

const facetPlaces = (marks: FootMarks): readonly Vec3[] => {
  const joint = marks.joints.get(BASE_FACET);
  if (!joint) throw new RangeError(`this foot has no joint ${BASE_FACET}`);
  const { axis } = marks.rays[5].axis;
  const across = cross(joint.normal, joint.major);
  const half = Math.hypot(
    (joint.extentsMm[0] / 2) * dot(joint.major, axis),
    (joint.extentsMm[1] / 2) * dot(across, axis),
  );
  return FACET_PLACES.map((t) => {
    const along = scale(axis, t * half);
    return [joint.centre[0] + along[0], joint.centre[1] + along[1], joint.centre[2] + along[2]];
  });
};

/** Stations of the standing bone at which chain and nodes lie. */
const stopsOf = (marks: FootMarks, ray: Ray, facet: readonly Vec3[]): { stations: number[]; stops: number[] } => {
  const { axis, base, head } = marks.rays[ray];
  const [from, to] = [stationOf(axis, base.at), stationOf(axis, head.at)];
  const step = (to - from) / ELEMENTS;
  const stations = Array.from({ length: ELEMENTS + 1 }, (_, i) => from + i * step);
  const inner = ray < 4 ? [] : facet.map((p) => Math.round((stationOf(axis, p) - from) / step));
  const stops = [...new Set([0, ...inner.map((i) => Math.min(ELEMENTS - 1, Math.max(0, i))), ELEMENTS])].sort(
    (a, b) => a - b,
  );
  return { stations, stops };
};

const BONE_OF_TOE = /^phalanx.*1$/;
const SESAMOID = /^sesamoid/;

interface KeptNodes {
  readonly marks: FootMarks;
  readonly sections: RaySections;
  readonly nodes: FrameNodes;
}
const kept = new WeakMap<Placing, KeptNodes>();

/** The frame's parts in one pose: the same for every draw, so kept with the placing. */
export const frameNodes = (marks: FootMarks, sections: RaySections, placing: Placing): FrameNodes => {
  const known = kept.get(placing);
  if (known && known.marks === marks && known.sections === sections) return known.nodes;
  const nodes = makeNodes(marks, sections, placing);
  kept.set(placing, { marks, sections, nodes });
  return nodes;
};

const makeNodes = (marks: FootMarks, sections: RaySections, placing: Placing): FrameNodes => {
  const at: Vec3[] = [];
  const rigid = {} as Record<RigidBone, number>;
  for (const bone of RIGID_BONES) {
    rigid[bone] = at.length;
    at.push(placing.point({ bone, at: marks.middles[bone] }));
  }
  const facet = facetPlaces(marks);
  const rays = {} as Record<Ray, RayNodes>;
  const stationsOf = {} as Record<Ray, readonly number[]>;
  for (const ray of RAYS) {
    const { bone, base, head } = marks.rays[ray];
    const { stations, stops } = stopsOf(marks, ray, facet);
    stationsOf[ray] = stations;
    const knots = stations.map((sMm, i) => {
      const standing = i === 0 ? base.at : i === ELEMENTS ? head.at : centroidAt(sections, marks, ray, sMm);
      return { sMm, at: placing.point({ bone, at: standing }) };
    });
    rays[ray] = { ray, knots, stops, firstNode: at.length };
    for (const stop of stops) at.push((knots[stop] as { at: Vec3 }).at);
  }
  const nearestStop = (ray: Ray, standing: Vec3): number => {
    const { stops, firstNode } = rays[ray];
    const s = stationOf(marks.rays[ray].axis, standing);
    let best = 0;
    stops.forEach((stop, i) => {
      const off = (k: number): number => Math.abs((stationsOf[ray][k] ?? 0) - s);
      if (off(stop) < off(stops[best] ?? 0)) best = i;
    });
    return firstNode + best;
  };
  const nodeOf = ({ bone, at: standing }: OnBone): number => {
    const ray = RAYS.find((r) => marks.rays[r].bone === bone);
    if (ray !== undefined) return nearestStop(ray, standing);
    if (SESAMOID.test(bone)) return rays[1].firstNode + rays[1].stops.length - 1;
    if (BONE_OF_TOE.test(bone)) return rigid.phalanxProximal1;
    const found = RIGID_BONES.find((r) => r === bone);
    if (found === undefined) throw new RangeError(`${bone} is no part of the frame`);
    return rigid[found];
  };
  const name = (node: number): string => {
    const bone = RIGID_BONES.find((each) => rigid[each] === node);
    const ray = RAYS.findLast((each) => rays[each].firstNode <= node);
    return bone ?? (ray === undefined ? `node ${node}` : metatarsalOf(ray));
  };
  return {
    at,
    rigid,
    rays,
    name,
    baseFacet: facet.map((p) => ({
      at: scale(
        [0, 1, 2].map((k) => {
          const [a, b] = [placing.point({ bone: 'metatarsal4', at: p }), placing.point({ bone: 'metatarsal5', at: p })];
          return (a[k] as number) + (b[k] as number);
        }) as unknown as Vec3,
        0.5,
      ),
      fourth: nearestStop(4, p),
      fifth: nearestStop(5, p),
    })),
    nodeOf,
  };
};

/** From a node to a place on the part it stands for. */
export const lever = (nodes: FrameNodes, node: number, at: Vec3): Vec3 => subtract(at, nodes.at[node] as Vec3);
