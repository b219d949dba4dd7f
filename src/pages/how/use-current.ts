/** What the frame is run with now, of the same case: the last that was told, so that a slider stays where no answer is found. */
import { useState } from 'react';
import type { Activity } from '../../content/schema';
import type { MessageOf } from '../../explain/messages';
import { useSession } from '../context';
import { findingsOf } from '../findings';

type Run = MessageOf<'loadPull'>['args'];

/** Null where no frame speaks for the bone or the way of breaking. */
export const useCurrentRun = (): Run | null => {
  const explanation = useSession((state) => state.explanation);
  const caseTick = useSession((state) => state.caseTick);
  const [kept, keep] = useState<{ readonly run: Run; readonly caseTick: number } | null>(null);
  const run = findingsOf(explanation, 'loadPull')[0]?.message.args ?? null;
  const fails = findingsOf(explanation, 'loadFails').length > 0;
  if (run !== null && (run !== kept?.run || caseTick !== kept.caseTick)) keep({ run, caseTick });
  return run ?? (fails && kept?.caseTick === caseTick ? kept.run : null);
};

/** The task in question as content tells it. */
export const useActivity = (run: Run | null): Activity | null => {
  const content = useSession((state) => state.content);
  const chosen = useSession((state) => state.whatIf.activity);
  const id = chosen ?? run?.activity;
  return content.activities.find((activity) => activity.id === id) ?? null;
};
