/** Words for the closed lists: one place, so that a status or a stage of healing reads the same everywhere. */

import type { SourceKind } from '../../cases/schema';

export const STATUS_WORDS = {
  confirmed: 'confirmed',
  reported: 'reported',
  inferred: 'inferred',
  ruledOut: 'ruled out',
  contradiction: 'reports disagree',
  notStated: 'not stated',
} as const;

export const CONFIDENCE_WORDS = {
  established: 'Established',
  supported: 'Supported',
  reported: 'Only reported',
  uncertain: 'Uncertain',
  unknown: 'Not known',
} as const;

export const DIRECTION_WORDS = {
  transverse: 'straight across the bone',
  oblique: 'at a slant',
  spiral: 'in a spiral',
  avulsion: 'so that a piece is pulled off',
  comminuted: 'in several lines, with several pieces',
  incomplete: 'only part of the way through',
} as const;

export const ONSET_WORDS = {
  'single event': 'it happened in one moment',
  gradual: 'it came on bit by bit',
  'acute on gradual': 'it hurt for a while and then gave way at once',
} as const;

export const FOLLOW_UP_WORDS = {
  tender: 'the spot still hurts when pressed',
  'not tender': 'the spot no longer hurts when pressed',
  'line visible': 'the line of the break still shows on the film',
  'two cortices bridged': 'two of the four sides of the bone have grown together on the film',
  united: 'the bone has grown together',
  'delayed union': 'the bone is slow to grow together (delayed union)',
  nonunion: 'healing has stopped before the bone grew together (nonunion)',
  malunion: 'the bone has grown together out of place (malunion)',
  'walking without pain': 'walking does not hurt',
  training: 'training has begun again',
  'broken again': 'the bone has broken again',
} as const;

/** The same where a joint came apart and no bone is said to be broken. */
export const FOLLOW_UP_WORDS_OF_JOINT = {
  ...FOLLOW_UP_WORDS,
  'line visible': 'the film still shows the injury',
  'two cortices bridged': 'the film shows that it has begun to heal',
  united: 'it has healed',
  'delayed union': 'it is slow to heal',
  nonunion: 'healing has stopped too early',
  malunion: 'it has healed out of place',
  'broken again': 'the joint has given way again',
} as const;

/** How it ended, for each endpoint: it came to pass, or nobody waits for it any more. */
export const REACHED_WORDS = {
  union: 'the bone had grown together',
  'clinical healing': 'walking and pressing no longer hurt',
  release: 'the doctor gave leave',
  training: 'training began again',
  sport: 'sport began again',
  'match play': 'the first match was played',
  performance: 'performing began again',
  activity: 'the usual activity began again',
  work: 'work began again',
} as const;
export const GIVEN_UP_WORDS = {
  union: 'waiting for the bone to grow together was given up',
  'clinical healing': 'waiting for walking and pressing to stop hurting was given up',
  release: 'waiting for leave from the doctor was given up',
  training: 'the return to training was given up',
  sport: 'the return to sport was given up',
  'match play': 'the return to matches was given up',
  performance: 'the return to performing was given up',
  activity: 'the return to the usual activity was given up',
  work: 'the return to work was given up',
} as const;

export const FOOT_SHAPE_WORDS = { neutral: 'a usual arch', high: 'a high arch', low: 'a low arch' } as const;

export const LEVEL_WORDS = {
  everyday: 'everyday life',
  recreational: 'sport for fun',
  competitive: 'sport in competition',
  professional: 'sport as a job',
} as const;

/** Who was studied, for those who need no more than that. */
export const LEVEL_PEOPLE = {
  everyday: 'ordinary adults',
  recreational: 'people who do sport for fun',
  competitive: 'people who compete in sport',
  professional: 'people whose job is sport',
} as const;

/** The same in a word, to be spoken. */
export const LEVEL_NAMES = {
  everyday: 'ordinary adults',
  recreational: 'people who play for fun',
  competitive: 'competitors',
  professional: 'professionals',
} as const;

