/** One count of one group: in words, and of a hundred squares where twenty people or more were counted. Never of one person. */
import type { TroubleCount } from '../../explain/trouble-messages';
import type { Run } from '../../wording/types';
import { PeopleSquares } from '../parts/PeopleSquares';
import { Runs } from '../parts/Runs';

interface Properties {
  readonly count: TroubleCount;
  readonly runs: readonly Run[];
}

export const TroubleLine = ({ count: { count, of, percent }, runs }: Properties) => (
  <>
    <Runs runs={runs} />
    {count !== null && of !== null && <PeopleSquares count={Math.round(percent)} of={100} people={of} />}
  </>
);
