/** What the drawing's signs mean, drawn with the same pitch as on the bone, each with its word. */

import { type ReactNode, useId } from 'react';
import type { Finding } from '../../explain/types';
import type { QuestionId } from '../../ids';
import { FEEDING_STATES, type FeedingState } from '../../perfusion/types';
import { usePages, useSession } from '../context';
import { Stamp } from '../parts/Stamp';

const WIDTH = 34;
const HEIGHT = 20;
/** Spacing of the zone hatch on the bone, px. */
const PITCH = 6;
const RAMP = [1, 2, 3, 4, 5, 6] as const;

const Swatch = ({ children }: { readonly children: ReactNode }) => (
  <svg className="swatch" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} width={WIDTH} height={HEIGHT} aria-hidden="true">
    {children}
    <rect className="swatch-edge" x="0.5" y="0.5" width={WIDTH - 1} height={HEIGHT - 1} />
  </svg>
);

const slant = (up: boolean): string =>
  Array.from({ length: Math.ceil((WIDTH + HEIGHT) / PITCH) }, (_, index) => {
    const x = index * PITCH - HEIGHT / 2;
    return up ? `M${x - HEIGHT / 2} ${HEIGHT}L${x + HEIGHT / 2} 0` : `M${x - HEIGHT / 2} 0L${x + HEIGHT / 2} ${HEIGHT}`;
  }).join('');

const Zones = () => {
  const { say } = usePages();
  const paths = [slant(true), slant(true) + slant(false), slant(false)];
  return (
    <ul className="legend">
      {paths.map((path, index) => (
        <li key={path}>
          <Swatch>
            <path className="hatch" d={path} />
          </Swatch>
          {say('legend.zone', { number: index + 1 })}
        </li>
      ))}
      <BreakSign />
    </ul>
  );
};

const BreakSign = () => {
  const { say } = usePages();
  return (
    <li>
      <Swatch>
        <path className="saw" d="M2 13L7 7L12 13L17 7L22 13L27 7L32 13" />
      </Swatch>
      {say('legend.break')}
    </li>
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

const Stress = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  // A patient reads from none to most: a unit of stress says nothing to somebody without the trade.
  const plain = useSession((state) => state.reader === 'patient');
  // Before the first result there is nothing to say of a model yet.
  if (explanation === null) return null;
  const { stations } = explanation;
  if (stations === null) return <p className="small-print">{say('legend.noStress')}</p>;
  const most = Math.max(stations.peakTension.mpa, Math.abs(stations.peakCompression.mpa));
  return (
    <div>
      <svg
        className="ramp"
        viewBox="0 0 348 46"
        role="img"
        aria-label={plain ? say('legend.stressPlainLabel') : say('legend.stressLabel', { most: Math.round(most) })}
      >
        {RAMP.map((step) => (
          <rect key={step} x={(step - 1) * 56 + 1} y="1" width="56" height="16" className={`step-${step}`} />
        ))}
        {plain ? (
          <>
            <text x="1" y="34">
              {say('legend.least')}
            </text>
            <text x={RAMP.length * 56 + 1} y="34" textAnchor="end">
              {say('legend.most')}
            </text>
          </>
        ) : (
          [0, ...RAMP].map((border) => (
            <text key={border} x={border * 56 + 1} y="34" textAnchor={border === 0 ? 'start' : 'middle'}>
              {Math.round((most * border) / 6)}
            </text>
          ))
        )}
      </svg>
      <p className="small-print">{say(plain ? 'legend.stressPlain' : 'legend.stress')}</p>
      <ul className="legend">
        <li>
          <svg className="swatch" viewBox="0 0 44 20" width="44" height="20" aria-hidden="true">
            <path className="cord" d="M6 6.5H38M6 10H38M6 13.5H38M7 5L1 10L7 15M37 5L43 10L37 15" />
          </svg>
          {say('legend.pulled')}
        </li>
        <li>
          <svg className="swatch" viewBox="0 0 44 20" width="44" height="20" aria-hidden="true">
            <path className="blocks" d="M1 5h9v10h-9zM12.5 5h9v10h-9zM24 5h9v10h-9zM35.5 5h8v10h-8z" />
          </svg>
          {say('legend.pressed')}
        </li>
        <li>
          <Swatch>
            <path className="hatch" d={slant(true)} />
          </Swatch>
          {say(plain ? 'legend.outsidePlain' : 'legend.outside')}
        </li>
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
  const body =
    question === 'where' ? (
      zones !== null && zones.length > 0 && <Zones />
    ) : question === 'how' ? (
      <Stress />
    ) : question === 'why' ? (
      <Feeding short={short} />
    ) : question === 'options' ? (
      screw !== null && <Screw told={screw} />
    ) : null;
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
