/** What a question shows beyond sentences: the drawing or table that belongs to it, and folds with controls and numbers. */
import type { QuestionId } from '../../ids';
import { StageFold, WeeksPart } from '../back/BackPart';
import { ForecastPart } from '../back/ForecastPart';
import { FootPart } from '../foot/FootPart';
import { Strands } from '../foot/Strands';
import { HowPart } from '../how/HowPart';
import { MoveBreak } from '../how/MoveBreak';
import { Ratio } from '../how/Ratio';
import { OptionsPart } from '../options/OptionsPart';
import { SupportsPart } from '../options/SupportsPart';
import { RepeatPart } from '../repeat/RepeatPart';
import { VesselChoices } from '../why/VesselChoices';

/** Stands in sight beside the claims. */
export const InSight = ({ question }: { readonly question: QuestionId }) => {
  if (question === 'how') return <Ratio />;
  if (question === 'options') return <OptionsPart />;
  if (question === 'back')
    return (
      <>
        <ForecastPart />
        <WeeksPart />
      </>
    );
  return null;
};

/** Folded away until asked for. */
export const Depth = ({ question }: { readonly question: QuestionId }) => {
  if (question === 'where')
    return (
      <>
        <MoveBreak />
        <Strands />
        <FootPart />
      </>
    );
  if (question === 'how')
    return (
      <>
        <HowPart />
        <RepeatPart />
      </>
    );
  if (question === 'why') return <VesselChoices />;
  if (question === 'options') return <SupportsPart />;
  if (question === 'back') return <StageFold />;
  return null;
};
