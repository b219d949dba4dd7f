/** Exercises of a stage in words, each with a pose of the foot to look at. The clinician strikes what is not for this person. */
import { stageNotesOf } from '../../cases';
import type { Stage } from '../../content/schema';
import type { Finding } from '../../explain/types';
import { usePages, useSession } from '../context';
import { bringPlate } from '../parts/bring-plate';
import { StageLine } from './StageLine';
import { textsOf, useBareText } from './stage-parts';

interface Properties {
  readonly stage: Stage;
  readonly findings: readonly Finding[];
}

export const StageExercises = ({ stage, findings }: Properties) => {
  const { say, session } = usePages();
  const bare = useBareText();
  const pose = useSession((state) => state.pose);
  const file = useSession((state) => state.file);
  const { struck } = stageNotesOf(file, stage.id);
  const { commands } = session;
  return (
    <section>
      <h3 className="list-head">{say('stages.exercises')}</h3>
      <ul className="way-exercises">
        {textsOf(findings, 'stageExercise').map((finding) => {
          const exercise = stage.today.exercises[finding.message.args.at.index];
          if (exercise === undefined) return null;
          const line = bare(finding);
          const isStruck = struck.includes(exercise.id);
          const shown = pose === exercise.pose && pose !== 'standing';
          return (
            <li key={exercise.id} className={isStruck ? 'way-struck' : undefined}>
              <label>
                <input
                  type="checkbox"
                  checked={!isStruck}
                  onChange={() => commands.strikeExercise(stage.id, exercise.id, !isStruck)}
                />{' '}
                <span className="way-exercise">{line.text}</span>
              </label>
              <StageLine text="" evidence={line.evidence} />
              {isStruck && <span className="own-mark">{say('stages.struck')}</span>}
              <button
                type="button"
                className="small"
                aria-pressed={shown}
                aria-label={say('stages.showOf', { exercise: line.text })}
                onClick={() => {
                  commands.setPose(shown ? 'standing' : exercise.pose);
                  bringPlate();
                }}
              >
                {say(shown ? 'stages.shown' : 'stages.show')}
              </button>
            </li>
          );
        })}
      </ul>
      <p className="small-print">{say('stages.strikeHint')}</p>
    </section>
  );
};
