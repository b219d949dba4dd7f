/** What a question shows beyond sentences: the drawing or table that belongs to it, and folds with controls and numbers. */
import type { QuestionId } from '../../ids';
import { StageFold, WeeksPart } from '../back/BackPart';
import { FootPart } from '../foot/FootPart';
import { HowPart } from '../how/HowPart';
import { MoveBreak } from '../how/MoveBreak';
import { OptionsPart } from '../options/OptionsPart';

/** Stands in sight, under the claims. */
export const InSight = ({ question }: { readonly question: QuestionId }) => {
  if (question === 'options') return <OptionsPart />;
  if (question === 'back') return <WeeksPart />;
  return null;
};

/** Folded away until asked for. */
export const Depth = ({ question }: { readonly question: QuestionId }) => {
  if (question === 'where')
    return (
      <>
        <MoveBreak />
        <FootPart />
      </>
    );
  if (question === 'how') return <HowPart />;
  if (question === 'back') return <StageFold />;
  return null;
};
