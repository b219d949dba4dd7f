/** The usual range and, side by side, what single clinics wrote and single studies did. They differ: none of them is an order. */
import type { Finding } from '../../explain/types';
import { wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { Runs } from '../parts/Runs';

export const StageSheets = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const sheets = findings.filter(({ message }) => message.id === 'stageSheet');
  return explanation === null || sheets.length === 0 ? null : (
    <details className="way-more">
      <summary>{say('stages.sheets', { count: sheets.length })}</summary>
      <ul className="way-lines">
        {sheets.map((finding) => (
          <li key={finding.id}>
            <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
          </li>
        ))}
      </ul>
      <p className="small-print">{say('stages.sheetsNote')}</p>
    </details>
  );
};
