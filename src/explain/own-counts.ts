/**
 * What was counted of a trouble in people treated as this person is. One group is told as it was counted; several that differ are told
 * from the lowest to the highest, for whichever of them stood first would pass for what is known.
 */
import type { Content, Trouble } from '../content/schema';
import type { InjuryId, OptionId } from '../ids';
import { compute, message } from './build';
import { troubleCounts } from './trouble-counts';
import type { TroubleCount } from './trouble-messages';

/** Somebody who examined the person says so: neither a report nor a what-if. */
export const confirmed = (known: { readonly status: string; readonly whatIf: boolean } | null): boolean =>
  known !== null && !known.whatIf && known.status === 'confirmed';

/** Of a handful whose treatment is not even known, a share would only frighten. */
const isMany = ({ of }: TroubleCount): boolean => of !== null && of >= MANY;
const MANY = 20;

/** Of one's own treatment, else of people whose treatment has no name but its kind, else of a type of treatment. */
export const ownCounts = (
  content: Content,
  trouble: Trouble,
  injury: InjuryId,
  own: OptionId,
): readonly TroubleCount[] => {
  const counts = troubleCounts(content, trouble, { injury });
  const kindOf = (id: OptionId) => content.options.find((each) => each.id === id)?.kind;
  const isUnnamed = ({ option }: TroubleCount): boolean =>
    content.options.some(({ id, named, kind }) => id === option && !named && kind === kindOf(own));
  const groups = [
    counts.filter(({ option, options }) => option === own || options?.some((id) => id === own)),
    counts.filter((each) => isUnnamed(each) && isMany(each)),
    counts.filter((each) => each.option === null && each.options === null && isMany(each)),
  ];
  return groups.find(({ length }) => length > 0) ?? [];
};

/** Told to whole people of a hundred, they are not the same number. */
export const isApart = (counts: readonly TroubleCount[]): boolean =>
  new Set(counts.map(({ percent }) => Math.round(percent))).size > 1;

export const troubleRange = compute(
  'trouble.range',
  ({ content }, inputs: { readonly injury: InjuryId; readonly option: OptionId; readonly trouble: Trouble['id'] }) => {
    const trouble = content.troubles.find(({ id }) => id === inputs.trouble);
    const counts = trouble === undefined ? [] : ownCounts(content, trouble, inputs.injury, inputs.option);
    if (!isApart(counts)) throw new RangeError(`no counts of ${inputs.trouble} that differ`);
    return message('troubleRange', { ...inputs, counts: counts.toSorted((a, b) => a.percent - b.percent) });
  },
);
