/** The worker's side of the conversation, apart from the worker, so that it runs in any test. */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { type RaySections, takeSections } from '../mechanics';
import type { ExplainRequest, FromWorker, ToWorker } from './run-explain';
import { reasonOf } from './session-problems';

export type Explain = (content: Content, request: ExplainRequest, foot: Foot | null) => Explanation;

/** @param ready settles when bones can be built; when it fails, only explanations on the given foot can still be made. */
export const serveExplain = (
  explain: Explain,
  ready: Promise<void>,
  answer: (message: FromWorker) => void,
): ((message: ToWorker) => Promise<void>) => {
  let content: Content | null = null;
  let foot: Foot | null = null;
  const prepared = ready.then(
    () => null,
    (error: unknown) => reasonOf(error),
  );

  return async (message) => {
    if (message.kind === 'start') {
      content = message.content as Content;
      foot = message.foot as Foot | null;
      if (foot !== null && message.sections !== null) takeSections(foot, message.sections as RaySections);
      return;
    }
    const { run, request } = message;
    const notPrepared = await prepared;
    try {
      if (content === null) throw new Error('the worker was asked before it was started');
      answer({ kind: 'explained', run, explanation: explain(content, request, foot) });
    } catch (error) {
      const why = notPrepared === null ? '' : ` (bones cannot be built here: ${notPrepared})`;
      answer({ kind: 'failed', run, message: `${reasonOf(error)}${why}` });
    }
  };
};
