/** "How do you know?": what was computed from what, why the confidence is no higher, and the sources with their marks. */
import { archShapeOf } from '../anatomy';
import type { Content } from '../content/schema';
import type { ConfidenceReason, Explanation, Finding } from '../explain/types';
import type { ActivityId, InjuryId, OptionId, Reader, RegionId } from '../ids';
import { BASIS_LINES } from './en/basis';
import { COMPUTE_WORDS } from './en/compute-words';
import { FOOT_SHAPE_WORDS, REASON_WORDS, type ReasonKey } from './en/lists';
import { fill } from './fill';
import { namesFor } from './names';
import { formatQuantity } from './quantities';
import { type SourceBasis, sourceBasis } from './source-basis';

export interface BasisWords {
  readonly lines: readonly string[];
  readonly sources: readonly SourceBasis[];
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isNumber = (value: unknown): value is number => typeof value === 'number';

/** The inputs that a person can check, each in a line of its own; the rest is in the JSON. */
const inputLines = (content: Content, inputs: Finding['basis']['inputs']): readonly string[] => {
  const names = namesFor(content, 'study');
  const lines: string[] = [];
  const { foot, activity, massKg, region, injury, option, moreKg, heldToShare } = inputs;
  const { carriedKg, soleBending, speed, tiltDeg } = inputs;
  if (typeof foot === 'object' && foot !== null && 'heelToSecondHeadMm' in foot && isNumber(foot.heelToSecondHeadMm)) {
    const arch = archShapeOf({ arch: 'arch' in foot && isNumber(foot.arch) ? foot.arch : 0 });
    const size = formatQuantity({ value: foot.heelToSecondHeadMm, unit: 'mm' });
    lines.push(fill(BASIS_LINES.foot, { size, shape: FOOT_SHAPE_WORDS[arch] }));
  }
  if (isText(region)) lines.push(fill(BASIS_LINES.region, { region: names.region(region as RegionId) }));
  if (isText(injury)) lines.push(fill(BASIS_LINES.injury, { injury: names.injury(injury as InjuryId) }));
  if (isText(option)) lines.push(fill(BASIS_LINES.option, { option: names.option(option as OptionId) }));
  if (isText(activity)) lines.push(fill(BASIS_LINES.activity, { activity: names.activity(activity as ActivityId) }));
  if (isNumber(massKg)) lines.push(fill(BASIS_LINES.mass, { mass: formatQuantity({ value: massKg, unit: 'kg' }) }));
  if (isNumber(carriedKg) && carriedKg > 0)
    lines.push(fill(BASIS_LINES.carried, { mass: formatQuantity({ value: carriedKg, unit: 'kg' }) }));
  if (isNumber(soleBending) && soleBending > 0)
    lines.push(fill(BASIS_LINES.sole, { stiffness: formatQuantity({ value: soleBending, unit: 'N m/rad' }) }));
  if (isNumber(speed)) lines.push(fill(BASIS_LINES.speed, { speed: formatQuantity({ value: speed, unit: 'm/s' }) }));
  if (isNumber(tiltDeg)) lines.push(fill(BASIS_LINES.tilt, { tilt: formatQuantity({ value: tiltDeg, unit: 'deg' }) }));
  if (isNumber(moreKg)) lines.push(fill(BASIS_LINES.more, { mass: formatQuantity({ value: moreKg, unit: 'kg' }) }));
  if (isNumber(heldToShare))
    lines.push(fill(BASIS_LINES.held, { share: formatQuantity({ value: heldToShare, unit: 'share' }) }));
  return lines;
};

const reasonKey = (reason: ConfidenceReason): ReasonKey => {
  const key =
    reason.by === 'claim'
      ? `claim.${reason.status}`
      : reason.by === 'source'
        ? `source.${reason.mark}`
        : reason.by === 'model'
          ? `model.${reason.limit}`
          : reason.by;
  return (key in REASON_WORDS ? key : 'nothing') as ReasonKey;
};

/** Who was studied is said in the words of the reader; the rest is one text for all. */
export const wordBasis = (
  content: Content,
  _explanation: Explanation,
  finding: Finding,
  reader: Reader = 'study',
): BasisWords => {
  const { basis, confidence } = finding;
  const how = COMPUTE_WORDS[basis.compute];
  const practice = basis.sources.some((source) => source.source === null);
  return {
    lines: [
      ...(how === undefined ? [] : [how]),
      ...inputLines(content, basis.inputs),
      REASON_WORDS[reasonKey(confidence.reason)],
      ...(practice ? [BASIS_LINES.practice] : []),
    ],
    sources: basis.sources.flatMap((cited) => sourceBasis(content, finding, cited, reader) ?? []),
  };
};
