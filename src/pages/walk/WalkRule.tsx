/** The walk on the foot-rule: one division a stop, the slide over the one where the walker is. Any of them can be gone to. */
import { usePages, useSession } from '../context';
import { boneName } from '../note/BoneList';
import { RuleTicks } from '../parts/RuleTicks';

export const WalkRule = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const at = useSession((state) => state.walkStop);
  return (
    <nav className="rule walk-rule" aria-label={say('walk.rule')}>
      <ol style={{ gridTemplateColumns: `repeat(${content.walk.length}, minmax(0, 1fr))` }}>
        {content.walk.map(({ id, bone }, index) => {
          const record = content.bones.find((each) => each.id === bone);
          const name = record === undefined ? '' : boneName(record, reader);
          return (
            <li key={id}>
              <button
                type="button"
                aria-current={index === at ? 'step' : undefined}
                aria-label={say('walk.stop', { number: index + 1, bone: name })}
                title={name}
                onClick={() => session.commands.walkTo(index)}
              >
                <RuleTicks />
                <span className="rule-number">{index + 1}</span>
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
};
