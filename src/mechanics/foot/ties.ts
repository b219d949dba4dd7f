/**
 * What can only pull (fascia and ligaments) or only press (pads of the sole): paths through places on the bones and points that the
 * ground meets. mm, N, foot frame. Endpoints are footprints of the foot's own regions, or the plantar edge of a joint's facet.
 */
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';
import { BASE_JOINTS, type FootMarks, type OnBone, PAD_NAMES, type PadName, RAYS } from './landmarks';
import type { FrameNodes } from './nodes';
import type { FrameFigure, FrameFigures } from './parameter-names';
import type { Placing } from './placing';

/** A tie through two places or more: it pulls all of them together. */
export interface Tie {
  readonly id: string;
  readonly path: readonly { readonly node: number; readonly at: Vec3 }[];
  readonly stiffness: number;
  /** How much longer it must get before it pulls; negative: it pulls already. mm */
  readonly slackMm: number;
}

/** One slope of a pad: presses once the ground has come nearer than its gap. */
export interface Pad {
  readonly id: string;
  readonly pad: PadName;
  readonly node: number;
  readonly at: Vec3;
  readonly stiffness: number;
  readonly gapMm: number;
}

const DOWN: Vec3 = [0, -1, 0];
/** How far from the joint a short plantar band is fixed on either bone. Drawn. */
const BAND_HALF_MM = 4;

/** The two ends of a band across a joint at the edge of its facet that lies towards `side`. */
const acrossJoint = (marks: FootMarks, id: string, side: Vec3): readonly [OnBone, OnBone] => {
  const joint = marks.joints.get(id);
  if (!joint) throw new RangeError(`this foot has no joint ${id}`);
  const edge = normalize(subtract(side, scale(joint.normal, dot(side, joint.normal))));
  const minor = cross(joint.normal, joint.major);
  const half = Math.hypot(
    (joint.extentsMm[0] / 2) * dot(edge, joint.major),
    (joint.extentsMm[1] / 2) * dot(edge, minor),
  );
  const middle = add(joint.centre, scale(edge, half));
  return [
    { bone: joint.first, at: subtract(middle, scale(joint.normal, BAND_HALF_MM)) },
    { bone: joint.second, at: add(middle, scale(joint.normal, BAND_HALF_MM)) },
  ];
};

interface TieRule {
  readonly id: string;
  readonly path: readonly OnBone[];
  readonly stiffness: (f: FrameFigures) => number;
  /** Share of its length in the standing foot. */
  readonly slack: 'fasciaSlack' | 'ligamentSlack';
  /** Where it goes on to, round a bone and out of the frame: counted in its length, not pulled at. */
  readonly on?: OnBone;
}

const makeRules = (marks: FootMarks): readonly TieRule[] => {
  const { places, rays } = marks;
  const allShares = (f: FrameFigures): number => RAYS.reduce((sum, ray) => sum + f[`fasciaShare${ray}` as const], 0);
  /** A ligament with a figure of its own, or a part of one that several share. */
  const ligament = (figure: FrameFigure, parts = 1): Pick<TieRule, 'stiffness' | 'slack'> => ({
    stiffness: (f) => (f.ligamentFactor * f[figure]) / parts,
    slack: 'ligamentSlack',
  });
  const band = (id: string, joint: string, figure: FrameFigure): TieRule => ({
    id,
    path: acrossJoint(marks, joint, DOWN),
    ...ligament(figure),
  });
  return [
    ...RAYS.map(
      (ray): TieRule => ({
        id: `fascia-${ray}`,
        // The first slip runs under the head, over the sesamoids, and on to the toe: bending the toe winds it up.
        path:
          ray === 1
            ? [places.fasciaOrigin, places.underFirstHead, rays[1].toeBase]
            : [places.fasciaOrigin, rays[ray].plantarHead],
        ...(ray === 1 ? {} : { on: rays[ray].toeBase }),
        stiffness: (f) => (f.fasciaTotal * f[`fasciaShare${ray}` as const]) / allShares(f),
        slack: 'fasciaSlack',
      }),
    ),
    ...([2, 3, 4] as const).map(
      (ray): TieRule => ({
        id: `long-plantar-${ray}`,
        path: [places.longPlantarOrigin, places[`longPlantar${ray}` as const]],
        ...ligament('longPlantar', 3),
      }),
    ),
    {
      id: 'short-plantar',
      path: [places.shortPlantarOrigin, places.shortPlantar],
      ...ligament('shortPlantar'),
    },
    {
      id: 'spring-ligament',
      path: [places.springOrigin, places.spring],
      ...ligament('spring'),
    },
    {
      id: 'lisfranc',
      path: [places.lisfrancOrigin, places.lisfranc],
      ...ligament('lisfranc'),
    },
    ...RAYS.map((ray) => band(`plantar-tarsometatarsal-${ray}`, BASE_JOINTS[ray], 'plantarTarsometatarsal')),
    ...(['Medial', 'Intermediate', 'Lateral'] as const).map((which) =>
      band(
        `plantar-naviculocuneiform-${which.toLowerCase()}`,
        `navicular-cuneiform${which}`,
        'plantarNaviculocuneiform',
      ),
    ),
    band('cuboideonavicular', 'navicular-cuboid', 'cuboideonavicular'),
    ...([2, 3, 4] as const).map((ray) =>
      band(`intermetatarsal-${ray}-${ray + 1}`, `metatarsal${ray}-metatarsal${ray + 1}`, 'intermetatarsalBase'),
    ),
    ...([1, 2, 3, 4] as const).map(
      (ray): TieRule => ({
        id: `deep-transverse-${ray}-${ray + 1}`,
        path: [ray === 1 ? places.underFirstHead : rays[ray].plantarHead, rays[(ray + 1) as 2 | 3 | 4 | 5].plantarHead],
        ...ligament('deepTransverse'),
      }),
    ),
  ];
};

