/** The ways of answering: one choice, several, an order moved by buttons, or pointing in the picture with the list beside it. */
import { type FormEvent, useEffect, useId, useState } from 'react';
import type { QuizAnswer, QuizItem } from '../../study';
import { usePages, useSession } from '../context';

interface Properties {
  readonly item: QuizItem;
  readonly done: boolean;
  readonly onAnswer: (answer: QuizAnswer) => void;
}

const Order = ({ item, done, onAnswer }: Properties) => {
  const { say } = usePages();
  const [order, setOrder] = useState<readonly string[]>(item.choices.map((choice) => choice.id));
  const move = (index: number, by: -1 | 1) => {
    const next = [...order];
    const [moved] = next.splice(index, 1);
    if (moved !== undefined) next.splice(index + by, 0, moved);
    setOrder(next);
  };
  return (
    <>
      <ol className="order">
        {order.map((id, index) => {
          const text = item.choices.find((choice) => choice.id === id)?.text ?? id;
          return (
            <li key={id}>
              <span>{text}</span>
              <button
                type="button"
                className="small"
                disabled={done || index === 0}
                aria-label={say('quiz.earlier', { bone: text })}
                onClick={() => move(index, -1)}
              >
                {say('quiz.up')}
              </button>
              <button
                type="button"
                className="small"
                disabled={done || index === order.length - 1}
                aria-label={say('quiz.later', { bone: text })}
                onClick={() => move(index, 1)}
              >
                {say('quiz.down')}
              </button>
            </li>
          );
        })}
      </ol>
      {!done && (
        <button type="button" className="button button-main" onClick={() => onAnswer(order)}>
          {say('quiz.answer')}
        </button>
      )}
    </>
  );
};

const Choices = ({ item, done, onAnswer }: Properties) => {
  const { say } = usePages();
  const several = item.kind === 'meets';
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const name = useId();
  const choose = (id: string, on: boolean) => {
    if (!several) setChosen([id]);
    else setChosen(on ? [...chosen, id] : chosen.filter((each) => each !== id));
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (chosen.length > 0) onAnswer(chosen);
  };
  return (
    <form onSubmit={submit}>
      <fieldset className="ask" disabled={done}>
        <legend className="unseen">{item.prompt}</legend>
        {several && <p className="small-print">{say('quiz.several')}</p>}
        <div className="chips chips-column">
          {item.choices.map((choice) => (
            <label key={choice.id} className="chip">
              <input
                type={several ? 'checkbox' : 'radio'}
                name={name}
                checked={chosen.includes(choice.id)}
                onChange={(event) => choose(choice.id, event.currentTarget.checked)}
              />
              <span>{choice.text}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {!done && (
        <button type="submit" className="button button-main" disabled={chosen.length === 0}>
          {say('quiz.answer')}
        </button>
      )}
    </form>
  );
};

const Point = ({ item, done, onAnswer }: Properties) => {
  const { say, session } = usePages();
  const pick = useSession((state) => state.quizPick);
  useEffect(() => {
    if (pick !== null && !done) onAnswer([pick]);
  }, [pick, done, onAnswer]);
  const pickFromList = (id: string) => {
    const bone = session.getState().content.bones.find((each) => each.id === id);
    if (bone !== undefined) session.commands.pickForQuiz(bone.id);
  };
  return (
    <>
      <p>{say('quiz.point')}</p>
      <ol className="bone-list">
        {item.choices.map((choice) => (
          <li key={choice.id}>
            <button type="button" className="choice" disabled={done} onClick={() => pickFromList(choice.id)}>
              {choice.text}
            </button>
          </li>
        ))}
      </ol>
    </>
  );
};

export const AnswerForm = (properties: Properties) => {
  if (properties.item.kind === 'order') return <Order {...properties} />;
  if (properties.item.kind === 'pointTo') return <Point {...properties} />;
  return <Choices {...properties} />;
};
