/** What the share of a stage does to the bone, against plain walking: worked out only while somebody has it open. */
import { useState } from 'react';
import type { Finding } from '../../explain/types';
import { usePages } from '../context';
import { useBands } from '../how/use-bands';
import { StageTold, withMessage } from './StageTold';

/** Each change of the case makes the draws anew: until they come, those before stand, greyed. */
const useKept = (findings: readonly Finding[]): { readonly loads: readonly Finding[]; readonly old: boolean } => {
  const now = withMessage(findings, 'stageLoad', 'stageNoLoad');
  const [kept, keep] = useState<readonly Finding[]>([]);
  const same = now.length === kept.length && now.every((finding, i) => finding === kept[i]);
  if (now.length > 0 && !same) keep(now);
  const pending = withMessage(findings, 'stageLoadPending');
  if (pending.length === 0) return { loads: now, old: false };
  return kept.length > 0 ? { loads: kept, old: true } : { loads: pending, old: false };
};

export const StageLoad = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const { say } = usePages();
  const [open, setOpen] = useState(false);
  const { loads, old } = useKept(findings);
  useBands(open && withMessage(findings, 'stageLoad', 'stageLoadPending').length > 0);
  return loads.length === 0 ? null : (
    <details className="way-more" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{say('stages.load')}</summary>
      <div className={old ? 'way-old' : undefined} aria-busy={old}>
        <StageTold findings={loads} />
      </div>
      {withMessage(loads, 'stageLoad').length > 0 && (
        <p className="small-print">
          {say('stages.loadNote')} {say('supports.standIn')}
        </p>
      )}
    </details>
  );
};
