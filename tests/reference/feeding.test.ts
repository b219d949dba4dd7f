/** Where territories meet on the built bone, against what was published. Flow was never measured, and no length of a border in mm. */

import { zonesOf } from '../../src/anatomy';
import { contextOf } from '../../src/explain/context';
import { feedingFor } from '../../src/explain/feeding';
import { against } from '../tools/against';
import { content, foot } from '../tools/explained';

const { borders } = feedingFor(contextOf(content, foot), {
  foot: foot.parameters,
  bone: 'metatarsal5',
  place: null,
  choices: {},
  cuts: [],
  taken: [],
});

against(
  {
    source: 'Clinical review of foot injuries in American football (mdedge 111255)',
    where: 'fifth metatarsal: nutrient and metaphyseal arteries leave a gap at the junction of metaphysis and shaft',
    how: 'second hand',
  },
  'fifth metatarsal: station of the border between base and nutrient arteries, mm',
  () => ({
    expected: zonesOf(foot)[1]?.toMm ?? Number.NaN,
    got: borders.find(({ between }) => between.join() === 'mt5-metaphyseal,mt5-nutrient')?.sMm ?? Number.NaN,
    tolerance: 4,
    why: 'the junction is the distal end of zone 2; the review gives no length, and zone 2 itself is 13 mm long',
  }),
);
