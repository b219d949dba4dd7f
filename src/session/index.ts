/** The session: what stage and pages know of each other. */
export { browserStorage } from './browser-storage';
export type { CaseStorage, Kept, SaveOutcome, WipeReport } from './case-storage';
export { createSession, type LiveSession, NEW_CASE_ID, type SessionOptions } from './create-session';
export { createExplainRunner, type ExplainRunnerOptions } from './explain-runner';
export { KEPT_FOR_MS } from './kept-time';
export { latestOnly } from './latest-only';
export type { ExplainRequest, RunExplain } from './run-explain';
export { SESSION_PROBLEM_WORDS } from './session-problems';
export { STATE_REACH } from './state-reach';
export * from './types';
export { wipeStores } from './wipe-stores';
