/** Sentences of question 1: where is it? The bone, its part, the class, the code, what is fixed to it. */
import type { Tellings } from '../../content/schema';

export const WHERE_SENTENCES = {
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
  'nothingLocated.disputed': {
    patient: 'Reports disagree on where it is.',
    broadcast: 'Reports disagree on where it is.',
    study: 'Claims disagree on bone or location.',
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
  'computedClass.byDisplacement': {
    patient: 'it counts as {term}. The pieces have moved apart, so the crack must run right through',
    broadcast: 'it counts as {term}, for pieces that have moved apart mean a crack right through',
    study:
      'by its rules, {scheme}: {term} (displaced pieces hang together nowhere, so the line has reached another cortex; its depth is not stated)',
  },
  /** Behind the clause of the class: a measure that nobody stated. */
  'computedClass.assumed': {
    patient: '{told}. Nobody told us of {what}, so we take it that there is none',
    broadcast: '{told}. Nothing was said of {what}, so it is taken as none',
    study: '{told}. Not stated, and taken as none: {what}',
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
      'This part is found from the small joint with the next bone. From the back end of the drawn bone it runs from {from} to {to}.',
    broadcast: 'This part is found from the joint with the next bone; on the drawn bone it runs from {from} to {to}.',
    study:
      '{region}: {from} to {to} from the proximal tip of the drawn bone, borders from the 4–5 intermetatarsal facet and not from a fixed distance (texts differ on the distance).',
  },
  'zoneBorder.other': {
    patient: 'From {end} of the drawn bone this part runs from {from} to {to}.',
    broadcast: 'From {end} of the drawn bone this part runs from {from} to {to}.',
    study: '{region}: {from} to {to} from {end} of the drawn bone.',
  },
  /** A bone that lies across the foot. */
  'zoneBorder.across': {
    patient: 'From {end} of the drawn bone this part runs from {from} to {to}.',
    broadcast: 'From {end} of the drawn bone this part runs from {from} to {to}.',
    study: '{region}: {from} to {to} from {end} of the drawn bone, across the foot.',
  },
  'breakDrawn.distance': {
    patient: 'it is drawn {fromTip} from {end} of the bone, as stated',
    broadcast: 'it is drawn {fromTip} from {end} of the bone, as stated',
    study: 'drawn {fromTip} from {end}, as stated',
  },
  'breakDrawn.region': {
    patient: 'only the part of the bone is known, so the break is drawn in its middle',
    broadcast: 'only the part of the bone is known, so the break is drawn in its middle',
    study: 'only the part is known; drawn at its middle, {fromTip} from {end}',
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
  apartAgainstClass: {
    patient:
      'What is stated may not fit together. One says it is {injury}. Another says the pieces stand {apart} apart. Cracks of this kind seldom do. Ask which of the two is right.',
    broadcast:
      'What is stated may not fit together: one says it is {injury}, another that the pieces stand {apart} apart, which such cracks seldom do.',
    study:
      'Claims hardly fit: {injury} is stated or follows, and {what} {apart}. From {from} on a fresh break is the likelier, or a stress fracture that gave way at last; the onset decides (common practice).',
  },
  gapAgainstWord: {
    patient: 'What is stated does not fit together. One says the joint is in line. Another says it gapes {gap} wider.',
    broadcast:
      'What is stated does not fit together: one says the joint is in line, another that it gapes {gap} wider.',
    study: 'Claims disagree: not displaced is stated, and diastasis {gap}; from {from} on the joint is apart.',
  },
  measureOfOther: {
    patient: 'A measure that is stated, {what}, is not of this injury but of {injuries}. It is left out.',
    broadcast: 'A measure that is stated, {what}, is not of this injury but of {injuries}. It is left out.',
    study: 'Stated, and not of this injury: {what} is a measure of {injuries}. Left out.',
  },
  'gapAgainstWord.displaced': {
    patient:
      'What is stated does not fit together. One says the joint has moved apart. Another says it gapes only {gap} wider.',
    broadcast:
      'What is stated does not fit together: one says the joint has moved apart, another that it gapes only {gap} wider.',
    study:
      'Claims disagree: displaced is stated, and diastasis {gap}; only from {from} on the joint is apart. No class is derived.',
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
