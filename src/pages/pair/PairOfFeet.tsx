/** Two plates of the same view: which feet, from where, and how they differ in words and figures. */
import { useCallback, useId, useMemo, useState } from 'react';
import { factsOf } from '../../cases';
import { parametersOf } from '../../explain/parameters';
import { NO_WHAT_IF } from '../../explain/types';
import { VIEWS, type ViewId } from '../../session/types';
import { usePages, useSession } from '../context';
import { FILM_VIEWS } from '../foot/measures-of';
import { DifferenceTable } from './DifferenceTable';
import type { Difference } from './differences';
import { halfLetter, halfName, halfShape, halfSide, kindText } from './half-words';
import { type Compared, type Half, kindsFor, type PairKind, type PairOf, pairOf } from './pairs';
import { useDifferences } from './use-differences';

const useCompared = (): Compared => {
  const file = useSession((state) => state.file);
  const whatIf = useSession((state) => state.whatIf);
  const side = useSession((state) => state.explanation?.side) ?? null;
  return useMemo(() => {
    const facts = factsOf(file);
    return { known: parametersOf(facts, NO_WHAT_IF), tried: parametersOf(facts, whatIf), side };
  }, [file, whatIf, side]);
};

const Caption = ({ half, pair }: { readonly half: Half; readonly pair: PairOf }) => {
  const { say } = usePages();
  return (
    <>
      {half.is === 'whatIf' && <b className="what-if-tag">{say('whatIf.tag')}</b>} <b>{halfName(say, half)}.</b>{' '}
      {halfSide(say, half)}. {halfShape(say, half, pair)}
    </>
  );
};

/** There is no bone in question to come close to. */
const SIDES = VIEWS.filter((view) => view !== 'close');

export const PairOfFeet = () => {
  const { say, plates } = usePages();
  const compared = useCompared();
  const kinds = kindsFor(compared);
  const [asked, setAsked] = useState<PairKind | null>(null);
  const kind = asked !== null && kinds.includes(asked) ? asked : kinds.includes('tried') ? 'tried' : 'high';
  const pair = useMemo(() => pairOf(kind, compared), [kind, compared]);
  // The arch is what two shapes are mostly compared for, and it is seen from the inner side.
  const [look, setLook] = useState<{ readonly view: ViewId; readonly tick: number }>({ view: 'inner', tick: 0 });
  const lookFrom = useCallback((view: ViewId) => setLook(({ tick }) => ({ view, tick: tick + 1 })), []);
  const [drawn, setDrawn] = useState<Difference['id'] | null>(null);
  const taken = useDifferences(pair);
  const id = useId();
  const plateOf = (half: Half, index: 0 | 1) => ({
    parameters: half.parameters,
    mirrored: half.mirrored,
    letter: halfLetter(say, half),
    name: [half.is === 'whatIf' ? say('whatIf.tag') : '', halfName(say, half), halfSide(say, half)]
      .filter((part) => part !== '')
      .join('. '),
    caption: <Caption half={half} pair={pair} />,
    whatIf: half.is === 'whatIf',
    measured:
      taken === null || taken === 'failed' ? null : (taken.angles[index].find((angle) => angle.id === drawn) ?? null),
  });
  const choose = (each: PairKind): void => {
    setAsked(each);
    // Its lines were of the two before.
    setDrawn(null);
  };
  const draw = (difference: Difference): void => {
    const off = drawn === difference.id;
    setDrawn(off ? null : difference.id);
    if (!off) lookFrom(FILM_VIEWS[difference.view]);
  };
  return (
    <>
      <fieldset className="segments pair-kinds">
        <legend className="unseen">{say('pair.which')}</legend>
        {kinds.map((each) => (
          <label key={each}>
            <input type="radio" name={`${id}kind`} checked={each === kind} onChange={() => choose(each)} />
            <span>{kindText(say, each)}</span>
          </label>
        ))}
      </fieldset>
      {plates({
        plates: [plateOf(pair[0], 0), plateOf(pair[1], 1)],
        view: look.view,
        viewTick: look.tick,
        onLook: lookFrom,
        describedBy: `${id}words`,
      })}
      <fieldset className="chips pair-sides">
        <legend className="unseen">{say('view.lookFrom')}</legend>
        {SIDES.map((view) => (
          <button
            key={view}
            type="button"
            className="small"
            aria-pressed={view === look.view}
            onClick={() => lookFrom(view)}
          >
            {say(`stage.view.${view}`)}
          </button>
        ))}
      </fieldset>
      <DifferenceTable id={`${id}words`} pair={pair} taken={taken} drawn={drawn} onDraw={draw} />
    </>
  );
};
