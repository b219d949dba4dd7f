/**
 * What study rows count of what, against the print. Written from the abstracts, apart from content/studies.yaml. Where the print
 * gives a percentage only, the one count that fits it is worked out here.
 */
import { expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { studyOf } from '../../../src/content';
import { against } from '../../tools/against';

/** The only whole number of `of` people that rounds to the printed percentage; fails when several or none do. */
const only = (percent: number, of: number, decimals: number): number => {
  const scale = 10 ** decimals;
  const fits = Array.from({ length: of + 1 }, (_, k) => k).filter(
    (k) => Math.round((k / of) * 100 * scale) === Math.round(percent * scale),
  );
  expect(fits).toHaveLength(1);
  return fits[0] ?? Number.NaN;
};

/** As printed, "what count/of", the one told first first. */
const PRINTED: Readonly<Record<string, readonly string[]>> = {
  'torg-1984-nwb': ['union 14/15'],
  'torg-1984-weight': ['union 4/10'],
  'torg-1984-delayed': ['union 7/10'],
  'mologne-2005-cast-sport': ['failure 8/18', 'nonunion 5/18', 'delayed union 1/18', 'refracture 2/18'],
  'mologne-2005-screw-sport': ['failure 1/19'],
  'kadiyala-2024-no-surgery': [`nonunion ${only(6.1, 475, 1)}/475`],
  'marecek-2016': ['union 24/27'],
  'boot-news-boot': ['nonunion 3/47'],
  'boot-news-cast': ['nonunion 3/8'],
  'looney-2020': ['nonunion 0/41', `delayed union ${only(20, 20, 0) + only(24, 21, 0)}/41`],
  'porter-2005': ['refracture 0/24', 'returned 23/23'],
  'raikin-2008': ['union 21/21', 'returned 21/21', 'refracture 0/21'],
  'larson-2002': ['failure 6/15', 'refracture 4/15', 'nonunion 2/15'],
  'tsukada-2012-sport': ['returned 15/15', 'delayed union 0/15', 'refracture 0/15'],
  'bucknam-union': ['failure 0/32', 'union 32/32'],
  'low-2004-surgery': ['nonunion 3/46'],
  'low-2004-no-surgery': ['nonunion 8/40'],
  'low-2004-league': ['union 16/17'],
  'clapper-1995-cast': ['failure 7/25'],
  'chee-kidd-2009': ['delayed union 1/25'],
  'keenan-jones': ['refracture 6/117'],
  'closed-screw-nonunions': ['union 14/14'],
  'hunt-anderson': ['returned 21/21', 'refracture 1/21'],
  'watson-2020': ['refracture 1/26'],
  'ekstrand-2013-surgery': ['refracture 7/28'],
  'ekstrand-2013-no-surgery': ['refracture 5/9'],
  'stone-2021-play': ['returned 20/21', 'refracture 4/18'],
  'lareau-2016': ['returned 25/25'],
  'omalley-2016-union': ['refracture 3/10'],
  'begly-2015': ['returned 22/26', 'refracture 5/26'],
  'mexico-2022': ['union 22/22', 'returned 21/22'],
  'pecina-2011': [`returned ${12 + 7 + 1}/20`, `refracture ${only(5, 20, 0)}/20`, `union ${only(95, 20, 0)}/20`],
  'delee-1983-union': ['union 10/10'],
  'delee-1983-sport': ['returned 10/10', 'refracture 0/10'],
  'headless-37-union': ['failure 0/37'],
  'headless-37-sport': ['returned 37/37'],
  'omalley-1996-performance': ['returned 35/35', 'delayed union 1/35', 'refracture 1/35'],
  'aynardi-2013': ['nonunion 3/142', 'delayed union 2/142'],
  'omalley-1996-mt2-rest': ['refracture 8/64'],
  'swords-2018-work': ['returned 23/27'],
  'robertson-2019-stage-1': [`returned ${only(100, 35, 0)}/35`],
  'robertson-2019-stage-2': [`returned ${only(100, 16, 0)}/16`],
};

const content = readContent();
const countsOf = (row: ReturnType<typeof studyOf>): string[] =>
  [...(row.event ? [row.event] : []), ...row.events].flatMap((e) =>
    e.count === null || e.of === null ? [] : [`${e.what} ${e.count}/${e.of}`],
  );

test('every row that counts has a line here', () => {
  const counting = content.studies.filter((s) => countsOf(s).length > 0).map((s) => s.id);
  expect(Object.keys(PRINTED).toSorted()).toEqual(counting.toSorted());
});

for (const [id, counts] of Object.entries(PRINTED)) {
  const row = studyOf(content, id);
  const source = content.sources.find((s) => s.id === row.source);
  const how = row.read === 'secondary' ? 'second hand' : 'abstract';
  against({ source: source?.title ?? row.source, where: 'abstract', how }, `${id}: counts as printed`, () => ({
    expected: counts.join(', '),
    got: countsOf(row).join(', '),
  }));
}

test('printed percentages are those of the counts, to the place they are printed to', () => {
  const off = content.studies.flatMap((row) =>
    [...(row.event ? [row.event] : []), ...row.events].flatMap((e) => {
      if (e.count === null || !e.of || e.percent === null) return [];
      const half = Number.isInteger(e.percent) ? 0.5 : 0.05;
      return Math.abs((e.count / e.of) * 100 - e.percent) <= half + 1e-9 ? [] : [`${row.id}: ${e.what}`];
    }),
  );
  expect(off).toEqual([]);
});
