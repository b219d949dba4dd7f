/** What can be taken for a fracture and is none: each drawn where it lies, with how a break differs from it. */
import type { LookAlikeRule } from '../../anatomy/look-alike-schema';
import { lookAlike } from '../../anatomy/look-alikes';
import { meshCentroid } from '../../anatomy/mesh';
import type { Foot } from '../../anatomy/types';
import type { ViewId } from '../../session/types';
import { subtract } from '../../units';
import { usePages, useSession } from '../context';

/** The named view that looks at a place from outside its bone. */
const viewOf = (foot: Foot, rule: LookAlikeRule): ViewId => {
  const bone = foot.bones.get(rule.bone);
  if (bone === undefined) return 'outer';
  const [x, y, z] = subtract(lookAlike(foot, rule.id).at, meshCentroid(bone));
  const most = Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
  if (Math.abs(x) === most) return x > 0 ? 'inner' : 'outer';
  if (Math.abs(y) === most) return y > 0 ? 'top' : 'sole';
  return z > 0 ? 'front' : 'back';
};

const Entry = ({ rule, foot }: { readonly rule: LookAlikeRule; readonly foot: Foot }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const shown = useSession((state) => state.lookAlike) === rule.id;
  const show = () => {
    session.commands.showLookAlike(shown ? null : rule.id);
    session.commands.selectBone(shown ? null : rule.bone);
    if (!shown) session.commands.lookFrom(viewOf(foot, rule));
  };
  const { from, to } = rule.ages;
  return (
    <li>
      <button type="button" className="choice" aria-pressed={shown} onClick={show}>
        {reader === 'patient' ? rule.plain : rule.term}
      </button>
      {shown && (
        <>
          <p>{rule.where}</p>
          <p>{rule.differs[reader]}</p>
          <p>
            {to === null ? say('foot.ageFrom', { from }) : say('foot.ages', { from, to })}{' '}
            <cite>{rule.ages.source}</cite>
          </p>
          <ul className="plain-list">
            {rule.howOften.map(({ percent: [low, high], of, source, mark }) => (
              <li key={source}>
                {say('foot.howOften', { percent: low === high ? `${low}` : `${low}-${high}`, of })}{' '}
                <cite>{say('foot.source', { source, how: mark })}</cite>
              </li>
            ))}
          </ul>
          <p>
            <cite>{rule.source}</cite>
          </p>
        </>
      )}
    </li>
  );
};

export const LookAlikes = () => {
  const { say, foot } = usePages();
  return (
    <section aria-labelledby="foot-look-alikes">
      <h2 id="foot-look-alikes" className="fold-head">
        {say('foot.lookAlikes')}
      </h2>
      <p>{say('foot.lookAlikesHint')}</p>
      <ul className="plain-list look-alikes">
        {foot?.reference.lookAlikes.map((rule) => (
          <Entry key={rule.id} rule={rule} foot={foot} />
        ))}
      </ul>
    </section>
  );
};
