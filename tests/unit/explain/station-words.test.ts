/** The table of stations in words: the same numbers by the same rule, none of a size where none may be told, no megapascal at all. */
import { expect, test } from 'vitest';
import { factsOf } from '../../../src/cases';
import { type Explanation, explain, type Finding } from '../../../src/explain';
import type { ActivityId } from '../../../src/ids';
import { signMayBeTold } from '../../../src/mechanics';
import { cellBand, columnsFor, STATION_COLUMNS } from '../../../src/pages/how/strips';
import { plainText, wordFinding } from '../../../src/wording';
import { content, demoOnDefaultFoot, findingNamed, foot } from '../../tools/explained';

const BANDS_MS = 120_000;
const facts = factsOf(demoOnDefaultFoot('handball-zone-2'));
const told = (
  activity: string,
): { of: Explanation; finding: Finding; said: (reader: 'study' | 'broadcast') => string } => {
  const of = explain(content, facts, { activity: activity as ActivityId }, foot, { bands: 'ratio' });
  const finding = findingNamed(of, 'how.loadStation');
  if (finding === undefined) throw new Error('the stations are not told');
  return { of, finding, said: (reader) => plainText(wordFinding(content, of, finding, reader)) };
};

test(
  'standing: forces have sizes, each with its band, and stress is a share of the most',
  () => {
    const { of, finding, said } = told('standing');
    expect(of.loads).toMatchObject({ forcesRank: false, ranksOnly: true });
    if (finding.message.id !== 'loadStation') throw new Error(finding.message.id);
    const { numbers, open, all } = finding.message.args;
    expect(numbers.map((one) => one.of)).toEqual(STATION_COLUMNS.map(({ key }) => key));
    // Where the most is told as a share of itself: once, whatever the draw.
    expect(numbers.find((one) => one.of === 'tension')?.value.value).toBe(1);
    const bands = of.loads?.bands?.stations ?? [];
    const read = of.stations?.stations ?? [];
    const cells = bands.flatMap((band, i) =>
      columnsFor(of.loads?.forcesRank ?? true)
        .filter(({ insideOnly }) => !insideOnly || !read[i]?.outsideBeamTheory)
        .map((column) => cellBand(column, band, of.loads?.ranksOnly ?? false)),
    );
    expect([cells.length, cells.filter((cell) => cell?.open).length]).toEqual([all, open]);
    expect(open).toBeGreaterThan(0);
    expect(said('study')).toMatch(/N -?[\d.]+ N \(.*M up and down -?\d+ N mm \(/);
    expect(said('study')).toContain('in the task itself');
    expect(said('study')).toContain(`Of the ${all} numbers`);
    for (const reader of ['study', 'broadcast'] as const) expect(said(reader)).not.toMatch(/MPa/);
  },
  BANDS_MS,
);

test(
  'a cut has no newtons in words as it has none in the table; what too few draws agree on is not told',
  () => {
    const { of, finding, said } = told('side-step-cut');
    expect(of.loads?.forcesRank).toBe(true);
    if (finding.message.id !== 'loadStation') throw new Error(finding.message.id);
    expect(finding.message.args.numbers.map((one) => one.of)).toEqual(['tension', 'compression']);
    expect(said('study')).not.toMatch(/\d N\b|N m/);
    const made = { ...finding, message: { ...finding.message, args: { ...finding.message.args } } };
    const [pull] = finding.message.args.numbers;
    if (pull === undefined) throw new Error('no pull');
    made.message.args = {
      ...made.message.args,
      numbers: [{ ...pull, agreed: { share: { value: 0.5, unit: 'share' }, enough: false } }],
    };
    expect(plainText(wordFinding(content, of, made, 'study'))).toContain('which way the model cannot tell');
    expect(signMayBeTold({ share: pull.agreed.share.value })).toBe(pull.agreed.enough);
  },
  BANDS_MS,
);
