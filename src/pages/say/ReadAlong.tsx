/** The clock of a reading, its lines as divisions of a rule as long as they take to say, and the buttons that move it. */
import { useEffect } from 'react';
import { clock, type Script } from '../../telling';
import { usePages, useSession } from '../context';
import type { Reading } from './use-reading';

const WIDTH = 400;
const HEIGHT = 18;

const Rule = ({ script, reading }: { readonly script: Script; readonly reading: Reading }) => {
  const x = (second: number): number => (second / script.totalSeconds) * WIDTH;
  const current = script.lines[reading.line];
  return (
    <svg className="reading-rule" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
      {current !== undefined && (
        <rect className="reading-slide" x={x(current.startSecond)} y="0" width={x(current.seconds)} height="6" />
      )}
      <path
        className="rule-line"
        vectorEffect="non-scaling-stroke"
        d={`M0 1H${WIDTH}${script.lines.map(({ startSecond }) => `M${x(startSecond)} 1V${HEIGHT}`).join('')}`}
      />
      <path className="reading-now" vectorEffect="non-scaling-stroke" d={`M${x(reading.second)} 0V${HEIGHT}`} />
    </svg>
  );
};

export const ReadAlong = ({ script, reading }: { readonly script: Script; readonly reading: Reading }) => {
  const { say, session } = usePages();
  const asked = useSession((state) => state.question);
  const question = reading.open ? (script.lines[reading.line]?.question ?? null) : null;

  // The picture goes along with what is said. A person may look elsewhere meanwhile: only another line brings it back.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the line is when, not what
  useEffect(() => {
    if (question !== null && question !== asked) session.commands.ask(question);
  }, [question, reading.line]);

  if (!reading.open)
    return (
      <button type="button" className="button" onClick={reading.start}>
        {say('say.readAlong')}
      </button>
    );
  return (
    <section className="reading" aria-label={say('say.reading')}>
      <p className="reading-clock">
        <span role="timer" aria-label={say('say.elapsed')}>
          {clock(reading.second)}
        </span>{' '}
        <span className="small-print">{say('say.ofTotal', { total: clock(script.totalSeconds) })}</span>
      </p>
      <Rule script={script} reading={reading} />
      <div className="row">
        <button type="button" className="button" onClick={() => reading.toLine(reading.line - 1)}>
          {say('say.lineBefore')}
        </button>
        <button type="button" className="button button-main" onClick={reading.running ? reading.wait : reading.goOn}>
          {say(reading.running ? 'say.wait' : 'say.goOn')}
        </button>
        <button type="button" className="button" onClick={() => reading.toLine(reading.line + 1)}>
          {say('say.nextLine')}
        </button>
        <button type="button" className="button" onClick={reading.leave}>
          {say('say.leaveReading')}
        </button>
      </div>
    </section>
  );
};
