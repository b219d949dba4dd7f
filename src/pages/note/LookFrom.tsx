/** The named views as buttons: the same as the number keys on the picture. */
import { VIEWS } from '../../session/types';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';

export const LookFrom = () => {
  const { say, session } = usePages();
  const view = useSession((state) => state.view);
  return (
    <Disclosure title={say('view.lookFrom')}>
      <div className="chips">
        {VIEWS.map((each) => (
          <button
            key={each}
            type="button"
            className="small"
            aria-pressed={each === view}
            onClick={() => session.commands.lookFrom(each)}
          >
            {say(`stage.view.${each}`)}
          </button>
        ))}
      </div>
    </Disclosure>
  );
};
