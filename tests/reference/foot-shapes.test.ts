/**
 * The ends of the arch against groups of people: what the model calls a usual foot has the angles of normal-arched adults, what it
 * calls a flat one those of flat-arched adults. Standing, fine surfaces.
 */
import { prepareAnatomy } from '../../src/anatomy';
import { type AngleId, radiographicAngles } from '../../src/anatomy/angles';
import { against } from '../tools/against';
import { builtFoot } from '../tools/built-foot';

const MURLEY = {
  source: 'Murley GS, Menz HB, Landorf KB. J Foot Ankle Res 2009;2:22, doi:10.1186/1757-1146-2-22',
  how: 'read',
} as const;

const GROUPS: readonly {
  name: string;
  arch: number;
  where: string;
  angles: Partial<Record<AngleId, [mean: number, sd: number]>>;
}[] = [
  {
    name: 'usual foot',
    arch: 0,
    where: 'table 1, normal-arched adults',
    angles: { calcanealPitch: [20.9, 3.4], calcaneusFirstMetatarsal: [132.8, 4.0] },
  },
  {
    name: 'flat foot',
    arch: -1,
    where: 'table 1, flat-arched adults',
    angles: { calcanealPitch: [16.1, 5.0], calcaneusFirstMetatarsal: [141.7, 6.7] },
  },
];

await prepareAnatomy();

for (const { name, arch, where, angles } of GROUPS) {
  const values = new Map(
    radiographicAngles(builtFoot({ arch }, 'standing', 'fine')).map(({ id, value }) => [id, value]),
  );
  for (const [id, [mean, sd]] of Object.entries(angles) as [AngleId, [number, number]][]) {
    against({ ...MURLEY, where }, `${name}: ${id}, deg`, () => ({
      expected: mean,
      got: values.get(id) ?? Number.NaN,
      tolerance: sd,
      why: 'one standard deviation of the group',
    }));
  }
}
