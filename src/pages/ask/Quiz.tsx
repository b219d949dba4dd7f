/** Ten questions, one at a time, answered by mouse, touch or list; each is graded at once and says why. */
import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { Foot } from '../../anatomy/types';
import type { Session } from '../../session/types';
import { type Grade, grade, type QuizAnswer, type QuizItem, questionsOf } from '../../study';
import { sourceLine } from '../../wording';
import { usePages, useSession } from '../context';
import { thenHeading } from '../parts/focus-onward';
import { AnswerForm } from './AnswerForm';

const randomSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;

/** Lights the bone asked about and lets the picture be pointed at, for as long as the question stands. */
const useLit = (session: Session, item: QuizItem | undefined, done: boolean) => {
  useEffect(() => {
    if (item === undefined) return;
    session.commands.setQuiz({
      litBone: item.kind === 'zone' ? item.breakAt.bone : item.lit,
      litRegion: item.kind === 'zone' ? item.breakAt.region : null,
      picking: item.kind === 'pointTo' && !done,
    });
    return () => session.commands.setQuiz(null);
  }, [session, item, done]);
};

const Result = ({ item, result }: { readonly item: QuizItem; readonly result: Grade }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const sources = content.sources.filter((source) => item.sources.includes(source.id));
  return (
    <section className="feedback" role="status">
      <p>
        <b>{result.feedback}</b>
      </p>
      <p className="list-head">{say('quiz.why')}</p>
      <ul className="plain">
        {result.why.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {sources.length > 0 && <p className="small-print">{sources.map(sourceLine).join(' ')}</p>}
    </section>
  );
};

/** Who goes on to another question starts at its prompt: the button that they pressed is gone. */
const usePromptFocus = (index: number): RefObject<HTMLHeadingElement | null> => {
  const prompt = useRef<HTMLHeadingElement>(null);
  const shown = useRef(index);
  useEffect(() => {
    if (shown.current === index) return;
    shown.current = index;
    prompt.current?.focus();
  }, [index]);
  return prompt;
};

/** The answer's own buttons go or rest once it is given: who had the focus there goes on at the next step, not who has it elsewhere. */
const nextStep = (button: HTMLButtonElement | null): void => {
  const now = document.activeElement;
  if (now === document.body || button?.parentElement?.contains(now)) button?.focus();
};

const Round = ({
  foot,
  seed,
  onAgain,
}: {
  readonly foot: Foot;
  readonly seed: number;
  readonly onAgain: () => void;
}) => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const items = useMemo(() => questionsOf(content, foot, { count: 10, seed }), [content, foot, seed]);
  const [index, setIndex] = useState(0);
  const prompt = usePromptFocus(index);
  const [results, setResults] = useState<readonly Grade[]>([]);
  const item = items[index];
  const result = results[index] ?? null;
  useLit(session, item, result !== null);
  if (item === undefined)
    return (
      <section className="feedback" role="status">
        <h2 ref={prompt} tabIndex={-1}>
          {say('quiz.end')}
        </h2>
        <p>{say('quiz.score', { full: results.filter((each) => each.full).length, of: items.length })}</p>
        <button ref={thenHeading} type="button" className="button button-main" onClick={onAgain}>
          {say('quiz.again')}
        </button>
      </section>
    );
  // A second answer to the same question changes nothing: the first one stands.
  const answered = (answer: QuizAnswer) =>
    setResults((before) => (before.length > index ? before : [...before, grade(item, answer)]));
  return (
    <section>
      <p className="question-count">{say('quiz.count', { number: index + 1, of: items.length })}</p>
      <h2 ref={prompt} tabIndex={-1}>
        {item.prompt}
      </h2>
      <AnswerForm key={item.id} item={item} done={result !== null} onAnswer={answered} />
      {result !== null && (
        <>
          <Result item={item} result={result} />
          <button ref={nextStep} type="button" className="button button-main" onClick={() => setIndex(index + 1)}>
            {say(index + 1 < items.length ? 'quiz.next' : 'quiz.finish')}
          </button>
        </>
      )}
    </section>
  );
};

export const Quiz = () => {
  const { say, foot } = usePages();
  const [seed, setSeed] = useState(randomSeed);
  if (foot === null) return <p>{say('note.working')}</p>;
  return <Round key={seed} foot={foot} seed={seed} onAgain={() => setSeed(randomSeed())} />;
};
