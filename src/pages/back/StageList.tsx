/**
 * The way back, stage by stage: one open, the others folded. Criteria open a stage, not the calendar; where the person is, the
 * clinician says. What is the clinic's own says so, and stands apart from what has a source.
 */
import { useEffect, useState } from 'react';
import { clinicOf, stageNotesOf } from '../../cases';
import type { Stage } from '../../content/schema';
import type { StageId } from '../../ids';
import { formatDate, formatWeeks } from '../../wording';
import { useCommands, usePages, useSession } from '../context';
import type { FindingOf } from '../findings';
import { StageCriteria } from './StageCriteria';
import { StageDaily } from './StageDaily';
import { StageDangers } from './StageDangers';
import { StageExercises } from './StageExercises';
import { PracticeNote } from './StageLine';
import { StageOwn } from './StageOwn';
import { StageSheets } from './StageSheets';
import { StageTests } from './StageTests';
import { StageToday } from './StageToday';
import { findingsOfStage } from './stage-parts';
import './stages.css';

type Usual = FindingOf<'stageUsual'>;

/** Usual weeks, days once a start is known, and the clinic's own weeks after both. */
const Weeks = ({ usual, stage }: { readonly usual: Usual; readonly stage: StageId }) => {
  const { say } = usePages();
  const file = useSession((state) => state.file);
  const own = stageNotesOf(file, stage).weeks;
  const { weeks, dates, openEnded, elsewhere } = usual.message.args;
  const from = weeks === null ? null : (weeks.lowHigh?.[0] ?? weeks.value);
  return (
    <span className="way-weeks">
      {weeks === null || from === null
        ? say(elsewhere === null ? 'back.noWeeks' : 'back.clinicWeeks')
        : openEnded
          ? say('back.fromWeek', { week: from })
          : formatWeeks(weeks)}
      {dates !== null &&
        ` ${say('back.dates', {
          from: formatDate(dates.from),
          to: dates.to === null ? say('back.openEnd') : formatDate(dates.to),
        })}`}
      {own !== null && <span className="own-mark"> {say('stages.ownWeeksShown', { from: own.from, to: own.to })}</span>}
    </span>
  );
};

const Body = ({ usual, stage }: { readonly usual: Usual; readonly stage: Stage }) => {
  const { say, session, announce } = usePages();
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const file = useSession((state) => state.file);
  const here = clinicOf(file).stage === stage.id;
  const findings = findingsOfStage(explanation, usual.message.args.number, reader);
  return (
    <div className="way-body">
      <p>{stage.what[reader]}</p>
      <PracticeNote />
      <button
        type="button"
        className="button"
        aria-pressed={here}
        onClick={() => {
          session.commands.setStage(here ? null : stage.id);
          announce(say('stages.kept'));
        }}
      >
        {say(here ? 'stages.isHere' : 'stages.setHere')}
      </button>
      <StageToday findings={findings} />
      <StageExercises stage={stage} findings={findings} />
      <StageCriteria stage={stage} findings={findings} />
      <StageDangers stage={stage.id} />
      <StageDaily stage={stage.id} findings={findings} />
      <StageTests findings={findings} />
      <StageSheets findings={findings} />
      <StageOwn stage={stage.id} />
    </div>
  );
};

export const StageList = ({ stages }: { readonly stages: readonly Usual[] }) => {
  const { say } = usePages();
  const { plainFoot } = useCommands();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const here = useSession((state) => state.file.clinic?.stage ?? null);
  const [asked, ask] = useState<{ readonly open: StageId | null; readonly here: StageId | null } | null>(null);
  // A pose shown for an exercise goes with the list.
  useEffect(() => plainFoot, [plainFoot]);
  // Opened by hand it stays open, until the clinician says that the person has moved on.
  const open = asked !== null && asked.here === here ? asked.open : (here ?? stages[0]?.message.args.stage ?? null);
  return (
    <ol className="stages">
      {stages.map((usual) => {
        const { stage: id, number } = usual.message.args;
        const stage = content.stages.find((each) => each.id === id);
        if (stage === undefined) return null;
        const isOpen = open === id;
        return (
          <li key={usual.id} className={here === id ? 'way-stage way-here' : 'way-stage'}>
            <details
              open={isOpen}
              onToggle={({ currentTarget }) => {
                if (currentTarget.open !== isOpen) ask({ open: currentTarget.open ? id : null, here });
              }}
            >
              <summary>
                <span className="way-name">
                  {number}. {reader === 'patient' ? stage.plain : stage.term}
                  {here === id && <span className="own-mark"> {say('stages.here')}</span>}
                </span>
                <Weeks usual={usual} stage={id} />
              </summary>
              {isOpen && <Body usual={usual} stage={stage} />}
            </details>
          </li>
        );
      })}
    </ol>
  );
};
