/**
 * `npm run -s frame -- model.json` (or `-` for standard input): solves the frame of the file (src/mechanics/frame/schema.ts) and
 * prints displacements, reactions and member end forces as JSON, nothing else. A frame that can't be solved: what and where on
 * standard error, exit 1. A call that can't be understood: exit 2.
 */
import { readFileSync } from 'node:fs';
import { repeatedKey } from '../cases/json-keys';
import { type FrameModel, problemText, solveFrame } from '../mechanics/frame';

const run = (args: readonly string[]): number => {
  const [path, ...more] = args;
  if (path === undefined || more.length > 0) {
    process.stderr.write('Usage: npm run -s frame -- <model.json or -> (- reads standard input)\n');
    return 2;
  }
  let model: unknown;
  try {
    // Some editors write a byte order mark, which is no JSON.
    const text = readFileSync(path === '-' ? 0 : path, 'utf8').replace(/^\uFEFF/, '');
    model = JSON.parse(text);
    const twice = repeatedKey(text);
    if (twice !== null) {
      process.stderr.write(
        `${path}: line ${twice.line}: "${twice.key}" stands twice in one object; one would be lost\n`,
      );
      return 1;
    }
  } catch (error) {
    process.stderr.write(
      `${path}: cannot be read as JSON: ${error instanceof Error ? error.message : String(error)}\n`,
    );
    return 1;
  }
  // The solver checks the form of what it is given.
  const solved = solveFrame(model as FrameModel);
  if (!solved.ok) {
    process.stderr.write(`${path}: ${problemText(solved)}\n`);
    return 1;
  }
  const { displacements, reactions, memberEndForces } = solved;
  process.stdout.write(`${JSON.stringify({ displacements, reactions, memberEndForces }, null, 2)}\n`);
  return 0;
};

process.exitCode = run(process.argv.slice(2));
