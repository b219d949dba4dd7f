/** One source: its line, how it was read, where it is found, and every statement that rests on it with its mark. */
import { usePages } from '../context';
import { Known, markWordKey } from '../parts/Runs';
import { addressOf, type SourceRow } from './source-rows';

const Address = ({ source }: Pick<SourceRow, 'source'>) => {
  const { say, announce } = usePages();
  const address = addressOf(source);
  if (address === null) return null;
  const copy = () =>
    void navigator.clipboard
      .writeText(address.text)
      .then(() => announce(say('sources.copied', { address: address.text })))
      .catch(() => announce(say('sources.notCopied')));
  return (
    <p className="row source-address">
      <a href={address.href} target="_blank" rel="noreferrer noopener">
        {address.text}
      </a>
      <button
        type="button"
        className="small"
        aria-label={say('sources.copyOf', { address: address.text })}
        onClick={copy}
      >
        {say('sources.copy')}
      </button>
    </p>
  );
};

export const SourceItem = ({ row: { source, line, uses } }: { readonly row: SourceRow }) => {
  const { say } = usePages();
  return (
    <details className="source">
      <summary>
        {line} <span className="small-print">{say('sources.uses', { count: uses.length })}</span>
      </summary>
      {source.note !== undefined && <p className="small-print">{source.note}</p>}
      <Address source={source} />
      <ul className="source-uses">
        {uses.map((use) => (
          <li key={`${use.kind}${use.record}${use.statement}${use.mark}`}>
            {use.statement}{' '}
            <span className="small-print">
              {use.mark === null ? say('sources.named') : <Known mark={use.mark}>{say(markWordKey(use.mark))}</Known>}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
};
