/** The sentences of every message that is not a claim: message -> reader -> template. Variants share a name before the dot. */

import type { Tellings } from '../../content/schema';
import { FORECAST_SENTENCES } from './forecast-messages';
import { LOAD_SENTENCES } from './load-messages';
import { STAGE_SENTENCES } from './stage-messages';
import { SUPPORT_SENTENCES } from './support-messages';
import { TROUBLE_SENTENCES } from './trouble-messages';
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
  'brokenHere.broken': {
    patient: 'the {bone} is broken in {region}',
    broadcast: 'the {bone} is broken in {region}',
    study: 'the {bone} is fractured in {region}',
  },
  'brokenHere.cracked': {
    patient: 'the {bone} is cracked in {region}',
    broadcast: 'the {bone} is cracked in {region}',
    study: 'the {bone} has an incomplete fracture in {region}',
  },
  'brokenHere.hurt': {
    patient: 'the {bone} is hurt in {region}',
    broadcast: 'the {bone} is hurt in {region}',
    study: 'the {bone} is injured in {region}',
  },
  // Where the name of the part names the bone.
  'brokenHere.broken.part': {
    patient: '{region} is broken',
    broadcast: '{region} is broken',
    study: 'the {region} is fractured',
  },
  'brokenHere.cracked.part': {
    patient: '{region} is cracked',
    broadcast: '{region} is cracked',
    study: 'the {region} has an incomplete fracture',
  },
  'brokenHere.hurt.part': {
    patient: '{region} is hurt',
    broadcast: '{region} is hurt',
    study: 'the {region} is injured',
  },
  jointHurt: {
    patient: 'the joint is hurt at {region}',
    broadcast: 'the joint is hurt at {region}',
    study: 'the joint is injured at the {region}',
  },
  boneHurt: {
    patient: 'the {bone} is hurt',
    broadcast: 'the {bone} is hurt',
    study: 'the {bone} is injured, location along it not stated',
  },
  nothingLocated: {
    patient: 'Where it is has not been stated yet.',
    broadcast: 'Where it is has not been stated.',
    study: 'Bone and location have not been stated.',
  },
  boneClash: {
    patient: 'What is stated does not fit together. One says the {stated}, another the {implied}.',
    broadcast: 'What is stated does not fit together: one says the {stated}, another the {implied}.',
    study: 'Claims disagree on the bone: {stated} is stated, {implied} follows from the stated part or class.',
  },
  classFits: {
    patient: 'it is {injury}',
    broadcast: 'it is {injury}',
    study: 'the class that fits {region} is {injury}',
  },
  computedClass: {
    patient: 'by what was measured, it counts as {term}',
    broadcast: 'by the rules of the scheme, it counts as {term}',
    study: 'by its rules, {scheme}: {term}',
  },
  'computedClass.onBorder': {
    patient: 'what was measured lies just on a border, and counts as {term}',
    broadcast: 'it lies exactly on a border, and by the rules counts as {term}',
    study: 'by its rules, {scheme}: {term} (a value on the border, counted with the class that begins there)',
  },
  classOpen: {
    patient: 'More than one kind of injury fits this spot: {injuries}.',
    broadcast: 'More than one kind of injury fits this spot: {injuries}.',
    study: 'Classes that fit {region}: {injuries}.',
  },
  'classOpen.one': {
    patient: 'One kind of injury told of here lies at this spot: {injuries}. What was said does not settle it.',
    broadcast: 'One kind of injury told of here lies at this spot: {injuries}. What was said does not settle it.',
    study:
      'One class of the content lies in {region}: {injuries}. Neither the place alone nor what was stated decides it.',
  },
  'classOpen.none': {
    patient: 'None of the kinds of injury told of here fits this spot.',
    broadcast: 'None of the kinds of injury told of here fits this spot.',
    study: 'No class of the content fits {region}.',
  },
  placeAgainstClass: {
    patient: 'The spot and the kind of injury do not match. The spot is {stated}. This kind lies in {expected}.',
    broadcast: 'The spot and the kind of injury do not match: the spot is {stated}, this kind lies in {expected}.',
    study: 'Location and class disagree: {stated} is stated, {injury} lies in {expected}.',
  },
  neighbours: {
    patient: 'Towards the heel it meets {behind}. Beside it lies {beside}. Towards the toes it meets {ahead}.',
    broadcast: 'From heel to toe: behind it {behind}, beside it {beside}, ahead of it {ahead}.',
    study: 'Articulations, heel to toe: proximal {behind}; beside {beside}; distal {ahead}.',
  },
  'zoneBorder.facet': {
    patient:
      'This part is found from the small joint with the next bone. On the drawn bone it runs from {from} to {to}.',
    broadcast: 'This part is found from the joint with the next bone; on the drawn bone it runs from {from} to {to}.',
    study:
      '{region}: {from} to {to} from the proximal tip of the drawn bone, borders from the 4–5 intermetatarsal facet and not from a fixed distance (texts differ on the distance).',
  },
  'zoneBorder.other': {
    patient: 'On the drawn bone this part runs from {from} to {to}.',
    broadcast: 'On the drawn bone this part runs from {from} to {to}.',
    study: '{region}: {from} to {to} from the proximal tip of the drawn bone.',
  },
  'breakDrawn.distance': {
    patient: 'it is drawn {fromTip} from the back tip of the bone, as stated',
    broadcast: 'it is drawn {fromTip} from the back tip of the bone, as stated',
    study: 'drawn {fromTip} from the proximal tip, as stated',
  },
  'breakDrawn.region': {
    patient: 'only the part of the bone is known, so the break is drawn in its middle',
    broadcast: 'only the part of the bone is known, so the break is drawn in its middle',
    study: 'only the part is known; drawn at its middle, {fromTip} from the proximal tip',
  },
  attachedHere: {
    patient: 'Fixed to this part: {attachments}.',
    broadcast: 'Fixed to this part: {attachments}.',
    study: 'Attached within {region}: {attachments}.',
  },
  sideDefault: {
    patient: 'The side is not known, so a right foot is drawn.',
    broadcast: 'The side is not known; the picture shows a right foot.',
    study: 'Side not known: drawn as a right foot.',
  },
  code: {
    patient: 'Code: {code}',
    broadcast: 'Code: {code}',
    study: 'ICD-10-CM {code} ({title}; {visit}), edition {edition}; check the current edition.',
  },
  'code.assumed': {
    patient: 'Code: {code}',
    broadcast: 'Code: {code}',
    study:
      'ICD-10-CM {code} ({title}; {visit}), edition {edition}; by the rules of the list, {assumed}. Check the current edition.',
  },

  'code.visit.first': {
    patient: 'first visit',
    broadcast: 'first visit',
    study: 'first visit',
  },
  'code.visit.later': {
    patient: 'later visit, usual healing',
    broadcast: 'later visit, usual healing',
    study: 'later visit, usual healing',
  },
  'code.assumed.side': {
    patient: 'a side not stated has a character of its own',
    broadcast: 'a side not stated has a character of its own',
    study: 'a side not stated has a character of its own',
  },
  'code.assumed.displacement': {
    patient: 'displacement not stated is coded displaced',
    broadcast: 'displacement not stated is coded displaced',
    study: 'displacement not stated is coded displaced',
  },
  'code.assumed.closed': {
    patient: 'open or closed not stated is coded closed',
    broadcast: 'open or closed not stated is coded closed',
    study: 'open or closed not stated is coded closed',
  },

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

  // Why is this spot slow to heal?
  ...WHY_SENTENCES,
  ...TROUBLE_SENTENCES,

  // What can be done?
  optionsUsual: {
    patient: 'What is usually done: {options}.',
    broadcast: 'The usual options are {options}.',
    study: 'Usual options for this class: {options}.',
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
      'Studies disagree. In some, the two ways came out differently ({apart}). In others there was no clear difference ({alike}). The people in them were not the same.',
    broadcast:
      'Studies disagree: in some the two ways came out differently ({apart}), in others there was no clear difference ({alike}). The people studied were not the same.',
    study:
      'Differences between non-operative and operative arms. Apart: {apart}. Not apart: {alike}. Populations differ; cohorts carry selection.',
  },

  ...SUPPORT_SENTENCES,
  ...STAGE_SENTENCES,

  // When is it back?
  ...FORECAST_SENTENCES,
  backRange: {
    patient: 'in groups of other people it took {weeks} on average {endpoint}{levels}{people}',
    broadcast: 'counted {endpoint}, groups of other people took {weeks} on average{levels}{people}',
    study: '{option}, {endpoint}: study centres {weeks}{levels}{people} ({arms})',
  },
  backDepends: {
    patient: 'It depends on the treatment. In groups of other people, counted {endpoint}: {ranges}.',
    broadcast: 'It depends on the treatment. In groups of other people, counted {endpoint}: {ranges}.',
    study: 'Depends on the treatment ({endpoint}): {ranges}.',
  },
  brokenAgain: {
    patient: 'the bone broke again on {date}, so the weeks counted before no longer hold',
    broadcast: 'the bone broke again on {date}, so the weeks counted before no longer hold',
    study: 'refracture on {date}: weeks counted from the earlier start no longer apply',
  },
  'brokenAgain.joint': {
    patient: 'the joint gave way again on {date}, so the weeks counted before no longer hold',
    broadcast: 'the joint gave way again on {date}, so the weeks counted before no longer hold',
    study: 'renewed failure of the joint on {date}: weeks counted from the earlier start no longer apply',
  },
  lookAgain: {
    patient: 'If it still hurts, it is looked at again after {weeks}.',
    broadcast: 'If it still hurts, it is looked at again after {weeks}.',
    study: 'Repeat after {weeks} if symptoms stay.',
  },
  backNoRange: {
    patient: 'No study we could use gives a time for this. Ask the person treating you.',
    broadcast: 'No study we could use gives a time for this.',
    study: 'No comparable arm with a stated endpoint: no range.',
  },
  backUnknown: {
    patient: 'When it is back depends on the spot and the treatment, and these are not known yet.',
    broadcast: 'When it is back depends on the spot and the treatment, and these are not known.',
    study: 'Class not known: no range.',
  },
  backDates: {
    patient:
      'counted from the {start}, that is {earliest} (the earliest average) to {latest} (the slowest), {endpoint}',
    broadcast:
      'counted from the {start}, that is {earliest}, the earliest average, to {latest}, the slowest, {endpoint}',
    study: '{weeks} from {startDate} ({start}), earliest centre to slowest person: {earliest} to {latest}, {endpoint}',
  },
  stageUsual: {
    patient: 'Step {number} of {of}, {stage}: {when}.{own}',
    broadcast: 'Step {number} of {of}, {stage}: {when}.{own}',
    study: 'Stage {number} of {of}, {stage}: {when}.{own}',
  },
  followUpWeek: {
    patient: 'That was week {week} after the {start}.',
    broadcast: 'That was week {week} after the {start}.',
    study: 'Week {week} after the {start}.',
  },
  forecastMissed: {
    patient: 'News reports on one such injury said {forecast}. In truth it took {actual}.',
    broadcast: 'News reports on such injuries said {forecast} on average. In truth it was {actual}.',
    study: 'Media forecasts averaged {forecast}; the time out was {actual} ({population}).',
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
  partsInRuns: 'one part in some runs and another in others',
  changeBand: '{low} to {high} %',
  zone: 'zone {number} ({plain})',
  nothing: 'none',
  noOtherBone: 'no other bone of the foot',
  band: '{value} ({low} to {high})',
  stretch: '{from} to {to}',
  feedingPart: '{region}: {state}',
  armTime: '{weeks} {endpoint} ({centre})',
  armEventCount: '{count} of {of} {what}',
  armEventPercent: '{percent} {what}',
  plainArm: '{option}{who}: {facts}',
  fromSecond: 'from the second treatment {endpoint}',
  plainTime: 'it took {weeks} {endpoint}',
  armAsked: '{option}: {figures} ({population}{n})',
  people: ', {n} people',
  who: ' ({who})',
  comparison: '{what} in {first} without an operation, in {second} with one ({source})',
  of: '{count} of {of}',
  whenWeeks: 'usually {weeks}',
  whenWeeksDates: 'usually {weeks} ({dates})',
  weeksFromTo: 'weeks {low} to {high}',
  whenFrom: 'usually from week {week} on',
  whenOpen: 'when its signs are met, no usual week',
  dates: '{from} to {to}',
  datesFrom: 'from {from} on',
  startTreatment: 'treatment',
  startInjury: 'day it began',
  titled: '{title}: {text}',
  opens: 'To move on from “{stage}”: {text}',
  sendsBack: 'One step back from “{stage}” if: {text}',
  notSeen: '{text}',
  apart: 'Can be taken for {other}',
  and: ' and ',
  weeks: '{low} to {high} weeks',
  byLevel: ': {levels}',
  to: ' to ',
  weeksInPeople: '{weeks} in {people}',
  singlePeople: '; the quickest took {low}, the slowest {high} weeks',
  behindBreak: '{region}, behind the break',
  aheadOfBreak: '{region}, ahead of the break',
  elsewhere: 'everywhere else: {state}',
  about: 'about {value} weeks',
  week: 'week {value}',
} as const;
