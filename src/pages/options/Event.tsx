/** What one arm of a study counted, as printed, and its people as squares. */
import type { ArmFigures } from '../../explain/messages';
import { usePages } from '../context';
import { PeopleSquares } from '../parts/PeopleSquares';
import { Known } from '../parts/Runs';
import { wordKey } from '../words';
import { rounded } from './rounded';

export const Event = ({ arm }: { readonly arm: ArmFigures }) => {
  const { say } = usePages();
  if (arm.event === null) return <>{say('studies.notCounted')}</>;
  const { what, count, of, unit, percent } = arm.event;
  const figure =
    count !== null && of !== null
      ? say(unit === 'breaks' ? 'studies.countOfBreaks' : 'studies.countOf', { count, of })
      : percent !== null
        ? say('studies.percent', { percent: rounded(percent) })
        : say('studies.notCounted');
  return (
    <>
      {say(`event.${wordKey(what)}`)} <Known mark={arm.mark}>{figure}</Known>
      {count !== null && of !== null && <PeopleSquares count={count} of={of} />}
    </>
  );
};
