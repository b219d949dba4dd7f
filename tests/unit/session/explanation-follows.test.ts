/** Whatever the order of commands and however long each run takes, the explanation is of what the state says. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createSession, type ExplainRequest, type RunExplain } from '../../../src/session';
import { createExplainRunner } from '../../../src/session/explain-runner';
import { CONTENT, caseFile, claim, echo, echoed, START, settle } from './helpers';

const anyStep = fc.oneof(
  fc.record({ do: fc.constant('mass' as const), n: fc.integer({ min: 20, max: 250 }) }),
  fc.record({ do: fc.constant('add' as const), n: fc.integer({ min: 20, max: 250 }) }),
  fc.record({ do: fc.constant('open' as const), n: fc.nat(3) }),
  fc.record({
    do: fc.constantFrom('undo' as const, 'redo' as const, 'drop' as const, 'new' as const, 'answer' as const),
    n: fc.nat(3),
  }),
);

type MakeRun = (compute: (request: ExplainRequest) => Promise<ReturnType<typeof echo>>) => RunExplain;
const RUNNERS: readonly (readonly [string, MakeRun])[] = [
  ['a runner that answers everything, in any order', (compute) => compute],
  [
    'the runner that lets only the newest wait',
    (compute) => createExplainRunner({ content: CONTENT, plain: (_, request) => compute(request) }),
  ],
];

test.each(RUNNERS)('%s', async (_, makeRun) => {
  await fc.assert(
    fc.asyncProperty(fc.array(anyStep, { maxLength: 40 }), async (steps) => {
      const waiting: { file: string; answer: () => void }[] = [];
      const compute = (request: ExplainRequest) =>
        new Promise<ReturnType<typeof echo>>((resolve) =>
          waiting.push({ file: request.file.id, answer: () => resolve(echo(request)) }),
        );
      const s = createSession({ content: CONTENT, file: START, runExplain: makeRun(compute) });
      let opened = 0;
      const ids = new Set<string>();
      const stop = s.subscribe((state) => {
        const made = echoed(state.explanation);
        if (made === null) return;
        // Of this case, always; of this moment, unless it says that it is stale.
        expect(made.file.id).toBe(state.file.id);
        if (!state.stale) {
          expect(made.file).toBe(state.file);
          expect(made.whatIf).toBe(state.whatIf);
        }
      });
      for (const step of steps) {
        if (step.do === 'mass') s.commands.setWhatIf({ massKg: step.n });
        if (step.do === 'add') {
          const id = `c${s.getState().file.claims.length + 1}`;
          s.commands.addClaim(claim(id, 'massKg', step.n));
        }
        if (step.do === 'open') s.commands.openCase(caseFile(`case-${++opened}-${step.n}`));
        if (step.do === 'undo') s.commands.undo();
        if (step.do === 'redo') s.commands.redo();
        if (step.do === 'drop') s.commands.dropWhatIf();
        if (step.do === 'new') s.commands.newCase();
        if (step.do === 'answer') waiting.splice(step.n % Math.max(1, waiting.length), 1)[0]?.answer();
        ids.add(s.getState().file.id);
        await settle();
      }
      for (let i = 0; i < 100 && s.getState().stale; i++) {
        waiting.shift()?.answer();
        await settle();
      }
      const state = s.getState();
      expect(state.problem).toBe(null);
      expect(state.stale).toBe(false);
      expect(echoed(state.explanation)).toEqual({ file: state.file, whatIf: state.whatIf });
      stop();
    }),
    { numRuns: 200 },
  );
});

test('results only move forward: an earlier one that comes late is not shown', async () => {
  const answers: (() => void)[] = [];
  const s = createSession({
    content: CONTENT,
    file: START,
    runExplain: (request) => new Promise((resolve) => answers.push(() => resolve(echo(request)))),
  });
  s.commands.setWhatIf({ massKg: 60 });
  s.commands.setWhatIf({ massKg: 70 });
  answers[1]?.();
  await settle();
  // Shown while the newest is on its way, and called stale.
  expect(s.getState().stale).toBe(true);
  expect(echoed(s.getState().explanation)?.whatIf).toEqual({ massKg: 60 });
  answers[0]?.();
  await settle();
  expect(echoed(s.getState().explanation)?.whatIf).toEqual({ massKg: 60 });
  answers[2]?.();
  await settle();
  expect(s.getState().stale).toBe(false);
  expect(echoed(s.getState().explanation)?.whatIf).toEqual({ massKg: 70 });
});
