/** Question 4, on request: what boot, sole, wedge and screw do to the load on this bone, as the frame has it. */
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { RodRule } from './RodRule';
import { ScrewTable } from './ScrewTable';
import { Supports } from './Supports';
import './supports.css';

export const SupportsPart = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const speaks = (['support', 'supportPending'] as const).some((id) => findingsOf(explanation, id).length > 0);
  const screw = findingsOf(explanation, 'screwLength').length > 0;
  if (!speaks && !screw) return null;
  return (
    <Disclosure title={say('supports.title')}>
      <Supports />
      {screw && (
        <>
          <p className="strip-title">{say('screw.title')}</p>
          <ScrewTable />
          <RodRule />
        </>
      )}
    </Disclosure>
  );
};
