/** How two feet differ, by the measures of films taken of both. What is told apart is what is printed, so that every sum is right. Pure. */
import type { Angle } from '../../anatomy/angles';
import { printed } from '../foot/norm-text';

export interface Difference {
  readonly id: Angle['id'];
  readonly unit: Angle['unit'];
  readonly view: Angle['view'];
  /** As printed: whole degrees and per cent, tenths of a millimetre. */
  readonly first: number;
  readonly second: number;
  /** Second less first. */
  readonly by: number;
}

/** Measures that both feet have, in their order. */
export const differencesOf = (first: readonly Angle[], second: readonly Angle[]): readonly Difference[] =>
  first.flatMap(({ id, unit, view, value }) => {
    const other = second.find((angle) => angle.id === id);
    if (other === undefined) return [];
    const [a, b] = [printed(value, unit), printed(other.value, unit)];
    // Tenths less tenths are tenths, whatever binary fractions make of them.
    return [{ id, unit, view, first: a, second: b, by: Math.round(10 * (b - a)) / 10 }];
  });

export const unequal = (all: readonly Difference[]): readonly Difference[] => all.filter(({ by }) => by !== 0);

/** The angles that differ most, the largest first: millimetres cannot be weighed against degrees. */
export const mostChanged = (all: readonly Difference[], most: number): readonly Difference[] =>
  unequal(all)
    .filter(({ unit }) => unit === 'deg')
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by))
    .slice(0, most);
