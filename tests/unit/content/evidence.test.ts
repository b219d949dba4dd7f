/** Rates, studies and contradictions: each figure once, none worked out by hand, and every side of a dispute with its evidence. */
import { describe, expect, it, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import type { Content } from '../../../src/content';

const content = readContent();

interface Figure {
  readonly where: string;
  /** Source, what, and so many of so many. */
  readonly key: string;
  /** Arms of one trial may count the same by chance: their treatment tells them apart. Null: a rate, which may be no arm at all. */
  readonly arm: string | null;
}

const keyOf = (source: string, what: string, count: number | null, of: number | null, percent: number | null): string =>
  [source, what, count !== null && of !== null ? `${count}/${of}` : `${percent} %`].join(' ');

const figuresIn = ({
  studies,
  rates,
  troubles,
}: Pick<Content, 'studies' | 'rates' | 'troubles'>): readonly Figure[] => [
  ...studies.flatMap((s) =>
    (s.event === null ? s.events : [s.event, ...s.events]).map((e) => ({
      where: `studies ${s.id}`,
      key: keyOf(s.source, e.what, e.count, e.of, e.percent),
      arm: s.option,
    })),
  ),
  ...rates.map((r) => ({
    where: `rates ${r.id}`,
    key: keyOf(r.source, troubles.find(({ id }) => id === r.trouble)?.events[0] ?? r.trouble, r.count, r.of, r.percent),
    arm: null,
  })),
];

const twice = (figures: readonly Figure[]): readonly string[] =>
  figures
    .filter(({ key, arm }, i) =>
      figures.slice(0, i).some((f) => f.key === key && (f.arm === null || arm === null || f.arm === arm)),
    )
    .map(({ where, key }) => `${where}: ${key}`);

describe('no fact is written twice', () => {
  it('no figure of one source stands in two records', () => {
    expect(twice(figuresIn(content))).toEqual([]);
  });

  it('and one that did would be found, also across the two files', () => {
    const [study] = content.studies.filter(({ event }) => event?.what === 'nonunion' && event.count !== null);
    const [rate] = content.rates;
    if (study?.event == null || rate === undefined) throw new Error('nothing to copy');
    const { count, of } = study.event;
    const copied = { ...rate, trouble: 'nonunion' as typeof rate.trouble, source: study.source, count, of };
    const rates = [{ ...copied, type: 'any' }];
    const none: readonly Content['rates'][number][] = [];
    expect(twice(figuresIn({ ...content, studies: [study], rates }))).toHaveLength(1);
    expect(twice(figuresIn({ ...content, studies: [study, study], rates: none })).length).toBeGreaterThan(0);
  });

  it('a side that points at a record of a study or a rate writes no figure of its own', () => {
    const pointing = content.contradictions.flatMap(({ id, sides }) =>
      sides.filter((s) => s.studies.length + s.rates.length > 0).map(({ says }) => ({ id, says })),
    );
    expect(pointing.length).toBeGreaterThan(20);
    // Zones and types are names, and the number of studies or teams says who was counted.
    const figures = pointing.filter(({ says }) => /\d/.test(says.replaceAll(/zone \d|\d+ (studies|teams)/g, '')));
    expect(figures).toEqual([]);
  });
});

test('an interval of a count is worked out when it is shown, never typed in', () => {
  for (const { id, count, lowHighPercent } of content.rates) if (count !== null) expect(lowHighPercent, id).toBeNull();
});

test('what was read second-hand is never marked seen', () => {
  for (const r of content.rates) if (r.read === 'secondary') expect(r.mark, r.id).not.toBe('seen');
});

describe.each(content.contradictions.map((c) => [c.id, c] as const))('contradiction %s', (_, { sides, weDo }) => {
  it('has sides that say different things, and says what is done about it', () => {
    expect(new Set(sides.map(({ says, studies }) => `${says} ${studies}`)).size).toBe(sides.length);
    for (const { evidence } of sides) expect(evidence.source).not.toBeNull();
    for (const text of Object.values(weDo)) expect(text).toMatch(/[.]$/);
  });
});

test('a trouble that is told with every injury is told of at least one by a count', () => {
  for (const { id, events, always } of content.troubles) {
    const arms = content.studies.filter((s) =>
      [s.event, ...s.events].some((e) => e !== null && events.includes(e.what)),
    );
    expect(arms.length + content.rates.filter((r) => r.trouble === id).length, id).toBeGreaterThan(0);
    if (always === 'breaks') expect(arms.length, id).toBeGreaterThan(0);
  }
});
