/** The foot itself, apart from any injury: its shape, how it is held, what is measured on it, what can be taken for a fracture. */
import { useEffect, useState } from 'react';
import { useCommands, usePages } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { LookAlikes } from './LookAlikes';
import { Measures } from './Measures';
import { PoseChoice } from './PoseChoice';
import { ShapeSliders } from './ShapeSliders';
import { TakeAlong } from './TakeAlong';

/** Measured and listed only while it is open. */
export const FootPart = () => {
  const { say } = usePages();
  const [open, setOpen] = useState(false);
  return (
    <Disclosure title={say('foot.title')} open={open} onToggle={setOpen}>
      {open && <FootTools />}
    </Disclosure>
  );
};

const FootTools = () => {
  const { plainFoot } = useCommands();
  // Closed, left for another question or another page: no pose, line or extra bone stays in a picture that does not name it.
  useEffect(() => plainFoot, [plainFoot]);
  return (
    <>
      <ShapeSliders />
      <PoseChoice />
      <Measures />
      <LookAlikes />
      <TakeAlong />
    </>
  );
};
