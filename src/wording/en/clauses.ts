/**
 * What one claim says, as a clause that stands behind "that" or on its own. The hedge is never part of it: the renderer puts it
 * in front, by the status of the claim, for every subject alike.
 */
import type { Tellings } from '../../content/schema';

export const CLAUSES = {
  side: { patient: 'it is your {side} foot', broadcast: 'it is the {side} foot', study: 'the side is the {side}' },
  bone: {
    patient: 'the {bone} is hurt',
    broadcast: 'the {bone} is hurt',
    study: 'the bone concerned is the {bone}',
  },
  placeRegion: {
    patient: 'the spot is {region}',
    broadcast: 'the spot is {region}',
    study: 'the location is {region}',
  },
  placeDistance: {
    patient: 'the spot is {distance} along the bone',
    broadcast: 'the spot is {distance} along the bone',
    study: 'the location is {distance} along the axis of the bone',
  },
  injury: { patient: 'it is {injury}', broadcast: 'it is {injury}', study: 'the class is {injury}' },
  direction: {
    patient: 'the break runs {direction}',
    broadcast: 'the break runs {direction}',
    study: 'the fracture line runs {direction}',
  },
  displaced: {
    patient: 'the ends of the break have moved apart{by}',
    broadcast: 'the ends have moved apart{by}',
    study: 'the fracture is displaced{by}',
  },
  notDisplaced: {
    patient: 'the broken parts have stayed in place',
    broadcast: 'the broken parts have stayed in place',
    study: 'the fracture is not displaced',
  },
  'displaced.joint': {
    patient: 'the bones of the joint have moved apart{by}',
    broadcast: 'the bones of the joint have moved apart{by}',
    study: 'the joint is displaced{by}',
  },
  'notDisplaced.joint': {
    patient: 'the bones of the joint have stayed in place',
    broadcast: 'the bones of the joint have stayed in place',
    study: 'the joint is not displaced',
  },
  measure: { patient: '{what} is {value}', broadcast: '{what} is {value}', study: '{what} is {value}' },
  onset: { patient: '{onset}', broadcast: '{onset}', study: '{onset}' },
  mechanism: {
    patient: 'it happened like this: {mechanism}',
    broadcast: 'it happened like this: {mechanism}',
    study: 'the mechanism is {mechanism}',
  },
  injuryDate: {
    patient: 'the injury began on {date}',
    broadcast: 'it began on {date}',
    study: 'the onset was on {date}',
  },
  treatment: {
    patient: 'the treatment is {option}{since}',
    broadcast: 'the treatment is {option}{since}',
    study: 'the treatment is {option}{since}',
  },
  followUp: { patient: 'on {date} {finding}', broadcast: 'on {date} {finding}', study: 'on {date} {finding}' },
  timetable: {
    patient: 'it takes {weeks}{until}',
    broadcast: 'it takes {weeks}{until}',
    study: 'it takes {weeks}{until}',
  },
  outcome: { patient: 'on {date} {ended}', broadcast: 'on {date} {ended}', study: 'on {date} {ended}' },
  ageBand: {
    patient: 'you are {age} years old',
    broadcast: 'the age is {age} years',
    study: 'the age band is {age} years',
  },
  massKg: {
    patient: 'you weigh about {mass}',
    broadcast: 'the body mass is about {mass}',
    study: 'the body mass is {mass}',
  },
  heightCm: {
    patient: 'you are about {height} tall',
    broadcast: 'the height is about {height}',
    study: 'the height is {height}',
  },
  footShape: {
    patient: 'your foot has {shape}',
    broadcast: 'the foot has {shape}',
    study: 'the foot has {shape}',
  },
  activity: {
    patient: 'the load to look at is {activity}',
    broadcast: 'the load to look at is {activity}',
    study: 'the load case is {activity}',
  },
  level: {
    patient: 'the foot has to serve {level}',
    broadcast: 'the foot has to serve {level}',
    study: 'the level is {level}',
  },
  riskFactor: {
    patient: 'there is this risk: {factor}',
    broadcast: 'there is this risk: {factor}',
    study: 'a risk factor is present: {factor}',
  },
} as const satisfies Record<string, Tellings>;
export type ClauseKey = keyof typeof CLAUSES;

/** Put in front of a clause, by the status of its claim. {clause} is lower case; a sentence starts with a capital. */
export const HEDGES = {
  confirmed: { patient: '{clause}.', broadcast: '{clause}.', study: 'Confirmed: {clause}.' },
  reported: {
    patient: 'It is reported, not confirmed, that {clause}.',
    broadcast: 'It is reported{by}, but not confirmed, that {clause}.',
    study: 'Reported, not confirmed: {clause}.',
  },
  inferred: {
    patient: 'Nobody has confirmed it, but it seems that {clause}.',
    broadcast: 'Nobody has confirmed it, but it follows that {clause}.',
    study: 'Inferred, not observed: {clause}.',
  },
  supposed: { patient: '{clause}.', broadcast: '{clause}.', study: '{clause}.' },
  ruledOut: {
    patient: 'It has been ruled out that {clause}.',
    broadcast: 'It has been ruled out that {clause}.',
    study: 'Ruled out: {clause}.',
  },
} as const satisfies Record<string, Tellings>;

/** Opens what follows from facts that are not confirmed. */
export const CONDITIONS = {
  reported: {
    patient: 'If the report is right: ',
    broadcast: 'If the reports are right: ',
    study: 'Given the reported facts: ',
  },
  inferred: {
    patient: 'If this is the spot: ',
    broadcast: 'If this is the spot: ',
    study: 'Given the inferred location: ',
  },
  contradiction: {
    patient: 'Reports disagree, so take this with care: ',
    broadcast: 'Reports disagree, so with care: ',
    study: 'Given facts that disagree: ',
  },
} as const satisfies Record<string, Tellings>;

/** Opens a whole text of the content that tells how it broke. `usual`: nobody said so of this person. */
export const TEXT_FRAMES = {
  confirmed: { patient: '', broadcast: '', study: '' },
  none: { patient: 'If it was this way: ', broadcast: 'In general terms: ', study: 'In general: ' },
  usual: { patient: 'If it was this way: ', broadcast: 'In general terms: ', study: 'In general: ' },
  reported: {
    patient: 'If the report is right: ',
    broadcast: 'If the reports are right: ',
    study: 'Given the reported facts: ',
  },
  inferred: {
    patient: 'If this is how it was: ',
    broadcast: 'If this is how it was: ',
    study: 'Given the inferred mechanism: ',
  },
  contradiction: {
    patient: 'Reports disagree, so take this with care: ',
    broadcast: 'Reports disagree, so with care: ',
    study: 'Given facts that disagree: ',
  },
} as const satisfies Record<string, Tellings>;

export const PIECES = {
  whatIf: 'What if: ',
  by: ' by {distance}',
  reportedBy: ' by {who}',
  since: ', since {date}',
  orElse: '; {clause}',
  and: ' and ',
  to: ' to ',
  nobody: 'none',
} as const;
