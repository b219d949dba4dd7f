/** Sentences of question 3: why does it heal as it does? Who feeds it, where supplies meet, what a break or a tear leaves. */
import type { Tellings } from '../../content/schema';

export const WHY_SENTENCES = {
  whyUnknown: {
    patient: 'How fast it heals depends on the spot, and the spot is not known yet.',
    broadcast: 'How fast it heals depends on the spot, and that is not known.',
    study: 'Class not known: no statement on healing.',
  },
  feedingUnknown: {
    patient: 'We have nothing on the vessels of this bone, so its blood supply is not drawn.',
    broadcast: 'There is nothing here on the vessels of this bone, so its blood supply is not drawn.',
    study: 'No vessels of the {bone} in the content: supply not drawn.',
  },
  'fedBy.source': {
    patient: 'Blood reaches this part mainly from {main}. Others that reach it: {others}.',
    broadcast: 'Blood reaches this part mainly from {main}; others that reach it: {others}.',
    study: 'Supply of {region}: main {main}, as described; others {others}.',
  },
  'fedBy.sourceApart': {
    patient: 'Blood reaches this part mainly from {main}. Others that reach it: {others}.',
    broadcast: 'Blood reaches this part mainly from {main}; others that reach it: {others}.',
    study:
      'Supply of {region}: main {main}, as described; others {others}. The nearest way in would make it {nearest}: the description goes before.',
  },
  'fedBy.territory': {
    patient:
      'The nearest way in for blood here is by {main}. Others: {others}. How much each brings was never measured.',
    broadcast:
      'The nearest way in for blood here is by {main}; others: {others}. Nobody has measured how much each brings.',
    study:
      'Supply of {region}: nearest way in {main}; others {others}. Nearest is taken to feed; flow was not measured.',
  },
  'fedBy.bare': {
    patient: 'In a foot of this kind, no vessel runs inside this part.',
    broadcast: 'In a foot of this kind, no vessel runs inside this part.',
    study: '{region}: no vessels inside in this pattern.',
  },
  feedingBorder: {
    patient: 'Two blood supplies meet in {region}. We take it that the nearest one feeds each spot.',
    broadcast: 'Two blood supplies meet in {region}, if the nearest one feeds each spot; nobody measured it.',
    study:
      'Border of {near} and {far}: {at} from {end} (half width {halfWidth}), in {region}. Computed: nearest along the inside of the bone feeds. No published length was read.',
  },
  breakLeaves: {
    patient: 'we reckon that this break leaves, part by part: {parts}',
    broadcast: 'by our reckoning such a break leaves, part by part: {parts}',
    study: 'computed, left by this break: {parts}',
  },
  'breakLeaves.torn': {
    patient: 'we reckon, with some vessels torn too, part by part: {parts}',
    broadcast: 'with some vessels torn as well, part by part: {parts}',
    study: 'left by break and loss of {torn}: {parts}',
  },
  'breakLeaves.taken': {
    patient: 'we reckon that the break and the operation itself leave, part by part: {parts}',
    broadcast: 'by our reckoning the break and the operation itself leave, part by part: {parts}',
    study: 'computed, left by break and operation, which itself takes {taken}: {parts}',
  },
  'breakLeaves.tornTaken': {
    patient: 'we reckon, with some vessels torn and with the operation itself, part by part: {parts}',
    broadcast: 'with some vessels torn and with the operation itself, part by part: {parts}',
    study: 'left by break, loss of {torn} and operation, which itself takes {taken}: {parts}',
  },
} as const satisfies Readonly<Record<string, Tellings>>;
