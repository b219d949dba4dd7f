/** The clinic's own for one stage: its weeks, its share of body weight, a note. Never mixed with what has a source. */
import { useState } from 'react';
import { CLINIC_TEXT_LENGTH, stageNotesOf } from '../../cases';
import type { StageId } from '../../ids';
import { usePages, useSession } from '../context';
import { OwnRange } from './OwnRange';
import { OwnText } from './OwnText';

const MOST_WEEKS = 520;
const WHOLE = 100;

export const StageOwn = ({ stage }: { readonly stage: StageId }) => {
  const { say, session } = usePages();
  const file = useSession((state) => state.file);
  const { weeks, sharePercent, note } = stageNotesOf(file, stage);
  const { commands } = session;
  const [open, setOpen] = useState(weeks !== null || sharePercent !== null || note !== null);
  return (
    <details className="way-more" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{say('stages.own')}</summary>
      <p className="small-print">{say('stages.ownHint')}</p>
      <OwnRange
        legend={say('stages.ownWeeks')}
        unit={say('stages.weeksUnit')}
        most={MOST_WEEKS}
        value={weeks === null ? null : { low: weeks.from, high: weeks.to }}
        onSet={(range) => commands.setStageWeeks(stage, range === null ? null : { from: range.low, to: range.high })}
      />
      <OwnRange
        legend={say('stages.ownShare')}
        unit={say('stages.percentUnit')}
        most={WHOLE}
        value={sharePercent}
        onSet={(range) => commands.setStageShare(stage, range)}
      />
      <OwnText
        label={say('stages.ownNote')}
        value={note}
        most={CLINIC_TEXT_LENGTH}
        onSay={(text) => commands.setStageNote(stage, text)}
      />
    </details>
  );
};
