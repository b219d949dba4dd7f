/** What the draws say of a statement that the told run makes: it, its contrary, or that nobody can tell. */
import { type Agreement, ENOUGH_AGREEMENT } from '../mechanics';
import type { Agreed } from './load-messages';

const share = (value: number): Agreed['share'] => ({ value: Math.round(value * 100) / 100, unit: 'share' });

/** Of a statement whose contrary is none: that the number lies near the told one. */
export const agreed = (of: number): Agreed => ({ share: share(of), enough: of >= ENOUGH_AGREEMENT });

export interface Stated {
  readonly holds: boolean;
  readonly agreed: Agreed;
}

/** Where enough draws say the contrary of the told run, that is what is stated: one run does not outweigh them. */
export const statedBy = ({ holds, share: of, against }: Agreement): Stated =>
  against >= ENOUGH_AGREEMENT
    ? { holds: !holds, agreed: { share: share(against), enough: true, contrary: true } }
    : { holds, agreed: agreed(of) };
