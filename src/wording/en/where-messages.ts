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
} as const satisfies Readonly<Record<string, Tellings>>;
