/** Sentences of question 5 about what may be done in a stage: weight on the foot, what single clinics wrote, what a share does to the bone. */
import type { Tellings } from '../../content/schema';

export const STAGE_SENTENCES = {
  'stageToday.none': {
    patient: '{own}Put no weight on the foot until your clinic says so.',
    broadcast: '{own}No weight on the foot.',
    study: '{own}No weight on the foot (0 % of body weight).',
  },
  'stageToday.asPain': {
    patient:
      '{own}Put weight on the foot as pain allows, if your clinic has not said otherwise. More pain the next day: put less on, and call the clinic.',
    broadcast: '{own}Weight on the foot as pain allows.',
    study: '{own}Weight as tolerated; no share of body weight is usual here.',
  },
  'stageToday.untold': {
    patient: 'Put no weight on the foot until your clinic has said how much.',
    broadcast: 'How much weight the foot may take is for the clinic to say.',
    study:
      'Weight by the treatment, which is not stated or not usual here: none until the treating clinician has said how much.',
  },
  'stageToday.scale': {
    patient: '{own}Put on the share that your clinic gave you. Usual is {share}, {kilograms} on a scale.',
    broadcast: '{own}{share} of the body’s weight on the foot.',
    study: '{own}{share} of body weight, {kilograms} on a bathroom scale.',
  },
  'stageToday.share': {
    patient: '{own}Put on the share that your clinic gave you. Usual is {share}.',
    broadcast: '{own}{share} of the body’s weight on the foot.',
    study: '{own}{share} of body weight; kilograms once the mass is stated.',
  },
  'stageToday.ownScale': {
    patient: '{own}Put {share} of your weight on the foot. A scale then shows {kilograms}.',
    broadcast: '{own}{share} of the body’s weight on the foot.',
    study: '{own}{share} of body weight, {kilograms} on a bathroom scale.',
  },
  'stageToday.ownShare': {
    patient: '{own}Put {share} of your weight on the foot.',
    broadcast: '{own}{share} of the body’s weight on the foot.',
    study: '{own}{share} of body weight; kilograms once the mass is stated.',
  },
  'stageToday.wholeScale': {
    patient: '{own}Once your clinic opens this step, put all your weight on it. A scale then shows {kilograms}.',
    broadcast: '{own}The whole weight on the foot.',
    study: '{own}Full body weight, {kilograms} on a bathroom scale.',
  },
  'stageToday.whole': {
    patient: '{own}Once your clinic opens this step, put all your weight on it.',
    broadcast: '{own}The whole weight on the foot.',
    study: '{own}Full body weight.',
  },
  stageOvershoot: {
    patient: 'For your weight: told {told}, expect about {reached} as you walk.',
    broadcast: 'At this weight: told {told}, expect about {reached} in walking.',
    study: 'At this mass: ordered {told}, peak near {reached} in walking, if the study holds here.',
  },
  stageSheet: {
    patient: '{weeks}, {source}{of}: {text}',
    broadcast: '{weeks}, {source}{of}: {text}',
    study: '{weeks}, {source}{of}: {text}',
  },
  'stageLoad.size': {
    patient: '{way}: about {percent} of the pull of plain walking {at} (band {band}).',
    broadcast: '{way}: about {percent} of the pull of plain walking {at}, somewhere from {band}.',
    study: '{way}, {share} of body weight: tension {at} {percent} of that in {reference} barefoot (band {band}).',
  },
  'stageLoad.less': {
    patient: '{way}: less pull than in plain walking {at}.',
    broadcast: '{way}: less pull than in plain walking {at}.',
    study:
      '{way}, {share} of body weight: less tension {at} than in {reference} barefoot, as {agree} of the draws agree; no size is stated.',
  },
  'stageLoad.more': {
    patient: '{way}: more pull than in plain walking {at}.',
    broadcast: '{way}: more pull than in plain walking {at}.',
    study:
      '{way}, {share} of body weight: more tension {at} than in {reference} barefoot, as {agree} of the draws agree; no size is stated.',
  },
  'stageLoad.cannotTell': {
    patient: '{way}: the model cannot tell.',
    broadcast: '{way}: the model cannot tell.',
    study: '{way}, {share} of body weight: the model cannot tell; {agree} of the draws agree on the sign.',
  },
  'stageLoad.oneJoint': {
    patient: '{way}: the model cannot tell. Its sole bends at the big toe only.',
    broadcast: '{way}: the model cannot tell, because its sole bends at the big toe only.',
    study: '{way}: no statement for this ray; the frame has a joint for the first toe alone.',
  },
  'stageAtReview.opens': {
    patient: '{here} What opens the next step ({next}): {opens} {watch} {sendsBack}',
    broadcast: '{here} What opens the next step ({next}): {opens} {watch} {sendsBack}',
    study: '{here} Opens the next stage ({next}): {opens} {watch} {sendsBack}',
  },
  'stageAtReview.last': {
    patient: '{here} It is the last one. {watch} {sendsBack}',
    broadcast: '{here} It is the last one. {watch} {sendsBack}',
    study: '{here} The last stage. {watch} {sendsBack}',
  },
  'nextCheck.opens': {
    patient: '{here} At the next check your clinic decides if you go on to “{next}”. {when}{wound}',
    broadcast: '{here} The next check decides on the next step: {next}. {when}',
    study: '{here} Next review opens: {next}. {when}',
  },
  'nextCheck.last': {
    patient: '{here} It is the last one. The one who treats you clears you for all you did before.',
    broadcast: '{here} It is the last one: the clinician clears for everything.',
    study: '{here} The last stage: clearance by the treating clinician.',
  },
  stepNotKnown: {
    patient: 'Ask which step you are on, and when the next check is. There your clinic decides if you go on.',
    broadcast: 'Which step it is, nobody has said.',
    study: 'Stage not stated, and the usual weeks of the first are over.',
  },
  weightNotKnown: {
    patient: 'Put on the weight that your clinic allowed last, and no more. Not sure? Put on none and call the clinic.',
    broadcast: 'How much weight the foot takes now is for the clinic to say.',
    study: 'Weight by the stage, which is not stated: as last ordered by the treating clinician.',
  },
  'backSooner.begins': {
    patient: 'Their usual time was {weeks}. In your plan running usually starts in {from}, and sport comes after that.',
    broadcast: 'Back at {weeks} is early: running usually starts in {from}, and not everybody waited.',
    study:
      'Centres of {weeks} {until} are not later than the usual start of running ({from}): those people did not go by these stages.',
  },
  'backSooner.goesOn': {
    patient: 'Their usual time was {weeks}. In your plan “{stage}” usually lasts until {from}. Sport comes after that.',
    broadcast: 'Back at {weeks} is early: “{stage}” usually lasts until {from}, and not everybody waited.',
    study:
      'Centres of {weeks} {until} are not later than the usual end of “{stage}” ({from}), which comes before running: those people did not go by these stages.',
  },
  'backRunning.week': {
    patient: 'In your plan running usually starts in {week}, once the signs of the steps before it are there.',
    broadcast: 'Running usually starts in {week}, once the signs of the steps before it are there.',
    study: 'Running usually from {week}, by the criteria of the stages before it.',
  },
  'backRunning.signs': {
    patient: 'For running no week is usual: the signs of the steps decide.',
    broadcast: 'For running no week is usual: the signs of the steps decide.',
    study: 'No usual week for running.',
  },
  backHarm: {
    patient: 'Of the people whose time {until} is told here, {count} of {of}{unit} {what} ({source}).',
    broadcast: 'Of the people whose time {until} is told, {count} of {of}{unit} {what} ({source}).',
    study: '{source}: {count} of {of} {what}, in the arm whose time {until} is told.',
  },
  stageLoadPending: {
    patient: 'What this share does to the bone is being worked out.',
    broadcast: 'What this share does to the bone is being worked out.',
    study: 'The load at this share over all assumed figures is being computed.',
  },
  stageNoLoad: {
    patient: 'With no weight on the foot, our model has no load to tell of. Muscles still pull a little.',
    broadcast: 'With no weight on the foot the model has no load to tell of.',
    study: 'Without ground force the frame has no load to tell of; small muscle pulls are left out.',
  },
} as const satisfies Record<string, Tellings>;

