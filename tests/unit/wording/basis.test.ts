/** "How do you know?" of every finding of every demo: study, people, number, how it was read, mark, confidence and its reason. */
import { describe, expect, it } from 'vitest';
import { MARKS } from '../../../src/content';
import { confidenceWord, wordBasis } from '../../../src/wording';
import { REASON_WORDS } from '../../../src/wording/en/lists';
import { content, DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

const REASONS = new Set<string>(Object.values(REASON_WORDS));
const studied = new Map(content.studies.map((s) => [s.id as string, s]));

/** Study arms that a message carries. */
const armsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return studied.has(value) ? [value] : [];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(armsIn) : [];
};

describe.each(DEMOS.map((name) => [name, explained(demoOnDefaultFoot(name))] as const))('%s', (_, explanation) => {
  const findings = explanation.questions.flatMap((q) => q.findings);

  it('says how sure it is and why, for every finding', () => {
    expect(findings.length).toBeGreaterThan(50);
    for (const finding of findings) {
      const { lines } = wordBasis(content, explanation, finding);
      expect(confidenceWord(finding.confidence.level), finding.id).not.toBe('');
      expect(
        lines.some((line) => REASONS.has(line)),
        finding.id,
      ).toBe(true);
    }
  });

  it('has for each source its line, its mark, how it was read, and who was studied or that nobody is kept', () => {
    for (const finding of findings)
      for (const source of wordBasis(content, explanation, finding).sources) {
        expect(source.text, finding.id).not.toBe('');
        expect(MARKS, finding.id).toContain(source.mark);
        expect(source.how, finding.id).toMatch(/^(Read|Taken|From memory)/);
        expect(source.people.length, finding.id).toBeGreaterThan(0);
      }
  });

  it('names the people and the number of every study arm that a finding tells', () => {
    let arms = 0;
    for (const finding of findings)
      for (const id of new Set(armsIn(finding.message.args))) {
        const study = studied.get(id);
        const cited = wordBasis(content, explanation, finding).sources.find((s) => s.id === study?.source);
        if (study === undefined || cited === undefined) throw new Error(`${finding.id} tells ${id} without its source`);
        arms += 1;
        const number = study.n === null ? 'not told' : `${study.n} counted`;
        const told = cited.people.filter((each) => each.includes(study.population) && each.includes(number));
        expect(told.length, `${finding.id} ${id}`).toBeGreaterThan(0);
      }
    expect(arms).toBeGreaterThan(3);
  });

  it('a source that was read second-hand says so', () => {
    for (const finding of findings)
      for (const id of armsIn(finding.message.args)) {
        const study = studied.get(id);
        if (study?.read !== 'secondary') continue;
        const cited = wordBasis(content, explanation, finding).sources.find((s) => s.id === study.source);
        expect(cited?.how, finding.id).toContain('second-hand');
      }
  });
});
