/**
 * What takes seconds is added to an explanation only while some page shows it: first the bands of the ratio, then all the rest.
 * Whoever never asks how it broke never pays for it.
 */
import type { StoreApi } from 'zustand/vanilla';
import { awaitsBands } from '../explain/awaits';
import type { RunExplain } from './run-explain';
import { reasonOf, sessionProblem } from './session-problems';
import type { SessionState } from './types';

export interface BandsOnDemand {
  /** Some page shows bands from now on, until it calls what it is given back. */
  readonly want: () => () => void;
  /** The newest explanation has come, without bands. */
  readonly came: () => void;
}

type Store = Pick<StoreApi<SessionState>, 'getState' | 'setState'>;
type Made = Pick<SessionState, 'file' | 'whatIf'>;

export const bandsOnDemand = (run: RunExplain | undefined, { getState, setState }: Store): BandsOnDemand => {
  let wanted = 0;
  let running: Made | null = null;

  /** Whether what was made from these is still what is shown. */
  const isShown = ({ file, whatIf }: Made): boolean => {
    const now = getState();
    return !now.stale && now.file === file && now.whatIf === whatIf;
  };

  const add = (bands: 'ratio' | 'all'): void => {
    if (run === undefined) return;
    const { file, whatIf } = getState();
    const mine = { file, whatIf };
    running = mine;
    const ended = (): void => {
      if (running === mine) running = null;
    };
    run({ ...mine, bands }).then(
      (explanation) => {
        ended();
        if (explanation === null || !isShown(mine)) return;
        setState({ explanation });
        if (bands === 'ratio' && wanted > 0) add('all');
      },
      (error: unknown) => {
        ended();
        if (isShown(mine)) setState({ problem: sessionProblem('bandsFailed', reasonOf(error)) });
      },
    );
  };

  const came = (): void => {
    const { explanation } = getState();
    if (wanted === 0 || explanation === null || (running !== null && isShown(running))) return;
    if (!getState().stale && awaitsBands(explanation)) add(explanation.loads?.bands == null ? 'ratio' : 'all');
  };

  return {
    came,
    want: () => {
      wanted += 1;
      came();
      return () => {
        wanted -= 1;
      };
    },
  };
};
