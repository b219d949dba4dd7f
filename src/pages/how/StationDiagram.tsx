/**
 * Forces and stress along a metatarsal, from the frame's own stations: the injured one first, the other four by choice. The numbers
 * stand in a table behind the drawing, the section and the way to them behind that.
 */
import { useId, useState } from 'react';
import type { BoneId } from '../../ids';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { Slider } from '../parts/Slider';
import { Derivation } from './Derivation';
import { measureWord, multipleOf } from './multiples';
import { SectionTable } from './SectionTable';
import { StationNumbers } from './StationNumbers';
import { alongOf, NOTHING_ALONG, Strip } from './Strip';
import { nearest, STRIPS } from './strips';
import { useBoneName } from './use-bone-name';
import { type Loads, useLoads } from './use-loads';

/** A patient reads a share of the most; the forces behind it are for those who have the trade's units. */
const PLAIN_STRIPS = STRIPS.filter((row) => row.key === 'stress');

interface BoneProperties {
  readonly loads: Loads;
  readonly bone: BoneId;
  readonly onChange: (bone: BoneId) => void;
}

const BoneChoice = ({ loads, bone, onChange }: BoneProperties) => {
  const { say } = usePages();
  const id = useId();
  const named = useBoneName();
  const { tables } = loads.loads.told;
  const [hurt, ...others] = [loads.table, ...tables.filter((table) => table !== loads.table)];
  return (
    <p className="slider">
      <label htmlFor={id}>{say('stations.bone')}</label>
      <select
        id={id}
        value={bone}
        onChange={(event) => {
          const chosen = tables.find((table) => table.bone === event.currentTarget.value);
          if (chosen !== undefined) onChange(chosen.bone);
        }}
      >
        <option value={hurt?.bone}>{say('stations.hurtBone', { bone: named(loads.table.bone) })}</option>
        {others.map((table) => (
          <option key={table.bone} value={table.bone}>
            {named(table.bone)}
          </option>
        ))}
      </select>
    </p>
  );
};

const Key = ({
  plain,
  hurt,
  occurs,
}: {
  readonly plain: boolean;
  readonly hurt: boolean;
  readonly occurs: boolean;
}) => {
  const { say } = usePages();
  return (
    <ul className="legend legend-lines small-print">
      <li>{say('stations.key.peak')}</li>
      {hurt && <li>{say('stations.key.break')}</li>}
      {occurs && <li>{say('stations.key.occurs')}</li>}
      {hurt && <li>{say('stations.key.zones')}</li>}
      <li>{say(plain ? 'stations.key.secondPlain' : 'stations.key.second')}</li>
    </ul>
  );
};

const Diagram = ({ loads }: { readonly loads: Loads }) => {
  const { say } = usePages();
  const plain = useSession((state) => state.reader === 'patient');
  const [bone, setBone] = useState<BoneId | null>(null);
  const [atMm, setAtMm] = useState<number | null>(null);
  const { tables } = loads.loads.told;
  // A patient's page is about the one bone.
  const table = (plain ? undefined : tables.find((each) => each.bone === bone)) ?? loads.table;
  const referenceMPa = loads.loads.referenceMPa[tables.indexOf(table)] ?? 0;
  const hurt = table === loads.table;
  const along = hurt ? alongOf(loads.explanation) : NOTHING_ALONG;
  const station = nearest(table.stations, atMm ?? table.peakTension.sMm);
  if (station === undefined) return null;
  // A bone that the reference hardly pulls has no measure: its forces are drawn, its stress is not.
  const measured = multipleOf(1, referenceMPa) !== null;
  const place = say('stations.atValue', { mm: station.sMm.toFixed(1) });
  return (
    <>
      <p className="small-print">
        {plain ? say('stations.whatPlain') : say('stations.what', { measure: say(measureWord(loads.loads)) })}
      </p>
      {!plain && <BoneChoice loads={loads} bone={table.bone} onChange={setBone} />}
      {(plain ? PLAIN_STRIPS : STRIPS)
        .filter(({ key }) => measured || key !== 'stress')
        .map((row) => (
          <Strip
            key={row.key}
            row={row}
            table={table}
            referenceMPa={referenceMPa}
            ranks={loads.loads.ranksOnly}
            forcesRank={loads.loads.forcesRank}
            along={along}
            atMm={plain ? null : station.sMm}
          />
        ))}
      {!measured && <p>{say('ratio.noMeasure')}</p>}
      <Key plain={plain} hurt={hurt} occurs={along.occurs !== null} />
      {!plain && (
        <>
          <Slider
            label={say('stations.at')}
            low={0}
            high={table.stations.length - 1}
            step={1}
            value={table.stations.indexOf(station)}
            text={place}
            onChange={(next) => setAtMm(table.stations[next]?.sMm ?? null)}
          />
          <Disclosure title={say('stations.section', { place })}>
            <SectionTable station={station} />
          </Disclosure>
          <Disclosure title={say('derivation.title', { place })}>
            <Derivation
              loads={loads}
              table={table}
              station={station}
              referenceMPa={referenceMPa}
              band={(hurt ? loads.loads.bands?.stations[table.stations.indexOf(station)] : null) ?? null}
            />
          </Disclosure>
          <Disclosure title={say('stations.numbers')}>
            <StationNumbers
              table={table}
              referenceMPa={referenceMPa}
              measure={say(measureWord(loads.loads))}
              forcesRank={loads.loads.forcesRank}
              ranks={loads.loads.ranksOnly}
              bands={hurt ? (loads.loads.bands?.stations ?? 'pending') : 'none'}
              atMm={station.sMm}
            />
          </Disclosure>
        </>
      )}
    </>
  );
};

export const StationDiagram = () => {
  const { say } = usePages();
  const loads = useLoads();
  return loads === null ? <p>{say('stations.none')}</p> : <Diagram loads={loads} />;
};
