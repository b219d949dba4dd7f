/** What was published on one thing that may raise the load: what says more beside what says less or no difference. */
import type { LoadFactor } from '../../content/schema';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';
import { wordKey } from '../words';

export const SAYS = [
  'raises',
  'lowers',
  'no difference',
] as const satisfies readonly LoadFactor['published'][number]['says'][];

export const Published = ({ factor }: { readonly factor: LoadFactor }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const patient = useSession((state) => state.reader === 'patient');
  if (patient) return null;
  return (
    <dl className="published">
      {SAYS.filter((says) => factor.published.some((each) => each.says === says)).map((says) => (
        <div key={says}>
          <dt>{say(`published.${wordKey(says)}`)}</dt>
          {factor.published
            .filter((each) => each.says === says)
            .map(({ text, evidence: { source, mark } }) => (
              <dd key={text}>
                {text}{' '}
                <span className="small-print">
                  {source === null ? say('figures.noSource') : sourceName(content, source)},{' '}
                </span>
                <span className="small-print">
                  <Known mark={mark}>{say(markWordKey(mark))}</Known>
                </span>
              </dd>
            ))}
        </div>
      ))}
    </dl>
  );
};
