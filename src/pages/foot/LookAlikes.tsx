/** What can be taken for a fracture and is none: each drawn where it lies, with how a break differs from it. */
import type { LookAlikeRule } from '../../anatomy/look-alike-schema';
import { usePages, useSession } from '../context';
import { bringPlate } from '../parts/bring-plate';
import { Draft } from './Draft';
import { SourceText } from './SourceText';
import { viewOf } from './view-of';

const Entry = ({ rule }: { readonly rule: LookAlikeRule }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const shown = useSession((state) => state.lookAlike) === rule.id;
  const show = () => {
    session.commands.showLookAlike(shown ? null : rule.id);
    session.commands.selectBone(shown ? null : rule.bone);
    if (shown) return;
    session.commands.lookFrom(viewOf(rule));
    bringPlate();
  };
  const { from, to } = rule.ages;
  return (
    <li>
      <button type="button" className="choice" aria-pressed={shown} onClick={show}>
        {reader === 'study' ? rule.term : rule.plain}
      </button>
      {shown && (
        <>
          <p>{reader === 'study' ? rule.where.study : rule.where.plain}</p>
          <p>{rule.differs[reader]}</p>
          <p>
            {to === null ? say('foot.ageFrom', { from }) : say('foot.ages', { from, to })}{' '}
            <cite>{rule.ages.source}</cite>
          </p>
          <ul className="plain-list">
            {rule.howOften.map(({ percent: [low, high], of, source, how }) => (
              <li key={source}>
                {say('foot.howOften', { percent: low === high ? `${low}` : `${low}-${high}`, of })}{' '}
                <SourceText source={source} how={how} />
              </li>
            ))}
          </ul>
          {reader === 'study' && (
            <p>
              <cite>{rule.source}</cite>
            </p>
          )}
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
      <Draft file="anatomy/look-alikes.yaml" />
      <ul className="plain-list look-alikes">
        {foot?.reference.lookAlikes.map((rule) => (
          <Entry key={rule.id} rule={rule} />
        ))}
      </ul>
    </section>
  );
};
