/** Runs CalculiX where it is installed (Debian: calculix-ccx). `tsx tests/tools/calculix-run.ts` writes its figures down anew. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deckOf, type SlenderFrame } from './calculix-deck';
import { FRAMES } from './calculix-frames';

/** By the frame's own node: motion (of rods turns too), and force on the supports where the frame asks for it. */
export interface CalculixFigures {
  readonly motions: Readonly<Record<string, readonly number[]>>;
  readonly reactions: Readonly<Record<string, readonly number[]>>;
}

export const FIXTURE = fileURLToPath(new URL('../reference/calculix.fixture.json', import.meta.url));

/** The version, or null where there is none. */
export const calculixVersion = (): string | null => {
  const { stdout, error } = spawnSync('ccx', ['-v'], { encoding: 'utf8' });
  return error ? null : (/[\d.]+/.exec(stdout)?.[0] ?? 'unknown');
};

const tableOf = (text: string, title: RegExp): Record<string, number[]> => {
  const rows = text.split(/\r?\n/);
  const start = rows.findIndex((row) => title.test(row));
  const table: Record<string, number[]> = {};
  for (const row of rows.slice(start + 1)) {
    const numbers = row.trim().split(/\s+/).map(Number);
    if (row.trim() === '') {
      if (Object.keys(table).length > 0) break;
      continue;
    }
    if (numbers.length < 4 || numbers.some(Number.isNaN)) break;
    table[String(numbers[0])] = numbers.slice(1);
  }
  return table;
};

export const runCalculix = (frame: SlenderFrame): CalculixFigures => {
  const folder = mkdtempSync(join(tmpdir(), 'calculix-'));
  try {
    writeFileSync(join(folder, 'frame.inp'), deckOf(frame));
    const { status, stdout } = spawnSync('ccx', ['-i', 'frame'], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, OMP_NUM_THREADS: '1' },
    });
    if (status !== 0 || /\*ERROR/.test(stdout)) throw new Error(`ccx failed:\n${stdout.slice(-2000)}`);
    const text = readFileSync(join(folder, 'frame.dat'), 'utf8');
    const forces = tableOf(text, /^\s*forces/);
    const held = frame.model.supports.filter(({ fixed }) => frame.reactions && fixed.includes('uy'));
    return {
      motions: tableOf(text, /^\s*displacements/),
      reactions: Object.fromEntries(held.map(({ node }) => [node, forces[node] ?? []])),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const version = calculixVersion();
  if (version === null) throw new Error('ccx is not installed (Debian: calculix-ccx)');
  const frames = Object.fromEntries(Object.entries(FRAMES).map(([name, frame]) => [name, runCalculix(frame)]));
  writeFileSync(FIXTURE, `${JSON.stringify({ program: 'CalculiX', version, frames }, null, 1)}\n`);
}
