/** What is measured on films of a foot, measured on this one: value, usual values with their source, and the lines in the picture. */
import { useMemo, useSyncExternalStore } from 'react';
import type { Angle } from '../../anatomy/angles';
import type { Measure, Norm } from '../../anatomy/angles/schema';
import { type Measures as Taken, usePages, useSession } from '../context';
import { bringPlate } from '../parts/bring-plate';
import { Draft } from './Draft';
import { FILM_VIEWS, measureName, measuresOf } from './measures-of';
import { normText, valueText } from './norm-text';
import { SourceText } from './SourceText';

const NormText = ({ norm, unit }: { readonly norm: Norm; readonly unit: Angle['unit'] }) => {
  const { say } = usePages();
  const study = useSession((state) => state.reader) === 'study';
  return (
    <li>
      {say('foot.norm', { range: normText(say, norm, unit, study), of: norm.of })}{' '}
      <SourceText source={norm.source} how={norm.how} />
      {study && norm.note !== undefined && <> {norm.note}</>}
    </li>
  );
};

/** How far readers of films agree: for those who read them. */
const Repeatable = ({ of }: { readonly of: Measure['repeatable'] }) => {
  const { say } = usePages();
  return (
    <>
      <p>
        <b>{say('foot.repeatable')}</b> {of.length === 0 && say('foot.repeatableUnknown')}
      </p>
      <ul className="plain-list">
        {of.map(({ text, source, how }) => (
          <li key={text}>
            {text} <SourceText source={source} how={how} />
          </li>
        ))}
      </ul>
    </>
  );
};

const Entry = ({ angle, measure }: { readonly angle: Angle; readonly measure: Measure }) => {
  const { say, session } = usePages();
  const study = useSession((state) => state.reader) === 'study';
  const shown = useSession((state) => state.angle) === angle.id;
  const draw = () => {
    session.commands.showAngle(shown ? null : angle.id);
    if (shown) return;
    session.commands.lookFrom(FILM_VIEWS[angle.view]);
    bringPlate();
  };
  return (
    <li>
      <button type="button" className="choice measure" aria-pressed={shown} onClick={draw}>
        <span>{measureName(measure, study)}</span>{' '}
        <span className="number">{valueText(say, angle.value, angle.unit)}</span>
      </button>
      {shown && (
        <>
          <p>{study ? measure.definition : measure.plain}</p>
          <ul className="plain-list">
            {measure.norms.length === 0 && <li>{say('foot.noNorm')}</li>}
            {measure.norms.map((norm) => (
              <NormText key={`${norm.of} ${norm.source}`} norm={norm} unit={angle.unit} />
            ))}
          </ul>
          {study && <Repeatable of={measure.repeatable} />}
        </>
      )}
    </li>
  );
};

/** What is said of the list: nothing where it is that of the foot in the picture. */
const stateText = (say: ReturnType<typeof usePages>['say'], state: Taken['state'], isEmpty: boolean): string => {
  switch (state) {
    case 'current':
      return '';
    case 'none':
      return say('foot.measuresNone');
    case 'failed':
      return say('foot.measuresFailed');
    case 'posed':
      return say('foot.measuresPosed', { standing: say('foot.pose.standing') });
    case 'coming':
      return say(isEmpty ? 'note.working' : 'foot.measuresComing');
  }
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
      <Draft file="anatomy/angles.yaml" />
      <p className="measures-state" role="status">
        {stateText(say, state, angles.length === 0)}
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
