/** What the drawing's signs mean, drawn with the same pitch as on the bone, each with its word. */

import { useId } from 'react';
import type { Finding } from '../../explain/types';
import type { QuestionId } from '../../ids';
import { FEEDING_STATES, type FeedingState } from '../../perfusion/types';
import { type WalkingScale, walkingScale } from '../../wording/load-scale';
import { usePages, useSession } from '../context';
import { Stamp } from '../parts/Stamp';
import { useWidth } from '../parts/use-width';
import { LoadWidths } from './LoadWidths';
import { BreakSigns, OutsideSwatch, SWATCH, Swatch, ZoneSigns } from './Swatches';

const { width: WIDTH, height: HEIGHT } = SWATCH;
const RAMP = [1, 2, 3, 4, 5, 6] as const;

const BreakSign = () => {
  const at = useSession((state) => state.explanation?.breakAt ?? null);
  // Until the stage has drawn it, as it is drawn on a bone that is large enough.
  const sign = useSession((state) => state.breakSign ?? 'line');
  return at === null ? null : <BreakSigns at={at} signs={[sign]} />;
};

/** A picture whose only sign is the break. */
const JustBreak = () => {
  const hasBreak = useSession((state) => (state.explanation?.breakAt ?? null) !== null);
  return hasBreak ? (
    <ul className="legend">
      <BreakSign />
    </ul>
  ) : null;
};

const Zones = () => {
  const reader = useSession((state) => state.reader);
  return (
    <ul className="legend">
      <ZoneSigns reader={reader} />
      <BreakSign />
    </ul>
  );
};

/** Dots as on the bone: one pitch, and radii that give the ink shares of the four feeding states. None is bare. */
const DOT_PITCH = 5.6;
const DOT_RADIUS: Readonly<Record<FeedingState, number | null>> = {
  asBefore: 1.84,
  mainCut: 1.41,
  borderOnly: 0.95,
  none: null,
};

const Dots = ({ state }: { readonly state: FeedingState }) => {
  const radius = DOT_RADIUS[state];
  const id = useId();
  if (radius === null) return null;
  return (
    <>
      <pattern id={id} width={DOT_PITCH} height={DOT_PITCH} patternUnits="userSpaceOnUse" patternTransform="rotate(30)">
        <circle className="dot" cx={DOT_PITCH / 2} cy={DOT_PITCH / 2} r={radius} />
      </pattern>
      <rect width={WIDTH} height={HEIGHT} fill={`url(#${id})`} />
    </>
  );
};

const Feeding = ({ short }: { readonly short: boolean }) => {
  const { say } = usePages();
  const parts = useSession((state) => state.explanation?.feeding?.parts ?? null);
  const drawn = FEEDING_STATES.filter((state) => parts?.some((part) => part.state === state));
  if (short && drawn.length === 0) return null;
  return (
    <ul className={short ? 'legend' : 'legend legend-lines'}>
      {(short ? drawn : FEEDING_STATES).map((state) => (
        <li key={state}>
          <Swatch>
            <Dots state={state} />
          </Swatch>
          {say(`feeding.${state}`)}
        </li>
      ))}
      <li>
        <Swatch>
          <Dots state="asBefore" />
          <rect className="bare" x={WIDTH / 2 - 4} width={8} height={HEIGHT} />
        </Swatch>
        {say('legend.border')}
      </li>
      <BreakSign />
    </ul>
  );
};

/** Room for half a number beyond the last border, px. */
const RAMP_END = 14;
const RAMP_USUAL = 348;

/** Two figures after the point at most, and none that say nothing. */
const times = (value: number): string => String(Math.round(value * 100) / 100);

