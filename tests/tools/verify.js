/**
 * `npm run verify`: what the mechanics computes against published and closed-form answers, as a table. Ends with code 1 when one
 * does not hold. The checks are those of `npm test`; this runs no others. `--long` asks other programs anew where they are installed.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './install.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const MECHANICS = [
  'sections',
  'section-torsion',
  'straight-bones',
  'tied-arches',
  'frame-beams',
  'frames',
  'hand-frames',
  'calculix',
  'foot-loads',
  'fixation',
  'repetition',
];

ensureInstalled(root);
const { status } = spawnSync(
  process.execPath,
  [
    `${root}/node_modules/vitest/vitest.mjs`,
    'run',
    ...MECHANICS.map((name) => `tests/reference/${name}.test.ts`),
    '--reporter=./tests/tools/verify-reporter.ts',
  ],
  { cwd: root, stdio: 'inherit', env: { ...process.env, UNDERFOOT_LONG: process.argv.includes('--long') ? '1' : '' } },
);
process.exit(status ?? 1);
