/** The foot itself, apart from any injury: its shape, how it is held, what is measured on it, what can be taken for a fracture. */
import { usePages } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { PoseChoice } from './PoseChoice';
import { ShapeSliders } from './ShapeSliders';
import { TakeAlong } from './TakeAlong';

export const FootPart = () => {
  const { say } = usePages();
  return (
    <Disclosure title={say('foot.title')}>
      <ShapeSliders />
      <PoseChoice />
      <TakeAlong />
    </Disclosure>
  );
};
