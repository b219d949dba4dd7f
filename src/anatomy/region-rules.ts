/**
 * How footprints and the foramen of the fifth metatarsal are drawn on its surface: where along the bone, which way round it, how
 * large. Lengths in mm on a bone 71 mm long (mean of 241 patients 71.4: DeSandis, Foot Ankle Int, PMID 26678426) and scaled with
 * it; places along zone 1 as a share of it, so that they follow the facet. Directions round the bone: 0 dorsal, 90 lateral,
 * 180 plantar, 270 medial.
 */
import type { RegionId } from '../ids';
import { MT5 } from './region-names';

export interface FootprintRule {
  readonly id: RegionId;
  /** Centre, as a share of zone 1 from tip (0) to its border with zone 2 (1). */
  readonly alongZone1: number;
  readonly roundDeg: number;
  readonly lengthMm: number;
  readonly widthMm: number;
}

export const REFERENCE_LENGTH_MM = 71;

export const FOOTPRINTS: readonly FootprintRule[] = [
  // Oval on the dorsal base, 88.1 mm2 (21 bones; society abstract, ISAKOS 1812); wholly in zone 1 in 40 %, on its border in 55 %
  // of 102 legs (Kaneko 2020, PMC7503013). An ellipse 13 x 8.6 mm has that area; its place round the bone is drawn.
  { id: MT5.brevis, alongZone1: 0.6, roundDeg: 40, lengthMm: 13, widthMm: 8.6 },
  // On the border in 60 %, across it in 40 % (Kaneko 2020); dorsal. Size drawn.
  { id: MT5.tertius, alongZone1: 1.1, roundDeg: 345, lengthMm: 12, widthMm: 5 },
  // Oval round the tip of the tuberosity (same society abstract); on the border in 73.5 % (Kaneko 2020). Size drawn.
  { id: MT5.aponeurosis, alongZone1: 0.35, roundDeg: 140, lengthMm: 11, widthMm: 8 },
];

/**
 * Foramen of the nutrient artery: 26.8 mm (19 to 40) from the medial base, plantar-medial in 83 % (56 feet; McKeon 2013, Foot Ankle
 * Int 34:117). The medial base is taken as the corner where the facets for cuboid and fourth metatarsal meet: border 1/2.
 */
export const FORAMEN = { id: MT5.foramen, fromMedialBaseMm: 26.8, roundDeg: 225, acrossMm: 2.5 } as const;
