/** Content, foot and cases for tests of what is explained and worded: the real content, the fine foot that is shipped, demo cases. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type CaseFile,
  type Claim,
  emptyCase,
  factsOf,
  newClaim,
  readCase,
  type Said,
  type Subject,
  type SubjectValue,
} from '../../src/cases';
import { readContent } from '../../src/cli/read-content';
import {
  type ExplainOptions,
  type Explanation,
  explain,
  type Finding,
  NO_WHAT_IF,
  type WhatIf,
} from '../../src/explain';
import { type CaseId, idOf, type QuestionId } from '../../src/ids';
import { fineModelFoot, modelFoot } from './model-foot';

export const content = readContent();
/** Explained is always the fine one, as in the app. */
export const foot = fineModelFoot();
/** For what is drawn. */
export const drawnFoot = modelFoot();

export const DEMOS = [
  'handball-zone-2',
  'dancer-spiral',
  'hill-runner',
  'rider-midfoot',
  'long-jumper-navicular',
] as const;
export type Demo = (typeof DEMOS)[number];

export const demoPath = (name: Demo): string =>
  fileURLToPath(new URL(`../../content/cases/${name}.case.json`, import.meta.url));

export const demoCase = (name: Demo): CaseFile => {
  const read = readCase(readFileSync(demoPath(name), 'utf8'));
  if (!read.ok) throw new Error(`${name}: ${read.problem.what}`);
  return read.file;
};

/** The demo on the shipped foot: what would make it another foot (height, arch) is left out, so that no foot has to be built. */
export const demoOnDefaultFoot = (name: Demo): CaseFile => {
  const file = demoCase(name);
  return { ...file, claims: file.claims.filter((c) => c.subject !== 'heightCm' && c.subject !== 'footShape') };
};

export const CONFIRMED: Said = { status: 'confirmed', source: { kind: 'imaging' } };
export const REPORTED: Said = { status: 'reported', source: { kind: 'media' } };

export type Stated = { [S in Subject]: readonly [S, SubjectValue<S>, Said?] }[Subject];

/** A case of a few claims: `[subject, value, said]`, confirmed by imaging unless said otherwise. */
export const caseOf = (...stated: readonly Stated[]): CaseFile => {
  const claims: Claim[] = [];
  for (const [subject, value, said] of stated)
    claims.push(newClaim({ claims }, subject, value as never, said ?? CONFIRMED));
  return { ...emptyCase(idOf<CaseId>('test')), claims };
};

export const explained = (file: CaseFile, whatIf: WhatIf = NO_WHAT_IF, options?: ExplainOptions): Explanation =>
  explain(content, factsOf(file), whatIf, foot, options);

export const findingsOf = (explanation: Explanation, question: QuestionId): readonly Finding[] =>
  explanation.questions.find((q) => q.id === question)?.findings ?? [];

export const findingNamed = (explanation: Explanation, id: string): Finding | undefined =>
  explanation.questions.flatMap((q) => q.findings).find((f) => f.id === id);
