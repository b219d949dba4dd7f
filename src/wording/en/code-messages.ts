/** Sentences of question 1 about codes of ICD-10-CM and the number of the AO/OTA compendium. */
import type { Tellings } from '../../content/schema';

export const CODE_SENTENCES = {
  code: {
    patient: 'Code: {code}',
    broadcast: 'Code: {code}',
    study: '{if}ICD-10-CM {code} ({title}; {visit}), edition {edition}.{rests}{healing} Check the current edition.',
  },
  'code.assumed': {
    patient: 'Code: {code}',
    broadcast: 'Code: {code}',
    study:
      '{if}ICD-10-CM {code} ({title}; {visit}), edition {edition}; by the rules of the list, {assumed}.{rests}{healing} Check the current edition.',
  },
  codesBeside: {
    patient: 'Codes: {codes}',
    broadcast: 'Codes: {codes}',
    study:
      'Where a bone broke too, its fracture is coded as well ({codes}, each with its own characters). Not assembled here: which bone is not kept beside the joint.',
  },
  codeOfGrowing: {
    patient: 'A break through a growth plate has a code of its own: {root}.',
    broadcast: 'A break through a growth plate has a code of its own: {root}.',
    study:
      'Somebody of this age may still grow. For a break through an open growth plate ICD-10-CM has codes of its own, and the codes of other breaks of this bone leave it out: {root}- ({title}), {group}1- to {group}4- for Salter-Harris types I to IV, {group}9- for others. Whether the line enters a growth plate is not kept here; whoever reads the film and codes decides.',
  },
  codeAnew: {
    patient: 'It broke again on {date}.',
    broadcast: 'It broke again on {date}.',
    study:
      'No ICD-10-CM code is assembled: it broke again on {date}, and a new break is coded anew and not as usual healing of the old.',
  },
  'codeAnew.reported': {
    patient: 'It is said that it broke again on {date}.',
    broadcast: 'It is reported, not confirmed, that it broke again on {date}.',
    study:
      'Reported, not confirmed: broken again on {date}. If that is right, the code above no longer holds: a new break is coded anew, not as healing of the old.',
  },
  alsoNumbered: {
    patient: 'Number: {number}',
    broadcast: 'Number: {number}',
    study:
      'AO/OTA {number} ({says}), compendium of {edition}. An optional reference: the compendium may be used for research, education and medical purposes without asking, and not commercially or for profit without leave.',
  },

  'code.visit.first': {
    patient: 'first visit',
    broadcast: 'first visit',
    study: 'first visit',
  },
  'code.visit.again': {
    patient: 'later visit',
    broadcast: 'later visit',
    study: 'later visit',
  },
  'code.visit.later': {
    patient: 'later visit',
    broadcast: 'later visit',
    study: 'later visit',
  },
  'code.visit.usual': {
    patient: 'later visit, usual healing',
    broadcast: 'later visit, usual healing',
    study: 'later visit, usual healing',
  },
  'code.visit.delayed': {
    patient: 'later visit, delayed healing',
    broadcast: 'later visit, delayed healing',
    study: 'later visit, delayed healing',
  },
  'code.visit.nonunion': {
    patient: 'later visit, nonunion',
    broadcast: 'later visit, nonunion',
    study: 'later visit, nonunion',
  },
  'code.visit.malunion': {
    patient: 'later visit, malunion',
    broadcast: 'later visit, malunion',
    study: 'later visit, malunion',
  },
  'code.healingNotStated': {
    patient: 'Of how the bone heals nothing is stated.',
    broadcast: 'Of how the bone heals nothing is stated.',
    study: 'Of how the bone heals nothing is stated.',
  },
  'code.healingDisputed': {
    patient: 'Follow-ups differ on how the bone heals.',
    broadcast: 'Follow-ups differ on how the bone heals.',
    study: 'Follow-ups differ on how the bone heals.',
  },
  'code.healingReported': {
    patient: 'How the bone heals is only reported.',
    broadcast: 'How the bone heals is only reported.',
    study: 'How the bone heals is only reported.',
  },
  'code.if.reported': {
    patient: 'If the reports are right: ',
    broadcast: 'If the reports are right: ',
    study: 'If the reports are right: ',
  },
  'code.if.inferred': {
    patient: 'If what is inferred here is right: ',
    broadcast: 'If what is inferred here is right: ',
    study: 'If what is inferred here is right: ',
  },
  'code.notConfirmed': {
    patient: 'Not confirmed: {parts}.',
    broadcast: 'Not confirmed: {parts}.',
    study: 'Not confirmed: {parts}.',
  },
  'code.unlessConfirmed': {
    patient:
      'As long as nobody confirms that it is not displaced, the rule of the list for displacement not stated gives {code}.',
    broadcast:
      'As long as nobody confirms that it is not displaced, the rule of the list for displacement not stated gives {code}.',
    study:
      'As long as nobody confirms that it is not displaced, the rule of the list for displacement not stated gives {code}.',
  },
  'code.part.class': {
    patient: 'the class',
    broadcast: 'the class',
    study: 'the class',
  },
  'code.part.bone': {
    patient: 'the bone',
    broadcast: 'the bone',
    study: 'the bone',
  },
  'code.part.measures': {
    patient: 'what was measured',
    broadcast: 'what was measured',
    study: 'what was measured',
  },
  'code.part.displacement': {
    patient: 'displacement',
    broadcast: 'displacement',
    study: 'displacement',
  },
  'code.part.side': {
    patient: 'the side',
    broadcast: 'the side',
    study: 'the side',
  },
  'code.part.followUps': {
    patient: 'the follow-ups',
    broadcast: 'the follow-ups',
    study: 'the follow-ups',
  },
  'code.letters': {
    patient:
      'D: the bone heals as usual. G: it heals late (delayed union). K: it does not unite (nonunion). {malunion}No number of weeks parts them for all; whoever codes decides, by what the record says of the bone.',
    broadcast:
      'D: the bone heals as usual. G: it heals late (delayed union). K: it does not unite (nonunion). {malunion}No number of weeks parts them for all; whoever codes decides, by what the record says of the bone.',
    study:
      'D: the bone heals as usual. G: it heals late (delayed union). K: it does not unite (nonunion). {malunion}No number of weeks parts them for all; whoever codes decides, by what the record says of the bone.',
  },
  'code.letters.malunion': {
    patient: 'P: it has united out of place (malunion). ',
    broadcast: 'P: it has united out of place (malunion). ',
    study: 'P: it has united out of place (malunion). ',
  },
  'code.ifReported': {
    patient: 'If the report is right: {code}.',
    broadcast: 'If the report is right: {code}.',
    study: 'A report, not confirmed, says otherwise; if it is right: {code} ({visit}).',
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
  'code.assumed.sideDisputed': {
    patient: 'claims of the side differ, coded like a side not stated',
    broadcast: 'claims of the side differ, coded like a side not stated',
    study: 'the side is disputed, and coded like one not stated',
  },
  'code.assumed.displacementDisputed': {
    patient: 'claims of displacement differ, coded displaced',
    broadcast: 'claims of displacement differ, coded displaced',
    study: 'displacement is disputed, and coded displaced like one not stated',
  },
  'code.assumed.open': {
    patient: 'nothing chose among the codes',
    broadcast: 'nothing chose among the codes',
    study: 'one of several that fit, as neither a class nor displacement decides',
  },
  'code.assumed.severalFit': {
    patient: 'the list offers more than one',
    broadcast: 'the list offers more than one',
    study: 'one of those that the list offers for this injury, which of them is for whoever codes',
  },
  'code.assumed.ofTwo': {
    patient: 'the list offers two',
    broadcast: 'the list offers two',
    study: 'one of the two that the list offers for a joint that is apart, which of them is for whoever codes',
  },
  'code.assumed.gapFirst': {
    patient: 'the measured gap goes first',
    broadcast: 'the measured gap goes first',
    study: 'not displaced is stated against the measured gap, and the gap decides here',
  },
  'code.assumed.classAssumed': {
    patient: 'the class rests on what nobody stated',
    broadcast: 'the class rests on what nobody stated',
    study: 'the class that decides rests on a measure not stated',
  },
  'code.assumed.closed': {
    patient: 'open or closed not stated is coded closed',
    broadcast: 'open or closed not stated is coded closed',
    study: 'open or closed not stated is coded closed',
  },
} as const satisfies Readonly<Record<string, Tellings>>;
