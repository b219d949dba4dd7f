/**
 * `npm run fit`: gaps and facing areas at every joint of the default foot and overlap of any two bones; the worst values last.
 * A pose and a level of mesh may follow: `npm run fit -- pushOff display`. Ends with code 1 when a rule of fit is broken.
 */
import { buildFoot, DEFAULT_FOOT, fitOf, type JointFit, prepareAnatomy } from '../anatomy';
import { brokenRules } from '../anatomy/fit/rules';
import { poseAndLevel } from './pose-and-level';
import { readShape } from './read-shape';

const { pose, level } = poseAndLevel(process.argv.slice(2));
await prepareAnatomy();
const shape = readShape();
const fit = fitOf(shape, buildFoot(shape, DEFAULT_FOOT, pose, level));

const mm = (value: number): string => value.toFixed(2).padStart(6);
const share = (value: number | null): string => (value === null ? '-' : `${Math.round(100 * value)} %`).padStart(6);
const lines = fit.joints.map(
  (j) =>
    `${j.joint.padEnd(46)}${j.articular ? '           ' : '(no facet) '}gap ${mm(j.meanMm)}  5-95 % ${mm(j.p5Mm)} ${mm(j.p95Mm)}  area ${j.areaMm2.toFixed(0).padStart(4)} mm2 ${share(j.areaShare)}`,
);

/** The joint that comes first by a value; one whose value is not a number comes before all others. */
const worst = (value: (j: JointFit) => number): JointFit | undefined =>
  fit.joints
    .filter((j) => j.articular)
    .sort((a, b) => Number(Number.isNaN(value(b))) - Number(Number.isNaN(value(a))) || value(a) - value(b))[0];
const [least, widest, bare] = [worst((j) => j.p5Mm), worst((j) => -j.p95Mm), worst((j) => j.areaShare ?? Infinity)];
const broken = brokenRules(shape, fit, pose);
lines.push(
  '',
  ...fit.overlaps.map((o) => `overlap ${o.bones.join(' ')} ${mm(o.depthMm)} mm`),
  ...broken.map((rule) => `BROKEN ${rule}`),
  `least gap (5 %): ${least ? `${least.joint} ${mm(least.p5Mm)} mm` : 'none'}`,
  `widest gap (95 %): ${widest ? `${widest.joint} ${mm(widest.p95Mm)} mm` : 'none'}`,
  `least area of the tabled: ${bare ? `${bare.joint} ${share(bare.areaShare)}` : 'none'}`,
  `deepest overlap: ${fit.overlaps[0] ? `${fit.overlaps[0].bones.join(' ')} ${mm(fit.overlaps[0].depthMm)} mm` : 'none'}`,
);
process.stdout.write(`${lines.join('\n')}\n`);
if (broken.length > 0) process.exitCode = 1;
