/** The way of breaking that a training diary speaks to. */
import { idOf, type MechanismId } from '../ids';

export const REPEATED_LOAD = idOf<MechanismId>('repeated-load');
