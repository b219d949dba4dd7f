/** An injury told in short: its danger sign first, then where and what it is, what it is taken for, and where that stands. */

import type { LookAlikeRule } from '../../anatomy/look-alike-schema';
import { regionsOfCard } from '../../content/look-up';
import { evidenceIn } from '../../content/references';
import type { Card, Evidence } from '../../content/schema';
import { sourceLine } from '../../wording';
import { usePages, useSession } from '../context';
import { Draft } from '../foot/Draft';
import { viewOf } from '../foot/view-of';
import { bringPlate } from '../parts/bring-plate';
import { Known, markWordKey } from '../parts/Runs';
import { candidateName, nameFor } from './names';

const MarkWord = ({ evidence }: { readonly evidence: Evidence }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  return reader === 'study' ? (
    <>
      {' '}
      <Known mark={evidence.mark}>{say(markWordKey(evidence.mark))}</Known>
    </>
  ) : null;
};

/** How a look-alike differs is told once, where the look-alike is: here it is read from there, and shown on the foot when asked. */
const LookAlikeSays = ({ rule }: { readonly rule: LookAlikeRule }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const shown = useSession((state) => state.lookAlike) === rule.id;
  const show = () => {
    session.commands.showLookAlike(shown ? null : rule.id);
    if (shown) return;
    session.commands.lookFrom(viewOf(rule));
    bringPlate();
  };
  return (
    <>
      <p>{rule.differs[reader]}</p>
      <button type="button" className="choice" aria-pressed={shown} onClick={show}>
        {say('card.showIt')}
      </button>
    </>
  );
};

const Apart = ({ card }: { readonly card: Card }) => {
  const { say, foot, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const ruleOf = (id: string) => foot?.reference.lookAlikes.find((rule) => rule.id === id);
  return (
    <section>
      <h2>{say('card.apart')}</h2>
      <dl className="card-apart">
        {card.tellApart.map(({ from, how, evidence }) => {
          const rule = from.is === 'lookAlike' ? ruleOf(from.id) : undefined;
          const name =
            from.is === 'other'
              ? nameFor(from, reader)
              : from.is === 'lookAlike'
                ? ((reader === 'study' ? rule?.term : rule?.plain) ?? from.id)
                : candidateName(
                    content,
                    from.is === 'card' ? { is: 'card', id: from.card } : { is: 'injury', id: from.injury },
                    reader,
                  );
          return (
            <div key={name}>
              <dt>{from.is === 'card' ? <a href={hrefOf({ page: 'find', card: from.card })}>{name}</a> : name}</dt>
              <dd>
                <p>
                  {how[reader]}
                  <MarkWord evidence={evidence} />
                </p>
                {rule !== undefined && <LookAlikeSays rule={rule} />}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
};

const Codes = ({ card }: { readonly card: Card }) => {
  const { say } = usePages();
  const codes = useSession((state) => state.content.codes);
  if (card.codes.length === 0) return null;
  return (
    <section>
      <h2>{say('card.codes')}</h2>
      <ul>
        {codes
          .filter(({ id }) => card.codes.includes(id))
          .map(({ id, root, title }) => (
            <li key={id}>
              {root}: {title}
            </li>
          ))}
      </ul>
    </section>
  );
};

/** Every source that stands anywhere on the card, once, with the weakest mark it was read with. */
const Sources = ({ card }: { readonly card: Card }) => {
  const { say } = usePages();
  const sources = useSession((state) => state.content.sources);
  const cited = new Set(evidenceIn(card).map(({ evidence }) => evidence.source));
  const own = sources.filter(({ id }) => cited.has(id));
  return (
    <section>
      <h2>{say('card.sources')}</h2>
      <ul className="card-sources">
        {own.map((source) => (
          <li key={source.id}>
            <cite>{sourceLine(source)}</cite>
          </li>
        ))}
        {cited.has(null) && <li>{say('mark.practice')}</li>}
      </ul>
    </section>
  );
};

/** What the picture means by it: parts that are outlined, or bones that are meant whole. */
const Drawn = ({ card }: { readonly card: Card }) => {
  const { say } = usePages();
  const regions = useSession((state) => state.content.regions);
  const reader = useSession((state) => state.reader);
  const own = regionsOfCard(card).flatMap((id) => regions.find((each) => each.id === id) ?? []);
  const places = own.map(({ term, plain }) => (reader === 'study' ? term : plain)).join(', ');
  const count = String(card.bones.length);
  return (
    <p className="small-print">
      {card.place.is === 'regions'
        ? say('card.outlined', { places })
        : card.bones.length === 1
          ? say('card.wholeBone')
          : say('card.wholeBones', { count })}
    </p>
  );
};

export const CardView = ({ card }: { readonly card: Card }) => {
  const { say, hrefOf } = usePages();
  const reader = useSession((state) => state.reader);
  return (
    <article className="card">
      <p className="question-count">{say('card.short')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {nameFor(card, reader)}
      </h1>
      <section className="red-flags">
        <h2>{say('card.danger')}</h2>
        <p>
          {card.danger.what[reader]}
          <MarkWord evidence={card.danger.evidence} />
        </p>
      </section>
      <p className="one-sentence">
        {card.what[reader]}
        <MarkWord evidence={card.evidence} />
      </p>
      <p>
        <b>{say('card.where')}:</b> {card.where[reader]}
      </p>
      <Drawn card={card} />
      {reader !== 'patient' && card.synonyms.length > 0 && (
        <p>
          <b>{say('card.names')}:</b> {card.synonyms.join(', ')}.
        </p>
      )}
      <p className="small-print">{say('card.shortNote')}</p>
      <Apart card={card} />
      {reader === 'study' && <Codes card={card} />}
      <Sources card={card} />
      <Draft file={`cards/${card.id}.yaml`} />
      <p>
        <a className="button" href={hrefOf({ page: 'find', card: null })}>
          {say('card.back')}
        </a>
      </p>
    </article>
  );
};
