/** The sentences of every message that is not a claim: message -> reader -> template. Variants share a name before the dot. */

import type { Tellings } from '../../content/schema';
import { BACK_SENTENCES } from './back-messages';
import { CODE_SENTENCES } from './code-messages';
import { CONTRIBUTOR_SENTENCES } from './contributor-messages';
import { FORECAST_SENTENCES } from './forecast-messages';
import { LOAD_SENTENCES } from './load-messages';
import { STAGE_SENTENCES } from './stage-messages';
import { SUPPORT_SENTENCES } from './support-messages';
import { TROUBLE_SENTENCES } from './trouble-messages';
import { WHERE_SENTENCES } from './where-messages';
import { WHY_SENTENCES } from './why-messages';

export const SENTENCES = {
  notStated: {
    patient: 'Nobody has stated {subject}.',
    broadcast: 'Nobody has stated {subject}.',
    study: 'Not stated: {subject}.',
  },
  contradiction: {
    patient: 'Reports disagree on {subject}: {values}.',
    broadcast: 'Reports disagree on {subject}: {values}.',
    study: 'Contradiction on {subject}: {values}.',
  },

  // Where is it?
  ...WHERE_SENTENCES,
  ...CODE_SENTENCES,

  // How did it happen?
  mechanismUsual: {
    patient: 'How it happened was not stated. This kind of injury often comes from {mechanisms}.',
    broadcast: 'How it happened has not been stated. The usual ways are {mechanisms}.',
    study: 'Mechanism not stated. Usual for this class: {mechanisms}.',
  },
  howUnknown: {
    patient: 'How it happened is not known yet.',
    broadcast: 'How it happened is not known.',
    study: 'Mechanism and class are not known.',
  },
  modelApplies: {
    patient: 'A simple beam can show how the bone bends when this happens.',
    broadcast: 'A simple beam can show how the bone bends here.',
    study: 'Model for this mechanism: beam stress.',
  },
  'modelMissing.pull-off': {
    patient: 'Here a tendon or band pulls a piece off. Our beam cannot show that, so no stress is drawn.',
    broadcast: 'Here a tendon or band pulls a piece off. A bending beam cannot show that, so none is drawn.',
    study: 'Mechanism of the pull-off kind: a beam does not apply, no stress is computed.',
  },
  'modelMissing.tie overload': {
    patient: 'Here a band gives way. Our beam cannot show that, so no stress is drawn.',
    broadcast: 'Here a ligament gives way. A bending beam cannot show that.',
    study: 'Mechanism of the tie-overload kind: a beam does not apply, no stress is computed.',
  },
  'modelMissing.joint force': {
    patient: 'Here a joint is pressed or forced. Our beam cannot show that, so no stress is drawn.',
    broadcast: 'Here a joint is forced. A bending beam cannot show that.',
    study: 'Mechanism of the joint-force kind: a beam does not apply, no stress is computed.',
  },
  'modelMissing.not modelled': {
    patient: 'We have no model for this way of getting hurt, so no stress is drawn.',
    broadcast: 'There is no model here for this way of getting hurt, so no stress is drawn.',
    study: 'This mechanism is not modelled: no stress is computed.',
  },
  ...LOAD_SENTENCES,
  ...CONTRIBUTOR_SENTENCES,

  // Why does it heal as it does?
  ...WHY_SENTENCES,
  ...TROUBLE_SENTENCES,

  // What can be done?
  optionsUsual: {
    patient: 'What is usually done: {options}.',
    broadcast: 'The usual options are {options}.',
    study: 'Usual options for this class: {options}.',
  },
  optionNotUsual: {
    patient: 'it is none of the treatments we know as usual for this injury. There can be good reasons. Ask for them.',
    broadcast: 'it is none of the treatments usual for this injury, so no weeks told here are of it.',
    study: 'not among the options listed for this class: no weeks, weights or stages of it here.',
  },
  'optionNotUsual.class': {
    patient:
      'for this kind something else is usual: {options}. There can be good reasons for another way. Ask for them.',
    broadcast: 'for this kind something else is usual: {options}. No weeks told here are of the treatment given.',
    study: 'usual for this class: {options}. No weeks, weights or stages of the treatment given.',
  },
  optionsUnknown: {
    patient: 'What can be done depends on the spot, and the spot is not known yet.',
    broadcast: 'What can be done depends on the spot, and that is not known.',
    study: 'Class not known: no options listed.',
  },
  trialArms: {
    patient: 'One study of {people} ({design}). {arms}',
    broadcast: 'One study of {people} ({design}). {arms}',
    study: '{source} ({design}): {arms}.',
  },
  studiesDisagree: {
    patient:
      'Studies disagree. In some, the two ways came out differently. {apart} In others there was no clear difference. {alike} The people in them were not the same.',
    broadcast:
      'Studies disagree: in some the two ways came out differently ({apart}), in others there was no clear difference ({alike}). The people studied were not the same.',
    study:
      'Differences between non-operative and operative arms. Apart: {apart}. Not apart: {alike}. Populations differ; cohorts carry selection.',
  },

  ...SUPPORT_SENTENCES,
  ...STAGE_SENTENCES,

  // When is it back?
  ...FORECAST_SENTENCES,
  ...BACK_SENTENCES,
  backRange: {
    patient: 'in {groups} it took {weeks} on average {endpoint}{levels}',
    broadcast: 'counted {endpoint}, {groups} took {weeks} on average{levels}{people}',
    study: '{option}, {endpoint}: study means {weeks}{levels}{people} ({arms})',
  },
  /** Half of them, and not an average. */
  'backRange.median': {
    patient: 'in {groups} half took {weeks} or less {endpoint}{levels}',
    broadcast: 'counted {endpoint}, half of {groups} took {weeks} or less{levels}{people}',
    study: '{option}, {endpoint}: study medians {weeks}{levels}{people} ({arms})',
  },
  'backRange.mixed': {
    patient: 'in {groups} it took {weeks}, by study, {endpoint}{levels}',
    broadcast: 'counted {endpoint}, {groups} took {weeks} by study{levels}{people}',
    study: '{option}, {endpoint}: study means and medians {weeks}{levels}{people} ({arms})',
  },
  backNotCounted: {
    patient: 'Until {what} no study here counted the weeks with this treatment.',
    broadcast: 'Until {what} no study here counted the weeks with this treatment.',
    study: 'No arm of this treatment that counted to {what}.',
  },
  backGrowing: {
    patient: 'No study here counted how long a growing foot takes.',
    broadcast: 'No study here counted how long a growing foot takes.',
    study: 'No study here counted people with open growth plates.',
  },
  brokenAgain: {
    patient: 'the bone broke again on {date}',
    broadcast: 'the bone broke again on {date}',
    study: 'refracture on {date}',
  },
  'brokenAgain.joint': {
    patient: 'the joint gave way again on {date}',
    broadcast: 'the joint gave way again on {date}',
    study: 'renewed failure of the joint on {date}',
  },
  'brokenAgain.so': {
    patient: 'The weeks counted before no longer hold. If nobody has looked at it since, have it seen today.',
    broadcast: 'The weeks counted before no longer hold.',
    study: 'Weeks counted from the earlier start no longer apply.',
  },
  'brokenAgain.if': {
    patient:
      'If that is right, the weeks counted before no longer hold. If nobody has looked at it since, have it seen today.',
    broadcast: 'If that is right, the weeks counted before no longer hold.',
    study: 'If so, weeks counted from the earlier start no longer apply.',
  },
  'healsSlowly.delayed': {
    patient: 'on {date} the bone was slow to grow together',
    broadcast: 'on {date} the bone was slow to grow together',
    study: 'delayed union on {date}',
  },
  'healsSlowly.nonunion': {
    patient: 'on {date} healing had stopped before the bone grew together',
    broadcast: 'on {date} healing had stopped before the bone grew together',
    study: 'nonunion on {date}',
  },
  'healsSlowly.delayed.joint': {
    patient: 'on {date} the joint was slow to heal',
    broadcast: 'on {date} the joint was slow to heal',
    study: 'delayed healing of the joint on {date}',
  },
  'healsSlowly.nonunion.joint': {
    patient: 'on {date} healing of the joint had stopped',
    broadcast: 'on {date} healing of the joint had stopped',
    study: 'no healing of the joint on {date}',
  },
  'healsSlowly.so': {
    patient: 'The usual weeks come from people who healed as hoped. They do not hold here.',
    broadcast: 'The usual weeks do not hold here.',
    study: 'Weeks of those who healed as planned do not apply.',
  },
  'healsSlowly.if': {
    patient: 'If that is right, the usual weeks do not hold here. They come from people who healed as hoped.',
    broadcast: 'If that is right, the usual weeks do not hold here.',
    study: 'If so, weeks of those who healed as planned do not apply.',
  },
  lookAgain: {
    patient: 'Was the first film clear, and it still hurts? It is looked at again after {weeks}.',
    broadcast: 'If it still hurts, it is looked at again after {weeks}.',
    study: 'Repeat after {weeks} if symptoms stay.',
  },
  backNoRange: {
    patient: 'for your treatment no study we could use gives a time until sport or work. Ask the person treating you.',
    broadcast: 'for this treatment no study we could use gives a time.',
    study: 'no comparable arm with a stated endpoint: no range.',
  },
  backUnknown: {
    patient: 'When it is back depends on the spot and the treatment, and these are not known yet.',
    broadcast: 'When it is back depends on the spot and the treatment, and these are not known.',
    study: 'Class not known: no range.',
  },
  backClash: {
    patient: 'When it is back depends on how far the joint has moved. What is stated of that does not fit together.',
    broadcast:
      'When it is back depends on how far the joint has moved, and what is stated of that does not fit together.',
    study: 'Claims that decide the class collide: no class, and no range by class.',
  },
  backDates: {
    patient: 'counted from the {start}, in {people} that is {earliest} ({first}) to {latest} (the slowest), {endpoint}',
    broadcast:
      'counted from the {start}, in {people} that is {earliest}, {first}, to {latest}, the slowest, {endpoint}',
    study:
      '{weeks} from {startDate} ({start}) in {people}, {first} to slowest person: {earliest} to {latest}, {endpoint}',
  },
  stageUsual: {
    patient: 'Step {number} of {of}, {stage}: {when}{after}.{own}',
    broadcast: 'Step {number} of {of}, {stage}: {when}{after}.{own}',
    study: 'Stage {number} of {of}, {stage}: {when}{after}.{own}',
  },
  followUpWeek: {
    patient: 'That was week {week} after the {start}.',
    broadcast: 'That was week {week} after the {start}.',
    study: 'Week {week} after the {start}.',
  },
  forecastMissed: {
    patient: 'News reports on such injuries said {forecast}. In truth it was {actual}.',
    broadcast: 'News reports on such injuries said {forecast}. In truth it was {actual}.',
    study: 'Media forecasts: {forecast}; the time out was {actual} ({population}).',
  },
} as const satisfies Record<string, Tellings>;
export type SentenceKey = keyof typeof SENTENCES;

