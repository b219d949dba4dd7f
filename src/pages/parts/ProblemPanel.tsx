/** An error the person can act on: what is wrong, where, what to do. Nothing has changed when it appears. */
import { usePages, useSession } from '../context';
import { thenHeading } from './focus-onward';

export const ProblemPanel = () => {
  const { say, session } = usePages();
  const problem = useSession((state) => state.problem);
  return (
    <div role="alert">
      {problem !== null && (
        <section ref={thenHeading} className="problem">
          <h2>{say('problem.title')}</h2>
          <p>{problem.what}</p>
          {problem.where !== null && (
            <p>
              {say('problem.where')} <code>{problem.where}</code>
            </p>
          )}
          <p>{problem.remedy}</p>
          <p className="small-print">{say('problem.nothingChanged')}</p>
          <button type="button" className="button" onClick={() => session.commands.dismissProblem()}>
            {say('problem.close')}
          </button>
        </section>
      )}
    </div>
  );
};
