/**
 * All that the figure of the handout is made of, as plain values: equal values, equal figure. An explanation comes anew for things that
 * it does not show (a band of the loads, seconds later), and a figure on its way to paper is not to go for those.
 */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { type Still, stillOf } from './still';

/** The parts of an explanation that a picture of "where" is drawn of; a test holds the drawing to them. */
export const DRAWN_WHERE = [
  'foot',
  'side',
  'bone',
  'part',
  'breakAt',
  'zones',
] as const satisfies readonly (keyof Explanation)[];

export interface FigureMadeOf extends Pick<Explanation, (typeof DRAWN_WHERE)[number]> {
  readonly text: Still;
}

export const figureMadeOf = (content: Content, explanation: Explanation): FigureMadeOf => {
  const { foot, side, bone, part, breakAt, zones } = explanation;
  return { text: stillOf(content, explanation, 'where'), foot, side, bone, part, breakAt, zones };
};
