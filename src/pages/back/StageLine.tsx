/** One line of a stage with what stands behind it: the source by name and how surely it was read; common practice is said once above. */
import type { Evidence } from '../../content/schema';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';

export const Behind = ({ evidence }: { readonly evidence: Evidence | null }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  if (evidence === null || evidence.source === null) return null;
  return (
    <span className="way-source">
      {' '}
      {sourceName(content, evidence.source)}: <Known mark={evidence.mark}>{say(markWordKey(evidence.mark))}</Known>
    </span>
  );
};

export const StageLine = ({ text, evidence }: { readonly text: string; readonly evidence: Evidence | null }) => (
  <>
    {text}
    <Behind evidence={evidence} />
  </>
);

/** Over a list in which nothing has a source of its own unless one stands beside it. */
export const PracticeNote = () => {
  const { say } = usePages();
  return (
    <p className="small-print">
      <Known mark="common practice">{say('stages.practice')}</Known>
    </p>
  );
};
