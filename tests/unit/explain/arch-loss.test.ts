/** Stages of the tarsometatarsal joints by gap and arch: their borders, and what is taken where nobody stated the arch. */
import { describe, expect, test } from 'vitest';
import { type InjuryId, idOf, READERS } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingsOf, REPORTED, type Stated } from '../../tools/explained';

const gap = (value: number): Stated => ['measure', { what: 'diastasis', value }];
const arch = (value: number): Stated => ['measure', { what: 'arch loss', value }];
const classed = (...stated: readonly Stated[]) => {
  const explanation = explained(caseOf(['injury', idOf<InjuryId>('lisfranc')], ...stated));
  const found = findingsOf(explanation, 'where').filter(({ message }) => message.id === 'computedClass');
  const record = content.injuries.find(({ id }) => id === 'lisfranc');
  return found.map((finding) => {
    if (finding.message.id !== 'computedClass') throw new Error('no class');
    const { index, onBorder, assumed } = finding.message.args;
    const told = READERS.map((reader) => plainText(wordFinding(content, explanation, finding, reader)));
    return { id: record?.classification[index]?.id, onBorder, assumed, told, finding };
  });
};
const ids = (...stated: readonly Stated[]) => classed(...stated).map(({ id }) => id);

describe('stages by gap and arch', () => {
  test.each([
    [0, 0, 'stage-1'],
    [0.9, 0.9, 'stage-1'],
    [1, 0, 'stage-2'],
    [4.9, 0.9, 'stage-2'],
    // Exactly 1 mm lower is lowered.
    [1, 1, 'stage-3-arch'],
    [4.9, 1, 'stage-3-arch'],
    // From 5 mm on the gap decides alone, whatever the arch.
    [5, 0, 'stage-3'],
    [5, 8, 'stage-3'],
  ])('gap %s mm, arch %s mm lower: %s', (wide, low, stage) => {
    expect(ids(gap(wide), arch(low))).toEqual([stage]);
  });

  test('a lowered arch without a gap, or without any word on the gap, fits none', () => {
    expect(ids(gap(0.9), arch(1))).toEqual([]);
    expect(ids(arch(3))).toEqual([]);
  });

  test('a value on the border of the arch is said to lie there', () => {
    expect(classed(gap(3), arch(1))).toMatchObject([{ onBorder: true, assumed: [] }]);
    expect(classed(gap(3), arch(1.1))).toMatchObject([{ onBorder: false }]);
  });
});

describe('where nobody stated the arch', () => {
  test.each([
    [0.5, 'stage-1'],
    [3, 'stage-2'],
  ])('gap %s mm: %s still comes out, and every reader is told what is taken', (wide, stage) => {
    const [found] = classed(gap(wide));
    expect(found).toMatchObject({ id: stage, assumed: ['arch loss'] });
    for (const text of found?.told ?? []) expect(text).toMatch(/arch.*(as none|none:|there is none)|as none.*arch/);
    expect(found?.finding.confidence.level).toBe('uncertain');
  });

  test('nothing is taken where it was stated, where the gap decides alone, or where two disagree on it', () => {
    expect(classed(gap(3), arch(0))).toMatchObject([{ id: 'stage-2', assumed: [] }]);
    expect(classed(gap(6))).toMatchObject([{ id: 'stage-3', assumed: [] }]);
    expect(ids(gap(3), arch(0), ['measure', { what: 'arch loss', value: 4 }, REPORTED])).toEqual([]);
  });

  test('the class names the claims it goes by, and no other', () => {
    expect(classed(gap(3))[0]?.finding.basis.claims).toHaveLength(1);
    expect(classed(gap(3), arch(2))[0]?.finding.basis.claims).toHaveLength(2);
  });
});
