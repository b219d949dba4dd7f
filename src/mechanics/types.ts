/**
 * Stations along a member: the only form in which load and stress leave this layer. Stations are measured from the proximal
 * end of the bone along its axis (see BoneAxis). N tension +, stress tension +. Mz bends up/down (about the lateral axis), My
 * bends sideways (about the dorsal axis).
 */
import type { BoneId } from '../ids';

export interface SectionProperties {
  /** Centroid of the bone in the section, mm dorsal and lateral of the bone axis. */
  readonly centroidMm: readonly [dorsal: number, lateral: number];
  readonly areaMm2: number;
  /** Second moments about the centroid, axes lateral (bends up/down) and dorsal (bends sideways), and the product. */
  readonly iLateralMm4: number;
  readonly iDorsalMm4: number;
  readonly iProductMm4: number;
  /** Torsion constant. */
  readonly jMm4: number;
  /** Extreme fibre distances from the centroid: dorsal, plantar, lateral, medial. */
  readonly toDorsalMm: number;
  readonly toPlantarMm: number;
  readonly toLateralMm: number;
  readonly toMedialMm: number;
}

export interface Station {
  readonly sMm: number;
  readonly axialN: number;
  readonly shearDorsalN: number;
  readonly shearLateralN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
  readonly torsionNmm: number;
  readonly section: SectionProperties;
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
  /** Smallest and largest when canal, cortex and load are taken at the ends of their bands. */
  readonly lowHighMPa: readonly [number, number];
  /** Where along the bone the peak moves while they are. */
  readonly sLowHighMm: readonly [number, number];
  /** True when a station outside beam theory carries more: then this is the most the theory may say, not where the bone is worst. */
  readonly atEdgeOfTheory: boolean;
}
