/** What would change a case at its next review: there for every treatment, with the criteria of the stage and what could be found. */
import { describe, expect, it } from 'vitest';
import { type CaseFile, withMet, withStage } from '../../../src/cases';
import { rerun } from '../../../src/explain';
import type { MessageOf } from '../../../src/explain/messages';
import { textAt } from '../../../src/explain/texts';
import { type CriterionId, type InjuryId, idOf, type OptionId, READERS, type StageId } from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingsOf, foot, type Stated } from '../../tools/explained';

const DAY = '2026-02-16' as IsoDate;
const START = '2026-01-05' as IsoDate;
const treated = (injury: string, option: string, ...more: readonly Stated[]): CaseFile =>
  caseOf(['injury', idOf<InjuryId>(injury)], ['treatment', { option: idOf<OptionId>(option), on: START }], ...more);
const reviewOf = (file: CaseFile) =>
  findingsOf(explained(file), 'back').filter(({ id }) => id.startsWith('back.review.'));
const stageIn = (file: CaseFile): MessageOf<'stageAtReview'>['args'] => {
  const found = reviewOf(file).flatMap(({ message }) => (message.id === 'stageAtReview' ? [message.args] : []));
  if (found[0] === undefined) throw new Error('no stage at the review');
  return found[0];
};
const texts = (list: MessageOf<'stageAtReview'>['args']['opens']) =>
  list.map((at) => textAt(content, at)?.tellings.patient);
const of = (id: string) => content.stages.find((stage) => stage.id === id);

const TREATED = content.injuries.flatMap(({ id, options }) => options.map((option) => [id, option] as const));

describe('the list of the next review', () => {
  it.each(TREATED)(
    'is there for %s and %s: a stage with what opens the next, and what a follow-up could find',
    (injury, option) => {
      const found = reviewOf(treated(injury, option));
      const ids = found.map(({ message }) => message.id);
      expect(ids.filter((id) => id === 'stageAtReview')).toHaveLength(1);
      const points = ids.filter((id) => id === 'reviewMove' || id === 'reviewPoints');
      expect(points.length).toBeGreaterThan(2);
      // With odds or without, never some of each.
      expect(new Set(points).size).toBe(1);
      expect(stageIn(treated(injury, option)).opens.length).toBeGreaterThan(0);
    },
  );

  it('is not there before a treatment, after the end, and while a break anew waits for one', () => {
    expect(reviewOf(caseOf(['injury', idOf<InjuryId>('mt5-tuberosity')]))).toEqual([]);
    for (const result of ['reached', 'given up'] as const)
      expect(
        reviewOf(
          treated(
            'mt5-tuberosity',
            'boot',
            ['outcome', { endpoint: 'clinical healing', result, on: DAY }],
            ['level', 'everyday'],
          ),
        ),
      ).toEqual([]);
    expect(reviewOf(treated('mt5-metaphyseal', 'screw', ['followUp', { finding: 'broken again', on: DAY }]))).toEqual(
      [],
    );
  });

  it('is there again for a second treatment, without odds: the studies are of first ones', () => {
    const again = treated(
      'mt5-metaphyseal',
      'screw',
      ['followUp', { finding: 'broken again', on: DAY }],
      ['treatment', { option: idOf<OptionId>('screw'), on: '2026-02-23' as IsoDate }],
    );
    expect(reviewOf(again).map(({ message }) => message.id)).toContain('reviewPoints');
  });

  it('has no number where no odds can be given', () => {
    const file = treated('mt5-tuberosity', 'boot');
    const explanation = explained(file);
    const points = reviewOf(file).filter(({ message }) => message.id === 'reviewPoints');
    for (const finding of points)
      for (const reader of READERS)
        expect(plainText(wordFinding(content, explanation, finding, reader))).not.toMatch(/\d/);
  });

  it('every one of it runs again to the stored message', () => {
    for (const [injury, option] of TREATED.slice(0, 4))
      for (const { basis, message } of JSON.parse(JSON.stringify(reviewOf(treated(injury, option)))))
        expect(rerun(basis, content, foot)).toEqual(message);
  });
});

describe('the stage that a review looks at', () => {
  const file = treated('mt5-metaphyseal', 'screw');
  const PROTECT = idOf<StageId>('protect');
  const tick = (to: CaseFile, stage: string, criterion: string) =>
    withMet(to, idOf<StageId>(stage), idOf<CriterionId>(criterion), DAY);

  it('is the one that the clinic says, with all its criteria and what sends back', () => {
    const said = stageIn(withStage(file, idOf<StageId>('run')));
    expect(said).toMatchObject({ stage: 'run', stated: true, next: 'sport-specific' });
    expect(texts(said.opens)).toEqual(of('run')?.opensNext.map(({ what }) => what.patient));
    expect(texts(said.sendsBack)).toEqual(of('run')?.sendsBack.map(({ what }) => what.patient));
  });

  it('not said, is the first with a criterion that is not ticked, whatever the calendar says, and that is told', () => {
    expect(stageIn(file)).toMatchObject({ stage: 'protect', stated: false, next: 'load-partly' });
    const done = tick(tick(file, 'protect', 'swelling-falls'), 'protect', 'wound-dry');
    expect(stageIn(done)).toMatchObject({ stage: 'load-partly', stated: false });
    const explanation = explained(file);
    const [finding] = reviewOf(file);
    expect(finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'patient'))).toMatch(
      /^Nobody said which step it is; the first that is open: let it settle\. What opens the next step \(put more weight on it\): The weeks that your clinic set are over/,
    );
  });

  it('leaves out what is ticked', () => {
    const half = stageIn(tick(withStage(file, PROTECT), 'protect', 'wound-dry'));
    expect(texts(half.opens)).toEqual(
      of('protect')
        ?.opensNext.filter(({ id }) => id !== 'wound-dry')
        .map(({ what }) => what.patient),
    );
  });

  it('the last one opens nothing, and can still send back', () => {
    const last = stageIn(withStage(file, idOf<StageId>('return')));
    expect(last).toMatchObject({ next: null, opens: [] });
    expect(last.sendsBack.length).toBeGreaterThan(0);
  });
});
