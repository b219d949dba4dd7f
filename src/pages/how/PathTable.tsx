/** The way of the load from leg to ground, part by part: newtons, body weights, pulled or pressed, and the joints by their facets. */
import {
  ENOUGH_AGREEMENT,
  type FootLoads,
  type LoadBands,
  type PartBand,
  type PathPart,
} from '../../mechanics/foot/types';
import { usePages, useSession } from '../context';
import { ColumnHeads } from '../parts/ColumnHeads';
import { ScrollBox } from '../parts/ScrollBox';
import { AlongGround } from './AlongGround';
import { jointsLeftOut, PATH_KINDS, partName } from './path-names';

const COLUMNS = ['part', 'force', 'band', 'weights', 'sense', 'facet'] as const;
export const PATH_COLUMNS: readonly string[] = COLUMNS;

/** N per mm2 of the facet as measured, for bones that are pressed together there; null where none was measured or none is pressed. */
export const facetPressure = (told: FootLoads, part: PathPart): number | null => {
  const joint = told.joints.find(({ id }) => id === part.id);
  if (joint === undefined || joint.facetMm2 === null || joint.normalN >= 0) return null;
  return -joint.normalN / joint.facetMm2;
};

/** All pads together, as the bands name them. */
const GROUND = 'ground';

interface Banded {
  readonly told: FootLoads;
  /** Of what is told now; null while they are being worked out. */
  readonly bands: readonly PartBand[] | null;
}

/** From the low to the high end of the inner eight tenths of the draws, in newtons; what waits for them says so. */
const BandCell = ({ bands, id }: { readonly bands: Banded['bands']; readonly id: string }) => {
  const { say } = usePages();
  if (bands === null) return <td>{say('path.bandPending')}</td>;
  const band = bands.find((each) => each.id === id)?.forceN;
  if (band === undefined) return <td />;
  return <td>{say('path.band', { low: Math.round(band.low), high: Math.round(band.high) })}</td>;
};

/** Which way it acts, where enough draws agree with what is told. */
const senseWord = (bands: Banded['bands'], { id, sense }: PathPart): string => {
  const agreed = bands?.find((each) => each.id === id)?.sense;
  return agreed === undefined || agreed.share >= ENOUGH_AGREEMENT ? `path.${sense}` : 'path.senseOpen';
};

interface RowsProperties extends Banded {
  readonly kind: PathPart['kind'];
  readonly parts: readonly PathPart[];
  /** False where only more and less may be told. */
  readonly sized: boolean;
}

const Rows = ({ told, bands, kind, parts, sized }: RowsProperties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const study = useSession((state) => state.reader === 'study');
  return (
    <tbody>
      <tr className="trial-row">
        <th scope="rowgroup" colSpan={COLUMNS.length}>
          {say(`path.kind.${kind}`)}
          <span className="small-print path-how">{say(`path.how.${kind}`)}</span>
        </th>
      </tr>
      {parts.map((part) => {
        const pressure = facetPressure(told, part);
        return (
          <tr key={part.id}>
            <th scope="row">{partName(say, content, study, part)}</th>
            <td>{sized ? Math.round(part.forceN) : say('path.noSize')}</td>
            {sized ? <BandCell bands={bands} id={part.id} /> : <td />}
            <td>{sized ? (part.forceN / told.weightN).toFixed(2) : say('path.noSize')}</td>
            <td>{say(senseWord(bands, part))}</td>
            <td>{pressure === null || !sized ? '' : pressure.toFixed(1)}</td>
          </tr>
        );
      })}
    </tbody>
  );
};

/** How the heads share is the least certain of all: nobody is told what a single one carries. */
const GroundInAll = ({ told, bands }: Banded) => {
  const { say } = usePages();
  const all = told.path.filter(({ kind }) => kind === 'ground').reduce((sum, { forceN }) => sum + forceN, 0);
  return (
    <tbody>
      <tr className="trial-row">
        <th scope="row">{say('path.groundInAll')}</th>
        <td>{Math.round(all)}</td>
        <BandCell bands={bands} id={GROUND} />
        <td>{(all / told.weightN).toFixed(2)}</td>
        <td>{say('path.pressed')}</td>
        <td />
      </tr>
    </tbody>
  );
};

const LeftOut = ({ told }: { readonly told: FootLoads }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const study = useSession((state) => state.reader === 'study');
  const left = jointsLeftOut(
    content,
    told.joints.map(({ id }) => id),
  );
  const named = left.map((joint) => (study ? joint.term : joint.plain));
  return (
    <>
      <h3>{say('path.leftOut')}</h3>
      <ul className="left-out">
        {[say('path.leftOut.muscles'), say('path.leftOut.ankle'), ...new Set(named)].map((name) => (
          <li key={name}>
            {name}: {say('path.notModelled')}
          </li>
        ))}
      </ul>
    </>
  );
};

interface TableProperties {
  readonly told: FootLoads;
  /** Of what is told now; null while they are being worked out. */
  readonly bands: LoadBands | null;
  readonly sized: boolean;
}

/** `sized`: where only more and less may be told, no part of the way has a number; what the ground takes in all was given. */
export const PathTable = ({ told, bands: all, sized }: TableProperties) => {
  const { say } = usePages();
  const bands = all?.parts ?? null;
  return (
    <>
      <p className="small-print">
        {say('path.what')} <strong>{say('path.headsCaution')}</strong>
      </p>
      <ScrollBox label={say('path.title')}>
        <table className="path-table">
          <caption className="unseen">{say('path.title')}</caption>
          <ColumnHeads of={COLUMNS.map((key) => `path.column.${key}`)} />
          {PATH_KINDS.filter((kind) => kind !== 'ground').map((kind) => (
            <Rows
              key={kind}
              told={told}
              bands={bands}
              sized={sized}
              kind={kind}
              parts={told.path.filter((part) => part.kind === kind)}
            />
          ))}
          <GroundInAll told={told} bands={bands} />
          <AlongGround told={told} bands={all} sized={sized} columns={COLUMNS.length} />
        </table>
      </ScrollBox>
      <LeftOut told={told} />
    </>
  );
};
