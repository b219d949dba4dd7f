/** The screw's figures, a column a material. A patient gets the two that need no trade's unit. */
import type { MessageOf } from '../../explain/messages';
import type { Quantity } from '../../units';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Known, markWordKey } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { weakestMark } from '../parts/weakest-mark';

/** Every row that the table may have. */
export const SCREW_ROWS = ['upDown', 'sideways', 'bone', 'ofYield', 'alone', 'opening', 'perNm', 'turn'] as const;

type InBone = MessageOf<'screwShare'>['args']['screws'][number];
type Alone = MessageOf<'screwBridge'>['args']['screws'][number];

const useFixation = () => {
  const bone = useSession((state) => state.explanation?.bone ?? null);
  const fixations = useSession((state) => state.content.fixations);
  return fixations.find((each) => each.bone === bone) ?? null;
};

const Materials = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const fixation = useFixation();
  return (
    <ul className="plain small-print">
      {fixation?.materials.map(({ id, term, young, yields }) => (
        <li key={id}>
          {say('screw.materials', { material: term, young: young.value, yields: yields.value })}{' '}
          {[young, yields].map(({ evidence, unit }) => (
            <span key={unit}>
              <Known mark={evidence.mark}>
                {evidence.source === null ? say(markWordKey(evidence.mark)) : sourceName(content, evidence.source)}
              </Known>
              {'. '}
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
};

export const ScrewTable = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const fixation = useFixation();
  const finding = findingsOf(explanation, 'screwShare')[0];
  const inBone = finding?.message.args;
  const alone = findingsOf(explanation, 'screwBridge')[0]?.message.args;
  if (fixation === null || finding === undefined || inBone === undefined || alone === undefined) return null;
  const percents = ({ value, lowHigh = [value, value] }: Quantity): string =>
    say('screw.range', { low: Math.round(100 * lowHigh[0]), high: Math.round(100 * lowHigh[1]) });
  const short = (value: number): string => String(Number(value.toPrecision(2)));
  // Sizes of a push-off that may have none are null: their rows are left out, and the note says so.
  const sized = inBone.screws.some(({ ofYield }) => ofYield !== null);
  const plain = [
    ['upDown', (s: InBone) => percents(s.upDown), null],
    ['alone', null, (s: Alone) => s.ofYield && percents(s.ofYield)],
  ] as const;
  const trade = [
    ['upDown', (s: InBone) => percents(s.upDown), null],
    ['sideways', (s: InBone) => percents(s.sideways), null],
    [
      'bone',
      ({ bone }: InBone) => {
        if (bone === null) return null;
        const [low, high] = bone.lowHigh ?? [bone.value, bone.value];
        return say('screw.times', { low: low.toFixed(2), high: high.toFixed(2) });
      },
      null,
    ],
    ['ofYield', (s: InBone) => s.ofYield && percents(s.ofYield), null],
    ['alone', null, (s: Alone) => s.ofYield && percents(s.ofYield)],
    [
      'opening',
      null,
      ({ opening }: Alone) => {
        if (opening === null) return null;
        const [low, high] = opening.lowHigh ?? [opening.value, opening.value];
        return say('screw.range', { low: short(100 * low), high: short(100 * high) });
      },
    ],
    ['perNm', null, (s: Alone) => say('screw.perNm', { percent: short(100 * s.openingPerNm.value) })],
    ['turn', null, (s: Alone) => say('screw.turn', { degrees: short(s.turnPerNmMm.value) })],
  ] as const;
  const hangsOnLoad: readonly string[] = ['bone', 'ofYield', 'alone', 'opening'];
  const rows = (reader === 'patient' ? plain : trade).filter(([key]) => sized || !hangsOnLoad.includes(key));
  const name = (id: string): string => {
    const found = fixation.materials.find((m) => m.id === id);
    return found?.plain ?? id;
  };
  return (
    <>
      <p className="small-print">
        {say('screw.note', { core: fixation.core.value })} {inBone.outside && say('screw.outside')}{' '}
        {!sized && say('screw.noSizes')}
      </p>
      <ScrollBox label={say('screw.table')}>
        <table className="screw-table">
          <caption className="unseen">{say('screw.table')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('screw.column.figure')}</th>
              {inBone.screws.map(({ material }) => (
                <th key={material} scope="col">
                  {name(material)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([key, ofBone, ofAlone]) => (
              <tr key={key}>
                <th scope="row">{say(`screw.row.${key}`)}</th>
                {inBone.screws.map((screw) => {
                  const bridge = alone.screws.find((each) => each.material === screw.material);
                  const text = ofBone !== null ? ofBone(screw) : bridge === undefined ? null : ofAlone(bridge);
                  return (
                    <td key={screw.material}>
                      <Known mark={weakestMark(finding)}>{text ?? ''}</Known>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      <p className="small-print">
        {say('screw.rule', { bone: 100 * alone.bone.value, cartilage: 100 * alone.cartilage.value })}
      </p>
      {reader === 'study' && <Materials />}
    </>
  );
};
