/** For the person whose foot it is: the question, the picture, one sentence, the picture's short key, three large buttons. No other case can be seen. */
import { QUESTION_IDS } from '../../ids';
import { WeeksPart } from '../back/BackPart';
import { usePages, useSession } from '../context';
import { useAgainstBreaks } from '../how/use-against-breaks';
import { useBands } from '../how/use-bands';
import { OfThisAge } from '../note/Cautions';
import { Legend } from '../note/Legend';
import { useQuestionWords } from '../note/Note';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { PressButton } from '../parts/PressButton';
import { Runs } from '../parts/Runs';
import { Stamp } from '../parts/Stamp';

export const PatientTitle = () => {
  const { say, go } = usePages();
  const question = useSession((state) => state.question);
  const words = useQuestionWords();
  return (
    <header className="patient-head">
      <h1 className="question-title" tabIndex={-1}>
        {words?.title ?? say(`question.${question}`)}
      </h1>
      <button type="button" className="button" onClick={() => go({ page: 'explain' })}>
        {say('show.leave')}
      </button>
    </header>
  );
};

/** Question 5 speaks of weeks: their rule stands beside the picture. */
export const PatientWeeks = () => {
  const asked = useSession((state) => state.question === 'back');
  return asked ? (
    <div className="patient-weeks">
      <WeeksPart />
    </div>
  ) : null;
};

export const PatientFoot = () => {
  const { say, session, go } = usePages();
  const question = useSession((state) => state.question);
  const explanation = useSession((state) => state.explanation);
  const words = useQuestionWords();
  // Where the pull lies is told from the ensemble.
  useBands(question === 'how');
  const against = useAgainstBreaks();
  const nothingKnown = useNothingKnown();
  const index = QUESTION_IDS.indexOf(question);
  const before = QUESTION_IDS[index - 1];
  const after = QUESTION_IDS[index + 1];
  const { commands } = session;
  return (
    <div className="patient-foot">
      <p className="one-sentence" aria-live="polite">
        {words === null ? (
          say('note.working')
        ) : (
          <>
            {words.sentence.stamp !== null && <Stamp kind={words.sentence.stamp} />} <Runs runs={words.sentence.runs} />
          </>
        )}
      </p>
      {against !== null && (
        <p className="patient-beside">
          <Runs runs={against.runs} />
        </p>
      )}
      <OfThisAge question={question} />
      {question !== 'options' && <Legend question={question} short />}
      {nothingKnown && <NothingYet page="show" />}
      {explanation?.draft && <p className="small-print">{say('show.draft')}</p>}
      <div className="patient-buttons">
        <PressButton off={before === undefined} onPress={() => before !== undefined && commands.ask(before)}>
          {say('show.back')}
        </PressButton>
        <button type="button" className="button" onClick={() => commands.lookFrom(index === 0 ? 'outer' : 'close')}>
          {say('show.again')}
        </button>
        <button
          type="button"
          className="button button-main"
          onClick={() => (after === undefined ? go({ page: 'explain' }) : commands.ask(after))}
        >
          {say(after === undefined ? 'show.done' : 'show.next')}
        </button>
      </div>
    </div>
  );
};
