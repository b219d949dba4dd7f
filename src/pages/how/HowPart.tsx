/** Question 2: the model's stations drawn and listed, and what happens if the person, the movement or the foot were other. */
import { useWords } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { Sliders } from './Sliders';
import { StationDiagram } from './StationDiagram';

export const HowPart = () => {
  const say = useWords();
  return (
    <>
      <Disclosure title={say('how.diagram')}>
        <StationDiagram />
      </Disclosure>
      <Disclosure title={say('whatIf.try')}>
        <Sliders />
      </Disclosure>
    </>
  );
};
