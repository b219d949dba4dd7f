/**
 * Weeks of training against the habit before them: how much more the bone wears, over a range of constants. Ratios, never a
 * probability; nothing typed here leaves the panel or is kept.
 */
import { useMemo, useState } from 'react';
import type { Mark, Repetition } from '../../content/schema';
import { markOfRepetition, REPEATED_LOAD } from '../../explain/repeated-load';
import type { Quantity } from '../../units';
import { fillRuns } from '../../wording/fill';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { markWordKey, Runs } from '../parts/Runs';
import { Constants } from './Constants';
import { DiaryFields } from './DiaryFields';
import { type DiaryState, FIRST_DIARY } from './diary-state';
import './repeat.css';
import { useRangeWords } from './use-range-words';
import { WearChart } from './WearChart';
import { WearTable } from './WearTable';
import { leavesOpen, type WearWeek, wearOf } from './wear';

/** The frame's ratio of this task to walking, with its band; null before it is there, and for walking itself. */
const useTaskRatio = (): Quantity | null => {
  const loads = useSession((state) => state.explanation?.loads ?? null);
  if (loads?.bands == null || loads.activity === loads.reference) return null;
  const { told, low, high } = loads.bands.ratio;
  return { value: told, unit: 'times', lowHigh: [low, high] };
};

const Sentence = ({ weeks, mark }: { readonly weeks: readonly WearWeek[]; readonly mark: Mark }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  const words = useRangeWords();
  const last = weeks.at(-1);
  if (last === undefined) return null;
  const told = (key: string, text: string) => fillRuns(say(key), { weeks: weeks.length, times: { text, mark } });
  return (
    <p className="repeat-sentence" role="status">
      <Runs runs={told(`repeat.sum.${reader}`, words(last.done))} />{' '}
      <Runs runs={told(`repeat.left.${reader}`, words(last.left))} /> {leavesOpen(last.done) && say('repeat.open')}
    </p>
  );
};

const Panel = ({ constants }: { readonly constants: Repetition }) => {
  const { say } = usePages();
  const [state, setState] = useState<DiaryState>(FIRST_DIARY);
  const task = useTaskRatio();
  const weeks = useMemo(() => wearOf(state, constants, task), [state, constants, task]);
  const mark = markOfRepetition(constants);
  return (
    <>
      <p className="repeat-mark">
        <Runs runs={fillRuns(say('repeat.marked'), { mark: { text: say(markWordKey(mark)), mark } })} />
      </p>
      <Sentence weeks={weeks} mark={mark} />
      <WearChart weeks={weeks} />
      <DiaryFields state={state} task={task} onChange={setState} />
      <Disclosure title={say('repeat.numbers')}>
        <WearTable weeks={weeks} kind={state.kind} mark={mark} />
      </Disclosure>
      <Disclosure title={say('repeat.constants')}>
        <Constants constants={constants} />
      </Disclosure>
    </>
  );
};

export const RepeatPart = () => {
  const { say } = usePages();
  const constants = useSession((state) => state.content.repetitions[0] ?? null);
  const explanation = useSession((state) => state.explanation);
  if (constants === null) return null;
  const repeated = findingsOf(explanation, 'modelApplies').some(
    ({ message }) => message.args.mechanism === REPEATED_LOAD,
  );
  return (
    <Disclosure title={say(repeated ? 'repeat.title' : 'repeat.offer')}>
      <Panel constants={constants} />
    </Disclosure>
  );
};