/** From where lengths along a bone are told. */
export const BEGINS_AT = {
  across: { patient: 'the inner end', broadcast: 'the inner end', study: 'the medial end' },
  hindfoot: { patient: 'the back end', broadcast: 'the back end', study: 'the posterior end' },
  long: { patient: 'the back end', broadcast: 'the back end', study: 'the proximal end' },
  tuberosity: { patient: 'the back tip', broadcast: 'the back tip', study: 'the proximal tip' },
} as const;

/** Whose report it is, after "by". */
export const WHO_WORDS = {
  examination: 'the one who examined the foot',
  imaging: 'the imaging report',
  operation: 'the operation report',
  person: 'the injured person',
  team: 'the team',
  media: 'the media',
  generalKnowledge: 'nobody in particular',
} as const satisfies Record<SourceKind, string>;

/** What the time was counted to, set behind "took 8 to 15 weeks". */
export const ENDPOINT_WORDS = {
  union: 'until the bone had grown together',
  'clinical healing': 'until walking and pressing no longer hurt',
  release: 'until the doctor gave leave',
  training: 'until training began again',
  sport: 'until sport began again',
  'match play': 'until the first match',
  performance: 'until performing again',
  activity: 'until the usual activity began again',
  work: 'until work began again',
} as const;

export const EVENT_WORDS = {
  failure: 'did not heal as planned',
  nonunion: 'did not grow together',
  'delayed union': 'grew together late',
  union: 'grew together',
  refracture: 'broke again',
  returned: 'came back',
  'not returned': 'did not come back',
} as const;

export const DESIGN_WORDS = {
  randomised: 'treatment drawn by lot',
  cohort: 'people followed, treatment chosen',
  series: 'one group followed',
  pooled: 'several studies put together',
  register: 'taken from a register',
} as const;

export const FEEDING_WORDS = {
  asBefore: 'fed as before',
  mainCut: 'main feeder cut, others remain',
  borderOnly: 'only border feeders left',
  none: 'no feeder left',
} as const;

/** What a load case is told, in words. */
export const CASE_FIGURE_WORDS = {
  total: 'the force on the whole foot',
  sideways: 'the push to the side',
  forwards: 'the push forwards',
  twist: 'the twist on the ground',
  tilt: 'how far the ground or the foot leans',
  centre: 'where the ground pushes',
  toeShare: 'the share of the big toe',
  fibularisLongus: 'the pull of the long muscle of the outer leg',
  fibularisBrevis: 'the pull of the short muscle of the outer leg',
  tibialisPosterior: 'the pull of the muscle behind the shin',
  flexorHallucis: 'the pull of the big toe’s flexor',
  flexorDigitorum: 'the pull of the small toes’ flexor',
} as const;
export const SAYS_WORDS = { raises: 'more', lowers: 'less', 'no difference': 'no difference' } as const;

export const FACE_WORDS = {
  top: 'top side',
  topOuter: 'upper outer side',
  outer: 'outer side',
  soleOuter: 'lower outer side',
  sole: 'sole side',
  soleInner: 'lower inner side',
  inner: 'inner side',
  topInner: 'upper inner side',
} as const;

/** What a station of a bone carries. */
export const STATION_WORDS = {
  axial: 'N',
  shearUp: 'V up',
  shearSide: 'V outwards',
  bendUp: 'M up and down',
  bendSide: 'M sideways',
  torsion: 'T',
  tension: 'pull',
  compression: 'push',
} as const;

