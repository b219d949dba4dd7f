/**
 * A rule that decides on a film, as teaching: its steps in words, the places of two of them lit on the foot, how well it was found to
 * work, and a look-up of what it is not for. For those who learn or speak; a patient's screen has none of it.
 */
import { useEffect, useId, useMemo, useState } from 'react';
import type { DecisionRule, Evidence } from '../../content/schema';
import type { Reader } from '../../ids';
import { formatNumber, sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Draft } from '../foot/Draft';
import { Known, markWordKey } from '../parts/Runs';
import './evidence.css';

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

export const RulePage = () => {
  const { say, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  if (reader === 'patient')
    return (
      <>
        <h1 className="question-title" tabIndex={-1}>
          {say('rule.notHere')}
        </h1>
        <p>{say('rule.forOthers')}</p>
        <p>
          <a className="button" href={hrefOf({ page: 'explain' })}>
            {say('bar.explain')}
          </a>
        </p>
      </>
    );
  return (
    <>
      <p className="question-count">{say('rule.kicker')}</p>
      {content.decisionRules.map((rule) => (
        <div key={rule.id} className="rule-page">
          <h1 className="question-title" tabIndex={-1}>
            {rule.term}
          </h1>
          <p className="one-sentence">{rule.what[reader]}</p>
          <p className="small-print">{say('rule.teaching')}</p>
          <Steps rule={rule} reader={reader} />
          <Figures rule={rule} reader={reader} />
          <NotFor rule={rule} reader={reader} />
        </div>
      ))}
      <Draft file="decision-rules.yaml" />
    </>
  );
};
