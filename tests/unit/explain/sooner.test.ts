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

it('zone 1 in a boot: sport after 7.6 weeks in the study, running from week 12 on', () => {
  // 7.6 weeks: the functional treatment study of 2017, as content/studies.yaml has it; week 12: the stages of the injury.
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'boot')).toEqual([
    'About 7.6 weeks until sport began again is sooner than running usually starts (week 12). Go by the signs of each step.',
  ]);
});

it('says nothing where no study counted to sport', () => {
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'cast-walking')).toEqual([]);
});

it('what went wrong stands beside the time of the very people: five of nine of those who came back early broke it again', () => {
  // Ekstrand & van Dijk 2013, players without surgery, as content/studies.yaml has it.
  expect(told('mt5-zone-2', 'mt5-metaphyseal', 'cast-nwb', 'backHarm')).toContainEqual(
    expect.stringMatching(/until the first match is told here, 5 of 9 broke again \(Ekstrand/),
  );
  expect(told('mt5-zone-1', 'mt5-tuberosity', 'boot', 'backHarm')).toEqual([]);
});
