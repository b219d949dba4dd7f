/** The way to the list of keys and gestures, small enough to stand in the strip under the picture. */
import { usePages } from '../context';

export const HelpButton = () => {
  const { say, setHelp } = usePages();
  return (
    <button
      type="button"
      className="small help-button"
      aria-label={say('help.open')}
      title={say('help.open')}
      aria-haspopup="dialog"
      onClick={() => setHelp(true)}
    >
      ?
    </button>
  );
};
