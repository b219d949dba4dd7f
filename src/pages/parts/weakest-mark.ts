/** The weakest mark that a finding rests on: what its own numbers are underlined with. */
import { MARKS, type Mark } from '../../content/schema-base';
import type { Finding } from '../../explain/types';

export const weakestMark = ({ basis }: Finding): Mark =>
  MARKS[Math.max(0, ...basis.sources.map((source) => MARKS.indexOf(source.mark)))] ?? 'from memory';
