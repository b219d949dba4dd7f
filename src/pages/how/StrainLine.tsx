/** A strain as others measured it on bones of other people, with its source: microstrain of nobody on the screen. */
import type { StrainRecord } from '../../content/schema';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';

export const StrainLine = ({ record }: { readonly record: StrainRecord }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const { value, low, high, note, evidence } = record.figure;
  const told =
    low === undefined || high === undefined
      ? say('derivation.microstrain', { value })
      : say('derivation.microstrainBand', { value, low, high });
  const source = evidence.source === null ? say('figures.noSource') : sourceName(content, evidence.source);
  return (
    <>
      <Known mark={evidence.mark}>{told}</Known> {note}{' '}
      {say('strains.source', { source, mark: say(markWordKey(evidence.mark)) })}
    </>
  );
};
