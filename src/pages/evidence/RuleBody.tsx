/** What fills the page of a rule: its steps in words with places on the foot, its figures, and a look-up of what it is not for. */
import { useEffect, useId, useMemo, useState } from 'react';
import type { DecisionRule, Evidence } from '../../content/schema';
import type { Reader } from '../../ids';
import { formatNumber, sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';

const From = ({ evidence: { source, mark } }: { readonly evidence: Evidence }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  return (
    <span className="small-print">
      {source === null ? '' : `${sourceName(content, source)}. `}
      <Known mark={mark}>{say(markWordKey(mark))}</Known>
    </span>
  );
};

const Steps = ({ rule, reader }: { readonly rule: DecisionRule; readonly reader: Reader }) => {
  const { say, session } = usePages();
  const { light } = session.commands;
  const places = useMemo(
    () => rule.steps.flatMap(({ at }) => (at === null ? [] : [{ bone: at.bone, region: at.region }])),
    [rule],
  );
  useEffect(() => {
    light(places, 'top');
    return () => light(null);
  }, [light, places]);
  return (
    <ol className="rule-steps">
      {rule.steps.map(({ what, at, evidence }) => (
        <li key={what.study}>
          <p>{what[reader]}</p>
          <p className="row">
            <From evidence={evidence} />
            {at !== null && (
              <button
                type="button"
                className="small"
                aria-label={say('rule.showOf', { what: what[reader] })}
                onClick={() => light(places, at.view)}
              >
                {say('rule.show')}
              </button>
            )}
          </p>
        </li>
      ))}
    </ol>
  );
};

const Figures = ({ rule, reader }: { readonly rule: DecisionRule; readonly reader: Reader }) => {
  const { say } = usePages();
  return (
    <section>
      <h2>{say('rule.figures')}</h2>
      <ul className="plain">
        {rule.figures.map(({ what, percent, lowHighPercent, of, evidence }) => {
          const [low, high] = lowHighPercent ?? [];
          const figure =
            low === undefined || high === undefined
              ? say('rule.percent', { percent: formatNumber(percent) })
              : say('rule.band', { percent: formatNumber(percent), low: formatNumber(low), high: formatNumber(high) });
          return (
            <li key={what}>
              {what}: <Known mark={evidence.mark}>{figure}</Known>. <span className="small-print">{of}.</span>{' '}
              <From evidence={evidence} />
            </li>
          );
        })}
        {rule.found.map(({ what, evidence }) => (
          <li key={what.study}>
            {what[reader]} <From evidence={evidence} />
          </li>
        ))}
      </ul>
    </section>
  );
};

/** Type what the person has, and see whether the rule speaks of it. */
const NotFor = ({ rule, reader }: { readonly rule: DecisionRule; readonly reader: Reader }) => {
  const { say } = usePages();
  const [typed, setTyped] = useState('');
  const id = useId();
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const shown = rule.notFor.filter(({ what }) => {
    const text = `${what.broadcast} ${what.study}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  return (
    <section>
      <h2>{say('rule.notFor')}</h2>
      <p className="field">
        <label htmlFor={`${id}typed`}>{say('rule.lookUp')}</label>
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
        {shown.length === 0 ? say('rule.notListed') : say('rule.listed', { count: shown.length })}
      </p>
      <ul className="plain">
        {shown.map(({ id: each, what, evidence }) => (
          <li key={each}>
            {what[reader]} <From evidence={evidence} />
          </li>
        ))}
      </ul>
    </section>
  );
};

export const RuleBody = ({ rule }: { readonly rule: DecisionRule }) => {
  const reader = useSession((state) => state.reader);
  return (
    <>
      <Steps rule={rule} reader={reader} />
      <Figures rule={rule} reader={reader} />
      <NotFor rule={rule} reader={reader} />
    </>
  );
};
