/**
 * `npm run fit`: gaps and facing areas at every joint of the default foot and overlap of any two bones; the worst values last.
 * A pose and a level of mesh may follow: `npm run fit -- pushOff display`.
 */
import { buildFoot, DEFAULT_FOOT, fitOf, POSE_NAMES, prepareAnatomy } from '../anatomy';
import { readShape } from './read-shape';

const [asked = 'standing', level = 'fine'] = process.argv.slice(2);
if (level !== 'fine' && level !== 'display') throw new RangeError(`no level ${level}; there are fine and display`);
const pose = POSE_NAMES.find((name) => name === asked);
if (!pose) throw new RangeError(`no pose ${asked}; there are ${POSE_NAMES.join(', ')}`);
await prepareAnatomy();
const shape = readShape();
const fit = fitOf(shape, buildFoot(shape, DEFAULT_FOOT, pose, level));
const mm = (value: number): string => value.toFixed(2).padStart(6);
const share = (value: number | null): string => (value === null ? '   -' : `${Math.round(100 * value)} %`.padStart(6));
const lines = fit.joints.map(
  (j) =>
    `${j.joint.padEnd(46)}${j.articular ? '' : '(no facet) '} gap ${mm(j.meanMm)}  5-95 % ${mm(j.p5Mm)} ${mm(j.p95Mm)}  area ${share(j.areaShare)}`,
);
const articular = fit.joints.filter((j) => j.articular);
const least = articular.reduce((a, b) => (b.p5Mm < a.p5Mm ? b : a));
const most = articular.reduce((a, b) => (b.p95Mm > a.p95Mm ? b : a));
const bare = articular.reduce((a, b) => ((b.areaShare ?? 9) < (a.areaShare ?? 9) ? b : a));
lines.push('', ...fit.overlaps.map((o) => `overlap ${o.bones.join(' ')} ${mm(o.depthMm)}`));
lines.push(
  `least gap (5 %): ${least.joint} ${mm(least.p5Mm)} mm`,
  `widest gap (95 %): ${most.joint} ${mm(most.p95Mm)} mm`,
  `least area of the tabled: ${bare.joint} ${share(bare.areaShare)}`,
  `deepest overlap: ${fit.overlaps[0] ? `${fit.overlaps[0].bones.join(' ')} ${mm(fit.overlaps[0].depthMm)} mm` : 'none'}`,
);
process.stdout.write(`${lines.join('\n')}\n`);
