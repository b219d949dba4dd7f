/** What is measured on films of a foot, measured on this one: value, usual values with their source, and the lines in the picture. */
import { useMemo } from 'react';
import * as v from 'valibot';
import { type Angle, radiographicAngles } from '../../anatomy/angles';
import { anglesSchema, type Measure, type Norm } from '../../anatomy/angles/schema';
import type { ViewId } from '../../session/types';
import { usePages, useSession } from '../context';

/** From where a measure is drawn as on its film. */
const VIEWS: Readonly<Record<Angle['view'], ViewId>> = { lateral: 'inner', dorsoplantar: 'top', rear: 'back' };

const measuresOf = (shape: unknown): readonly Measure[] =>
  v.parse(anglesSchema, typeof shape === 'object' && shape !== null && 'angles' in shape ? shape.angles : []);

const useValueText = () => {
  const { say } = usePages();
  return (value: number, unit: Angle['unit']): string =>
    unit === 'share'
      ? say('foot.percent', { value: Math.round(100 * value) })
      : unit === 'deg'
        ? say('foot.degrees', { value: Math.round(value) })
        : say('foot.millimetres', { value: value.toFixed(1) });
};

const NormText = ({ norm, unit }: { readonly norm: Norm; readonly unit: Angle['unit'] }) => {
  const { say } = usePages();
  const text = useValueText();
  const { mean, sd, low, high } = norm;
  const range =
    mean !== undefined
      ? sd === undefined
        ? text(mean, unit)
        : say('foot.meanSd', { mean: text(mean, unit), sd: text(sd, unit) })
      : low !== undefined && high !== undefined
        ? say('foot.range', { low: text(low, unit), high: text(high, unit) })
        : text(low ?? high ?? 0, unit);
  return (
    <li>
      {say('foot.norm', { range, of: norm.of })}{' '}
      <cite>{say('foot.source', { source: norm.source, how: norm.how })}</cite>
      {norm.note === undefined ? null : <> {norm.note}</>}
    </li>
  );
};

const Entry = ({ angle, measure }: { readonly angle: Angle; readonly measure: Measure }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const text = useValueText();
  const shown = useSession((state) => state.angle) === angle.id;
  const draw = () => {
    session.commands.showAngle(shown ? null : angle.id);
    if (!shown) session.commands.lookFrom(VIEWS[angle.view]);
  };
  return (
    <li>
      <button type="button" className="choice measure" aria-pressed={shown} onClick={draw}>
        <span>{reader === 'patient' ? measure.name : (measure.trade[0] ?? measure.name)}</span>{' '}
        <span className="number">{text(angle.value, angle.unit)}</span>
      </button>
      {shown && (
        <>
          <p>{measure.definition}</p>
          <ul className="plain-list">
            {measure.norms.length === 0 && <li>{say('foot.noNorm')}</li>}
            {measure.norms.map((norm) => (
              <NormText key={`${norm.of} ${norm.source}`} norm={norm} unit={angle.unit} />
            ))}
          </ul>
          <p>
            <b>{say('foot.repeatable')}</b>{' '}
            {measure.repeatable.length === 0
              ? say('foot.repeatableUnknown')
              : measure.repeatable.map((r) => `${r.text} (${r.source}; ${r.how})`).join(' ')}
          </p>
        </>
      )}
    </li>
  );
};

export const Measures = () => {
  const { say, foot } = usePages();
  const shape = useSession((state) => state.content.shape);
  const measures = useMemo(() => measuresOf(shape), [shape]);
  const angles = useMemo(() => (foot === null ? [] : radiographicAngles(foot)), [foot]);
  return (
    <section aria-labelledby="foot-measures">
      <h2 id="foot-measures" className="fold-head">
        {say('foot.measures')}
      </h2>
      <p>{say('foot.measuresHint')}</p>
      <ul className="plain-list measures">
        {angles.map((angle) => {
          const measure = measures.find(({ id }) => id === angle.id);
          return measure === undefined ? null : <Entry key={angle.id} angle={angle} measure={measure} />;
        })}
      </ul>
    </section>
  );
};
