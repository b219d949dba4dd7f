/** What the explanation takes for usual because the case says nothing of it: shown as such. */
import { factsOf } from '../../cases';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';

export const Defaults = () => {
  const { say } = usePages();
  const file = useSession((state) => state.file);
  const explanation = useSession((state) => state.explanation);
  const facts = factsOf(file);
  const peaks = findingsOf(explanation, 'loadPull')[0]?.message.args ?? null;
  const lines = [
    facts.side.state === 'notStated' ? say('defaults.side') : null,
    facts.footShape.state === 'notStated' ? say('defaults.shape') : null,
    facts.heightCm.state === 'notStated' ? say('defaults.size') : null,
    peaks?.massAssumed ? say('defaults.mass', { kg: Math.round(peaks.mass.value) }) : null,
    facts.treatments.length === 0 ? say('defaults.treatment') : null,
    facts.injuryDate.state === 'notStated' && explanation?.start === null ? say('defaults.date') : null,
  ].filter((line) => line !== null);
  if (lines.length === 0) return null;
  return (
    <section className="defaults">
      <h2>{say('defaults.title')}</h2>
      <ul className="plain">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
};
