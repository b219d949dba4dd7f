/** The note beside the plate: one question, one sentence, at most three stamped claims, and depth on request. */
import { useMemo } from 'react';
import { QUESTION_IDS } from '../../ids';
import { type QuestionWords, wordQuestion } from '../../wording';
import { usePages, useSession } from '../context';
import { ContradictionsFold } from '../evidence/ContradictionsFold';
import { TroublesFold } from '../evidence/TroublesFold';
import { WithCalculation } from '../how/Calculation';
import { toldBeside } from '../how/told-beside';
import { useAgainstBreaks } from '../how/use-against-breaks';
import { useBands } from '../how/use-bands';
import { PageLink } from '../parts/Bar';
import { Disclosure } from '../parts/Disclosure';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { Runs } from '../parts/Runs';
import { BoneCard, BoneList } from './BoneList';
import { Cautions, Disclaimer, OfThisAge } from './Cautions';
import { Depth, InSight } from './Depth';
import { HowDoYouKnow } from './HowDoYouKnow';
import { Legend, Marks } from './Legend';
import { ClaimLines, Lines } from './Lines';
import { LookFrom } from './LookFrom';
import { PictureInWords } from './PictureInWords';
import { WhatIfBanner } from './WhatIfBanner';

/** For whoever learns: the way round the whole foot, whatever the case. */
const WalkLink = () => {
  const { say } = usePages();
  const learning = useSession((state) => state.reader === 'study');
  return learning ? (
    <p className="fold walk-link">
      <PageLink page="walk">{say('walk.begin')}</PageLink>
    </p>
  ) : null;
};

/** More than this many claims beside a picture are not read; the rest is one press away. */
const CLAIMS_SHOWN = 3;

export const useQuestionWords = (): QuestionWords | null => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const question = useSession((state) => state.question);
  const reader = useSession((state) => state.reader);
  return useMemo(
    () => (explanation === null ? null : wordQuestion(content, explanation, question, reader)),
    [content, explanation, question, reader],
  );
};

export const QuestionHead = () => {
  const { say } = usePages();
  const question = useSession((state) => state.question);
  const words = useQuestionWords();
  return (
    <>
      <p className="question-count">{say('note.count', { number: QUESTION_IDS.indexOf(question) + 1 })}</p>
      <h1 className="question-title" tabIndex={-1}>
        {words?.title ?? say(`question.${question}`)}
      </h1>
      <p className="one-sentence">{words === null ? say('note.working') : <Runs runs={words.sentence.runs} />}</p>
    </>
  );
};

/** All that is made from the explanation: it comes at once, so that nothing that stands is pushed on. */
const UnderTheSentence = () => {
  const { say } = usePages();
  const words = useQuestionWords();
  const question = useSession((state) => state.question);
  const nothingKnown = useNothingKnown();
  const against = useAgainstBreaks();
  const reader = useSession((state) => state.reader);
  // What the bands do and do not explain stands beside them; it takes the place of one claim.
  const inSight = [...(against === null ? [] : [against]), ...(words?.claims ?? [])];
  const more = [
    ...inSight.slice(CLAIMS_SHOWN),
    ...(words?.more ?? []).filter(({ finding }) => finding !== against?.finding && !toldBeside(finding, reader)),
  ];
  const claims = <ClaimLines sentences={inSight.slice(0, CLAIMS_SHOWN)} />;
  // A patient asks how much weight the foot takes today before asking how many weeks others took.
  const todayFirst = reader === 'patient' && question === 'back';
  return (
    <WithCalculation>
      {nothingKnown && <NothingYet page="explain" />}
      <OfThisAge question={question} />
      {todayFirst && claims}
      <InSight question={question} />
      {!todayFirst && claims}
      <BoneCard />
      <Legend question={question} />
      <Cautions question={question} />
      <div className="folds">
        {more.length > 0 && (
          <Disclosure title={say('note.more')}>
            <Lines sentences={more} />
          </Disclosure>
        )}
        <Disclosure title={say('note.how')}>
          <HowDoYouKnow question={question} />
        </Disclosure>
        <TroublesFold question={question} />
        <Depth question={question} />
        <ContradictionsFold question={question} />
        <BoneList />
        <LookFrom />
        <WalkLink />
        <PictureInWords />
      </div>
      <Marks />
      <Disclaimer />
    </WithCalculation>
  );
};

export const Note = () => {
  const words = useQuestionWords();
  useBands(useSession(({ question }) => question === 'how' || question === 'options'));
  return (
    <>
      <WhatIfBanner />
      <QuestionHead />
      {words !== null && <UnderTheSentence />}
    </>
  );
};
