/** Free text of a case ("no names here") stays in the case: neither an explanation nor a telling made from it carries any. */
import { expect, test } from 'vitest';
import { type CaseFile, type Fixture, withAnswer, withFixtures, withStage, withStageNotes } from '../../../src/cases';
import { idOf, READERS, type TopicId } from '../../../src/ids';
import { handoutOf, scriptOf, stillOf } from '../../../src/telling';
import { plainText, wordFinding } from '../../../src/wording';
import { content, DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

const SECRET = 'zzqx';

/** Free text wherever a case can hold some, on a copy of the case. */
const withFreeText = (file: CaseFile): CaseFile => {
  const stage = content.stages[0];
  if (stage === undefined) throw new Error('no stage in the content');
  const noted = { ...file, note: SECRET, claims: file.claims.map((claim) => ({ ...claim, note: SECRET })) };
  const staged = withStageNotes(withStage(noted, stage.id), stage.id, { note: SECRET });
  const answered = withAnswer(staged, idOf<TopicId>('driving'), SECRET);
  return withFixtures(answered, [{ on: '2027-01-02', name: SECRET } as Fixture]);
};

test.each(DEMOS)('%s, filled with free text, tells none of it', (name) => {
  const file = withFreeText(demoOnDefaultFoot(name));
  expect(JSON.stringify(file).split(SECRET).length).toBeGreaterThan(file.claims.length + 4);
  const explanation = explained(file);
  const findings = explanation.questions.flatMap((question) => question.findings);
  const told = [
    ...READERS.flatMap((reader) =>
      findings.map((finding) => plainText(wordFinding(content, explanation, finding, reader))),
    ),
    JSON.stringify(scriptOf(content, explanation, { seconds: 180 })),
    JSON.stringify(handoutOf(content, explanation)),
    JSON.stringify(stillOf(content, explanation, 'where')),
  ];
  expect(told.length).toBeGreaterThan(50);
  for (const text of told) expect(text).not.toContain(SECRET);
});
