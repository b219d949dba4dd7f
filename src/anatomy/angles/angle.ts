/**
 * What a measure of a film gives, and the three views it is taken in. A view is a parallel projection of the foot (films have
 * perspective; these do not). Everything is measured on the meshes of a right foot in the foot frame (mm, +X medial, +Y dorsal, +Z
 * towards the toes, ground y = 0 under the bare bones); a left foot is measured as its mirror image and the lines are mirrored back.
 */
import { degrees, type Vec3 } from '../../units';

export type View = 'lateral' | 'dorsoplantar' | 'rear';

/** A line on the bones, foot frame, mm. */
export type Segment = readonly [Vec3, Vec3];

export const ANGLE_IDS = [
  'calcanealPitch',
  'talarDeclination',
  'metatarsalDeclination1',
  'metatarsalDeclination2',
  'metatarsalDeclination3',
  'metatarsalDeclination4',
  'metatarsalDeclination5',
  'meary',
  'calcaneusFirstMetatarsal',
  'talocalcanealLateral',
  'boehler',
  'gissaneChordal',
  'gissaneTangent',
  'normalisedNavicularHeight',
  'talocalcanealDorsoplantar',
  'talusSecondMetatarsal',
  'talonavicularCoverage',
  'metatarsusAdductus',
  'intermetatarsal12',
  'intermetatarsal45',
  'halluxValgus',
  'protrusion1',
  'protrusion3',
  'protrusion4',
  'protrusion5',
  'protrusionShare1',
  'protrusionShare3',
  'protrusionShare4',
  'protrusionShare5',
  'hindfootAlignment',
] as const;
export type AngleId = (typeof ANGLE_IDS)[number];

/** A measure with the two lines it is read between. */
export interface Angle {
  readonly id: AngleId;
  readonly value: number;
  readonly unit: 'deg' | 'mm' | 'share';
  readonly view: View;
  readonly lines: readonly [Segment, Segment];
  /** Where the lines meet, when that is a place on the bone. */
  readonly vertex?: Vec3;
}

/** A point or direction as a view shows it: along the foot (rear view: up), across it, and out of the picture. */
export interface Seen {
  readonly along: number;
  readonly across: number;
  readonly depth: number;
}

/** lateral: forwards, up, medial. dorsoplantar: forwards, medial, up. rear: up, medial, forwards. */
export const seen = (view: View, [x, y, z]: Vec3): Seen => {
  switch (view) {
    case 'lateral':
      return { along: z, across: y, depth: x };
    case 'dorsoplantar':
      return { along: z, across: x, depth: y };
    case 'rear':
      return { along: y, across: x, depth: z };
  }
};

/** The point that a view shows there. */
export const placed = (view: View, { along, across, depth }: Seen): Vec3 => {
  switch (view) {
    case 'lateral':
      return [depth, across, along];
    case 'dorsoplantar':
      return [across, depth, along];
    case 'rear':
      return [across, along, depth];
  }
};

/** Direction of a segment in a view, deg: 0 along (forwards, or up from behind), positive towards dorsal or medial. */
export const slopeIn = (view: View, [from, to]: Segment): number => {
  const [a, b] = [seen(view, from), seen(view, to)];
  return degrees(Math.atan2(b.across - a.across, b.along - a.along));
};

/** Turn from one direction to another, in (-180, 180]. */
export const turnBetween = (from: number, to: number): number => {
  const turn = (((to - from) % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
};
