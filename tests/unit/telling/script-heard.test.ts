/** A script tells what was heard since, as reported where it is, and nothing twice. */
import { describe, expect, it } from 'vitest';
import { type InjuryId, idOf, type Level, type OptionId } from '../../../src/ids';
import { SCRIPT_SECONDS, scriptOf } from '../../../src/telling';
import type { IsoDate } from '../../../src/units';
import { caseOf, content, DEMOS, demoOnDefaultFoot, explained, REPORTED, type Stated } from '../../tools/explained';

const hurt = (id: string): Stated => ['injury', idOf<InjuryId>(id)];
const treated = (id: string): Stated => ['treatment', { option: idOf<OptionId>(id), on: '2026-09-18' as IsoDate }];
const follow = (finding: 'training' | 'broken again' | 'tender'): Stated => [
  'followUp',
  { finding, on: '2026-10-30' as IsoDate },
  REPORTED,
];
const WEEKS: Stated = ['timetable', { weeks: 8, endpoint: 'sport' }, REPORTED];
const sport: Stated = ['level', 'recreational' as Level];
const linesOf = (stated: readonly Stated[], seconds: (typeof SCRIPT_SECONDS)[number]) =>
  scriptOf(content, explained(caseOf(...stated)), { seconds });

describe.each([
  ['mt5-metaphyseal', 'screw', 'training', /training has begun again/],
  ['mt5-spiral-shaft', 'boot', 'training', /training has begun again/],
  ['lisfranc', 'cast-nwb', 'tender', /still hurts when pressed/],
  ['mt5-metaphyseal', 'screw', 'broken again', /broke again/],
] as const)('%s with %s and %s', (injury, option, finding, told) => {
  const script = linesOf([hurt(injury), treated(option), sport, follow(finding), WEEKS], 90);

  it('says in 90 seconds what was reported since and the weeks that somebody named, as reported', () => {
    for (const heard of [told, /8 weeks until sport/]) {
      const lines = script.lines.filter(({ text, kind }) => kind === 'finding' && heard.test(text));
      expect(lines.length, String(heard)).toBe(1);
      for (const { stamp, text } of lines) {
        expect(stamp).toBe('reported');
        expect(text).toMatch(/reported by .*not confirmed/);
      }
    }
  });
});

describe('how it happened, where nobody stated it', () => {
  it.each(SCRIPT_SECONDS)('is said once in %d seconds, and stands once in the list of what is not known', (seconds) => {
    const script = linesOf([hurt('mt5-spiral-shaft'), treated('boot'), sport], seconds);
    expect(script.lines.filter(({ text }) => /happened/.test(text)).length).toBe(1);
    const listed = script.unknowns.filter(({ text }) => text === 'Nobody has stated how it happened.');
    expect(listed).toEqual([expect.objectContaining({ spoken: true })]);
  });
});

it('that the own treatment has no weeks is spoken once', () => {
  const { lines } = linesOf([hurt('mt5-spiral-shaft'), treated('boot'), sport], 180);
  expect(lines.filter(({ text }) => /no weeks were counted|no study we could use/.test(text)).length).toBe(1);
});

it.each(DEMOS)('%s: no line, and no sentence of one, comes twice', (name) => {
  const explanation = explained(demoOnDefaultFoot(name));
  for (const seconds of SCRIPT_SECONDS) {
    const texts = scriptOf(content, explanation, { seconds }).lines.map(({ text }) => text);
    expect(new Set(texts).size).toBe(texts.length);
  }
});
