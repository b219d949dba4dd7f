/** Small pieces of the picture, drawn as on the bone: for the key beside the picture and for the one under a printed figure. */
import type { ReactNode } from 'react';
import type { Explanation } from '../../explain/types';
import type { Reader } from '../../ids';
import type { BreakSign } from '../../session/types';
import { capital, namesFor } from '../../wording';
import { usePages, useSession } from '../context';
import { breakWord } from './break-word';

export const SWATCH = { width: 34, height: 20 } as const;
const { width: WIDTH, height: HEIGHT } = SWATCH;
/** Zone hatch on the bone, px: from line to line across the lines, of which a quarter is ink (`hatch` in note.css). */
const PITCH = 6;
const ALONG_X = PITCH * Math.SQRT2;
/** Past the edge, where the ends of the lines are cut off. */
const BEYOND = 2;

export const Swatch = ({ children }: { readonly children: ReactNode }) => (
  <svg className="swatch" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} width={WIDTH} height={HEIGHT} aria-hidden="true">
    {children}
    <rect className="swatch-edge" x="0.5" y="0.5" width={WIDTH - 1} height={HEIGHT - 1} />
  </svg>
);

const slant = (up: boolean): string =>
  Array.from({ length: Math.ceil((WIDTH + HEIGHT) / ALONG_X) }, (_, index) => {
    const x = (index + 0.5) * ALONG_X;
    const [top, foot] = [x + BEYOND, x - HEIGHT - BEYOND];
    const at = (px: number): string => (up ? px : WIDTH - px).toFixed(2);
    return `M${at(foot)} ${HEIGHT + BEYOND}L${at(top)} ${-BEYOND}`;
  }).join('');

const ZONE_LINES = [slant(true), slant(true) + slant(false), slant(false)];

/** The parts of the bone in question that are hatched: by number where they are zones with numbers, else by name. */
export const ZoneSigns = ({ reader }: { readonly reader: Reader }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const zones = useSession((state) => state.explanation?.zones ?? null);
  const { region: nameOf } = namesFor(content, reader);
  return ZONE_LINES.map((lines, index) => {
    const region = zones?.[index]?.region;
    if (region === undefined) return null;
    const number = region.match(/^mt5-zone-(\d)$/)?.[1];
    return (
      <li key={lines}>
        <Swatch>
          <path className="hatch" d={lines} />
        </Swatch>
        {number === undefined ? capital(nameOf(region)) : say('legend.zone', { number })}
      </li>
    );
  });
};

/** Where no beam is: strokes that bend with the bone and break off, in rows, so that nobody takes them for the hatch of a zone. */
const BROKEN = Array.from({ length: 6 }, (_, index) => {
  const x = index * 8 - 9;
  return `M${x + 4.5} 8.5L${x + 5} 5.5L${x + 10} 1.5M${x} 18.5L${x + 4.5} 14L${x + 5} 11`;
}).join('');

export const OutsideSwatch = () => (
  <Swatch>
    <path className="broken" d={BROKEN} />
  </Swatch>
);

/** Teeth as long as at the scale at which a close view usually opens. */
const SAW = 'M-5 14L6 6L17 14L28 6L39 14';
/** A ring with its gap to the right, where a leader would enter. */
const RING = 'M23.4 7.1A7 7 0 1 0 23.4 12.9';

type BreakAt = NonNullable<Explanation['breakAt']>;

/** Solid, hollow or dashed, as the stage draws it: `breakStrokes` in src/stage/scene/scene.ts. */
const Saw = ({ at }: { readonly at: BreakAt }) => {
  if (at.whatIf) return <path className="saw saw-dashed" d={SAW} />;
  if (at.status === 'confirmed') return <path className="saw" d={SAW} />;
  return (
    <>
      <path className="saw saw-wide" d={SAW} />
      <path className="saw-hollow" d={SAW} />
    </>
  );
};

interface BreakProperties {
  readonly at: BreakAt;
  /** A ring tells the place and not how it is known: only its word does. */
  readonly signs: readonly BreakSign[];
}

export const BreakSigns = ({ at, signs }: BreakProperties) => {
  const { say } = usePages();
  return (
    <li className="break-signs">
      {signs.map((sign) => (
        <Swatch key={sign}>{sign === 'ring' ? <path className="ring" d={RING} /> : <Saw at={at} />}</Swatch>
      ))}
      {say(breakWord(at, signs))}
    </li>
  );
};
