/** A reference with how it was read, in the words used everywhere. */
import type { HowRead } from '../../anatomy/how-read';
import { usePages } from '../context';

const WORD: Readonly<Record<HowRead, string>> = {
  read: 'mark.seen',
  abstract: 'mark.abstract',
  'common practice': 'mark.practice',
  'from memory': 'mark.memory',
};

export const SourceText = ({ source, how }: { readonly source: string; readonly how: HowRead }) => {
  const { say } = usePages();
  const word = say(WORD[how]);
  return <cite>{source === how ? word : say('foot.source', { source, how: word })}</cite>;
};
