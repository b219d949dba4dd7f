/**
 * The way of the load on the foot that is drawn: which parts are shown, how wide each is, and where it runs. Parts come from the
 * explanation; nothing is computed here but places. Pure.
 */
import * as v from 'valibot';
import { type Shape as FootShape, shapeSchema } from '../../anatomy/shape';
import { scaleOf } from '../../anatomy/size';
import { after, inverse, type Motion, moveDirection, movePoint, STILL } from '../../anatomy/stance/motion';
import { type Motions, motionsOf } from '../../anatomy/stance/stance';
import type { Foot, FootParameters } from '../../anatomy/types';
import type { SkeletonId } from '../../ids';
import type { PathPart } from '../../mechanics';
import { add, scale, type Vec3 } from '../../units';
import { LEAST_WIDTH, type MainLoad, mainLoadOf, mainLoadsOf, widestOf, widthFor } from '../../wording/load-scale';
import type { Explanation } from '../types';

type Loads = NonNullable<Explanation['loads']>;

/** A part as drawn: a line of two points or more, or one point with the way its force goes there. */
export interface DrawnPart {
  readonly id: string;
  readonly kind: PathPart['kind'];
  readonly sense: PathPart['sense'];
  readonly forceN: number;
  /** Share of the widest. */
  readonly width: number;
  readonly points: readonly Vec3[];
  /** Up the leg for what the leg and the heel's tendon do, up from the ground for what that does. Unit, foot frame. */
  readonly up: Vec3;
}

/** A sum that stands on the picture as a number, in body weights. */
export interface LoadNumber {
  readonly of: MainLoad;
  readonly bodyWeights: number;
}

export interface LoadPathScene {
  /** The narrowest first, so that what carries most lies on top. */
  readonly parts: readonly DrawnPart[];
  readonly numbers: readonly LoadNumber[];
}

/** Joints on the way from the leg to the rays; all others tie neighbours to each other. */
const LENGTHWAYS: ReadonlySet<string> = new Set([
  'talus-calcaneus',
  'talus-navicular',
  'calcaneus-cuboid',
  'navicular-cuneiformMedial',
  'navicular-cuneiformIntermediate',
  'navicular-cuneiformLateral',
  'cuneiformMedial-metatarsal1',
  'cuneiformIntermediate-metatarsal2',
  'cuneiformLateral-metatarsal3',
  'cuboid-metatarsal4',
  'cuboid-metatarsal5',
]);

const isMain = (part: PathPart): boolean =>
  part.kind === 'bone' || mainLoadOf(part) !== null || (part.kind === 'joint' && LENGTHWAYS.has(part.id));

const isLine = ({ kind, id, points }: PathPart): boolean =>
  points.length > 1 || kind === 'leg' || kind === 'ground' || id === 'achilles';

interface Carried {
  readonly point: (place: PathPart['points'][number]) => Vec3;
  readonly legUp: Vec3;
}

const UP: Vec3 = [0, 1, 0];
const stood = new WeakMap<object, { readonly shape: FootShape; readonly motions: Map<string, Motions> }>();

const standingMotions = (shape: unknown, parameters: FootParameters): readonly [FootShape, Motions] => {
  const kept = stood.get(shape as object) ?? { shape: v.parse(shapeSchema, shape), motions: new Map() };
  stood.set(shape as object, kept);
  const key = JSON.stringify(parameters);
  const motions = kept.motions.get(key) ?? motionsOf(kept.shape, parameters, 'standing');
  kept.motions.set(key, motions);
  return [kept.shape, motions];
};

const isSame = (a: FootParameters, b: FootParameters): boolean =>
  (Object.keys(a) as (keyof FootParameters)[]).every((key) => a[key] === b[key]);

/**
 * Places are told on the standing foot of the explanation. The foot on the stage may be held in another pose, or be another while a
 * hand is on a slider: there each place goes along with its bone.
 */