/** Small pieces that sentences are put together from. */
export const PARTS = {
  massAssumed: 'Nobody stated the body mass, so {mass} was assumed.',
  massStated: 'Body mass: {mass}.',
  carried: 'Carried: {mass}.',
  ofReference: '{what} in {reference}',
  theReference: 'walking',
  whenOwn: ' The clinic’s own weeks: {weeks}.',
  whenOwnDates: ' The clinic’s own weeks: {weeks} ({from} to {to}).',
  middleOfBone: 'this bone',
  partsAndPerhaps: '{parts}, perhaps also in {perhaps}',
  partsInRuns: 'one part in some runs and another in others',
  changeBand: '{low} to {high} %',
  zone: 'zone {number} ({plain})',
  nothing: 'none',
  noOtherBone: 'no other bone of the foot',
  band: '{value} ({low} to {high})',
  stationNumber: '{what} {value}',
  stationOpen: '{what} from {from} to {to}, which way the model cannot tell',
  stressOfReference: 'Pull, push and strain are times the largest pull of {reference} in this bone.',
  stressOfMost:
    'Pull, push and strain are times the largest pull in this bone in the task itself: their sizes are beyond what the theory can state.',
  stretch: '{from} to {to}',
  feedingPart: '{region}: {state}',
  armTime: '{weeks} {endpoint} ({centre})',
  weeksTo: '{weeks} {endpoint}',
  armEventCount: '{count} of {of} {what}',
  armEventBreaks: '{count} of {of} breaks {what}',
  /** A break does not come back: who had it does. */
  armEventAfter: 'after {count} of {of} breaks people {what}',
  armEventHundred: '{hundred} {what}',
  nobody: 'none',
  everybody: 'all',
  hundred: 'about {hundred} of 100',
  armEventPercent: '{percent} {what}',
  plainArm: '{option}{who}: {facts}',
  fromSecond: 'from the second treatment {endpoint}',
  fromDiagnosis: 'from the diagnosis {endpoint}',
  groups: 'groups of other people',
  groupsWho: 'groups of other people ({who})',
  oneGroupOnly: 'one group of other people',
  countedPeople: ' Counted: {who}.',
  quickest: ' The quickest took {low}, the slowest {high} weeks.',
  oneGroup: 'one group of other people ({who})',
  'plainTime.mean': 'it took {weeks} on average {endpoint}',
  'plainTime.median': 'half took {weeks} or less {endpoint}',
  armAsked: '{option}: {figures} ({population}{n})',
  people: ', {n} people',
  breaks: ', {n} breaks',
  who: ' ({who})',
  comparisonAlone: '{what}: {first} without an operation, {second} with one ({source}).',
  comparison: '{what} in {first} without an operation, in {second} with one ({source})',
  of: '{count} of {of}',
  ofBreaks: '{count} of {of} breaks',
  whenWeeks: 'usually {weeks}',
  whenWeeksDates: 'usually {weeks} ({dates})',
  weeksFromTo: 'weeks {low} to {high}',
  whenFrom: 'usually from week {week} on',
  whenOpen: 'when its signs are met, no usual week',
  dates: '{from} to {to}',
  datesFrom: 'from {from} on',
  'counted.sport': 'sport',
  'counted.work': 'work',
  'counted.both': 'sport or work',
  startTreatment: 'treatment',
  startInjury: 'day it began',
  titled: '{title}: {text}',
  opens: 'To move on from “{stage}”: {text}',
  sendsBack: 'One step back from “{stage}” if: {text}',
  // To a patient the step stands above them.
  'opens.patient': 'To go on: {text}',
  'sendsBack.patient': 'One step back if: {text}',
  'callFirst.patient': 'Call the clinic the same day if: {text}',
  callFirst: 'While it is “{stage}”, call the clinic the same day if: {text}',
  notSeen: '{text}',
  apart: 'Can be taken for {other}',
  studiedElsewhere: '{title} (studied at another bone)',
  and: ' and ',
  or: ' or ',
  displacement: 'displacement',
  weeks: '{low} to {high} weeks',
  byLevel: ': {levels}',
  levelNotTold: 'people of unknown level',
  inLevels: ', in {people}',
  ofPopulation: ' ({people})',
  to: ' to ',
  weeksInPeople: '{weeks} in {people}',
  singlePeople: '; the quickest took {low}, the slowest {high} weeks',
  behindBreak: '{region}, behind the break',
  aheadOfBreak: '{region}, ahead of the break',
  elsewhere: 'everywhere else: {state}',
  everyPart: 'every part of the bone: {state}',
  about: 'about {value} weeks',
  week: 'week {value}',
} as const;
