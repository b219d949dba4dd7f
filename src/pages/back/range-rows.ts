/** The published ranges of question 5 as rows of a drawing and of a list: one endpoint each, never mixed. */
import type { Content } from '../../content/schema';
import type { ArmFigures } from '../../explain/messages';
import type { Explanation } from '../../explain/types';
import type { Endpoint, InjuryId, OptionId, Reader } from '../../ids';
import type { Quantity } from '../../units';
import { type FindingOf, findingsOf, isToldTo } from '../findings';

export interface RangeRow {
  readonly key: string;
  readonly injury: InjuryId;
  readonly option: OptionId;
  /** Whether the option has to be named: rows of several options stand together. */
  readonly byOption: boolean;
  readonly endpoint: Endpoint;
  readonly weeks: Quantity;
  readonly people: Quantity | null;
  readonly arms: readonly ArmFigures[];
}

const told = <K extends 'backRange' | 'backDepends' | 'backClassNotStated' | 'backClasses'>(
  explanation: Explanation | null,
  reader: Reader,
  id: K,
): readonly FindingOf<K>[] => findingsOf(explanation, id).filter(isToldTo(reader));

/** As told to this reader: weeks kept from a patient are no rows either. */
export const rangeRows = (explanation: Explanation | null, reader: Reader): readonly RangeRow[] => [
  ...told(explanation, reader, 'backRange').map(({ id, message: { args } }) => ({ key: id, byOption: false, ...args })),
  ...(['backDepends', 'backClassNotStated'] as const).flatMap((message) =>
    told(explanation, reader, message).flatMap(({ id, message: { args } }) =>
      args.ranges.map((range) => ({
        key: `${id} ${range.option}`,
        injury: args.injury,
        byOption: true,
        endpoint: args.endpoint,
        ...range,
      })),
    ),
  ),
  ...told(explanation, reader, 'backClasses').flatMap(({ id, message: { args } }) =>
    args.classes.flatMap(({ index, ranges }) =>
      ranges.map((range) => ({
        key: `${id} ${index} ${range.option}`,
        injury: args.injury,
        byOption: true,
        endpoint: args.endpoint,
        ...range,
      })),
    ),
  ),
];

/**
 * The classes in which the people of a row were counted, by their names; `not stated` where other studies of the injury count by class
 * and those of the row do not say. Null where none counts by class.
 */
export const classesOfRow = (
  { studies, injuries }: Pick<Content, 'studies' | 'injuries'>,
  { injury, arms }: Pick<RangeRow, 'injury' | 'arms'>,
): readonly string[] | 'not stated' | null => {
  const byClass = studies.some((s) => s.injuries.includes(injury) && s.classes !== undefined && s.time !== null);
  if (!byClass) return null;
  const own = arms.map(({ study }) => studies.find(({ id }) => id === study)?.classes ?? []);
  if (own.some((classes) => classes.length === 0)) return 'not stated';
  const named = new Set(own.flat());
  const record = injuries.find(({ id }) => id === injury);
  return (record?.classification ?? []).flatMap(({ id, term }) => (named.has(id) ? [term] : []));
};

/** Rows that go class by class, or say that they do not: the caption tells what that means. */
export const goByClass = (
  content: Pick<Content, 'studies' | 'injuries'>,
  rows: readonly Pick<RangeRow, 'injury' | 'arms'>[],
): boolean => rows.some((row) => classesOfRow(content, row) !== null);

export const spanOf = ({ value, lowHigh }: Quantity): readonly [number, number] => lowHigh ?? [value, value];
