/** Whether an explanation made without the ensembles has anything that they would tell. */
import type { Explanation } from './types';

export const awaitsBands = ({ questions }: Explanation): boolean =>
  questions.some(({ findings }) =>
    findings.some(
      ({ message }) =>
        message.id === 'loadPending' || message.id === 'supportPending' || message.id === 'stageLoadPending',
    ),
  );
