/** The command as a person runs it: another process, its streams and its exit code. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { ALL, BONE, ROUND } from '../../tools/frames';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const tsx = join(root, 'node_modules/tsx/dist/cli.mjs');
const folder = mkdtempSync(join(tmpdir(), 'frame-'));
afterAll(() => rmSync(folder, { recursive: true }));

const cantilever = {
  id: 'cantilever',
  title: 'one bone, pushed at its end',
  units: 'N, mm, MPa',
  nodes: [
    { id: 'root', xyz: [0, 0, 0] },
    { id: 'tip', xyz: [0, 0, 60] },
  ],
  materials: { bone: BONE },
  sections: { round: ROUND },
  members: [{ id: 'bone', i: 'root', j: 'tip', section: 'round', material: 'bone', orientation: [0, 1, 0] }],
  supports: [{ node: 'root', fixed: ALL }],
  nodalLoads: [{ node: 'tip', F: [0, 100, 0, 0, 0, 0] }],
};

const run = (args: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, join(root, 'src/cli/frame.ts'), ...args], {
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

test('a file: the three tables as JSON on standard output, nothing else', () => {
  const path = join(folder, 'model.json');
  writeFileSync(path, JSON.stringify(cantilever));
  const out = execFileSync('npm', ['run', '-s', 'frame', '--', path], { cwd: root, encoding: 'utf8' });
  const printed = JSON.parse(out) as Record<string, Record<string, number[]>>;
  expect(Object.keys(printed)).toEqual(['displacements', 'reactions', 'memberEndForces']);
  expect(printed.displacements?.tip?.[1]).toBeCloseTo((100 * 60 ** 3) / (3 * 17000 * 250), 9);
  expect(printed.reactions).toEqual({ root: [0, -100, 0, 6000, 0, 0].map((value) => expect.closeTo(value, 8)) });
  // Local x along the bone (global Z), y up (Y), so local z is X turned round: the root's moment about it is 6000.
  expect(printed.memberEndForces?.bone).toEqual(
    [0, -100, 0, 0, 0, -6000, 0, 100, 0, 0, 0, 0].map((value) => expect.closeTo(value, 8)),
  );
});

test('standard input, with the mark that some editors put before it', () => {
  const { status, stdout, stderr } = run(['-'], `\uFEFF${JSON.stringify(cantilever)}`);
  expect([status, stderr]).toEqual([0, '']);
  expect(JSON.parse(stdout)).toHaveProperty('reactions.root');
});

test.each([
  [
    'a mechanism',
    JSON.stringify({ ...cantilever, supports: [{ node: 'root', fixed: ALL.slice(0, 5) }] }),
    /node "(root|tip)": \w+ moves freely/,
  ],
  [
    'a frame of wrong form',
    JSON.stringify({ ...cantilever, sections: {} }),
    /member "bone": there is no section "round"/,
  ],
  ['no JSON', '{ nodes', /cannot be read as JSON/],
  [
    'two sections of one name, of which JSON keeps the last',
    JSON.stringify(cantilever).replace('"round":{', '"round":{"A":1},"round":{'),
    /line 1: "round" stands twice/,
  ],
])('%s: exit 1, told on standard error, nothing on standard output', (_, input, words) => {
  const { status, stdout, stderr } = run(['-'], input);
  expect([status, stdout]).toEqual([1, '']);
  expect(stderr).toMatch(words);
  expect(stderr.trim().split('\n')).toHaveLength(1);
});

test('no such file: exit 1', () => {
  expect(run([join(folder, 'none.json')])).toMatchObject({ status: 1, stdout: '' });
});

test('no file named: exit 2 and how to call it', () => {
  expect(run([])).toMatchObject({ status: 2, stdout: '', stderr: expect.stringContaining('Usage') });
});
