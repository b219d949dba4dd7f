/**
 * The frame solver against a general finite-element program, on slender frames. Its figures are stored; the long run asks it anew
 * where it is installed. Within 0.5 % of the largest motion or force of the frame.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { against } from '../tools/against';
import { FRAMES } from '../tools/calculix-frames';
import { type CalculixFigures, calculixVersion, FIXTURE, runCalculix } from '../tools/calculix-run';
import { ALL, solved } from '../tools/frames';

interface Stored {
  readonly version: string;
  readonly frames: Readonly<Record<string, CalculixFigures>>;
}
const stored = JSON.parse(readFileSync(FIXTURE, 'utf8')) as Stored;
const SHARE = 0.005;

const compare = (name: string, figures: CalculixFigures): void => {
  const frame = FRAMES[name];
  if (!frame) throw new Error(`no frame ${name}`);
  const solution = solved(frame.model);
  const round = Object.values(frame.shapes).some((shape) => 'diameter' in shape);
  const outside = {
    source: `CalculiX ${stored.version} (Dhondt), ${round ? 'Timoshenko elements U1' : 'beams expanded into solids, B31'}`,
    where: 'deck of tests/tools/calculix-deck.ts',
    how: 'read',
  } as const;
  const fixed = new Set(frame.model.supports.flatMap((s) => s.fixed.map((dof) => `${s.node} ${dof}`)));
  const motion = { what: 'motion', theirs: figures.motions, ours: solution.displacements, from: 0 };
  const tables = [
    motion,
    ...(round ? [{ ...motion, what: 'turn', from: 3 }] : []),
    ...(frame.reactions ? [{ what: 'reaction', theirs: figures.reactions, ours: solution.reactions, from: 0 }] : []),
  ];
  for (const { what, theirs, ours, from } of tables) {
    const pairs = Object.entries(theirs).flatMap(([node, row]) =>
      row
        .slice(from, from + 3)
        .map((expected, i) => ({ expected, got: ours[node]?.[from + i] ?? Number.NaN, dof: ALL[from + i] }))
        // A motion that is given is no answer.
        .filter(({ dof }) => what === 'reaction' || !fixed.has(`${node} ${dof}`))
        .map(({ expected, got }) => ({ expected, got })),
    );
    const most = pairs.reduce((a, b) => (Math.abs(b.expected) > Math.abs(a.expected) ? b : a));
    const worst = pairs.reduce((a, b) => (Math.abs(b.got - b.expected) <= Math.abs(a.got - a.expected) ? a : b));
    const tolerance = SHARE * Math.abs(most.expected);
    against(outside, `${name}: largest ${what}`, () => ({ ...most, tolerance, why: '0.5 %: two kinds of element' }));
    against(outside, `${name}: ${what} that differs most`, () => ({
      ...worst,
      tolerance,
      why: `0.5 % of the largest ${what}`,
    }));
  }
};

test('the stored figures are of these frames', () => {
  expect(Object.keys(stored.frames)).toEqual(Object.keys(FRAMES));
});
for (const [name, figures] of Object.entries(stored.frames)) compare(name, figures);

const version = process.env.UNDERFOOT_LONG ? calculixVersion() : null;
if (process.env.UNDERFOOT_LONG && version === null)
  console.error('ccx is not installed: its stored figures stand (Debian: calculix-ccx)');
if (version !== null)
  for (const [name, frame] of Object.entries(FRAMES))
    test(`asked anew, ccx ${version} gives the stored figures: ${name}`, () => {
      const anew = runCalculix(frame);
      for (const what of ['motions', 'reactions'] as const) {
        const known = Object.entries(stored.frames[name]?.[what] ?? {});
        const size = Math.max(...known.flatMap(([, row]) => row.map(Math.abs)));
        expect(Object.keys(anew[what])).toEqual(known.map(([node]) => node));
        for (const [node, row] of known)
          row.forEach((value, i) => {
            expect(Math.abs((anew[what][node]?.[i] ?? Number.NaN) - value)).toBeLessThan(1e-4 * size);
          });
      }
    });
