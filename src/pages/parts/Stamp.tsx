/** The stamps of a claim, 20 px, drawn in the text's own colour and always with their word. */
import { useWords } from '../context';

export type StampKind = 'reported' | 'confirmed' | 'inferred' | 'ruledOut' | 'contradiction';

const Shape = ({ kind }: { readonly kind: StampKind }) => {
  if (kind === 'confirmed')
    return (
      <path
        fillRule="evenodd"
        fill="currentColor"
        d="M6.5 1.5h7l5 5v7l-5 5h-7l-5-5v-7zM10 6.8a3.2 3.2 0 1 0 0 6.4a3.2 3.2 0 1 0 0-6.4z"
      />
    );
  if (kind === 'inferred')
    return (
      <g fill="currentColor">
        <circle cx="10" cy="4.6" r="2.5" />
        <circle cx="4.4" cy="14.4" r="2.5" />
        <circle cx="15.6" cy="14.4" r="2.5" />
      </g>
    );
  const stroke = { fill: 'none', stroke: 'currentColor', strokeWidth: 2.4 } as const;
  if (kind === 'reported')
    return (
      <g {...stroke}>
        <path d="M14.9 5.1A6.9 6.9 0 1 0 14.9 14.9" />
        <path d="M10 10H19" />
      </g>
    );
  if (kind === 'ruledOut')
    return (
      <g {...stroke}>
        <path d="M6.5 2.7h7l4 4v6.6l-4 4h-7l-4-4V6.7z" />
        <path d="M3 17L17 3" />
      </g>
    );
  return (
    <g {...stroke}>
      <path d="M8 3.4A6.9 6.9 0 0 0 8 16.6" />
      <path d="M12 3.4A6.9 6.9 0 0 1 12 16.6" />
    </g>
  );
};

export const Stamp = ({ kind, worded = false }: { readonly kind: StampKind; readonly worded?: boolean }) => {
  const say = useWords();
  return (
    <span className="stamp">
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
        <Shape kind={kind} />
      </svg>
      <span className={worded ? 'stamp-word' : 'unseen'}>{say(`stamp.${kind}`)}</span>
    </span>
  );
};