export const MEASURE_WORDS = {
  angulation: { patient: 'the bend in the bone', broadcast: 'the bend in the bone', study: 'the angulation' },
  gap: { patient: 'the gap in the break', broadcast: 'the gap in the break', study: 'the gap of the fracture' },
  'joint step': {
    patient: 'the step in the joint surface',
    broadcast: 'the step in the joint surface',
    study: 'the step of the joint surface',
  },
  diastasis: {
    patient: 'the space between the bones',
    broadcast: 'the space between the bones',
    study: 'the diastasis',
  },
  'arch loss': {
    patient: 'the sinking of the arch',
    broadcast: 'the sinking of the arch',
    study: 'the loss of height of the arch',
  },
  'joint share': {
    patient: 'the part of the joint surface that is broken',
    broadcast: 'the part of the joint surface that is broken',
    study: 'the share of the joint surface involved',
  },
  'Boehler angle': {
    patient: 'the angle of the heel bone on the film',
    broadcast: 'the angle of the heel bone on the film',
    study: 'the Boehler angle',
  },
  fragments: {
    patient: 'the number of pieces',
    broadcast: 'the number of pieces',
    study: 'the number of fragments',
  },
  'line depth': {
    patient: 'the depth of the crack below the top layer',
    broadcast: 'the depth of the crack below the top layer',
    study: 'the depth of the line between the dorsal cortex and the next',
  },
} as const;

export const SUBJECT_WORDS = {
  side: 'the side',
  bone: 'the bone',
  place: 'the exact spot',
  injury: 'the kind of injury',
  direction: 'which way the break runs',
  displacement: 'whether the ends have moved apart',
  measure: 'what was measured on a film',
  onset: 'whether it came on at once or bit by bit',
  mechanism: 'how it happened',
  injuryDate: 'the day it began',
  treatment: 'the treatment',
  followUp: 'a check-up',
  outcome: 'how it ended',
  timetable: 'the weeks somebody named',
  ageBand: 'the age',
  massKg: 'the body mass',
  heightCm: 'the height',
  footShape: 'the shape of the foot',
  activity: 'the sport or activity',
  level: 'the level of sport',
  riskFactor: 'a risk factor',
} as const;

/** Subjects that are named otherwise where a joint came apart. */
export const SUBJECT_WORDS_OF_JOINT = {
  ...SUBJECT_WORDS,
  displacement: 'whether the bones of the joint have moved apart',
} as const;

/** Why a confidence is no higher. */
export const REASON_WORDS = {
  'claim.confirmed': 'It rests on a confirmed claim.',
  'claim.reported': 'It rests on a claim that is only reported.',
  'claim.inferred': 'It rests on something inferred and not observed.',
  'claim.ruledOut': 'It rests on a claim that something is ruled out.',
  'claim.contradiction': 'The claims it rests on disagree.',
  'claim.notStated': 'What it would rest on has not been stated.',
  'source.seen': 'It rests on a figure that was read in its source.',
  'source.weak': 'It rests on a weak source.',
  'source.common practice': 'It rests on common practice, not on a study.',
  'source.from memory': 'It rests on a figure from memory that nobody has checked.',
  'model.drawnFoot': 'The bones are modelled on few feet: another foot may differ by some millimetres.',
  'model.placeRule': 'It follows from the place alone, by the rule of the zones.',
  'model.takenAsNone': 'It takes as none what nobody has stated.',
  'model.feedingRule':
    'It takes it that the vessel whose entry is nearest along the inside of the bone feeds a spot; nobody has measured flow.',
  'model.operationTakes':
    'It takes it that the operation stops a vessel for good and everywhere in the bone; no study of that in this bone was found.',
  'model.forecast': 'It is a sum over few and different studies, and takes their counts as independent.',
  'model.spreadOfStudies': 'It is the spread of the centres of named studies, not a forecast for one person.',
  'model.comparisonOfShares': 'Two shares are compared; the groups differ in more than their treatment.',
  'model.frame':
    'It comes from a frame of the foot whose joints and ties nobody has measured well. Signs and rankings are better supported than sizes: see how the runs agree.',
  'model.tibialConstants':
    'Its constants come from the shin bone and from pieces of bone; none is known for this bone, and powers magnify errors.',
  'model.borrowedScore': 'The score was made for the shaft of the shin bone. For this bone nobody has tried it.',
  nothing: 'Nothing we know of lowers it.',
} as const;
export type ReasonKey = keyof typeof REASON_WORDS;
