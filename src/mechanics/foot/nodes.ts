/**
 * The parts of the frame: bones that move as one piece have one node, each metatarsal a node at its base and its head and, on the
 * fourth and fifth, three where their bases lie against each other. Six freedoms a node: ux uy uz (mm), rx ry rz (rad), foot frame.
 */
import { stationOf } from '../../anatomy';
import { cross, dot, scale, subtract, type Vec3 } from '../../units';
import { type FootMarks, metatarsalOf, type OnBone, RAYS, type Ray, RIGID_BONES, type RigidBone } from './landmarks';
import type { Placing } from './placing';
import { centroidAt, type RaySections, sectionAt } from './ray-sections';

/**
 * Elements of a metatarsal between the joint at its base and the middle of its head. What they leave of an error, against eight times
 * as many: under 0.5 % of the largest stress in any bone and load case (`tests/unit/mechanics/foot/refinement.test.ts`, which holds
 * it). They lie close where the section changes fast: 24 of one length, in the middle of which the section was taken, left the second
 * metatarsal's largest pull 3 % too high in push-off.
 */
export const ELEMENTS = 24;
const BASE_FACET = 'metatarsal4-metatarsal5';
/** The facet between the fourth and fifth bases and its ligaments hold at three places of its length, a third of their stiffness each. */
export const FACET_PLACES = [-2 / 3, 0, 2 / 3] as const;

export interface Knot {
  readonly sMm: number;
  readonly at: Vec3;
  /** Where it is on the foot as its sections were cut. */
  readonly standing: Vec3;
}

