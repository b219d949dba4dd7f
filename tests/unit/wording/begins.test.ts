/** Lengths along a bone are told from the end where they begin: no tip of a bone that has none, no proximal end of one that lies across. */
import { describe, expect, it } from 'vitest';
import { type BoneId, QUESTION_IDS, READERS } from '../../../src/ids';
import { findingsFor, plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained } from '../../tools/explained';

const told = (explanation: ReturnType<typeof explained>): string =>
  READERS.flatMap((reader) =>
    QUESTION_IDS.flatMap((question) =>
      findingsFor(explanation, question, reader).map((f) => plainText(wordFinding(content, explanation, f, reader))),
    ),
  ).join('\n');

const END: Partial<Record<BoneId, RegExp>> = {
  navicular: /from the medial end/,
  calcaneus: /from the posterior end/,
  metatarsal2: /from the proximal end/,
  metatarsal5: /from the proximal tip/,
};
const OTHER = /(proximal|back) tip|(proximal|medial|posterior|inner) end/g;

describe.each(content.injuries.map((record) => [record.id, record] as const))('%s', (id, { bone }) => {
  it('is measured from an end that its bone has, and from no other', () => {
    const said = told(explained(caseOf(['injury', id], ['place', { by: 'distance', mm: 12 }])));
    const own = END[bone];
    if (own === undefined) throw new Error(`no end of ${bone}`);
    expect(said).toMatch(own);
    const names = new Set(said.match(OTHER) ?? []);
    const allowed = {
      navicular: ['medial end', 'inner end'],
      calcaneus: ['posterior end'],
      metatarsal2: ['proximal end'],
      metatarsal5: ['proximal tip', 'back tip'],
    } as const;
    const fine: readonly string[] = allowed[bone as keyof typeof allowed];
    for (const name of names) expect(fine, name).toContain(name);
  });
});
