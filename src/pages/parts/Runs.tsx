/** A sentence: figures carry an underline for how well they are known and, for those who cannot see it, the word. */
import type { Mark } from '../../content/schema';
import type { Run } from '../../wording/types';
import { useWords } from '../context';

const CLASS: Readonly<Record<Mark, string>> = {
  seen: 'known-seen',
  weak: 'known-weak',
  'common practice': 'known-practice',
  'from memory': 'known-memory',
};
const WORD: Readonly<Record<Mark, string>> = {
  seen: 'mark.seen',
  weak: 'mark.weak',
  'common practice': 'mark.practice',
  'from memory': 'mark.memory',
};

export const markWordKey = (mark: Mark): string => WORD[mark];

/** An underline that breaks over two lines reads badly; a number with its unit is shorter than this. */
const ONE_LINE = 22;

export const Known = ({ mark, children }: { readonly mark: Mark; readonly children: string }) => {
  const say = useWords();
  return (
    <>
      <span className={children.length <= ONE_LINE ? `${CLASS[mark]} one-line` : CLASS[mark]}>{children}</span>
      <span className="unseen"> ({say(WORD[mark])})</span>
    </>
  );
};

export const Runs = ({ runs }: { readonly runs: readonly Run[] }) => (
  <>
    {runs.map((run, index) => {
      const key = `${index}${run.text}`;
      if (run.mark !== undefined)
        return (
          <Known key={key} mark={run.mark}>
            {run.text}
          </Known>
        );
      if (run.latin)
        return (
          <i key={key} lang="la" className="latin">
            {run.text}
          </i>
        );
      return <span key={key}>{run.text}</span>;
    })}
  </>
);
