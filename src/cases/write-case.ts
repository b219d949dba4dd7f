/** Case -> text of a `.case.json` file: keys in the order of the schema, mass and height rounded, one newline at the end. */
import * as v from 'valibot';
import { checkCaseFile } from './read-case';
import { type CaseFile, caseFile } from './schema';

/** Throws TypeError for a case that `readCase` would refuse: callers check first (`checkCaseFile`). */
export const writeCase = (file: CaseFile): string => {
  const problem = checkCaseFile(file)[0];
  if (problem !== undefined) throw new TypeError(`writeCase: ${problem.where ?? 'file'}: ${problem.what}`);
  return `${JSON.stringify(v.parse(caseFile, file), null, 2)}\n`;
};
