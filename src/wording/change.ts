/** A ratio near one told as a change: more, less, hardly any, or that the model cannot tell. */
import type { Agreed } from '../explain/load-messages';
import type { Quantity } from '../units';
import { PARTS } from './en/messages';
import { fill, type Value } from './fill';
import { type Pen, quantity } from './pen';

/** A band within this of no change is called one that hardly changes anything. */
const HARDLY = 0.05;
const percent = (share: number): string => String(Math.round(100 * share));
const signed = (share: number): string => `${share < 0 ? '−' : '+'}${percent(Math.abs(share))}`;

export interface Change {
  readonly key: 'hardly' | 'raises' | 'lowers' | 'cannotTell';
  readonly values: Readonly<Record<'percent' | 'band' | 'share', Value>>;
}

/** What is said of a change: the same in the sentence and beside its interval. */
export const contributorSays = ({
  ratio,
  raises,
  agreed,
  byTask = false,
}: {
  readonly ratio: Quantity;
  readonly raises: boolean;
  readonly agreed: Agreed;
  readonly byTask?: boolean;
}): Change['key'] => {
  if (byTask) return 'cannotTell';
  const [low, high] = ratio.lowHigh ?? [ratio.value, ratio.value];
  if (Math.max(Math.abs(low - 1), Math.abs(high - 1)) < HARDLY) return 'hardly';
  return agreed.enough ? (raises ? 'raises' : 'lowers') : 'cannotTell';
};

export const changeOf = (pen: Pen, ratio: Quantity, raises: boolean, agreed: Agreed): Change => {
  const [low, high] = ratio.lowHigh ?? [ratio.value, ratio.value];
  return {
    key: contributorSays({ ratio, raises, agreed }),
    values: {
      percent: pen.number(`${percent(Math.abs(ratio.value - 1))} %`),
      band: fill(PARTS.changeBand, { low: signed(low - 1), high: signed(high - 1) }),
      share: quantity(pen, agreed.share),
    },
  };
};
