/**
 * Makes explanations in a worker, and with the plain function where there is no worker or it breaks. One run at a time; what is
 * overtaken while it waits never starts.
 */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { type RaySections, takeSections } from '../mechanics';
import { latestOnly } from './latest-only';
import type { ExplainRequest, RunExplain } from './run-explain';
import { WorkerBroken, type WorkerClient, type WorkerLike, workerClient } from './worker-client';

export type PlainExplain = (content: Content, request: ExplainRequest, foot: Foot | null) => Promise<Explanation>;

export interface ExplainRunnerOptions {
  readonly content: Content;
  /** The standing right foot, when it is already there or on its way; without it the worker builds its own. */
  readonly foot?: Foot | Promise<Foot | null>;
  /** Sections cut on that foot before; without them whoever needs some cuts them anew. */
  readonly sections?: Promise<RaySections>;
  readonly makeWorker?: () => WorkerLike;
  /** For tests; the real one is loaded when it is first needed, so that a page with a worker never loads it. */
  readonly plain?: PlainExplain;
}

/** Bones are built here only when the explanation needs other ones than those given: a page may not be allowed to. */
const loadedPlain: PlainExplain = async (content, { file, whatIf, bands }, foot) => {
  const [{ explain }, { factsOf }, { prepareAnatomy }] = await Promise.all([
    import('../explain'),
    import('../cases'),
    import('../anatomy'),
  ]);
  const make = () => explain(content, factsOf(file), whatIf, foot ?? undefined, { bands });
  try {
    return make();
  } catch {
    await prepareAnatomy();
    return make();
  }
};

const started = (
  makeWorker: () => WorkerLike,
  content: Content,
  foot: Foot | null,
  sections: RaySections | null,
): WorkerClient | null => {
  try {
    return workerClient(makeWorker(), { kind: 'start', content, foot, sections });
  } catch {
    return null;
  }
};

export const createExplainRunner = (options: ExplainRunnerOptions): RunExplain => {
  const { content, makeWorker, plain = loadedPlain } = options;
  const foot = Promise.resolve(options.foot ?? null).catch(() => null);
  const sections = Promise.resolve(options.sections ?? null).catch(() => null);
  const given = Promise.all([foot, sections]).then(([on, cut]) => {
    if (on !== null && cut !== null) takeSections(on, cut);
    return [on, cut] as const;
  });
  const worker = makeWorker === undefined ? null : given.then(([on, cut]) => started(makeWorker, content, on, cut));

  return latestOnly(async (request: ExplainRequest) => {
    const client = await worker;
    if (client && !client.broken()) {
      try {
        return await client.explain(request);
      } catch (error) {
        if (!(error instanceof WorkerBroken)) throw error;
      }
    }
    return plain(content, request, (await given)[0]);
  });
};
