/** Findings of a stage as sentences, each figure underlined by how well it is known. */
import type { MessageId } from '../../explain/messages';
import type { Finding } from '../../explain/types';
import { wordFinding } from '../../wording';
import { useSession } from '../context';
import { Runs } from '../parts/Runs';

export const withMessage = (findings: readonly Finding[], ...ids: readonly MessageId[]): readonly Finding[] =>
  findings.filter(({ message }) => ids.includes(message.id));

export const StageTold = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  if (explanation === null || findings.length === 0) return null;
  return (
    <ul className="way-lines">
      {findings.map((finding) => (
        <li key={finding.id}>
          <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
        </li>
      ))}
    </ul>
  );
};
