/** Paints the overlay's shapes as SVG. Hidden from assistive technology: pages say the same in words. */
import { memo, useState } from 'react';
import type { TokenTable } from '../draw/tokens';
import type { Point } from '../types';
import type { DrawnLabel } from './labelled';
import { DASH, FAMILIES, ringPoints, type Shape } from './shapes';

const path = (points: readonly Point[], closed = false): string =>
  `${points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')}${closed ? 'Z' : ''}`;

const cased = (d: string, colour: string, width: number, plate: string, casing: number, dash?: string) => (
  <>
    {casing > 0 && <path d={d} fill="none" stroke={plate} strokeWidth={casing} strokeLinejoin="round" />}
    <path d={d} fill="none" stroke={colour} strokeWidth={width} strokeLinejoin="round" strokeDasharray={dash} />
  </>
);

const ShapeSvg = ({ shape, colours }: { readonly shape: Shape; readonly colours: TokenTable }) => {
  switch (shape.kind) {
    case 'line':
      return cased(
        path(shape.points),
        colours[shape.colour],
        shape.width,
        colours.plate,
        shape.casing,
        shape.dashed === true ? DASH.join(' ') : undefined,
      );
    case 'ring':
      return cased(
        path(ringPoints(shape.at, shape.radius, shape.gapRad)),
        colours[shape.colour],
        shape.width,
        colours.plate,
        shape.casing,
      );
    case 'area':
      return (
        <path
          d={path(shape.points, true)}
          fill={colours[shape.fill]}
          fillOpacity={shape.opacity}
          stroke={shape.stroke === null ? 'none' : colours[shape.stroke]}
          strokeWidth={shape.width}
          strokeLinejoin="round"
        />
      );
    case 'disc':
      return <circle cx={shape.at[0]} cy={shape.at[1]} r={shape.radius} fill={colours[shape.fill]} />;
    case 'text':
      return (
        <text
          x={shape.at[0]}
          y={shape.at[1]}
          fill={colours[shape.colour]}
          textAnchor={shape.anchor}
          fontFamily={FAMILIES[shape.font.family]}
          fontSize={shape.font.px}
          fontWeight={shape.font.weight}
          fontStyle={shape.font.italic ? 'italic' : 'normal'}
        >
          {shape.text}
        </text>
      );
  }
};

const Shapes = ({ shapes, colours }: { readonly shapes: readonly Shape[]; readonly colours: TokenTable }) =>
  shapes.map((shape, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no identity between frames
    <ShapeSvg key={i} shape={shape} colours={colours} />
  ));

/** Goes out, and is then no longer there; at once where motion is not wanted. No frame is asked for. */
const Gone = ({ shapes, colours }: { readonly shapes: readonly Shape[]; readonly colours: TokenTable }) => {
  const [over, setOver] = useState(() => !matchMedia('(prefers-reduced-motion: no-preference)').matches);
  if (over) return null;
  return (
    <g className="stage-label-gone" onAnimationEnd={() => setOver(true)}>
      <Shapes shapes={shapes} colours={colours} />
    </g>
  );
};

interface OverlayProps {
  readonly marks: readonly Shape[];
  /** A label that has jumped is a new element, and comes in softly where motion is welcome. */
  readonly labels: readonly DrawnLabel[];
  /** What it was, where it was, goes out in the same time: a slide would cross other leaders on its way. */
  readonly gone: readonly DrawnLabel[];
  readonly colours: TokenTable;
}

export const OverlaySvg = memo(({ marks, labels, gone, colours }: OverlayProps) => (
  <svg className="stage-overlay" aria-hidden="true">
    <Shapes shapes={marks} colours={colours} />
    {gone.map(({ key, shapes }) => (
      <Gone key={`gone ${key}`} shapes={shapes} colours={colours} />
    ))}
    {labels.map(({ key, faded, shapes }) => (
      <g key={key} className="stage-label" data-faded={faded || undefined}>
        <Shapes shapes={shapes} colours={colours} />
      </g>
    ))}
  </svg>
));