const carriedTo = (foot: Foot, shape: unknown, from: FootParameters): Carried => {
  if (foot.pose === 'standing' && isSame(foot.parameters, from)) return { point: ({ at }) => at, legUp: UP };
  const [read, standing] = standingMotions(shape, from);
  const moves = new Map<SkeletonId, Motion>();
  const move = (bone: SkeletonId): Motion => {
    const made =
      moves.get(bone) ?? after(foot.reference.motions.get(bone) ?? STILL, inverse(standing.get(bone) ?? STILL));
    moves.set(bone, made);
    return made;
  };
  const k = scaleOf(read, from);
  return {
    point: ({ bone, at }) => scale(movePoint(move(bone), scale(at, 1 / k)), foot.reference.scale),
    legUp: moveDirection(move('tibia'), UP),
  };
};

interface PathInput {
  readonly foot: Foot;
  /** Shape parameters of the content, to carry places to another pose. */
  readonly shape: unknown;
  readonly explanation: Explanation;
  /** For a patient, and where there is no room: the main way only, its parts put together. */
  readonly few: boolean;
}

type Placed = Omit<DrawnPart, 'width'>;

/** One part for all that make one sum: at their middle by force, along the line of each. */
const joined = (parts: readonly Placed[]): Placed[] => {
  const [first] = parts;
  if (first === undefined) return [];
  const forceN = parts.reduce((sum, part) => sum + part.forceN, 0);
  const middle = (of: (part: Placed) => Vec3 | undefined): Vec3 =>
    parts.reduce<Vec3>((sum, part) => add(sum, scale(of(part) ?? [0, 0, 0], part.forceN / forceN)), [0, 0, 0]);
  const start = middle(({ points }) => points[0]);
  // A slip that runs on to a toe ends, as the others, under its head.
  const points = first.points.length === 1 ? [start] : [start, middle(({ points: [, second] }) => second)];
  return [{ ...first, forceN, points }];
};

const putTogether = (parts: readonly Placed[]): Placed[] => {
  const sums = new Map<MainLoad | null, Placed[]>();
  for (const part of parts) sums.set(mainLoadOf(part), [...(sums.get(mainLoadOf(part)) ?? []), part]);
  return [...sums].flatMap(([main, group]) => (main === null ? group : joined(group)));
};

export const loadPathOf = ({ foot, shape, explanation, few }: PathInput): LoadPathScene | null => {
  const { loads } = explanation;
  if (loads === null) return null;
  const carried = carriedTo(foot, shape, explanation.foot);
  const placed = loads.told.path
    // What is pushed sideways is neither cord nor blocks: it stands in the table only.
    .filter((part) => isLine(part) && part.sense !== 'sheared' && (isMain(part) || !few))
    .map((part): Placed => {
      const { id, kind, sense, forceN } = part;
      const up = kind === 'leg' || kind === 'tendon' ? carried.legUp : UP;
      return { id, kind, sense, forceN, points: part.points.map(carried.point), up };
    });
  const main = new Set(loads.told.path.filter(isMain).map(({ id }) => id));
  const shown = few ? putTogether(placed) : placed;
  const widestN = widestOf(loads);
  const parts = shown.flatMap((part): DrawnPart[] => {
    const width = widthFor(part.forceN, widestN);
    // What is on the main way is still drawn, so wide and no wider.
    return width < LEAST_WIDTH && !main.has(part.id) ? [] : [{ ...part, width: Math.max(LEAST_WIDTH, width) }];
  });
  return { parts: parts.toSorted((a, b) => a.width - b.width), numbers: numbersOf(loads) };
};

/** None where only more and less may be told. */
const numbersOf = (loads: Loads): LoadNumber[] => {
  if (loads.forcesRank) return [];
  const sums = mainLoadsOf(loads);
  const tie: MainLoad = sums.achillesN >= sums.fasciaN ? 'achillesN' : 'fasciaN';
  return (['tibiaN', 'forefootN', tie] as const).flatMap((of) =>
    sums[of] > 0 ? [{ of, bodyWeights: sums[of] / loads.told.weightN }] : [],
  );
};
