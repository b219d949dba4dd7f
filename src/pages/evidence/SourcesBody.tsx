/** What fills the page of sources: where they disagree, what was counted of troubles, and each source with what rests on it. */
import { useDeferredValue, useId, useMemo, useState } from 'react';
import { TOPICS } from '../../content/source-uses';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { ContradictionItem } from './ContradictionItem';
import { SourceItem } from './SourceItem';
import { holding, sourceRows } from './source-rows';
import { TroublesList } from './TroublesList';
import './troubles.css';

const SourceList = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const [typed, setTyped] = useState('');
  const asked = useDeferredValue(typed);
  const id = useId();
  const rows = useMemo(() => sourceRows(content, reader), [content, reader]);
  const shown = useMemo(() => holding(rows, asked), [rows, asked]);
  return (
    <section aria-labelledby={`${id}title`}>
      <h2 id={`${id}title`}>{say('sources.title')}</h2>
      <p className="field">
        <label htmlFor={`${id}typed`}>{say('sources.filter')}</label>
        <input
          id={`${id}typed`}
          type="search"
          autoComplete="off"
          value={typed}
          aria-describedby={`${id}count`}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
      </p>
      <p id={`${id}count`} className="small-print" role="status">
        {say('sources.count', { shown: shown.length, all: rows.length })}
      </p>
      {TOPICS.map((topic) => {
        const here = shown.filter((row) => row.topic === topic);
        return here.length === 0 ? null : (
          <section key={topic} className="source-topic">
            <h3>{say(`topic.${topic}`)}</h3>
            {here.map((row) => (
              <SourceItem key={row.source.id} row={row} />
            ))}
          </section>
        );
      })}
    </section>
  );
};

export const SourcesBody = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (
    <>
      <div className="folds">
        <Disclosure title={say('contradictions.all', { count: content.contradictions.length })}>
          {reader === 'patient' && <p className="small-print">{say('contradictions.patient')}</p>}
          <ul className="contradictions">
            {content.contradictions.map((contradiction) => (
              <li key={contradiction.id}>
                <ContradictionItem contradiction={contradiction} />
              </li>
            ))}
          </ul>
        </Disclosure>
        <Disclosure title={say('troubles.all')}>
          <TroublesList />
        </Disclosure>
      </div>
      <SourceList />
    </>
  );
};
