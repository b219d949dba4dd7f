/** Who was studied, in the words of the reader: as the study says it, or plainly. Which figures were found there is told elsewhere. */
import type { Content } from '../content/schema';
import type { TroubleCount } from '../explain/trouble-messages';
import type { Reader, StudyId } from '../ids';

type Kept = Pick<Content, 'studies' | 'rates'>;

/** The people of one arm of a study. */
export const peopleOfStudy = (content: Pick<Content, 'studies'>, id: StudyId, reader: Reader): string => {
  const study = content.studies.find((each) => each.id === id);
  if (study === undefined) throw new RangeError(`no study "${id}" in the content`);
  return reader === 'study' ? study.population : study.plain;
};

/** Whom a trouble was counted in, and of which type they were where somebody told it. */
export const groupOfCount = (
  content: Kept,
  { from, group, type }: Pick<TroubleCount, 'from' | 'group' | 'type'>,
  reader: Reader,
): { readonly group: string; readonly type: string | null } => {
  if (reader === 'study') return { group, type };
  if ('study' in from) return { group: peopleOfStudy(content, from.study, reader), type };
  const rate = content.rates.find(({ id }) => id === from.rate);
  if (rate === undefined) throw new RangeError(`no rate "${from.rate}" in the content`);
  return rate.plain;
};
