/** Say it: a timed script, each line with its claim and one press away from its picture; what is not known; what not to say. */
import { useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Explanation } from '../../explain/types';
import { clock, lineStatus, RATE, SCRIPT_SECONDS, type Script, scriptOf, scriptText, stillOf } from '../../telling';
import { saveBlob, saveText } from '../case/save-file';
import { usePages, useSession } from '../context';
import { useBands } from '../how/use-bands';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { Stamp } from '../parts/Stamp';
import { WorkButton } from '../parts/WorkButton';
import { ReadAlong } from './ReadAlong';
import { useReading } from './use-reading';

const Lines = ({ script, current }: { readonly script: Script; readonly current: number | null }) => {
  const { say, session } = usePages();
  const asked = useSession((state) => state.question);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    if (current !== null) list.current?.children[current]?.scrollIntoView({ block: 'nearest' });
  }, [current]);
  return (
    <ol className="script" ref={list}>
      {script.lines.map((line, index) => {
        const { question } = line;
        const status = lineStatus(line);
        return (
          <li key={`${line.startSecond} ${line.text}`} aria-current={index === current ? 'step' : undefined}>
            <span className="script-time">{clock(line.startSecond)}</span>
            <span className="script-stamp">{line.stamp !== null && <Stamp kind={line.stamp} />}</span>
            <span>
              <span className="script-text">{line.text}</span>
              <span className="claim-status">
                {status === null ? '' : `${status} `}
                {question !== null && (
                  <button
                    type="button"
                    className="linkish"
                    aria-pressed={asked === question}
                    onClick={() => session.commands.ask(question)}
                  >
                    {say('say.showLine', { question: say(`question.${question}`) })}
                  </button>
                )}
              </span>
            </span>
          </li>
        );
      })}
    </ol>
  );
};

const StillButton = ({ explanation }: { readonly explanation: Explanation }) => {
  const { say, drawStill, announce } = usePages();
  const content = useSession((state) => state.content);
  const question = useSession((state) => state.question);
  const save = async () => {
    const blob = await drawStill(stillOf(content, explanation, question));
    if (blob === null) announce(say('say.noStill'));
    else saveBlob(blob, `underfoot-${question}.png`);
  };
  return (
    <WorkButton meanwhile={say('say.stillComing')} work={save}>
      {say('say.still')}
    </WorkButton>
  );
};

interface ScriptProperties {
  readonly script: Script;
  readonly explanation: Explanation;
  readonly seconds: number;
  /** Words a minute. */
  readonly rate: number;
}

const ScriptOf = ({ script, explanation, seconds, rate }: ScriptProperties) => {
  const { say, announce } = usePages();
  const caseTick = useSession((state) => state.caseTick);
  const reader = useSession((state) => state.reader);
  const whatIf = useSession((state) => state.whatIf);
  const reading = useReading(script, JSON.stringify([caseTick, reader, whatIf, seconds, rate]));
  return (
    <>
      <p className="script-clock">
        {clock(script.totalSeconds)} <span className="small-print">{say('say.runs', { seconds })}</span>
      </p>
      <p className="small-print">
        {[script.sideLine, script.caseLine, script.demoLine, script.whatIfLine].filter(Boolean).join('. ')}.
      </p>
      <div className="row">
        <button
          type="button"
          className="button button-main"
          onClick={() =>
            void navigator.clipboard
              .writeText(scriptText(script))
              .then(() => announce(say('say.copied')))
              .catch(() => announce(say('say.notCopied')))
          }
        >
          {say('say.copy')}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => saveText(scriptText(script), `underfoot-script-${seconds}.txt`)}
        >
          {say('say.save')}
        </button>
        <StillButton explanation={explanation} />
      </div>
      <ReadAlong script={script} reading={reading} />
      <Lines script={script} current={reading.open ? reading.line : null} />
      <section className="hedges">
        <h2>{say('say.unknown')}</h2>
        <ul className="plain">
          {script.unknowns.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
      <section className="hedges">
        <h2>{say('say.doNotSay')}</h2>
        <ul className="plain">
          {script.doNotSay.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
    </>
  );
};

const TimedScript = () => {
  const { say } = usePages();
  useBands();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const [seconds, setSeconds] = useState<(typeof SCRIPT_SECONDS)[number]>(90);
  const [rate, setRate] = useState<number>(RATE.usual);
  const id = useId();
  const script = useMemo(
    () => (explanation === null ? null : scriptOf(content, explanation, { seconds, wordsPerMinute: rate })),
    [content, explanation, seconds, rate],
  );
  return (
    <>
      <p>{say('say.what')}</p>
      <fieldset className="segments">
        <legend>{say('say.length')}</legend>
        {SCRIPT_SECONDS.map((each) => (
          <label key={each}>
            <input type="radio" name={`${id}length`} checked={each === seconds} onChange={() => setSeconds(each)} />
            <span>{say('say.seconds', { seconds: each })}</span>
          </label>
        ))}
      </fieldset>
      <p className="slider">
        <label htmlFor={`${id}rate`}>{say('say.rate')}</label>
        <input
          id={`${id}rate`}
          type="range"
          min={RATE.slowest}
          max={RATE.fastest}
          step={5}
          value={rate}
          onChange={(event) => setRate(Number(event.currentTarget.value))}
        />
        <output htmlFor={`${id}rate`}>{say('say.rateValue', { words: rate })}</output>
      </p>
      {script === null || explanation === null ? (
        <p>{say('note.working')}</p>
      ) : (
        <ScriptOf script={script} explanation={explanation} seconds={seconds} rate={rate} />
      )}
    </>
  );
};

export const ScriptPage = () => {
  const { say } = usePages();
  const nothingKnown = useNothingKnown();
  return (
    <>
      <p className="question-count">{say('say.kicker')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {say('say.title')}
      </h1>
      {nothingKnown ? <NothingYet page="say" /> : <TimedScript />}
    </>
  );
};
