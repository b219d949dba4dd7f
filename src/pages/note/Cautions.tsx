/** Red flags and treatment dangers where they matter, and at the foot of every note what this is not. */
import { useMemo } from 'react';
import type { Caution } from '../../content/schema';
import type { QuestionId } from '../../ids';
import { cautionsFor } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';

const useCautions = (kinds: readonly Caution['kind'][], question?: QuestionId): readonly Caution[] => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  return useMemo(
    () =>
      explanation === null
        ? []
        : cautionsFor(content, explanation, reader, question).filter((caution) => kinds.includes(caution.kind)),
    [content, explanation, reader, question, kinds],
  );
};

const LIMITS = ['limit'] as const;
const FLAGS = ['red flag'] as const;
const DANGERS = ['treatment danger'] as const;
const STANDING = ['disclaimer'] as const;

/** As many as are read at a glance; the others are one press away. */
const IN_SIGHT = 3;

const CautionList = ({ cautions }: { readonly cautions: readonly Caution[] }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  return (
    <ul>
      {cautions.map((caution) => (
        <li key={caution.id}>
          {caution.what[reader]}
          {reader === 'study' && (
            <>
              {' '}
              <Known mark={caution.evidence.mark}>{say(markWordKey(caution.evidence.mark))}</Known>
            </>
          )}
        </li>
      ))}
    </ul>
  );
};

interface RedFlagsProperties {
  readonly cautions: readonly Caution[];
  readonly inSight: number;
}

export const RedFlags = ({ cautions, inSight }: RedFlagsProperties) => {
  const { say } = usePages();
  return (
    <section className="red-flags">
      <h2>{say('cautions.title')}</h2>
      <CautionList cautions={cautions.slice(0, inSight)} />
      {cautions.length > inSight && (
        <details>
          <summary>{say('cautions.more', { count: cautions.length - inSight })}</summary>
          <CautionList cautions={cautions.slice(inSight)} />
        </details>
      )}
    </section>
  );
};

export const Cautions = ({ question }: { readonly question: QuestionId }) => {
  const flags = useCautions(FLAGS);
  const dangers = useCautions(DANGERS, question);
  // Signs that cannot wait stand at every question; dangers of a treatment where that treatment is spoken of.
  const cautions = [...flags, ...dangers];
  return cautions.length === 0 ? null : <RedFlags cautions={cautions} inSight={IN_SIGHT} />;
};

/** What the figures of others cannot say of somebody of this age: before the first of them. The first sentence of question 5 opens with it. */
export const OfThisAge = ({ question }: { readonly question: QuestionId }) => {
  const reader = useSession((state) => state.reader);
  const cautions = useCautions(LIMITS, question).filter(({ ages }) => ages.length > 0);
  return cautions.length === 0 || question === 'back' ? null : (
    <div className="of-this-age">
      {cautions.map(({ id, what }) => (
        <p key={id}>{what[reader]}</p>
      ))}
    </div>
  );
};

export const Disclaimer = () => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  const draft = useSession((state) => state.explanation?.draft ?? false);
  const demo = useSession((state) => state.file.demo !== undefined);
  const cautions = useCautions(STANDING);
  return (
    <footer className="disclaimer">
      {demo && <p>{say('note.invented')}</p>}
      {draft && <p>{say('note.draft')}</p>}
      {cautions.map((caution) => (
        <p key={caution.id}>{caution.what[reader]}</p>
      ))}
    </footer>
  );
};
