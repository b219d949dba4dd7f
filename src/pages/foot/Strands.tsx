/** Ligaments, tendons, vessels and nerves that matter to the injury: each drawn on request, with what it is and why it matters. */
import { useEffect } from 'react';
import type { Strand } from '../../content/schema';
import { usePages, useSession } from '../context';
import { bringPlate } from '../parts/bring-plate';
import { Disclosure } from '../parts/Disclosure';
import { useStrands } from './use-strands';

const Entry = ({ strand }: { readonly strand: Strand }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const shown = useSession((state) => state.strand) === strand.id;
  const show = () => {
    session.commands.showStrand(shown ? null : strand.id);
    if (shown) return;
    session.commands.lookFrom(strand.view);
    bringPlate();
  };
  return (
    <li>
      <button type="button" className="choice" aria-pressed={shown} onClick={show}>
        {reader === 'study' ? strand.term : strand.plain}
      </button>
      {shown && (
        <p>
          {say(`strand.${strand.kind}`)} {strand.what[reader]}
        </p>
      )}
    </li>
  );
};

const List = ({ strands }: { readonly strands: readonly Strand[] }) => {
  const { say, session } = usePages();
  // Closed, or left for another question: nothing stays in a picture that does not name it.
  useEffect(() => () => session.commands.showStrand(null), [session]);
  return (
    <>
      <p>{say('strands.hint')}</p>
      <ul className="plain-list strand-list">
        {strands.map((strand) => (
          <Entry key={strand.id} strand={strand} />
        ))}
      </ul>
    </>
  );
};

export const Strands = () => {
  const { say } = usePages();
  const strands = useStrands();
  return strands.length === 0 ? null : (
    <Disclosure title={say('strands.title')}>
      <List strands={strands} />
    </Disclosure>
  );
};
