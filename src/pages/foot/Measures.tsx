/** What is measured on films of a foot, measured on this one: value, usual values with their source, and the lines in the picture. */
import { useMemo, useSyncExternalStore } from 'react';
import * as v from 'valibot';
import type { Angle } from '../../anatomy/angles';
import { anglesSchema, type Measure, type Norm } from '../../anatomy/angles/schema';
import type { ViewId } from '../../session/types';
import { usePages, useSession } from '../context';
import { normText, valueText } from './norm-text';

/** From where a measure is drawn as on its film. */
const VIEWS: Readonly<Record<Angle['view'], ViewId>> = { lateral: 'inner', dorsoplantar: 'top', rear: 'back' };

const measuresOf = (shape: unknown): readonly Measure[] =>
  v.parse(anglesSchema, typeof shape === 'object' && shape !== null && 'angles' in shape ? shape.angles : []);

const NormText = ({ norm, unit }: { readonly norm: Norm; readonly unit: Angle['unit'] }) => {
  const { say } = usePages();
  return (
    <li>
      {say('foot.norm', { range: normText(say, norm, unit), of: norm.of })}{' '}
      <cite>{say('foot.source', { source: norm.source, how: norm.how })}</cite>
      {norm.note === undefined ? null : <> {norm.note}</>}
    </li>
  );
};

const Entry = ({ angle, measure }: { readonly angle: Angle; readonly measure: Measure }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const shown = useSession((state) => state.angle) === angle.id;
  const draw = () => {
    session.commands.showAngle(shown ? null : angle.id);
    if (!shown) session.commands.lookFrom(VIEWS[angle.view]);
  };
  return (
    <li>
      <button type="button" className="choice measure" aria-pressed={shown} onClick={draw}>
        <span>{reader === 'patient' ? measure.name : (measure.trade[0] ?? measure.name)}</span>{' '}
        <span className="number">{valueText(say, angle.value, angle.unit)}</span>
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
  const { say, measures: taken } = usePages();
  const shape = useSession((state) => state.content.shape);
  const measures = useMemo(() => measuresOf(shape), [shape]);
  const { angles, state } = useSyncExternalStore(taken.follow, taken.get);
  return (
    <section aria-labelledby="foot-measures">
      <h2 id="foot-measures" className="fold-head">
        {say('foot.measures')}
      </h2>
      <p>{say('foot.measuresHint')}</p>
      <p className="measures-state" role="status">
        {state === 'none'
          ? say('foot.measuresNone')
          : state === 'current'
            ? ''
            : say(angles.length === 0 ? 'note.working' : 'foot.measuresComing')}
      </p>
      <ul className="plain-list measures" data-state={state} aria-busy={state === 'coming'}>
        {angles.map((angle) => {
          const measure = measures.find(({ id }) => id === angle.id);
          return measure === undefined ? null : <Entry key={angle.id} angle={angle} measure={measure} />;
        })}
      </ul>
    </section>
  );
};
