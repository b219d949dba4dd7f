/** Question 2: what if, what raises the load, how sure it is, forces along the bones, the whole calculation, and its limits. */
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { useOpenCalculation } from './calculation';
import { Limits } from './Limits';
import { Sliders } from './Sliders';
import { StationDiagram } from './StationDiagram';
import { Sure } from './Sure';
import { WhyHere } from './WhyHere';

const OpenCalculation = () => {
  const { say } = usePages();
  const open = useOpenCalculation();
  if (open === null) return null;
  return (
    <p className="fold">
      <button type="button" className="button button-wide" onClick={open}>
        {say('calculation.open')}
      </button>
    </p>
  );
};

export const HowPart = () => {
  const { say } = usePages();
  const patient = useSession((state) => state.reader === 'patient');
  const loaded = useSession((state) => (state.explanation?.loads ?? null) !== null);
  return (
    <>
      <Disclosure title={say('whatIf.try')}>
        <Sliders />
      </Disclosure>
      {loaded && (
        <Disclosure title={say('whyHere.title')}>
          <WhyHere />
        </Disclosure>
      )}
      {loaded && !patient && (
        <Disclosure title={say('sure.title')}>
          <Sure />
        </Disclosure>
      )}
      <Disclosure title={say('how.diagram')}>
        <StationDiagram />
      </Disclosure>
      <OpenCalculation />
      {loaded && (
        <Disclosure title={say('limits.title')}>
          <Limits />
        </Disclosure>
      )}
    </>
  );
};
