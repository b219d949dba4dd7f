/** How the numbers of one station are made: forces, formula, section, field, measure, where it is weak, and what others measured. */
import type { StationBand } from '../../mechanics/foot/types';
import type { Station, StationTable } from '../../mechanics/types';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { useOpenCalculation } from './calculation';
import { multipleOf } from './multiples';
import { StrainLine } from './StrainLine';
import { cellBand, cellText, columnsFor, STATION_COLUMNS } from './strips';
import { useActivityName } from './use-activity-name';
import type { Loads } from './use-loads';
import { useWeakness } from './use-weakness';

interface Properties {
  readonly loads: Loads;
  readonly table: StationTable;
  readonly station: Station;
  readonly referenceMPa: number;
  /** Of this station over the draws; null while they are worked out, and on bones that they are not worked out for. */
  readonly band: StationBand | null;
}

const three = (value: number | null): string =>
  value === null ? '?' : String(Number(value.toPrecision(3))).replace('-', '−');

/** Strain as it was measured in this bone by others: what 1 stands for, in people and not in this person. */
const Measured = ({ table }: { readonly table: StationTable }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const record = content.strains.find(({ id }) => id === table.bone);
  if (record === undefined) return <li>{say('derivation.notMeasured')}</li>;
  return (
    <li>
      {say('derivation.measured')} <StrainLine record={record} />
    </li>
  );
};

/** What is derived here is one run: which of its numbers the draws do not bear out. */
const OneRun = ({ loads, station, referenceMPa, band }: Omit<Properties, 'table'>) => {
  const { say } = usePages();
  const { ranksOnly, forcesRank } = loads.loads;
  const open =
    band === null
      ? []
      : columnsFor(forcesRank).filter(
          (column) =>
            cellText(column, station, referenceMPa) !== null && cellBand(column, band, ranksOnly)?.open === true,
        );
  return (
    <li>
      {say('derivation.oneRun')}{' '}
      {open.length > 0 && (
        <strong>
          {say('derivation.open', { numbers: open.map(({ key }) => say(`stations.column.${key}`)).join('; ') })}
        </strong>
      )}
    </li>
  );
};

export const Derivation = ({ loads, table, station, referenceMPa, band }: Properties) => {
  const { say } = usePages();
  const named = useActivityName();
  const open = useOpenCalculation();
  const weak = useWeakness(loads);
  const { section, field } = station;
  const cells = Object.fromEntries(
    STATION_COLUMNS.map((column) => [column.key, cellText(column, station, referenceMPa) ?? say('stations.outside')]),
  );
  const [a, b, c] = field.map((each) => multipleOf(each, referenceMPa));
  const mass = findingsOf(loads.explanation, 'loadPull')[0]?.message.args.mass.value ?? 0;
  return (
    <ol className="derivation">
      <li>
        {say('derivation.frame', {
          activity: named(loads.loads.activity),
          mass: Math.round(mass),
          weight: Math.round(loads.loads.told.weightN),
        })}{' '}
        {open !== null && (
          <button type="button" className="linkish" onClick={open}>
            {say('calculation.openFrom')}
          </button>
        )}
      </li>
      <OneRun loads={loads} station={station} referenceMPa={referenceMPa} band={band} />
      <li>{loads.loads.forcesRank ? say('derivation.forcesRank') : say('derivation.forces', cells)}</li>
      <li>{say('derivation.formula')}</li>
      <li>
        {say('derivation.section', {
          area: three(section.areaMm2),
          lateral: three(section.iLateralMm4),
          dorsal: three(section.iDorsalMm4),
          product: three(section.iProductMm4),
        })}
      </li>
      <li>
        {loads.loads.ranksOnly
          ? say('derivation.measureRank')
          : say('derivation.measure', { reference: named(loads.loads.reference) })}
      </li>
      <li>
        {referenceMPa > 0 && a !== null
          ? say('derivation.field', { a: three(a ?? null), b: three(b ?? null), c: three(c ?? null), ...cells })
          : say('ratio.noMeasure')}
      </li>
      <li>{say('derivation.strain')}</li>
      {station.outsideBeamTheory && <li>{say('derivation.outside')}</li>}
      {weak.map((line) => (
        <li key={line}>{line}</li>
      ))}
      <Measured table={table} />
    </ol>
  );
};
