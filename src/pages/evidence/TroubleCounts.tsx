/** What was counted of one trouble, group by group: as many as are read at a glance, the others one press away. */
import type { TroubleCount } from '../../explain/trouble-messages';
import type { Run } from '../../wording/types';
import { usePages } from '../context';
import { PeopleSquares } from '../parts/PeopleSquares';
import { Runs } from '../parts/Runs';

export interface ToldCount {
  readonly key: string;
  readonly count: TroubleCount;
  readonly runs: readonly Run[];
}

const IN_SIGHT = 3;

/** In words, and of a hundred squares where twenty people or more were counted. Never of one person. */
const Line = ({ count: { count, of, percent }, runs }: ToldCount) => (
  <li>
    <Runs runs={runs} />
    {count !== null && of !== null && <PeopleSquares count={Math.round(percent)} of={100} people={of} />}
  </li>
);

const List = ({ told }: { readonly told: readonly ToldCount[] }) => (
  <ul className="plain counts">
    {told.map((each) => (
      <Line {...each} key={each.key} />
    ))}
  </ul>
);

export const TroubleCounts = ({ told }: { readonly told: readonly ToldCount[] }) => {
  const { say } = usePages();
  const more = told.slice(IN_SIGHT);
  return (
    <>
      <List told={told.slice(0, IN_SIGHT)} />
      {more.length > 0 && (
        <details className="more-counts">
          <summary>{say('troubles.more', { count: more.length })}</summary>
          <List told={more} />
        </details>
      )}
    </>
  );
};
