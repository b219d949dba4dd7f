/**
 * `npm run fit:many -- 100`: the fit of so many feet of random shape and length, and of all corners of the shapes at the usual length,
 * the shortest and the longest; what breaks the rules of fit (src/anatomy/fit/rules.ts), foot by foot, and how often each joint does.
 * A pose and a level may follow.
 */
import { buildFoot, DEFAULT_FOOT, fitOf, footLengthOf, hOfFootLength, prepareAnatomy } from '../../src/anatomy';
import { brokenRules } from '../../src/anatomy/fit/rules';
import { poseAndLevel } from '../../src/cli/pose-and-level';
import { readShape } from '../../src/cli/read-shape';
import { cornerForms, formInWords, LENGTHS_MM, sampleLengths } from '../unit/anatomy/any-form';

const [asked = '100', ...rest] = process.argv.slice(2);
const count = Number(asked);
if (!Number.isInteger(count) || count < 0) throw new RangeError(`no number of feet: ${asked}`);
const { pose, level } = poseAndLevel(rest);

await prepareAnatomy();
const shape = readShape();
const usualMm = footLengthOf(DEFAULT_FOOT.heelToSecondHeadMm);
const corners = [usualMm, ...LENGTHS_MM].flatMap((lengthMm) => cornerForms.map((form) => ({ lengthMm, form })));
const feet = [...sampleLengths(count), ...corners];
const often = new Map<string, number>();
let least = { mm: Number.POSITIVE_INFINITY, where: '' };
let widest = { mm: 0, where: '' };
let bare = { share: Number.POSITIVE_INFINITY, where: '' };
let deepest = { mm: 0, where: 'none' };
let broken = 0;

for (const { lengthMm, form } of feet) {
  const parameters = { ...DEFAULT_FOOT, ...form, heelToSecondHeadMm: hOfFootLength(lengthMm) };
  const fit = fitOf(shape, buildFoot(shape, parameters, pose, level));
  const words = `${lengthMm.toFixed(0)} mm, ${formInWords(form)}`;
  for (const { joint, articular, p5Mm, p95Mm, areaShare } of fit.joints) {
    if (!articular) continue;
    if (p5Mm < least.mm) least = { mm: p5Mm, where: `${joint} (${words})` };
    if (p95Mm > widest.mm) widest = { mm: p95Mm, where: `${joint} (${words})` };
    if (areaShare !== null && areaShare < bare.share) bare = { share: areaShare, where: `${joint} (${words})` };
  }
  const over = fit.overlaps[0];
  if (over && over.depthMm > deepest.mm) deepest = { mm: over.depthMm, where: `${over.bones.join(' ')} (${words})` };
  const rules = brokenRules(shape, fit, pose);
  if (rules.length > 0) {
    broken += 1;
    process.stdout.write(`${words}\n${rules.map((rule) => `  ${rule}\n`).join('')}`);
  }
  for (const rule of rules) {
    const kind = rule.replace(/[\d.]+ mm.*|: \d+ %.*/, '');
    often.set(kind, (often.get(kind) ?? 0) + 1);
  }
}

for (const [kind, times] of [...often].sort((a, b) => b[1] - a[1])) process.stdout.write(`${times} x ${kind}\n`);
process.stdout.write(
  `${feet.length} feet, ${broken} break a rule\nleast gap (5 %) ${least.mm.toFixed(2)} mm ${least.where}\nwidest gap (95 %) ${widest.mm.toFixed(2)} mm ${widest.where}\nleast area ${(100 * bare.share).toFixed(0)} % ${bare.where}\ndeepest overlap ${deepest.mm.toFixed(2)} mm ${deepest.where}\n`,
);
if (broken > 0) process.exitCode = 1;
