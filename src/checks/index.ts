/** What only holds across layers: content and foot, case and content and foot. */
export { checkCase } from './check-case';
export { type ContentFault, checkContent, checkShape } from './check-content';
export { CHECK_PROBLEM_WORDS, type CheckProblem, type CheckProblemCode } from './problems';
