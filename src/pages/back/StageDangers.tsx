/** Danger signs of the treatment that belong to this stage: what to see, how fast to act, and how often it came in others. */
import { useMemo } from 'react';
import { URGENCIES } from '../../content/schema';
import type { Explanation } from '../../explain/types';
import type { StageId } from '../../ids';
import { cautionsFor } from '../../wording';
import { usePages, useSession } from '../context';
import { isToldTo } from '../findings';
import { Behind, StageLine } from './StageLine';
import { textsOf, useBareText } from './stage-parts';

const textsOfDangers = (explanation: Explanation | null) =>
  textsOf(explanation?.questions.find(({ id }) => id === 'back')?.findings ?? [], 'cautionFigure');

export const StageDangers = ({ stage }: { readonly stage: StageId }) => {
  const { say } = usePages();
  const bare = useBareText();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const signs = useMemo(
    () =>
      explanation === null
        ? []
        : cautionsFor(content, explanation, reader, 'back')
            .filter(
              ({ kind, stages }) => kind === 'treatment danger' && (stages.length === 0 || stages.includes(stage)),
            )
            .toSorted((a, b) => URGENCIES.indexOf(a.act ?? 'soon') - URGENCIES.indexOf(b.act ?? 'soon')),
    [content, explanation, reader, stage],
  );
  if (signs.length === 0) return null;
  const figures = textsOfDangers(explanation)
    .filter(isToldTo(reader))
    .filter(({ message }) => signs.some(({ id }) => id === message.args.at.caution));
  return (
    <section className="way-dangers">
      <h3 className="list-head">{say('stages.dangers')}</h3>
      <ul className="way-lines">
        {signs.map(({ id, act = 'soon', what, evidence }) => (
          <li key={id}>
            <b className={`act act-${act}`}>{say(`stages.act.${act}`)}</b> {what[reader]}
            {reader === 'study' && <Behind evidence={evidence} />}
          </li>
        ))}
      </ul>
      {figures.length > 0 && (
        <details className="way-more">
          <summary>{say('stages.howOften')}</summary>
          <ul className="way-lines">
            {figures.map((finding) => (
              <li key={finding.id}>
                <StageLine {...bare(finding)} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};
