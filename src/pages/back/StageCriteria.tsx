/** What opens the next stage, as a list to tick, and what sends a person back. Ticks are the clinic's own and count nothing. */
import { stageNotesOf } from '../../cases';
import type { Stage } from '../../content/schema';
import type { Finding } from '../../explain/types';
import { weeksBetween } from '../../recovery/calendar';
import type { IsoDate } from '../../units';
import { localDay } from '../../units/local-day';
import { formatDate } from '../../wording';
import { usePages, useSession } from '../context';
import { StageLine } from './StageLine';
import { textsOf, useBareText } from './stage-parts';

interface Properties {
  readonly stage: Stage;
  readonly findings: readonly Finding[];
}

export const StageCriteria = ({ stage, findings }: Properties) => {
  const { say, session } = usePages();
  const bare = useBareText();
  const file = useSession((state) => state.file);
  const { met } = stageNotesOf(file, stage.id);
  const start = useSession((state) => state.explanation?.start?.date ?? null);
  /** Week first, then the day; neither where no day was noted. */
  const metWords = (on: IsoDate | null): string => {
    if (on === null) return say('stages.met');
    const week = start === null ? null : Math.floor(weeksBetween(start, on));
    return week === null || week < 0
      ? say('stages.metOn', { date: formatDate(on) })
      : say('stages.metWeek', { week, date: formatDate(on) });
  };
  const first = useSession((state) => state.content.stages[0]?.id === stage.id);
  const opens = textsOf(findings, 'stageOpens');
  const back = textsOf(findings, 'stageSendsBack');
  return (
    <>
      {opens.length > 0 && (
        <section>
          <h3 className="list-head">{say('back.opens')}</h3>
          <ul className="way-checks">
            {opens.map((finding) => {
              const criterion = stage.opensNext[finding.message.args.at.index]?.id;
              if (criterion === undefined) return null;
              const tick = met.find((each) => each.criterion === criterion);
              return (
                <li key={finding.id}>
                  <label>
                    <input
                      type="checkbox"
                      checked={tick !== undefined}
                      onChange={() =>
                        session.commands.meetCriterion(
                          stage.id,
                          criterion,
                          tick === undefined ? localDay(new Date()) : null,
                        )
                      }
                    />{' '}
                    {bare(finding).text}
                  </label>
                  <StageLine text="" evidence={bare(finding).evidence} />
                  {tick !== undefined && <span className="own-mark">{metWords(tick.on)}</span>}
                </li>
              );
            })}
          </ul>
          <p className="small-print">{say('stages.metHint')}</p>
        </section>
      )}
      {back.length > 0 && (
        <section>
          <h3 className="list-head">{say(first ? 'back.callFirst' : 'back.sendsBack')}</h3>
          <ul className="criteria">
            {back.map((finding) => (
              <li key={finding.id}>
                <StageLine {...bare(finding)} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
};
