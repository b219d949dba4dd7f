/**
 * The named solids a bone is joined from. Positions in mm from the bone's centre along the foot's axes [medial, dorsal, towards the
 * toes] on the reference foot as scanned; size is [across, dorsal-plantar, along] before the mass is turned by `along` and `up`.
 */
import type { Vec3 } from '../../units';

/** Widths of a smooth join: three shared defaults (content/anatomy/defaults.yaml), never a number of a mass's own. */
export type Blend = 'broad' | 'usual' | 'fine';

interface Common {
  readonly name: string;
  /** How it is joined to what comes before it; `usual` when absent. */
  readonly join?: Blend;
  /** The joint it reaches past, uncut by that joint's surface: a malleolus past the plafond. */
  readonly past?: string;
}

interface Turned {
  readonly along?: Vec3;
  readonly up?: Vec3;
}

export interface Ellipsoid extends Common, Turned {
  readonly is: 'ellipsoid';
  readonly at: Vec3;
  readonly size: Vec3;
}
export interface Block extends Common, Turned {
  readonly is: 'block';
  readonly at: Vec3;
  readonly size: Vec3;
  readonly round: number;
}
/** A rod with round ends, radius from start to end. */
export interface Rod extends Common {
  readonly is: 'rod';
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radius: readonly [number, number];
}
/** A cylinder lying along `along`, its rims rounded. */
export interface Roller extends Common {
  readonly is: 'roller';
  readonly at: Vec3;
  readonly along: Vec3;
  readonly radius: number;
  readonly width: number;
  readonly round: number;
}
/**
 * A wedge-shaped drum about `along`: `width[0]` wide where its circle ends behind and `width[1]` where it ends ahead, towards
 * `front`; its rims rounded.
 */
export interface Drum extends Common {
  readonly is: 'drum';
  readonly at: Vec3;
  readonly along: Vec3;
  readonly front: Vec3;
  readonly radius: number;
  readonly width: readonly [behind: number, ahead: number];
  readonly round: number;
}
/** A section of a shaft. `corner` 2 = ellipse, 4 = nearly a rectangle; `roll` deg about the axis. */
export interface Section {
  readonly name: string;
  readonly at: Vec3;
  readonly width: number;
  readonly height: number;
  readonly roll?: number;
  readonly corner?: number;
}
/** Sections swept along a smooth curve through their centres, proximal first. */
export interface Shaft extends Common {
  readonly is: 'shaft';
  readonly up?: Vec3;
  readonly sections: readonly Section[];
}
export type Mass = Ellipsoid | Block | Rod | Roller | Drum | Shaft;

/** A flat cut: what lies beyond `at` along `normal` goes. */
export interface Cut {
  readonly name: string;
  readonly at: Vec3;
  readonly normal: Vec3;
  readonly join?: Blend;
}

/** Order matters: masses and pads are joined, then hollows and flat cuts taken away, then the joints cut. */
export interface Parts {
  readonly masses: readonly Mass[];
  readonly hollows?: readonly Mass[];
  readonly cuts?: readonly Cut[];
}