export const pathLength = (path: readonly { readonly at: Vec3 }[]): number =>
  path.reduce((sum, { at }, i) => (i === 0 ? 0 : sum + length(subtract(at, (path[i - 1] as { at: Vec3 }).at))), 0);

const keptRules = new WeakMap<FootMarks, readonly TieRule[]>();
const rulesOf = (marks: FootMarks): readonly TieRule[] => {
  const rules = keptRules.get(marks) ?? makeRules(marks);
  keptRules.set(marks, rules);
  return rules;
};

/** A tie in a pose, whatever its stiffness and slack. */
interface TieWay extends Pick<Tie, 'id' | 'path'>, Pick<TieRule, 'stiffness' | 'slack'> {
  readonly standingMm: number;
  /** What the pose takes of its slack. */
  readonly takenMm: number;
}

const keptWays = new WeakMap<FrameNodes, readonly TieWay[]>();

/** The same for every draw, so kept with the nodes, which are kept with the placing. */
const waysOf = (marks: FootMarks, nodes: FrameNodes, placing: Placing): readonly TieWay[] => {
  const known = keptWays.get(nodes);
  if (known) return known;
  const ways = rulesOf(marks).map(({ id, path, on, stiffness, slack }): TieWay => {
    const whole = on === undefined ? path : [...path, on];
    const standingMm = pathLength(whole.map((place) => ({ at: placing.standing(place) })));
    const longer = pathLength(whole.map((place) => ({ at: placing.point(place) }))) - standingMm;
    return {
      id,
      path: path.map((place) => ({ node: nodes.nodeOf(place), at: placing.point(place) })),
      stiffness,
      slack,
      standingMm,
      takenMm: id.startsWith('fascia') ? longer : Math.min(longer, 0),
    };
  });
  keptWays.set(nodes, ways);
  return ways;
};

/**
 * Ties in a pose. Their slack is told for the standing foot, and a foot of another form has grown its ties to fit: what the pose adds
 * to their way is taken from it where toes bent back draw the fascia round the heads (the windlass), what it spares is added. No pose
 * pulls at a ligament: where bones were posed a millimetre apart, that is the drawing of the pose, which is taken as unloaded.
 */
export const tiesOf = (marks: FootMarks, nodes: FrameNodes, f: FrameFigures, placing: Placing): readonly Tie[] =>
  waysOf(marks, nodes, placing).map(({ id, path, stiffness, slack, standingMm, takenMm }) => ({
    id,
    path,
    stiffness: stiffness(f),
    slackMm: f[slack] * standingMm - takenMm,
  }));

/** The same ways on the standing foot, to be drawn. */
export const tiePaths = (marks: FootMarks): ReadonlyMap<string, readonly OnBone[]> =>
  new Map(rulesOf(marks).map(({ id, path }) => [id, path]));

const slopesOf = (pad: PadName, f: FrameFigures): readonly (readonly [stiffness: number, gapMm: number])[] => {
  if (pad === 'firstToe') return [[f.toePad, 0]];
  if (pad === 'base5') return [[f.basePad, f.basePadGap]];
  // Half of the heel's pad under each process.
  if (pad === 'heelMedial' || pad === 'heelLateral')
    return [
      [f.heelPad / 2, 0],
      [f.heelPadHard / 2, f.heelPadHardFrom],
    ];
  // Heads of the four and, under the first, a pad to each sesamoid.
  return [
    [f.headPad, 0],
    [f.headPadHard, f.headPadHardFrom],
  ];
};

/** Pads named, with how far the ground is from each beyond its own gap (mm; by the pose and the tilt of the ground). */
export const padsOf = (
  marks: FootMarks,
  nodes: FrameNodes,
  f: FrameFigures,
  placing: Placing,
  away: Readonly<Partial<Record<PadName, number>>>,
): readonly Pad[] =>
  PAD_NAMES.flatMap((pad) => {
    const off = away[pad];
    if (off === undefined) return [];
    const place = marks.pads[pad];
    return slopesOf(pad, f).map(([stiffness, gapMm], i) => ({
      id: i === 0 ? pad : `${pad}-hard`,
      pad,
      node: nodes.nodeOf(place),
      at: placing.point(place),
      stiffness,
      gapMm: gapMm + off,
    }));
  });