/** Laid out at the width of its place and never scaled down, so that its letters keep their size. */
const Ramp = ({ scale, ranks }: { readonly scale: WalkingScale; readonly ranks: boolean }) => {
  const { say } = usePages();
  const { ref, width } = useWidth<SVGSVGElement>(RAMP_USUAL);
  const step = (width - 1 - RAMP_END) / RAMP.length;
  const border = (index: number): number => 1 + index * step;
  return (
    <svg
      ref={ref}
      className="ramp"
      viewBox={`0 0 ${width} 58`}
      role="img"
      aria-label={ranks ? say('legend.rankLabel') : say('legend.stressLabel', { most: times(scale.topTimes) })}
    >
      {RAMP.map((each) => (
        <rect key={each} x={border(each - 1)} y="1" width={step} height="16" className={`step-${each}`} />
      ))}
      {ranks ? (
        <>
          <text x="1" y="34">
            {say('legend.least')}
          </text>
          <text x={border(RAMP.length)} y="34" textAnchor="end">
            {say('legend.most')}
          </text>
        </>
      ) : (
        <>
          {[0, ...RAMP].map((index) => (
            <text key={index} x={border(index)} y="34" textAnchor={index === 0 ? 'start' : 'middle'}>
              {times(scale.stepTimes * index)}
            </text>
          ))}
          <text x={border(RAMP.length)} y="52" textAnchor="end">
            {say('legend.timesWalking')}
          </text>
        </>
      )}
    </svg>
  );
};

const Stress = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const plain = useSession((state) => state.reader === 'patient');
  // Before the first result there is nothing to say of a model yet.
  if (explanation === null) return null;
  const { loads } = explanation;
  const scale = walkingScale(explanation);
  if (loads === null || scale === null)
    return (
      <>
        <p className="small-print">{say('legend.noStress')}</p>
        <JustBreak />
      </>
    );
  return (
    <div>
      <Ramp scale={scale} ranks={loads.ranksOnly} />
      <p className="small-print">{say(`legend.${loads.ranksOnly ? 'rank' : 'stress'}${plain ? 'Plain' : ''}`)}</p>
      <LoadWidths loads={loads} />
      <ul className="legend">
        <li>
          <OutsideSwatch />
          {say(plain ? 'legend.outsidePlain' : 'legend.outside')}
        </li>
        <BreakSign />
      </ul>
    </div>
  );
};

/** The finding that puts a screw into the picture: only a claim of the case does. */
const useScrew = (): Finding | null =>
  useSession(
    (state) =>
      state.explanation?.questions
        .flatMap(({ findings }) => findings)
        .find(({ shows }) => shows.some(({ kind }) => kind === 'screw')) ?? null,
  );

const Screw = ({ told }: { readonly told: Finding }) => {
  const { say } = usePages();
  const confirmed = told.confidence.level === 'established';
  return (
    <ul className="legend">
      <li>
        <svg className="swatch" viewBox="0 0 44 20" width="44" height="20" aria-hidden="true">
          <path className="screw" d="M8 7.5H42V12.5H8M16 6V14M21 6V14M26 6V14M31 6V14M36 6V14" />
          <path className="screw-head" d="M2 4h6v12h-6z" />
        </svg>
        {say(confirmed ? 'legend.screw' : 'legend.screwReported')}
      </li>
      <BreakSign />
    </ul>
  );
};

interface Properties {
  readonly question: QuestionId;
  /** Only the signs that the picture in sight holds: for the screen that is shown at arm's length. */
  readonly short?: boolean;
}

export const Legend = ({ question, short = false }: Properties) => {
  const { say } = usePages();
  const screw = useScrew();
  const zones = useSession((state) => state.explanation?.zones ?? null);
  const hasBreak = useSession((state) => (state.explanation?.breakAt ?? null) !== null);
  const body =
    question === 'where' && zones !== null && zones.length > 0 ? (
      <Zones />
    ) : question === 'how' ? (
      <Stress />
    ) : question === 'why' ? (
      <Feeding short={short} />
    ) : question === 'options' && screw !== null ? (
      <Screw told={screw} />
    ) : (
      // In question 5 a patient's screen has its room for the weeks.
      hasBreak && !(short && question === 'back') && <JustBreak />
    );
  if (!body) return null;
  return (
    <section className={short ? 'legend-box legend-short' : 'legend-box'} aria-label={say('legend.label')}>
      {body}
    </section>
  );
};

export const Marks = () => {
  const { say } = usePages();
  return (
    <section className="legend-box" aria-label={say('marks.label')}>
      <p className="marks">
        <Stamp kind="reported" worded />
        <Stamp kind="confirmed" worded />
        <Stamp kind="inferred" worded />
      </p>
      <p className="marks" aria-hidden="true">
        <span className="known-seen">{say('mark.seen')}</span>
        <span className="known-weak">{say('mark.weak')}</span>
        <span className="known-practice">{say('mark.practice')}</span>
        <span className="known-memory">{say('mark.memory')}</span>
      </p>
      <p className="small-print">{say('marks.what')}</p>
    </section>
  );
};
