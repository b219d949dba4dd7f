/**
 * The default foot as scanned, its fine surfaces, against the same measures on four feet (two women, both sides, supine and
 * unloaded); measures of the calcaneus alone also on the generic male foot of the Synergy-Based-Foot-Model (no licence stated,
 * measured only). The measures were
 * taken there by another program with slightly other lines: pitch by lowest points instead of a tangent, the talus from the centre of
 * its body to the centre of the talonavicular joint instead of halved tangents.
 */
import { prepareAnatomy } from '../../src/anatomy';
import { type AngleId, radiographicAngles } from '../../src/anatomy/angles';
import { against } from '../tools/against';
import { builtFoot } from '../tools/built-foot';

/** z013 right and left, z027 right and left; the fifth, where there is one, the generic foot; deg. */
const MEASURED: Partial<Record<AngleId, readonly number[]>> = {
  calcanealPitch: [28.1, 33.0, 25.6, 26.7],
  talarDeclination: [9.3, 9.1, 16.1, 14.1],
  metatarsalDeclination1: [27.8, 31.9, 26.5, 26.9],
  metatarsalDeclination2: [28.8, 30.2, 31.3, 31.9],
  metatarsalDeclination3: [26.1, 26.0, 26.6, 22.9],
  metatarsalDeclination4: [16.9, 19.6, 19.9, 17.3],
  metatarsalDeclination5: [10.7, 14.0, 10.6, 7.3],
  meary: [-18.4, -22.8, -10.5, -12.9],
  calcaneusFirstMetatarsal: [124.1, 115.2, 127.8, 126.3],
  talocalcanealLateral: [37.5, 42.1, 41.7, 40.8],
  boehler: [32.2, 28.8, 34.2, 34.2, 25.6],
  gissaneChordal: [127.4, 127.7, 129.0, 131.6, 140.8],
  talocalcanealDorsoplantar: [22.9, 20.4, 17.9, 16.3],
  intermetatarsal12: [11.6, 13.8, 9.2, 8.2],
  intermetatarsal45: [6.0, 9.3, 7.9, 8.2],
  halluxValgus: [24.1, 26.1, 22.7, 23.9],
};

await prepareAnatomy();
const values = new Map(radiographicAngles(builtFoot({}, 'asScanned', 'fine')).map(({ id, value }) => [id, value]));

for (const [id, four] of Object.entries(MEASURED) as [AngleId, readonly number[]][]) {
  const mean = four.reduce((a, b) => a + b, 0) / four.length;
  const spread = Math.max(...four.map((one) => Math.abs(one - mean)));
  against(
    {
      source:
        'measured on VSDFullBodyBoneModels v3.0 (Fischer MCM, Sci Data 2023;10:763, doi:10.1038/s41597-023-02669-z)',
      where: 'subjects z013 and z027, both feet; for the calcaneus also a generic foot',
      how: 'read',
    },
    `${id} as scanned, deg`,
    () => ({
      expected: mean,
      got: values.get(id) ?? Number.NaN,
      tolerance: spread + 2,
      why: 'as far as the farthest of these feet from their mean, and 2 deg for other lines on fewer triangles',
    }),
  );
}
