/** The rows of question 5's drawing: of whom they tell where studies count class by class, as the words do. */
import { describe, expect, it } from 'vitest';
import type { Explanation } from '../../../../src/explain/types';
import { type InjuryId, idOf, type OptionId } from '../../../../src/ids';
import { classesOfRow, goByClass, rangeRows } from '../../../../src/pages/back/range-rows';
import { plainText, wordFinding } from '../../../../src/wording';
import { caseOf, content, explained } from '../../../tools/explained';

const rowsOf = (explanation: Explanation) =>
  rangeRows(explanation, 'study').map((row) => ({ ...row, counted: classesOfRow(content, row) }));
const gap = (value: number) => ['measure', { what: 'diastasis', value }] as const;
const joint = ['injury', idOf<InjuryId>('lisfranc')] as const;
const I = 'stage I, no gap';
const II = 'stage II, gap of 1 to 5 mm';

describe('rows of studies that count class by class', () => {
  it('without a class there is a row for each class that was counted, and rows whose class nobody stated', () => {
    const rows = rowsOf(explained(caseOf(joint)));
    expect(rows.flatMap(({ counted }) => (Array.isArray(counted) ? [counted] : []))).toEqual([[I], [II]]);
    expect(rows.filter(({ counted }) => counted === 'not stated').length).toBeGreaterThan(1);
    expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
    for (const { byOption } of rows) expect(byOption).toBe(true);
  });

  it('with a class the row of another class is not there', () => {
    const counted = (mm: number) =>
      rowsOf(explained(caseOf(joint, gap(mm)))).flatMap((row) => (Array.isArray(row.counted) ? row.counted : []));
    expect(counted(0.5)).toEqual([I]);
    expect(counted(3)).toEqual([II]);
    expect(counted(6)).toEqual([]);
  });

  it('with a treatment whose people were not told apart the row says so', () => {
    const rows = rowsOf(explained(caseOf(joint, gap(3), ['treatment', { option: idOf<OptionId>('joint-fixation') }])));
    expect(rows.map(({ counted }) => counted)).toContain('not stated');
  });

  it('the weeks of each row stand in the words too', () => {
    const explanation = explained(caseOf(joint));
    const words = explanation.questions
      .flatMap(({ findings }) => findings)
      .filter(({ message: { id } }) => ['backClasses', 'backClassNotStated'].includes(id))
      .map((finding) => plainText(wordFinding(content, explanation, finding, 'study')))
      .join(' ');
    for (const { weeks } of rowsOf(explanation)) expect(words).toContain(String(weeks.lowHigh?.[0] ?? weeks.value));
    for (const name of [I, II]) expect(words.toLowerCase()).toContain(name.toLowerCase());
  });
});

it('where no study of the injury counts by class, no row speaks of one', () => {
  const rows = rowsOf(explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')])));
  expect(rows.length).toBeGreaterThan(1);
  for (const { counted } of rows) expect(counted).toBeNull();
});

it('the caption speaks of classes where rows go by class, and nowhere else', () => {
  const byClass = (id: string) =>
    goByClass(content, rangeRows(explained(caseOf(['injury', idOf<InjuryId>(id)])), 'study'));
  expect(byClass('lisfranc')).toBe(true);
  expect(byClass('mt5-metaphyseal')).toBe(false);
});
