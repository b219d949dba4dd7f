/** Where people of a study were back at sport before running usually starts here, that is said beside it. */
import { expect, it } from 'vitest';
import { type InjuryId, idOf, type OptionId, type RegionId } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingsOf } from '../../tools/explained';

const told = (region: string, injury: string, option: string, id = 'backSooner'): readonly string[] => {
  const explanation = explained(
    caseOf(
      ['bone', 'metatarsal5'],
      ['place', { by: 'region', region: idOf<RegionId>(region) }],
      ['injury', idOf<InjuryId>(injury)],
      ['treatment', { option: idOf<OptionId>(option) }],
    ),
  );
  return findingsOf(explanation, 'back')
    .filter((f) => f.message.id === id)
    .map((f) => plainText(wordFinding(content, explanation, f, 'patient')));
};

it('zone 3 after a screw: match play after 3.6 weeks in college athletes, running from week 12 on', () => {
  // 3.6 weeks: Watson 2020, as content/studies.yaml has it; week 12: the stages of the injury after a screw.
  expect(told('mt5-zone-3', 'mt5-proximal-shaft', 'screw')).toContainEqual(
    expect.stringMatching(
      /^Their usual time was 3\.6 to [\d.]+ weeks\. In your plan running usually starts in week \d+, and sport/,
    ),
  );
});

it('zone 3 in a cast: 12 weeks to sport end with the step before whole weight, and running has no week', () => {
  expect(told('mt5-zone-3', 'mt5-proximal-shaft', 'cast-nwb')).toEqual([
    'Their usual time was about 12 weeks. In your plan “put more weight on it” usually lasts until week 12. Sport comes after that.',
  ]);
});

it('says nothing where no study counted to sport', () => {
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'cast-walking')).toEqual([]);
});

it('what went wrong stands beside the time of the very people', () => {
  // Mologne et al. 2005, people in a cast, as content/studies.yaml has it: 8 of 18 did not heal as planned.
  expect(told('mt5-zone-2', 'mt5-metaphyseal', 'cast-nwb', 'backHarm')).toContainEqual(
    'Of the people whose time until sport began again is told here, 8 of 18 did not heal as planned (Mologne et al. 2005).',
  );
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'boot', 'backHarm')).toEqual([]);
});

it('weeks that count to something before sport say that none count to sport', () => {
  // Zone 1 in a boot was counted until walking and pressing no longer hurt, and its days off work stand in daily life; zone 2 after
  // a screw was counted until sport.
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'boot', 'backNotCounted')).toEqual([
    'Until sport no study here counted the weeks with this treatment.',
  ]);
  expect(told('mt5-zone-2', 'mt5-metaphyseal', 'screw', 'backNotCounted')).toEqual([
    'Until work no study here counted the weeks with this treatment.',
  ]);
});

it('a patient is told when running begins, by the weeks that come too early or by itself, never by both', () => {
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'boot', 'backRunning')).toEqual([
    'In your plan running usually starts in week 12, once the signs of the steps before it are there.',
  ]);
  expect(told('mt5-shaft', 'mt5-spiral-shaft', 'boot', 'backRunning')).toEqual([
    'For running no week is usual: the signs of the steps decide.',
  ]);
  expect(told('mt5-zone-2', 'mt5-metaphyseal', 'screw', 'backRunning')).toEqual([]);
});
