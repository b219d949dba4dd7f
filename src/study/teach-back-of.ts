/** Teach-back for an explanation: its warning signs are those that the wording layer says apply. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { cautionsFor } from '../wording';
import { teachBackFrom } from './teach-back';
import type { TeachBackItem } from './types';

export const teachBackOf = (content: Content, explanation: Explanation): TeachBackItem[] => {
  const cautions = cautionsFor(content, explanation, 'patient');
  return teachBackFrom({
    content,
    explanation,
    signs: cautions.filter((caution) => caution.kind === 'red flag').map((caution) => caution.what.patient),
  });
};
