/** The published ranges of question 5 as rows of a drawing and of a list: one endpoint each, never mixed. */
import type { ArmFigures } from '../../explain/messages';
import type { Explanation } from '../../explain/types';
import type { Endpoint, OptionId } from '../../ids';
import type { Quantity } from '../../units';
import { findingsOf } from '../findings';

export interface RangeRow {
  readonly key: string;
  readonly option: OptionId;
  /** Whether the option has to be named: rows of several options stand together. */
  readonly byOption: boolean;
  readonly endpoint: Endpoint;
  readonly weeks: Quantity;
  readonly people: Quantity | null;
  readonly arms: readonly ArmFigures[];
}

export const rangeRows = (explanation: Explanation | null): readonly RangeRow[] => [
  ...findingsOf(explanation, 'backRange').map(({ id, message: { args } }) => ({ key: id, byOption: false, ...args })),
  ...findingsOf(explanation, 'backDepends').flatMap(({ id, message: { args } }) =>
    args.ranges.map((range) => ({ key: `${id} ${range.option}`, byOption: true, endpoint: args.endpoint, ...range })),
  ),
];

export const spanOf = ({ value, lowHigh }: Quantity): readonly [number, number] => lowHigh ?? [value, value];
