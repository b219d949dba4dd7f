/** Question 3: how this person's vessels run, where people differ, and what an injury tears. Another choice than the first is a what-if. */
import { useId } from 'react';
import type { VesselChoice as Choice, VesselPattern } from '../../content/schema';
import { choiceOf, patternsAt, withChoice } from '../../explain/vessel-choices';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { Known, markWordKey } from '../parts/Runs';
import './why.css';

const NOTES = [
  ['pattern', 'vessels.patternNote'],
  ['torn', 'vessels.tornNote'],
] as const satisfies readonly (readonly [VesselPattern['kind'], string])[];

const useChoiceName = (): ((choice: Pick<Choice, 'term' | 'plain'>) => string) => {
  const study = useSession((state) => state.reader === 'study');
  return ({ term, plain }) => (study ? term : plain);
};

type Printed = NonNullable<Choice['counted']>;
const sharedAs = ({ count, of }: Pick<Printed, 'count' | 'of'>): string =>
  count !== null ? 'vessels.countOf' : of === null ? 'vessels.share' : 'vessels.shareOf';

/** As printed, beside its source: shown, and never computed with. */
const Counted = ({ choice }: { readonly choice: Choice }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const study = useSession((state) => state.reader === 'study');
  const named = useChoiceName();
  const { counted } = choice;
  const { source, mark } = counted?.evidence ?? choice.evidence;
  return (
    <li>
      {named(choice)}
      {': '}
      {counted === null ? (
        say('vessels.notCounted')
      ) : (
        <Known mark={mark}>
          {say(sharedAs(counted), {
            percent: counted.percent ?? '',
            count: counted.count ?? '',
            of: counted.of ?? '',
            what: counted.what,
          })}
        </Known>
      )}{' '}
      <span className="small-print">
        ({source === null ? '' : `${sourceName(content, source)}, `}
        {say(markWordKey(mark))})
      </span>
      {study && choice.note !== undefined && <span className="small-print"> {choice.note}</span>}
    </li>
  );
};

const PatternChoice = ({ pattern }: { readonly pattern: VesselPattern }) => {
  const { session } = usePages();
  const id = useId();
  const tried = useSession((state) => state.whatIf.vessels);
  const named = useChoiceName();
  const chosen = choiceOf(pattern, tried ?? {});
  const choose = (choice: Choice): void => {
    const { content, whatIf } = session.getState();
    const vessels = withChoice(content, whatIf.vessels ?? {}, pattern, choice);
    if (Object.keys(vessels).length === 0) session.commands.dropWhatIf('vessels');
    else session.commands.setWhatIf({ vessels });
  };
  return (
    <div className="vessel-pattern">
      <p className="slider">
        <label htmlFor={id}>{named(pattern)}</label>
        <select
          id={id}
          value={chosen?.id}
          onChange={(event) => {
            const choice = pattern.choices.find((each) => each.id === event.currentTarget.value);
            if (choice !== undefined) choose(choice);
          }}
        >
          {pattern.choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {named(choice)}
            </option>
          ))}
        </select>
      </p>
      <ul className="vessel-counts">
        {pattern.choices.map((choice) => (
          <Counted key={choice.id} choice={choice} />
        ))}
      </ul>
    </div>
  );
};

export const VesselChoices = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const bone = useSession((state) => state.explanation?.bone ?? null);
  const patterns = patternsAt(content, bone);
  if (patterns.length === 0) return null;
  return (
    <Disclosure title={say('vessels.title')}>
      <p>{say('whatIf.hint')}</p>
      {patterns.map((pattern) => (
        <PatternChoice key={pattern.id} pattern={pattern} />
      ))}
      {NOTES.filter(([kind]) => patterns.some((pattern) => pattern.kind === kind)).map(([kind, note]) => (
        <p key={kind} className="small-print">
          {say(note)}
        </p>
      ))}
      <p className="small-print">{say('vessels.rule')}</p>
    </Disclosure>
  );
};
