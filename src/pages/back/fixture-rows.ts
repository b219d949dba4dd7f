/** The days of a case against its start and its forecast, as the table shows them. */
import type { Fixture } from '../../cases';
import { type Forecast, fixturesAhead, type Missed, weeksBetween } from '../../recovery';
import type { IsoDate } from '../../units';

export interface FixtureRow {
  /** Its own among the rows, also where a case has the same day and name twice. */
  readonly key: string;
  readonly fixture: Fixture;
  /** Parts of weeks too; null while no start is known. Below 0: before the start. */
  readonly week: number | null;
  readonly chance: number | null;
}

export interface FixtureTable {
  readonly rows: readonly FixtureRow[];
  /** Of those from the start on. */
  readonly missed: Missed | null;
}

export const fixtureTable = (
  fixtures: readonly Fixture[],
  start: IsoDate | null,
  forecast: Forecast | null,
): FixtureTable => {
  const seen = new Map<string, number>();
  const keyOf = ({ on, name }: Fixture): string => {
    const key = `${on} ${name}`;
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return times === 1 ? key : `${key} ${times}`;
  };
  const dated = fixtures.map((fixture) => ({
    key: keyOf(fixture),
    fixture,
    week: start === null ? null : weeksBetween(start, fixture.on),
  }));
  const ahead = dated.flatMap(({ week }) => (week === null || week < 0 ? [] : [week]));
  const told = forecast === null ? null : fixturesAhead(forecast, ahead);
  let next = 0;
  const rows = dated.map((row) => ({
    ...row,
    chance: row.week === null || row.week < 0 || told === null ? null : (told.chances[next++] ?? null),
  }));
  return { rows, missed: told?.missed ?? null };
};
