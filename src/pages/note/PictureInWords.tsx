/** The long text alternative of the plate, for anyone who wants it. */
import { usePages } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { usePictureWords } from '../parts/Plate';

export const PictureInWords = () => {
  const { say } = usePages();
  const words = usePictureWords();
  if (words === null) return null;
  return (
    <Disclosure title={say('note.picture')}>
      <p>{words.short}</p>
      <p>{words.long}</p>
    </Disclosure>
  );
};
