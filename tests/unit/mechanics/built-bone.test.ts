/** The beam on the built fifth metatarsal, for every size and shape of foot that a person can ask for. */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  assembleFoot,
  buildBone,
  DEFAULT_FOOT,
  type Foot,
  type FootParameters,
  H_BOUNDS_MM,
  prepareAnatomy,
  zonesOf,
} from '../../../src/anatomy';
import { readShape } from '../../../src/cli/read-shape';
import { type BeamInputsLike, fifthMetatarsalBeam, type LoadCaseLike } from '../../../src/mechanics';

const inputs: BeamInputsLike = {
  canalAcrossMm: { value: 4.1, low: 3.2, high: 5 },
  canalUpDownMm: { value: 5.3, low: 4.2, high: 6.4 },
  cortexMetaphysisMm: { value: 1, low: 0.6, high: 1.5 },
  canalAtShare: { value: 0.585 },
  canalFromShare: { value: 0.4, low: 0.33, high: 0.47 },
  canalToShare: { value: 0.8, low: 0.75, high: 0.85 },
  brevisMedial: { value: 0.46 },
  brevisUp: { value: 0.213 },
  brevisBack: { value: 0.862 },
};
const load: LoadCaseLike = {
  headUp: { value: 0.4 },
  headMedial: { value: 0.2 },
  headAlong: { value: 0.1 },
  brevisPull: { value: 0.2 },
};
const shape = readShape();
const footOf = (parameters: FootParameters): Foot =>
  assembleFoot(shape, parameters, 'standing', {
    level: 'display',
    bones: new Map([['metatarsal5', buildBone(shape, parameters, 'metatarsal5', 'standing')]]),
    leg: new Map(),
    outline: { positions: new Float32Array(), indices: new Uint32Array() },
  });

describe('the built fifth metatarsal', () => {
  beforeAll(prepareAnatomy);
  const [smallest, largest] = H_BOUNDS_MM;
  const feet: FootParameters[] = [
    { ...DEFAULT_FOOT, heelToSecondHeadMm: smallest },
    { ...DEFAULT_FOOT, heelToSecondHeadMm: largest },
    { ...DEFAULT_FOOT, arch: 1 },
    { ...DEFAULT_FOOT, arch: -1 },
  ];
  test.each(feet)('H $heelToSecondHeadMm mm, $arch arch: five zones, finite stress, peak on the bone', (parameters) => {
    const foot = footOf(parameters);
    const zones = zonesOf(foot);
    expect(zones).toHaveLength(5);
    const table = fifthMetatarsalBeam(foot, inputs, load, 75);
    for (const s of table.stations) {
      expect(Number.isFinite(s.tensionMPa) && Number.isFinite(s.compressionMPa)).toBe(true);
      expect(s.section.areaMm2).toBeGreaterThan(5);
    }
    expect(table.peakTension.sMm).toBeGreaterThan(table.heldMm[1]);
    expect(table.peakTension.sMm).toBeLessThan(zones.at(-1)?.toMm ?? 0);
  });
});
