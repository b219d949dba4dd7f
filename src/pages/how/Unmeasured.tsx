/** What the frame is told besides its shape, and what the task is told: every figure with its source, and its part in the band. */
import type { Activity } from '../../content/schema';
import { CASE_FIGURES } from '../../mechanics/foot/load-case';
import type { LoadBands } from '../../mechanics/foot/types';
import { caseFigureWord } from '../../wording';
import { usePages, useSession } from '../context';
import { type FigureGroup, FigureTable } from './FigureTable';
import { countBases, GROUPS, spreadShare } from './figure-rows';
import { useActivityName } from './use-activity-name';
import type { Loads } from './use-loads';

interface Properties {
  readonly loads: Loads;
}

const useBands = ({ banded }: Loads): LoadBands | null => banded?.loads?.bands ?? null;

export const FrameFigures = ({ loads }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const study = useSession((state) => state.reader === 'study');
  const bands = useBands(loads);
  const counts = countBases(content);
  const groups = GROUPS.map(
    (group): FigureGroup => ({
      title: say(`figures.group.${group}`),
      rows: content.frame
        .filter((record) => record.group === group)
        .map(({ id, term, plain, figure, basis }) => ({
          id,
          name: study ? term : plain,
          figure,
          basis,
          share: spreadShare(bands, id, figure),
        })),
    }),
  );
  return (
    <>
      <p>
        {say('figures.what', {
          all: content.frame.length,
          measured: counts.measured,
          model: counts['another model'],
          assumed: counts.assumed,
          calibrated: counts.calibrated,
        })}
      </p>
      <p className="small-print">
        {say('figures.shares', {
          draws: bands?.draws ?? '…',
          percent: bands === null ? '…' : Math.round(100 * bands.chanceShare),
        })}{' '}
        {bands !== null &&
          say('figures.held', { tried: bands.tried, dropped: bands.tried - bands.draws, draws: bands.draws })}
      </p>
      <FigureTable title={say('figures.title')} groups={groups} held={!loads.current} />
    </>
  );
};

export const CaseFigures = ({ loads }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const named = useActivityName();
  const bands = useBands(loads);
  const { activity, reference } = loads.loads;
  const told = (id: string, which: 'case' | 'reference'): FigureGroup[] => {
    const record: Activity | undefined = content.activities.find((each) => each.id === id);
    if (record === undefined) return [];
    return [
      {
        title: say(which === 'case' ? 'figures.ofTask' : 'figures.ofReference', { activity: named(record.id) }),
        rows: CASE_FIGURES.map((name) => ({
          id: name,
          name: caseFigureWord(name),
          figure: record.figures[name],
          basis: null,
          share: spreadShare(bands, `${which}.${name}`, record.figures[name]),
        })),
      },
    ];
  };
  const record = content.activities.find((each) => each.id === activity);
  return (
    <>
      <p>{say('figures.caseWhat')}</p>
      <p>{say('figures.unknown', { unknown: record?.unknown[reader] ?? '' })}</p>
      <FigureTable
        title={say('figures.caseTitle')}
        groups={[...told(activity, 'case'), ...told(reference, 'reference')]}
        held={!loads.current}
      />
    </>
  );
};
