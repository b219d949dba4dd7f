/** What may be done today: the weight on the foot as a share and in kilograms, aids, and what is known of such orders. */
import type { Finding } from '../../explain/types';
import { usePages } from '../context';
import { StageLine } from './StageLine';
import { StageLoad } from './StageLoad';
import { StageTold, withMessage } from './StageTold';
import { textsOf, useBareText } from './stage-parts';

export const StageToday = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const { say } = usePages();
  const bare = useBareText();
  const aids = textsOf(findings, 'stageAids').map(bare);
  const practice = textsOf(findings, 'weightPractice').map((finding) => ({ id: finding.id, ...bare(finding) }));
  return (
    <section>
      <h3 className="list-head">{say('stages.today')}</h3>
      <div className="way-weight">
        <StageTold findings={withMessage(findings, 'stageToday')} />
      </div>
      <StageTold findings={withMessage(findings, 'stageOvershoot')} />
      {aids.map((line) => (
        <p key={line.text}>
          <StageLine {...line} />
        </p>
      ))}
      {practice.length > 0 && (
        <details className="way-more">
          <summary>{say('stages.scale')}</summary>
          <ul className="way-lines">
            {practice.map(({ id, ...line }) => (
              <li key={id}>
                <StageLine {...line} />
              </li>
            ))}
          </ul>
        </details>
      )}
      <StageLoad findings={findings} />
    </section>
  );
};
