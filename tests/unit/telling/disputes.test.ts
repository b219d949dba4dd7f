/** Where reports disagree on what the injury is, listeners hear it, and no telling names one side as if it were agreed. */
import { describe, expect, it } from 'vitest';
import { type InjuryId, idOf, type OptionId, QUESTION_IDS, type RegionId } from '../../../src/ids';
import { handoutOf, RATE, scriptOf, stillOf } from '../../../src/telling';
import { CONFIRMED, caseOf, content, explained, REPORTED, type Stated } from '../../tools/explained';

const ZONE_2: Stated = ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED];
const SIDES: readonly Stated[] = [
  ['side', 'right', CONFIRMED],
  ['side', 'left', REPORTED],
];
const MOVED: readonly Stated[] = [
  ['displacement', { displaced: true }, CONFIRMED],
  ['displacement', { displaced: false }, REPORTED],
];
const place = (region: string): Stated => ['place', { by: 'region', region: idOf<RegionId>(region) }, REPORTED];

const spokenIn = (seconds: 30 | 90 | 180, wordsPerMinute: number, ...stated: readonly Stated[]): readonly string[] =>
  scriptOf(content, explained(caseOf(...stated)), { seconds, wordsPerMinute }).lines.map(({ text }) => text);

describe.each([90, 180] as const)('a script of %i seconds', (seconds) => {
  const EVERY = content.injuries.flatMap(({ id, options }) =>
    [null, ...options].map((option) => [id, option ?? 'no treatment'] as const),
  );

  it.each(EVERY)('of %s with %s says that side and displacement are disputed, at any rate', (injury, option) => {
    const treated: readonly Stated[] =
      option === 'no treatment' ? [] : [['treatment', { option: idOf<OptionId>(option) }]];
    for (const rate of [RATE.slowest, RATE.usual, RATE.fastest]) {
      const spoken = spokenIn(
        seconds,
        rate,
        ['injury', idOf<InjuryId>(injury), CONFIRMED],
        ...SIDES,
        ...MOVED,
        ...treated,
      );
      for (const what of [
        /^Reports disagree on the side: .*right.*left/,
        /^Reports disagree on whether .* moved apart: /,
      ])
        expect(
          spoken.filter((text) => what.test(text)),
          String(what),
        ).toHaveLength(1);
    }
  });

  it.each<[string, readonly Stated[], RegExp]>([
    [
      'the bone',
      [
        ['bone', 'metatarsal5', REPORTED],
        ['bone', 'navicular', REPORTED],
      ],
      /^Reports disagree on .*bone/,
    ],
    ['the place', [place('mt5-zone-2'), place('mt5-zone-3')], /^Reports disagree on /],
    ['bone and class', [ZONE_2, ['bone', 'metatarsal2', CONFIRMED]], /^What is stated does not fit together/],
  ])('says that %s is disputed', (_what, stated, told) => {
    for (const rate of [RATE.slowest, RATE.usual, RATE.fastest])
      expect(spokenIn(seconds, rate, ...stated).filter((text) => told.test(text)).length).toBeGreaterThan(0);
  });
});

describe('the line of the side', () => {
  const linesOf = (...stated: readonly Stated[]): readonly string[] => {
    const explanation = explained(caseOf(ZONE_2, ...stated));
    return [
      scriptOf(content, explanation, { seconds: 90 }).sideLine,
      handoutOf(content, explanation).sideLine,
      ...QUESTION_IDS.map((question) => stillOf(content, explanation, question).sideLine),
    ];
  };

  it('says that reports disagree, also where the drawn one is confirmed', () => {
    for (const line of linesOf(...SIDES))
      expect(line).toBe('Reports disagree on the side: drawn as a right foot (confirmed)');
    for (const line of linesOf(['side', 'left', CONFIRMED], ['side', 'right', REPORTED]))
      expect(line).toBe('Reports disagree on the side: drawn as a left foot (confirmed)');
  });

  it('names the side alone where nobody disagrees', () => {
    for (const line of linesOf(['side', 'left', CONFIRMED])) expect(line).toBe('Left foot (confirmed)');
  });
});
