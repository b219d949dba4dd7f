/** Say it: a timed script, each line with its claim and one press away from its picture; what is not known; what not to say. */
import { useId, useMemo, useState } from 'react';
import type { Explanation } from '../../explain/types';
import { clock, lineStatus, RATE, SCRIPT_SECONDS, type Script, scriptOf, scriptText, stillOf } from '../../telling';
import { saveBlob, saveText } from '../case/save-file';
import { usePages, useSession } from '../context';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { Stamp } from '../parts/Stamp';

const Lines = ({ script }: { readonly script: Script }) => {
  const { say, session } = usePages();
  const asked = useSession((state) => state.question);
  return (
    <ol className="script">
      {script.lines.map((line) => {
        const { question } = line;
        const status = lineStatus(line);
        return (
          <li key={`${line.startSecond} ${line.text}`}>
            <span className="script-time">{clock(line.startSecond)}</span>
            <span className="script-stamp">{line.stamp !== null && <Stamp kind={line.stamp} />}</span>
            <span>
              {line.text}
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
  const [busy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    const blob = await drawStill(stillOf(content, explanation, question));
    setBusy(false);
    if (blob === null) announce(say('say.noStill'));
    else saveBlob(blob, `underfoot-${question}.png`);
  };
  return (
    <button type="button" className="button" disabled={busy} onClick={() => void save()}>
      {say('say.still')}
    </button>
  );
};

const TimedScript = () => {
  const { say, announce } = usePages();
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
          <Lines script={script} />
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
