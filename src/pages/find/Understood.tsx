/** What a search was taken to say beyond its plain words: what is not so, what was only asked, what is of old, and what nobody here knows. */
import type { Found } from '../../explain/find';
import { useWords } from '../context';

const quoted = (texts: readonly string[]): string => [...new Set(texts)].map((text) => `“${text}”`).join(', ');

export const Understood = ({ found }: { readonly found: Found }) => {
  const say = useWords();
  const { denied, asked, earlier, unknown, unknownCodes } = found;
  return (
    <>
      {denied.length > 0 && <span className="seek-read">{say('seek.denied', { words: quoted(denied) })}</span>}
      {asked.length > 0 && <span className="seek-read">{say('seek.askedAbout', { words: quoted(asked) })}</span>}
      {earlier.length > 0 && <span className="seek-read">{say('seek.earlier', { words: quoted(earlier) })}</span>}
      {unknownCodes.length > 0 && (
        <span className="seek-read">{say('seek.unknownCode', { codes: unknownCodes.join(', ') })}</span>
      )}
      {unknown.length > 0 && <span className="seek-read">{say('seek.unknown', { words: unknown.join(', ') })}</span>}
    </>
  );
};
