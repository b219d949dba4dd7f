/**
 * What the other layers may rely on about the shape of a foot. Frame: mm, right-handed, right foot, +X medial, +Y dorsal,
 * +Z towards the toes, origin on the ground under the most posterior point of the calcaneus. Left = mirror in X.
 */
import type { BoneId, JointId, LegId, RegionId, Side, SkeletonId } from '../ids';
import type { Vec3 } from '../units';
import type { LookAlikeRules } from './look-alike-schema';
import type { RegionRules } from './region-schema';
import type { Motion } from './stance/motion';
import type { StrandRule } from './strand-schema';

/** A closed, outward triangle surface. positions: 3 numbers a vertex (mm); indices: 3 a triangle, counter-clockwise outside. */
export interface Mesh {
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
  /** Unit, out of the bone at each vertex, from its field; none where the vertices are not those of a bone's own surface. */
  readonly normals?: Float32Array;
}

export const POSE_NAMES = ['asScanned', 'standing', 'seated', 'heelRaise', 'pushOff', 'inversion'] as const;
export type PoseName = (typeof POSE_NAMES)[number];
/** How a person's arch is spoken of; the measure behind it is `FootForm.arch`. */
export type ArchShape = 'neutral' | 'high' | 'low';

/** What makes the shape of one foot differ from another's; the default foot has 0 everywhere. */
export interface FootForm {
  /** -1: mean of a flat-arched group, 1: of a high-arched one; in between in proportion. */
  readonly arch: number;
  /** Heel turned under the leg, deg: varus positive, valgus negative. */
  readonly hindfootDeg: number;
  /** Metatarsals turned inwards on the tarsus, deg. */
  readonly adductusDeg: number;
  /** First toe turned outwards further than in the default foot, deg. */
  readonly halluxDeg: number;
  /** First metatarsal longer (or, negative, shorter) on the reference foot, mm. */
  readonly firstRayMm: number;
}

/** A foot, right or left apart. `heelToSecondHeadMm` is H of the measured table. */
export interface FootParameters extends FootForm {
  readonly heelToSecondHeadMm: number;
}

/** How finely a surface is cut: few facets for the plate, or many for stills and sections. */
export type Level = 'display' | 'fine';

export interface Joint {
  readonly id: JointId;
  readonly first: BoneId;
  readonly second: BoneId;
  readonly centre: Vec3;
  /** Unit normal from first to second bone. */
  readonly normal: Vec3;
  /** Unit vector of the long direction of the facet, across the normal. */
  readonly major: Vec3;
  /** Full extents along major and across it. */
  readonly extentsMm: readonly [number, number];
  /** Radii of curvature along major and across it, positive where the first bone is convex; 0 flat. */
  readonly radiiMm: readonly [number, number];
}

/** How the foot came from the reference foot: what is told on that one is found here by it. */
export interface Reference {
  /** Motion of every bone from the as-scanned reference foot, before scaling; a bone that stays may be missing. Right foot. */
  readonly motions: ReadonlyMap<SkeletonId, Motion>;
  readonly scale: number;
  /** Rules of the named parts of the surfaces. */
  readonly regions: RegionRules;
  readonly lookAlikes: LookAlikeRules;
  /** Ways of soft tissue beside the bones. */
  readonly strands: readonly StrandRule[];
}

export interface Foot {
  readonly parameters: FootParameters;
  readonly pose: PoseName;
  readonly side: Side;
  readonly level: Level;
  readonly bones: ReadonlyMap<BoneId, Mesh>;
  /** Lower ends of tibia and fibula, closed above. */
  readonly leg: ReadonlyMap<LegId, Mesh>;
  readonly joints: ReadonlyMap<JointId, Joint>;
  /** Quiet outline of the whole foot and ankle: drawn, not measured. */
  readonly outline: Mesh;
  readonly reference: Reference;
}

/** The long axis of a long bone: s = (p - origin) . axis, 0 at the most proximal point of the bone, lengthMm at the most distal. */
export interface BoneAxis {
  readonly origin: Vec3;
  readonly axis: Vec3;
  /** Unit, across the axis, towards the back of the foot. */
  readonly dorsal: Vec3;
  /** Unit, across the axis, towards the outer side: -medial. */
  readonly lateral: Vec3;
  readonly lengthMm: number;
}

/** A stretch of a bone between two stations along its axis (`partAxis`). Parts tile the bone; those of MT5 are its zones. */
export interface Zone {
  readonly region: RegionId;
  readonly fromMm: number;
  readonly toMm: number;
}

export type RegionKind = 'facet' | 'footprint' | 'foramen' | 'groove' | 'spot' | 'stretch' | 'watershed' | 'zone';

/** A named part of a bone's surface, a function of the point and not of the triangulation. */
export interface Region {
  readonly id: RegionId;
  readonly bone: BoneId;
  readonly kind: RegionKind;
  readonly centre: Vec3;
  /** True where the surface point p (mm, foot frame) lies in the region. */
  readonly contains: (p: Vec3) => boolean;
  /** Stretch of the bone's long axis, of a tarsal the way of its parts, that the region covers; equal numbers for a point. */
  readonly spanMm?: readonly [from: number, to: number];
}
