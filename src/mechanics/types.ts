/**
 * Stations along a member: the only form in which load and stress leave this layer. Stations are measured from the proximal
 * end of the bone along its axis (see BoneAxis). N tension +, stress tension +. Mz bends up/down (about the lateral axis), My
 * bends sideways (about the dorsal axis).
 */
import type { BoneId } from '../ids';

/** What bending needs of a section. Coordinates dorsal and lateral of the bone axis. */
export interface BendingSection {
  /** Centroid of the bone in the section, mm dorsal and lateral of the bone axis. */
  readonly centroidMm: readonly [dorsal: number, lateral: number];
  readonly areaMm2: number;
  /** Second moments about the centroid, axes lateral (bends up/down) and dorsal (bends sideways), and the product. */
  readonly iLateralMm4: number;
  readonly iDorsalMm4: number;
  readonly iProductMm4: number;
  /** Second moments for bending in the stiffest direction and at right angles to it. */
  readonly iMostMm4: number;
  readonly iLeastMm4: number;
  /** The stiffest direction, from dorsal towards lateral, from -pi/2 to pi/2. */
  readonly rollRad: number;
  /** Extreme fibre distances from the centroid: dorsal, plantar, lateral, medial; along the stiffest direction and across it. */
  readonly toDorsalMm: number;
  readonly toPlantarMm: number;
  readonly toLateralMm: number;
  readonly toMedialMm: number;
  readonly toMostMm: number;
  readonly toLeastMm: number;
}

export interface SectionProperties extends BendingSection {
  /** Torsion constant. */
  readonly jMm4: number;
  /** Largest shear stress of a torque of 1 N mm, MPa, and where on the border it is. */
  readonly torsionPeakPerNmm: number;
  readonly torsionPeakAtMm: readonly [dorsal: number, lateral: number];
  /** Shear areas for a force in the stiffest direction and at right angles to it. */
  readonly shearAreaMostMm2: number;
  readonly shearAreaLeastMm2: number;
  /** A force through this point bends without twisting. */
  readonly shearCentreMm: readonly [dorsal: number, lateral: number];
}

/** A station whose section is known as far as S goes. */
export interface StationOf<S extends BendingSection> {
  readonly sMm: number;
  readonly axialN: number;
  readonly shearDorsalN: number;
  readonly shearLateralN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
  readonly torsionNmm: number;
  readonly section: S;
  /** Largest tension and largest compression on the outer surface, MPa (compression negative), each with its direction round the section (rad from dorsal towards lateral). */
  readonly tensionMPa: number;
  readonly tensionAtRad: number;
  readonly compressionMPa: number;
  readonly compressionAtRad: number;
  /** Linear stress field over the section: sigma = a + b * dorsalMm + c * lateralMm about the section centroid (MPa, MPa/mm). The stage samples this. */
  readonly field: readonly [a: number, b: number, c: number];
  /** Within one depth of a held end, or where the bone is no slender member: drawn hatched, never coloured. */
  readonly outsideBeamTheory: boolean;
}

export type Station = StationOf<SectionProperties>;

export interface StationTable {
  readonly bone: BoneId;
  readonly stations: readonly Station[];
  readonly peakTension: Peak;
  readonly peakCompression: Peak;
  /** Stretch of the bone that facet and ligaments hold. */
  readonly heldMm: readonly [from: number, to: number];
}

/** The largest stress among the stations where beam theory holds. */
export interface Peak {
  readonly sMm: number;
  readonly mpa: number;
  /** True when a station outside beam theory carries more: then this is the most the theory may say, not where the bone is worst. */
  readonly atEdgeOfTheory: boolean;
}
