/** Tests before more is asked of the foot: how each is done, what was measured in others, and from whom. */
import type { Finding } from '../../explain/types';
import { usePages, useSession } from '../context';
import { StageLine } from './StageLine';
import { textsOf, useBareText } from './stage-parts';

export const StageTests = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const { say } = usePages();
  const bare = useBareText();
  const records = useSession((state) => state.content.returnTests);
  const reader = useSession((state) => state.reader);
  const tests = textsOf(findings, 'returnTest');
  const norms = textsOf(findings, 'returnNorm');
  return tests.length === 0 ? null : (
    <details className="way-more">
      <summary>{say('stages.tests')}</summary>
      <ul className="way-daily">
        {tests.map((finding) => {
          const { test } = finding.message.args.at;
          const record = records.find(({ id }) => id === test);
          return (
            <li key={finding.id}>
              <p className="way-question">{reader === 'patient' ? record?.plain : record?.term}</p>
              <p>
                <StageLine {...bare(finding)} />
              </p>
              <ul className="way-lines">
                {norms
                  .filter((norm) => norm.message.args.at.test === test)
                  .map((norm) => (
                    <li key={norm.id}>
                      <StageLine {...bare(norm)} />
                    </li>
                  ))}
              </ul>
            </li>
          );
        })}
      </ul>
      <p className="small-print">{say('stages.testsNote')}</p>
    </details>
  );
};
