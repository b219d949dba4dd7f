/** Question 4: the usual options side by side, then the studies, grouped by trial so that those that disagree stand together. */
import { useId, useRef } from 'react';
import type { Option } from '../../content/schema';
import type { OptionId } from '../../ids';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Known, markWordKey } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { Comparisons } from './Comparisons';
import { Studies } from './Studies';

const useOptions = (): readonly Option[] => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const ids: readonly OptionId[] = findingsOf(explanation, 'optionsUsual')[0]?.message.args.options ?? [];
  return ids.flatMap((id) => content.options.filter((option) => option.id === id));
};

const Burdens = ({ option }: { readonly option: Option }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  if (option.burdens.length === 0) return <p>{say('options.noBurdens')}</p>;
  return (
    <ul className="plain">
      {option.burdens.map((burden) => (
        <li key={burden.what.study}>
          {burden.what[reader]} <Known mark={burden.evidence.mark}>{say(markWordKey(burden.evidence.mark))}</Known>
        </li>
      ))}
    </ul>
  );
};

const SideBySide = ({ options }: { readonly options: readonly Option[] }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  const head = (option: Option) => (reader === 'patient' ? option.plain : option.term);
  return (
    <ScrollBox label={say('options.table')}>
      <table className="side-by-side">
        <caption className="unseen">{say('options.table')}</caption>
        <thead>
          <tr>
            <td />
            {options.map((option) => (
              <th key={option.id} scope="col">
                {head(option)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{say('options.what')}</th>
            {options.map((option) => (
              <td key={option.id}>{option.what[reader]}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">{say('options.does')}</th>
            {options.map((option) => (
              <td key={option.id}>{option.does[reader]}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">{say('options.burdens')}</th>
            {options.map((option) => (
              <td key={option.id}>
                <Burdens option={option} />
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </ScrollBox>
  );
};

export const OptionsPart = () => {
  const { say } = usePages();
  const options = useOptions();
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  if (options.length === 0) return null;
  return (
    <>
      <button type="button" className="button button-wide" onClick={() => dialog.current?.showModal()}>
        {say('options.open')}
      </button>
      <dialog ref={dialog} className="wide" aria-labelledby={titleId}>
        <div className="row row-spread">
          <h2 id={titleId}>{say('options.title')}</h2>
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            {say('close')}
          </button>
        </div>
        <p>{say('options.note')}</p>
        <SideBySide options={options} />
        <Comparisons />
        <Studies />
      </dialog>
    </>
  );
};
