/** Sentences of question 5 on several treatments, or several classes, at once. */
import type { Tellings } from '../../content/schema';

export const BACK_SENTENCES = {
  backDepends: {
    patient: '{own}It depends on the treatment. Groups of other people were counted {endpoint}. {ranges}',
    broadcast: '{own}It depends on the treatment. Groups of other people were counted {endpoint}. {ranges}',
    study: '{own}Depends on the treatment ({endpoint}): {ranges}.',
  },
  'backDepends.only': {
    patient: '{own}Only for one treatment were weeks counted, in other people. They count {endpoint}. {ranges}{others}',
    broadcast:
      '{own}Only for one treatment were weeks counted, in other people. They count {endpoint}. {ranges}{others}',
    study: '{own}Only for one treatment were weeks counted ({endpoint}): {ranges}.{others}',
  },
  /** The one group that was counted had several treatments: who they were says which. */
  'backDepends.mixed': {
    patient: '{own}In one {other}group {time}. Counted: {who}.{others}',
    broadcast: '{own}In one group of other people {time}. Counted: {who}.{others}',
    study: '{own}Weeks of one group, treated in more than one way: {time} ({who}).{others}',
  },
  'backDepends.none': {
    patient: 'No study we could use gives a time for one of the usual treatments.',
    broadcast: 'No study we could use gives a time for one of the usual treatments.',
    study: 'No comparable arm of a named treatment with a stated endpoint: no range.',
  },
  /** Before any weeks, in place of what it depends on. */
  backDisagree: {
    patient: 'Studies disagree. {sides} {weDo} {weeks}',
    broadcast: 'Studies disagree. {sides} {weDo} {weeks}',
    study: 'Studies disagree: {topic}. {sides} {weDo} {weeks}',
  },
  'backDepends.disagree': {
    patient: 'Groups of other people were counted {endpoint}. {ranges}',
    broadcast: 'Groups of other people were counted {endpoint}. {ranges}',
    study: 'By treatment ({endpoint}): {ranges}.',
  },
  classDisputed: {
    patient: 'It depends on {what}. Reports disagree on it. {each}{settles} The weeks of each kind stand below.',
    broadcast: 'It depends on {what}, and reports disagree on it. {each}{settles}',
    study: 'Class disputed, claims differ on {what}. {each}{settles} Weeks class by class below.',
  },
  'classDisputed.joint': {
    patient:
      'It depends on how wide the gap in the joint is. Reports disagree on {what}. {each}{settles} The weeks of each stage stand below.',
    broadcast: 'It depends on how wide the gap in the joint is, and reports disagree on {what}. {each}{settles}',
    study: 'Stage disputed, claims differ on {what}. {each}{settles} Weeks stage by stage below.',
  },
  backClasses: {
    patient: 'It depends on which kind it is. {counted} {classes}',
    broadcast: 'It depends on which kind it is. {counted} {classes}',
    study: 'Depends on the class. {counted} {classes}',
  },
  'backClasses.joint': {
    patient: 'It depends on how wide the gap in the joint is. {counted} {classes}',
    broadcast: 'It depends on how wide the gap in the joint is. {counted} {classes}',
    study: 'Depends on how far the joint has come apart. {counted} {classes}',
  },
  'backClasses.known': {
    patient: '{counted} {classes}',
    broadcast: '{counted} {classes}',
    study: '{counted} {classes}',
  },
  'backRange.open': {
    patient: 'Of which kind theirs was is not known.',
    broadcast: 'Of which kind theirs was is not known.',
    study: 'Class not stated in what was read.',
  },
  'backRange.openJoint': {
    patient: 'How far their joints had come apart is not known.',
    broadcast: 'How far their joints had come apart is not known.',
    study: 'Stage not stated in what was read.',
  },
  'backNoRange.byClass': {
    patient: 'it depends on how wide the gap in the joint is. Ask which stage yours is.',
    broadcast: 'it depends on how wide the gap in the joint is.',
    study: 'depends on how far the joint has come apart; class not known, no range for this treatment.',
  },
  backClassNotStated: {
    patient:
      'Of others the stage is not known. They were counted {endpoint}. {ranges} Do not set these beside other weeks.',
    broadcast:
      'Of others the stage was not stated. They were counted {endpoint}. {ranges} They are other people, and no comparison.',
    study: 'Stage not stated ({endpoint}): {ranges}. Other people than those counted by stage: not to be compared.',
  },
} as const satisfies Record<string, Tellings>;

/** What the weeks of studies are the centre of. */
export const CENTRE_PARTS = {
  mean: '{weeks} on average',
  median: 'half in {weeks} or less',
  mixed: '{weeks} by study',
  'mean.study': '{weeks} (mean)',
  'median.study': '{weeks} (median)',
  'mixed.study': '{weeks} (means and medians)',
  mixedNote: ' These are averages, or when half were there.',
  'first.mean': 'the earliest average',
  'first.median': 'the earliest time by which half were there',
  'first.mixed': 'the earliest of the studies',
  'first.mean.study': 'earliest mean',
  'first.median.study': 'earliest median',
  'first.mixed.study': 'earliest mean or median',
} as const;

export const BACK_PARTS = {
  valueAlone: '{value} ({status}{by}) is in no class here.',
  valueOfClass: '{value} ({status}{by}) would be {class}.',
  averages: ' These are averages.',
  'alone.mean': ' That is an average.',
  'alone.median': ' Half of them took longer.',
  'alone.mixed': '',
  ownNone: 'For {option}, no weeks were counted. ',
  othersNone: ' For other treatments none were found.',
  other: 'other ',
  counted: 'Groups of other people were counted {endpoint}. Their treatment: {options}.',
  countedIn: 'Groups of other people were counted {endpoint}. They were {people}. Their treatment: {options}.',
  classNone: '{class}: none found.',
  classesNone: 'For {classes} none were counted.',
  inLine: ' How wide the gap between its bones is was not stated.{ask}',
  askStage: ' Ask which stage yours is.',
  classWeeks: '{class}: {weeks}.{people}',
  people: ' The quickest took {low}, the slowest {high} weeks.',
  /** The quickest were never away: for those who hear it that would be leave to play on. */
  slowest: ' The slowest took {high} weeks.',
  levels: ' That is {levels}.',
  side: '{says} ({source}).',
  /** A patient asks what was found, not by whom: the source stands behind the figure and in the list. */
  sidePlain: '{says}.',
  counting: '. Counted: {who}.',
} as const;