export interface RayNodes {
  readonly ray: Ray;
  /**
   * Knots of the chain, base to head: ELEMENTS + 1 places in the middle of the section with their stations along the bone. The joint at
   * the base lies 5 to 8 mm from there on four of five bones, and its facet is held by the whole end: it goes with the node as one
   * piece. With the first knot in the joint that way was an element across the bone, the thinner the more elements there were: the
   * second metatarsal lost 8 % of its stress from 24 to 48, 13 % more to 96, and there was no end to it.
   */
  readonly knots: readonly Knot[];
  /** Knots that are nodes of the frame, ascending; the first and the last knot are. */
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

/** Places nearer to each other than this along a bone are one: an element so short only costs digits. */
const ONE_PLACE_MM = 0.4;

const ascending = (a: number, b: number): number => a - b;

interface Place {
  readonly sMm: number;
  /** How far the section has changed up to here, tip to head: sum of the changes of the logarithm of its polar moment. */
  readonly change: number;
}

/** Knots with what changes between them. */
const changing = (walls: RaySections[Ray], stations: readonly number[]): Place[] => {
  let [change, before] = [0, Number.NaN];
  return stations.map((sMm) => {
    const { iLateralMm4, iDorsalMm4 } = sectionAt(walls, sMm, 0);
    const here = Math.log(iLateralMm4 + iDorsalMm4);
    change += Number.isNaN(before) ? 0 : Math.abs(here - before);
    before = here;
    return { sMm, change };
  });
};

/** No element has a section that changes by more than this, as a logarithm: the bare tip of a base grows tenfold in two millimetres. */
const MOST_CHANGE = 0.5;

const halved = (walls: RaySections[Ray], stations: readonly number[]): number[] => {
  let all = [...stations];
  for (;;) {
    const knots = changing(walls, all);
    const more = knots.flatMap((b, i) => {
      const a = knots[i - 1];
      return a !== undefined && b.change - a.change > MOST_CHANGE ? [(a.sMm + b.sMm) / 2] : [];
    });
    if (more.length === 0) return all;
    all = [...all, ...more].sort(ascending);
  }
};

/** So many elements: knots that are not `held` go where least is lost, by change of the section and share of the length. */
const thinned = (
  walls: RaySections[Ray],
  stations: readonly number[],
  held: readonly number[],
  elements: number,
): number[] => {
  const kept = changing(walls, stations);
  const [from, to] = [stations[0] as number, stations.at(-1) as number];
  while (kept.length - 1 > elements) {
    let [least, at] = [Number.POSITIVE_INFINITY, -1];
    for (let i = 1; i + 1 < kept.length; i++) {
      const [before, here, after] = [kept[i - 1], kept[i], kept[i + 1]];
      if (!before || !here || !after || held.includes(here.sMm)) continue;
      const lost = after.change - before.change + (after.sMm - before.sMm) / (to - from);
      if (lost < least) [least, at] = [lost, i];
    }
    if (at < 0) throw new RangeError(`a metatarsal held at ${held.length} places needs more than ${elements} elements`);
    kept.splice(at, 1);
  }
  return kept.map(({ sMm }) => sMm);
};

/**
 * Stations of the standing bone at which chain and nodes lie: where joint, head and the facet of the outer bases hold it, and between
 * them where it was cut, for between two cuts a section goes straight from the one to the other. More than ELEMENTS: each of these in
 * as many pieces as it takes.
 */
const stopsOf = (
  marks: FootMarks,
  walls: RaySections[Ray],
  ray: Ray,
  facet: readonly Vec3[],
  elements: number,
): { stations: number[]; stops: number[] } => {
  const { axis, base, head } = marks.rays[ray];
  const [from, to] = [stationOf(axis, base.at), stationOf(axis, head.at)];
  const held = [from, to];
  const apart = (s: number): boolean =>
    s > from && s < to && held.every((other) => Math.abs(other - s) >= ONE_PLACE_MM);
  const onFacet = ray < 4 ? [] : facet.map((place) => stationOf(axis, place));
  for (const s of onFacet) if (apart(s)) held.push(s);
  const all = [...held, ...walls.usual.map(({ sMm }) => sMm).filter(apart)].sort(ascending);
  const coarse = thinned(walls, halved(walls, all), held, Math.min(elements, ELEMENTS));
  const pieces = Math.max(1, Math.round(elements / ELEMENTS));
  const stations = coarse.flatMap((s, i) => {
    const next = coarse[i + 1];
    return next === undefined ? [s] : Array.from({ length: pieces }, (_, k) => s + (k / pieces) * (next - s));
  });
  return { stations, stops: held.sort(ascending).map((s) => stations.indexOf(s)) };
};

const BONE_OF_TOE = /^phalanx.*1$/;
const SESAMOID = /^sesamoid/;

interface KeptNodes {
  readonly marks: FootMarks;
  readonly sections: RaySections;
  readonly nodes: FrameNodes;
}
const kept = new WeakMap<Placing, KeptNodes>();

/**
 * The same placing with metatarsals in another number of elements, to see what cutting them up into ELEMENTS leaves of an error: fewer,
 * or a multiple of it. Kept as long as the copy is.
 */
export const withElements = (marks: FootMarks, sections: RaySections, placing: Placing, elements: number): Placing => {
  const copy = { ...placing };
  kept.set(copy, { marks, sections, nodes: makeNodes(marks, sections, copy, elements) });
  return copy;
};

/** The frame's parts in one pose: the same for every draw, so kept with the placing. */
export const frameNodes = (marks: FootMarks, sections: RaySections, placing: Placing): FrameNodes => {
  const known = kept.get(placing);
  if (known && known.marks === marks && known.sections === sections) return known.nodes;
  const nodes = makeNodes(marks, sections, placing, ELEMENTS);
  kept.set(placing, { marks, sections, nodes });
  return nodes;
};

const makeNodes = (marks: FootMarks, sections: RaySections, placing: Placing, elements: number): FrameNodes => {
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
    const { bone } = marks.rays[ray];
    const { stations, stops } = stopsOf(marks, sections[ray], ray, facet, elements);
    stationsOf[ray] = stations;
    const knots = stations.map((sMm) => {
      const standing = centroidAt(sections, marks, ray, sMm);
      return { sMm, at: placing.point({ bone, at: standing }), standing };
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