/** Small pieces of these sentences. */
export const STAGE_PARTS = {
  ofBreaks: ' breaks',
  own: 'The clinic’s own: ',
  'untold.patient': '',
  'untold.broadcast': 'Once the clinic says so: ',
  'untold.study': 'By treatment, which is not stated or not usual here; usual: ',
  sheetOf: ', for {option}',
  'check.hereNow': 'You are on step “{stage}”.',
  'check.hereFirst': 'Ask which step you are on. The first is “{stage}”.',
  'check.hereTogether': 'Ask which step you are on. The first two, “{stage}” and “{also}”, begin together.',
  'check.week': 'That is usually about week {week}. Ask for the day.',
  'check.weekDate': 'That is usually about week {week} ({date}). Ask for the day.',
  'check.ownWeek': 'Your clinic set week {week}.',
  'check.askWeek': 'Ask when that is.',
  'check.wound': ' The wound is looked at before that.',
  'check.noWeek': 'No week is usual for it: its signs decide.',
  hereNow: 'The step now: {stage}.',
  hereFirst: 'Nobody said which step it is; the first that is open: {stage}.',
  allMet: 'All of that is ticked.',
  watchFirst: 'Call the clinic the same day if:',
  watchBack: 'What sends back:',
  onceDone: ', after step {number}',
  'clinicSets.patient': 'your clinic sets the weeks of all steps',
  'clinicSets.signs': 'when its signs are met',
  'clinicSets.broadcast': 'the clinic sets its weeks',
  'clinicSets.study': 'no usual weeks, the treating clinician sets them',
  clinicAndUsual: '{clinic} ({whose} {weeks})',
  'whose.broken again': 'after a first break',
  'whose.heals badly': 'where bone heals as hoped',
  'whose.second treatment': 'with one treatment from the start',
  'whose.grows': 'in adults',
  'whose.option': 'with {option}',
  range: '{low} to {high}',
  weeks: 'weeks {low} to {high}',
  weeksFrom: 'from week {low}',
  fromStart: 'from the start',
  week: 'week {number}',
  atOnce: 'at once',
  noWeeks: 'no weeks given',
  'at.break': 'at the break',
  'at.bone': 'where this bone is pulled most',
  'way.standing': 'Standing still on a scale',
  'way.shoe': 'Walking in a soft shoe',
  'way.boot': 'Walking in a boot',
  'way.stiffSole': 'Walking on a stiff sole',
} as const;
