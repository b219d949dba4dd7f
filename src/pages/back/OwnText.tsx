/** A text of the clinic's own: kept when the field is left, so that a sentence is one step to undo and not one a letter. */
import { useId } from 'react';
import { usePages } from '../context';

interface Properties {
  readonly label: string;
  /** The label for those who hear it apart from what stands above. */
  readonly spoken?: string;
  readonly value: string | null;
  readonly most: number;
  readonly onSay: (text: string | null) => void;
}

export const OwnText = ({ label, spoken, value, most, onSay }: Properties) => {
  const id = useId();
  const { announce, say } = usePages();
  return (
    <p className="own-text">
      <label htmlFor={id} className="own-mark">
        {label}
      </label>
      <textarea
        // Undone or opened anew, the field shows what the case says.
        key={value ?? ''}
        id={id}
        rows={2}
        maxLength={most}
        aria-label={spoken}
        defaultValue={value ?? ''}
        onBlur={(event) => {
          const typed = event.currentTarget.value;
          if (typed.trim() === (value ?? '').trim()) return;
          onSay(typed);
          announce(say('stages.kept'));
        }}
      />
    </p>
  );
};
