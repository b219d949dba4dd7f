/**
 * `npm run angles`: the measures of foot films on the default foot standing (as drawn, and on its fine surface) and as scanned,
 * each beside what is usual in people who stand; then how far each joint turns from one pose to the other.
 */
import * as v from 'valibot';
import { buildFoot, DEFAULT_FOOT, type Level, type PoseName, prepareAnatomy } from '../anatomy';
import { type Angle, radiographicAngles } from '../anatomy/angles';
import { jointTurns } from '../anatomy/angles/joint-turns';
import { anglesSchema, type Norm, verdictOn } from '../anatomy/angles/schema';
import { readShape } from './read-shape';

await prepareAnatomy();
const shape = readShape();
const measures = v.parse(anglesSchema, shape.angles);
const measured = (pose: PoseName, level: Level): readonly Angle[] =>
  radiographicAngles(buildFoot(shape, DEFAULT_FOOT, pose, level));
const [standing, fine, scanned] = [
  measured('standing', 'display'),
  measured('standing', 'fine'),
  measured('asScanned', 'display'),
];

const written = (value: number | undefined, unit: Angle['unit']): string =>
  value === undefined ? '-' : value.toFixed(unit === 'share' ? 3 : 1);

const normOf = (norm: Norm | undefined, unit: Angle['unit']): string => {
  if (!norm) return '-';
  const { mean, sd, low, high } = norm;
  if (mean !== undefined) return written(mean, unit) + (sd === undefined ? '' : ` +/- ${written(sd, unit)}`);
  if (low === undefined) return `below ${written(high, unit)}`;
  return high === undefined ? `above ${written(low, unit)}` : `${written(low, unit)} to ${written(high, unit)}`;
};

const rows = measures.map(({ id, unit, norms: [norm] }, i) => {
  // What the app shows is measured on the fine surface too.
  const value = fine[i]?.value ?? Number.NaN;
  return [
    id,
    unit,
    written(standing[i]?.value, unit),
    written(value, unit),
    written(scanned[i]?.value, unit),
    normOf(norm, unit),
    verdictOn(value, norm),
    norm ? `${norm.how}: ${norm.source}` : '-',
  ];
});
const head = [
  'measure',
  'unit',
  'standing',
  'fine',
  'as scanned',
  'norm (standing)',
  'fine lies',
  'source of the norm',
];
const table = [head, ...rows];
const widths = head.map((_, k) => Math.max(...table.map((row) => row[k]?.length ?? 0)));
process.stdout.write(
  `${table
    .map((row) => row.map((cell, k) => cell.padEnd(widths[k] ?? 0)).join('  '))
    .join('\n')
    .replace(/ +$/gm, '')}\n`,
);

const turns = jointTurns(shape, DEFAULT_FOOT).map(({ joint, degrees, inwardsDeg, innerUpDeg, published }) =>
  [
    joint.padEnd(42),
    ...[degrees, inwardsDeg, innerUpDeg].map((deg) => deg.toFixed(1).padStart(6)),
    published === null ? '     -' : `${published.deg.toFixed(1).padStart(6)}  ${published.source} (${published.how})`,
  ].join('  '),
);
process.stdout.write(
  `\nturns from as scanned to standing, deg: front end down, front end inwards, inner side up; beside them the widest motion published up\nand down\n${turns.join('\n')}\n`,
);
