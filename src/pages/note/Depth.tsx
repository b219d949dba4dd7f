/** What a question shows beyond sentences: the drawings, tables and controls that belong to it. */
import type { QuestionId } from '../../ids';
import { BackPart } from '../back/BackPart';
import { HowPart } from '../how/HowPart';
import { MoveBreak } from '../how/MoveBreak';
import { OptionsPart } from '../options/OptionsPart';

export const Depth = ({ question }: { readonly question: QuestionId }) => {
  if (question === 'where') return <MoveBreak />;
  if (question === 'how') return <HowPart />;
  if (question === 'options') return <OptionsPart />;
  if (question === 'back') return <BackPart />;
  return null;
};
