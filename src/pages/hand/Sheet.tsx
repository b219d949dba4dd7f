/** The one page that is handed over, laid out in millimetres. Patient wording, black on white, nothing a printer can lose. */
import type { Handout } from '../../telling';
import type { Sentence } from '../../wording/types';
import { type Figure, usePages, useSession } from '../context';
import { BreakSigns, ZoneSigns } from '../note/Swatches';
import { Runs } from '../parts/Runs';
import { Stamp } from '../parts/Stamp';
import { BlobCanvas } from './BlobCanvas';
import type { ShownFigure } from './use-figure';

const Sentences = ({ sentences }: { readonly sentences: readonly Sentence[] }) => (
  <>
    {sentences.map((sentence) => (
      <p key={sentence.finding}>
        {sentence.stamp !== null && <Stamp kind={sentence.stamp} />} <Runs runs={sentence.runs} />
      </p>
    ))}
  </>
);

const Answers = ({ handout }: { readonly handout: Handout }) => (
  <>
    {handout.answers.map((answer, index) => (
      <section key={answer.question} className="sheet-part">
        <h2>
          {index + 1}. {answer.title}
        </h2>
        <Sentences sentences={answer.sentences} />
      </section>
    ))}
  </>
);

const Stages = ({ handout }: { readonly handout: Handout }) => {
  if (handout.stages.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2>{handout.headings.stages}</h2>
      <ol>
        {handout.stages.map((stage) => (
          <li key={stage.stage}>
            <Runs runs={stage.sentence.runs} />
            {stage.opensNext.length > 0 && (
              <>
                {' '}
                <span className="sheet-opens">
                  {stage.opensNext.map((sentence) => (
                    <span key={sentence.finding}>
                      <Runs runs={sentence.runs} />{' '}
                    </span>
                  ))}
                </span>
              </>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
};

/** What the signs of the figure mean. */
const FigureKey = ({ signs }: { readonly signs: Figure['breakSigns'] }) => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const at = explanation?.breakAt ?? null;
  const hasZones = explanation !== null && explanation.zones.length > 0;
  if (at === null && !hasZones) return null;
  return (
    <ul className="sheet-key" aria-label={say('legend.label')}>
      {hasZones && <ZoneSigns reader="patient" />}
      {at !== null && signs.length > 0 && <BreakSigns at={at} signs={signs} />}
    </ul>
  );
};

interface Properties {
  readonly handout: Handout;
  readonly paper: 'a4' | 'letter';
  readonly figure: ShownFigure;
}

export const Sheet = ({ handout, paper, figure }: Properties) => {
  const { say } = usePages();
  const [shown] = handout.figures;
  const lines = [handout.caseLine, handout.demoLine, handout.whatIfLine].filter((line) => line !== null);
  return (
    <article className={`sheet sheet-${paper}`} aria-label={say('hand.sheet')}>
      <header className="sheet-head">
        <h1>{handout.title}</h1>
        <p className="sheet-side">{handout.sideLine}</p>
      </header>
      <p className="sheet-case">
        <span>{lines.join('. ')}.</span>
        {handout.draftLine !== null && <strong className="sheet-draft">{handout.draftLine}</strong>}
      </p>
      {shown !== undefined && (
        <figure className="sheet-figure">
          {figure.state !== 'drawn' && (
            <p className="sheet-no-figure">
              {say(figure.state === 'none' ? 'hand.pictureNone' : 'hand.pictureComing')}
            </p>
          )}
          <BlobCanvas
            blob={figure.figure?.png ?? null}
            alt={shown.alt}
            hidden={figure.state !== 'drawn'}
            onDone={figure.onDone}
          />
          {figure.figure !== null && figure.state === 'drawn' && <FigureKey signs={figure.figure.breakSigns} />}
        </figure>
      )}
      <div className="sheet-columns">
        <Answers handout={handout} />
        <Stages handout={handout} />
      </div>
      {handout.warnings.length > 0 && (
        <section className="sheet-warnings">
          <h2>{handout.headings.warnings}</h2>
          <ul>
            {handout.warnings.map((warning) => (
              <li key={warning.text}>{warning.text}</li>
            ))}
          </ul>
        </section>
      )}
      <section className="sheet-call">
        <h2>{handout.headings.call}</h2>
        <ul>
          {handout.call.map((label) => (
            <li key={label}>{label}</li>
          ))}
        </ul>
      </section>
      <footer className="sheet-foot">
        <p className="marks">
          <Stamp kind="reported" worded />
          <Stamp kind="confirmed" worded />
          <Stamp kind="inferred" worded />
          <span className="known-seen">{say('mark.seen')}</span>
          <span className="known-weak">{say('mark.weak')}</span>
          <span className="known-practice">{say('mark.practice')}</span>
          <span className="known-memory">{say('mark.memory')}</span>
        </p>
        {handout.sources.length > 0 && (
          <p>
            <b>{handout.headings.sources}</b> {handout.sources.join('; ')}
            {handout.sourcesMore > 0 ? ` ${say('hand.moreSources', { count: handout.sourcesMore })}` : ''}
          </p>
        )}
        <p>
          <b>{handout.headings.limits}</b> {handout.disclaimers.join(' ')} {handout.illustrationLine}.
        </p>
      </footer>
    </article>
  );
};
