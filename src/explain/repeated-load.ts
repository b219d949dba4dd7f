/** The way of breaking that a training diary speaks to, and how its constants are known: asked by pages without the computation. */
import { MARKS, type Mark, type Repetition } from '../content/schema';
import { idOf, type MechanismId } from '../ids';

export const REPEATED_LOAD = idOf<MechanismId>('repeated-load');

/** The weakest mark of all constants of repeated load: that of everything told from them. */
export const markOfRepetition = ({ exponent, repairDays, repairExponent }: Repetition): Mark =>
  MARKS[Math.max(...[exponent, repairDays, repairExponent].map((f) => MARKS.indexOf(f.evidence.mark)))] ??
  'from memory';
