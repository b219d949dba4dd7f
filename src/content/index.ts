export { type Compiled, compileContent, reviewHash } from './compile';
export * from './look-up';
export { type ContentProblem, formatProblem } from './problems';
export * from './schema';
