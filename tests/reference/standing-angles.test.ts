/**
 * The standing default foot, its fine surfaces as shipped, against the norm that stands first beside each measure in content/anatomy/angles.yaml (how
 * each is drawn is said there and at its function in src/anatomy/angles).
 */
import * as v from 'valibot';
import { radiographicAngles } from '../../src/anatomy/angles';
import { anglesSchema, verdictOn } from '../../src/anatomy/angles/schema';
import { readFoot } from '../../src/cli/read-foot';
import { readShape } from '../../src/cli/read-shape';
import { against } from '../tools/against';

const foot = readFoot();
if (foot === null) throw new Error('no model: npm run model');
const values = new Map(radiographicAngles(foot).map(({ id, value }) => [id, value]));

/**
 * Told on the screen and not held here: the 15 deg of metatarsus adductus is a limit at which a study took feet, not a measure of
 * people. The model has more; whether the four feet that its joints come from have, was not measured.
 */
const NOT_A_NORM = new Set(['metatarsusAdductus']);

/** Where no spread is printed. A single reading of an angle: ten readers, ten films, Foot Ankle Int 2002, abstract. */
const SINGLE_READING = {
  tolerance: 3.6,
  why: '95 % of single readings of an angle between metatarsals lie within 3.6 deg',
};
/** The talus is seen far less well from above than a metatarsal. */
const TALUS_FROM_ABOVE = {
  tolerance: 6.3,
  why: 'no spread is printed; 6.3 deg is that of the other talar angle of this view (Murley 2009)',
};

for (const { id, unit, norms } of v.parse(anglesSchema, readShape().angles)) {
  const [norm] = norms;
  if (!norm || NOT_A_NORM.has(id)) continue;
  const { mean, sd, source, of: where, how } = norm;
  const got = values.get(id) ?? Number.NaN;
  const outside = { source, where, how };
  if (mean === undefined) against(outside, `${id} is usual`, () => ({ expected: 'inside', got: verdictOn(got, norm) }));
  else if (sd !== undefined) {
    against(outside, `${id}, ${unit}`, () => ({
      expected: mean,
      got,
      tolerance: 2 * sd,
      why: 'two standard deviations of people',
    }));
  } else if (unit === 'deg') {
    against(outside, `${id}, ${unit}`, () => ({
      expected: mean,
      got,
      ...(id === 'talocalcanealDorsoplantar' ? TALUS_FROM_ABOVE : SINGLE_READING),
    }));
  }
}

against(
  {
    source: 'Murley GS, Menz HB, Landorf KB. J Foot Ankle Res 2009;2:22, doi:10.1186/1757-1146-2-22',
    where: 'table 1, normal-arched adults',
    how: 'read',
  },
  'the usual foot of the model is one with a normal arch: pitch, deg',
  () => ({
    expected: 20.9,
    got: values.get('calcanealPitch') ?? Number.NaN,
    tolerance: 3.4,
    why: 'one standard deviation',
  }),
);
