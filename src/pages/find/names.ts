/** What an injury or a card is called for a reader: a plain word for the patient, the trade's for the others. */
import type { Content } from '../../content/schema';
import type { CandidateRef } from '../../explain/find';
import type { Reader } from '../../ids';

interface Named {
  readonly term: string;
  readonly plain: string;
}

export const nameFor = ({ term, plain }: Named, reader: Reader): string => (reader === 'patient' ? plain : term);

export const namedBy = (content: Content, ref: CandidateRef): Named | undefined =>
  ref.is === 'injury'
    ? content.injuries.find(({ id }) => id === ref.id)
    : content.cards.find(({ id }) => id === ref.id);

export const candidateName = (content: Content, ref: CandidateRef, reader: Reader): string => {
  const named = namedBy(content, ref);
  return named === undefined ? ref.id : nameFor(named, reader);
};
