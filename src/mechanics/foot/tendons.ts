/**
 * Forces of the muscles on the bones: each tendon pulls where it ends and presses what it turns round. What it does to the leg goes
 * into the leg. N, mm, foot frame.
 */
import { add, normalize, scale, subtract, type Vec3 } from '../../units';
import type { FootMarks, OnBone } from './landmarks';
import type { Tendon } from './load-case';
import type { Placing } from './placing';

export interface PointForce {
  readonly place: OnBone;
  readonly at: Vec3;
  readonly force: Vec3;
}

type Path = readonly [end: OnBone, ...turns: OnBone[]];

/** Where each tendon runs on the foot, from its end towards the leg. */
export const tendonPaths = ({ places, rays }: FootMarks): Readonly<Record<Tendon, readonly Path[]>> => ({
  fibularisLongus: [[places.fibularisLongus, places.fibularisLongusGroove, places.behindOuterAnkle]],
  fibularisBrevis: [[places.fibularisBrevis, places.behindOuterAnkle]],
  tibialisPosterior: [[places.tibialisPosterior, places.behindInnerAnkle]],
  flexorHallucis: [
    [
      places.flexorHallucis,
      places.underFirstHead,
      places.flexorHallucisCalcaneus,
      places.flexorHallucisTalus,
      // Straight up the leg from there.
    ],
  ],
  // The lesser toes are no parts of the frame: what their flexors do arrives at the heads, a quarter each.
  flexorDigitorum: ([2, 3, 4, 5] as const).map((ray): Path => [rays[ray].head, places.behindInnerAnkle]),
});

/** Forces on the foot when a tendon pulls with so many newtons. Places on the leg take theirs into the leg and are left out. */
export const tendonForces = (marks: FootMarks, placing: Placing, tendon: Tendon, pullN: number): PointForce[] => {
  const paths = tendonPaths(marks)[tendon];
  const up = placing.direction('tibia', [0, 1, 0]);
  return paths.flatMap((path) => {
    const points = path.map((place) => placing.point(place));
    const pull = pullN / paths.length;
    const last = path.length - 1;
    const onLeg = path[last]?.bone === 'tibia' || path[last]?.bone === 'fibula';
    return path.flatMap((place, i) => {
      if (onLeg && i === last) return [];
      const at = points[i] as Vec3;
      const towards = (j: number): Vec3 => normalize(subtract(points[j] as Vec3, at));
      const next = i < last ? towards(i + 1) : up;
      const force = i === 0 ? next : add(next, towards(i - 1));
      return [{ place, at, force: scale(force, pull) }];
    });
  });
};

/** The calf on the heel: a unit pull straight up the leg. */
export const achillesUnit = (marks: FootMarks, placing: Placing): PointForce => ({
  place: marks.places.achilles,
  at: placing.point(marks.places.achilles),
  force: placing.direction('tibia', [0, 1, 0]),
});
