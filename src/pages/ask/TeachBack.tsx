/** Three questions for the patient, in their words: a check of the explaining, not of the person. */
import { useMemo, useState } from 'react';
import { answerTeachBack, type TeachBackItem, teachBackOf } from '../../study';
import { usePages, useSession } from '../context';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';

const Item = ({ item, number }: { readonly item: TeachBackItem; readonly number: number }) => {
  const [chosen, setChosen] = useState<string | null>(null);
  const answer = chosen === null ? null : answerTeachBack(item, chosen);
  return (
    <li>
      <fieldset className="ask">
        <legend>
          {number}. {item.prompt}
        </legend>
        <div className="chips chips-column">
          {item.choices.map((choice) => (
            <label key={choice.id} className="chip">
              <input type="radio" name={item.id} checked={chosen === choice.id} onChange={() => setChosen(choice.id)} />
              <span>{choice.text}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p className="feedback" role="status">
        {answer?.feedback}
      </p>
    </li>
  );
};

export const TeachBack = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const items = useMemo(() => (explanation === null ? [] : teachBackOf(content, explanation)), [content, explanation]);
  const nothingKnown = useNothingKnown();
  if (nothingKnown) return <NothingYet page="teachBack" />;
  return (
    <section>
      <p>{say('teachBack.what')}</p>
      <ol className="teach-back">
        {items.map((item, index) => (
          <Item key={item.id} item={item} number={index + 1} />
        ))}
      </ol>
    </section>
  );
};
