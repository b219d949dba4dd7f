import { describe, expect, test } from 'vitest';
import { createExplainRunner } from '../../../src/session/explain-runner';
import { latestOnly } from '../../../src/session/latest-only';
import type { FromWorker, ToWorker } from '../../../src/session/run-explain';
import { type Explain, serveExplain } from '../../../src/session/serve-explain';
import type { WorkerLike } from '../../../src/session/worker-client';
import { CONTENT, caseFile, echo, echoed, settle } from './helpers';

const request = (id: string) => ({ file: caseFile(id), whatIf: {}, bands: 'none' as const });

/** A worker without a thread: messages are copied as between threads, and arrive later. */
class LocalWorker implements WorkerLike {
  readonly got: ToWorker[] = [];
  terminated = false;
  private readonly listeners = new Map<string, ((event: unknown) => void)[]>();
  private readonly serve: (message: ToWorker) => Promise<void>;

  constructor(explain: Explain, ready: Promise<void> = Promise.resolve()) {
    this.serve = serveExplain(explain, ready, (message: FromWorker) =>
      this.emit('message', { data: structuredClone(message) }),
    );
  }
  emit(type: string, event: unknown): void {
    if (!this.terminated) for (const listener of this.listeners.get(type) ?? []) listener(event);
  }
  postMessage(message: ToWorker): void {
    const copy = structuredClone(message);
    this.got.push(copy);
    void Promise.resolve().then(() => this.serve(copy));
  }
  addEventListener(type: string, listener: (event: unknown) => void): void {
    this.listeners.set(type, [...(this.listeners.get(type) ?? []), listener]);
  }
  terminate(): void {
    this.terminated = true;
  }
}

const inWorker: Explain = (_, asked) => echo(asked);
const noPlain = () => Promise.reject(new Error('the plain function was called'));

describe('with a worker', () => {
  test('content, foot and its sections go once, then only requests', async () => {
    const worker = new LocalWorker(inWorker);
    const foot = { side: 'right' } as never;
    const cut = { 1: 'cuts' } as never;
    const sections = Promise.resolve(cut);
    const run = createExplainRunner({ content: CONTENT, foot, sections, makeWorker: () => worker, plain: noPlain });
    expect(echoed(await run(request('a')))?.file.id).toBe('a');
    expect(echoed(await run(request('b')))?.file.id).toBe('b');
    expect(worker.got.map(({ kind }) => kind)).toEqual(['start', 'explain', 'explain']);
    expect(worker.got[0]).toEqual({ kind: 'start', content: CONTENT, foot, sections: cut });
  });

  test('a foot on its way is waited for; one that does not come is done without', async () => {
    const worker = new LocalWorker(inWorker);
    const foot = Promise.reject(new Error('offline'));
    const run = createExplainRunner({ content: CONTENT, foot, makeWorker: () => worker, plain: noPlain });
    await run(request('a'));
    expect(worker.got[0]).toMatchObject({ kind: 'start', foot: null });
  });

  test('sections that do not come are done without: whoever needs some cuts them', async () => {
    const worker = new LocalWorker(inWorker);
    const foot = { side: 'right' } as never;
    const sections = Promise.reject(new Error('offline'));
    const run = createExplainRunner({ content: CONTENT, foot, sections, makeWorker: () => worker, plain: noPlain });
    await run(request('a'));
    expect(worker.got[0]).toMatchObject({ kind: 'start', foot, sections: null });
  });

  test('what cannot be explained is an error, and is not tried again on the page', async () => {
    const worker = new LocalWorker(() => {
      throw new Error('no such bone');
    });
    const run = createExplainRunner({ content: CONTENT, makeWorker: () => worker, plain: noPlain });
    await expect(run(request('a'))).rejects.toThrow('no such bone');
  });

  test('when bones cannot be built there, the error says why', async () => {
    const worker = new LocalWorker(
      () => {
        throw new Error('not prepared');
      },
      Promise.reject(new Error('wasm refused')),
    );
    const run = createExplainRunner({ content: CONTENT, makeWorker: () => worker, plain: noPlain });
    await expect(run(request('a'))).rejects.toThrow('not prepared (bones cannot be built here: wasm refused)');
  });

  test('requests overtaken while they wait never start', async () => {
    const worker = new LocalWorker(inWorker);
    const run = createExplainRunner({ content: CONTENT, makeWorker: () => worker, plain: noPlain });
    const answers = await Promise.all(['a', 'b', 'c', 'd'].map((id) => run(request(id))));
    expect(answers.map((answer) => echoed(answer)?.file.id ?? null)).toEqual(['a', null, null, 'd']);
    expect(worker.got.length).toBe(3);
  });
});

describe('without one', () => {
  const plain = async (_: unknown, asked: Parameters<typeof echo>[0]) => echo(asked);

  test('the plain function does it', async () => {
    const run = createExplainRunner({ content: CONTENT, plain });
    expect(echoed(await run(request('a')))?.file.id).toBe('a');
  });

  test('also where a worker cannot be made', async () => {
    const makeWorker = () => {
      throw new Error('refused');
    };
    const run = createExplainRunner({ content: CONTENT, makeWorker, plain });
    expect(echoed(await run(request('a')))?.file.id).toBe('a');
  });

  test('also from the moment it breaks, the request under way included', async () => {
    const worker = new LocalWorker(inWorker);
    const run = createExplainRunner({ content: CONTENT, makeWorker: () => worker, plain });
    worker.postMessage = () => {};
    const first = run(request('a'));
    await settle();
    worker.emit('error', {});
    expect(echoed(await first)?.file.id).toBe('a');
    expect(worker.terminated).toBe(true);
    expect(echoed(await run(request('b')))?.file.id).toBe('b');
  });
});

test('latestOnly goes on after a run that failed', async () => {
  const run = latestOnly(async (n: number) => {
    if (n === 1) throw new Error('one');
    return n;
  });
  const [first, second] = [run(1), run(2)];
  await expect(first).rejects.toThrow('one');
  expect(await second).toBe(2);
});
