/** Sentences of question 4 about supports and screws, and of question 2 about repeated load. */
import type { Mark, Tellings } from '../../content/schema';

export const SUPPORT_SENTENCES = {
  'support.raises': {
    patient:
      'With {support} this bone is pulled about {percent} more in the model ({band}). That is against pushing off barefoot.',
    broadcast:
      'With {support} the model has about {percent} more pull on this bone ({band}) than in {reference} barefoot.',
    study:
      '{support} ({step}): largest tension {percent} higher than in {reference} barefoot ({band}); {share} of the draws agree that it rises.',
  },
  'support.lowers': {
    patient:
      'With {support} this bone is pulled about {percent} less in the model ({band}). That is against pushing off barefoot.',
    broadcast:
      'With {support} the model has about {percent} less pull on this bone ({band}) than in {reference} barefoot.',
    study:
      '{support} ({step}): largest tension {percent} lower than in {reference} barefoot ({band}); {share} of the draws agree that it falls.',
  },
  'support.raisesRank': {
    patient: 'With {support} this bone is pulled more in the model. That is against pushing off barefoot.',
    broadcast: 'With {support} the model has more pull on this bone than in {reference} barefoot.',
    study:
      '{support} ({step}): largest tension rises against {reference} barefoot, as {share} of the draws agree; no size is stated.',
  },
  'support.lowersRank': {
    patient: 'With {support} this bone is pulled less in the model. That is against pushing off barefoot.',
    broadcast: 'With {support} the model has less pull on this bone than in {reference} barefoot.',
    study:
      '{support} ({step}): largest tension falls against {reference} barefoot, as {share} of the draws agree; no size is stated.',
  },
  'support.cannotTellRank': {
    patient: 'What {support} does to this bone, the model cannot tell.',
    broadcast: 'What {support} does to this bone, the model cannot tell.',
    study: '{support} ({step}): the model cannot tell; {share} of the draws agree on the sign.',
  },
  'support.hardly': {
    patient: 'With {support} this bone is pulled hardly more or less in the model.',
    broadcast: 'With {support} the model has hardly any change on this bone.',
    study:
      '{support} ({step}): largest tension changes by {band} against {reference} barefoot; less than one part in twenty.',
  },
  'support.cannotTell': {
    patient: 'What {support} does to this bone, the model cannot tell.',
    broadcast: 'What {support} does to this bone, the model cannot tell.',
    study: '{support} ({step}): the model cannot tell ({band}); {share} of the draws agree on the sign.',
  },
  'support.oneJoint': {
    patient: 'What {support} does to this bone, the model cannot tell. Its sole bends at the big toe only.',
    broadcast: 'What {support} does to this bone, the model cannot tell: its sole bends at the big toe only.',
    study: '{support} ({step}): no statement for this ray; the frame has a joint for the first toe alone.',
  },
  supportStandIn: {
    patient: 'Our model has no real boot. A flat foot that bears the whole push-off stands in for it. That is assumed.',
    broadcast: 'The model has no boot: a flat foot that bears the whole push-off stands in for it. That is assumed.',
    study:
      'Boot: a stand-in, assumed. Whole-sole contact, centre of pressure and muscles of {flat}, under the total force of {reference}. Part of the fall is the lower muscle force. Shell, rocker and fit are not modelled.',
  },
  supportPending: {
    patient: 'What a boot, a sole or a screw does here is being worked out.',
    broadcast: 'What a boot, a sole or a screw does to this bone is being worked out.',
    study: 'Supports and screw over all assumed figures are being computed.',
  },
  'screwShare.inside': {
    patient: 'In whole bone a screw takes this part of the bending: {shares}. The bone carries the rest.',
    broadcast: 'In a whole bone the screw takes this part of the bending: {shares}. The bone carries the rest.',
    study:
      'Screw of {core} core, bonded in the middle of the canal at the break (an upper bound), in {reference} of a person of 70 kg. {screws}.',
  },
  'screwShare.outside': {
    patient:
      'In whole bone a screw takes this part of the bending: {shares}. The bone carries the rest. This spot is near the base, so take it as rough.',
    broadcast:
      'In a whole bone the screw takes this part of the bending: {shares}. The bone carries the rest. This spot is near the base, so take it as rough.',
    study:
      'Screw of {core} core, bonded in the middle of the canal at the break (an upper bound), in {reference} of a person of 70 kg. {screws}. The break lies where sections do not stay flat: rough shares.',
  },
  'screwBridge.sized': {
    patient:
      'Across a gap the screw alone carries all the bending. Pushing off in walking then takes it to {limits} of its limit. That is for a person of 70 kg. Past its limit metal stays bent.',
    broadcast:
      'Across a gap the screw alone carries all the bending: pushing off in walking then takes it, for a person of 70 kg, to {limits} of the bending at which metal stays bent.',
    study:
      'Screw of {core} core alone across a gap, in {reference} of a person of 70 kg. {screws}. Rule of thumb on opening over width: bone under {bone}, fibrous cartilage to {cartilage}; contradicted in detail.',
  },
  'screwBridge.rank': {
    patient:
      'Across a gap the screw alone carries all the bending. It comes nearer to its limit than in whole bone. How near, the model cannot tell. Past its limit metal stays bent.',
    broadcast:
      'Across a gap the screw alone carries all the bending and comes nearer to its limit than in whole bone; how near, the model cannot tell.',
    study:
      'Screw of {core} core alone across a gap, in {reference} of a person of 70 kg, of which the theory can state no size. {screws}. Rule of thumb on opening over width: bone under {bone}, fibrous cartilage to {cartilage}; contradicted in detail.',
  },
  'screwBridge.cannotTell': {
    patient:
      'Across a gap the screw alone carries all the bending. How near to its limit that takes it, the model cannot tell. Past its limit metal stays bent.',
    broadcast:
      'Across a gap the screw alone carries all the bending; how near to its limit that takes it, the model cannot tell.',
    study:
      'Screw of {core} core alone across a gap, in {reference} of a person of 70 kg, of which the theory can state no size. {screws}. Rule of thumb on opening over width: bone under {bone}, fibrous cartilage to {cartilage}; contradicted in detail.',
  },
  screwLength: {
    patient: 'In this drawn bone a straight screw goes this deep: {rods}. The advice is {advised} or less on average.',
    broadcast:
      'In this drawn bone a straight screw reaches so deep: {rods}. Published advice is {advised} or less on average.',
    study:
      'Straight rod through the tuberosity in this bone’s own bowed canal, from the tip ({bone} long): {rods}. Advised: {advised} or less on average ({lengthSource}); less than {advisedShare} of the length, {advisedOfThis} here ({shareSource}).',
  },
  screwNotModelled: {
    patient: 'Of all operations, only a screw in the outer long bone is worked out here.',
    broadcast: 'Of all operations, only a screw in the outer long bone is worked out here.',
    study:
      'What fixation does to the load is not modelled here: of operations only a screw in the canal of the fifth metatarsal is.',
  },
  repeatedLoad: {
    patient:
      'A tenth more steps wears the bone about a tenth more. But a tenth more load in each step does {damage} the wear. {known}',
    broadcast:
      'A tenth more steps is about a tenth more wear on the bone; a tenth more load in each step is {damage} the wear. {known}',
    study:
      'Damage goes with cycles and with strain to the power {exponent}, from tibial models and pieces of bone: {more} more strain, {damage} the damage. No constant is known for a metatarsal; ratios only. {known}',
  },
} as const satisfies Record<string, Tellings>;

/** How the constants of repeated load are known. */
export const CONSTANTS_KNOWN = {
  seen: 'Each of these constants was read at its source.',
  weak: 'These constants are second hand.',
  'common practice': 'These constants are common practice.',
  'from memory': 'This is from memory: not one constant was read at its source.',
} as const satisfies Record<Mark, string>;

/** Small pieces of these sentences. */
export const SUPPORT_PARTS = {
  ofMaterial: '{range} ({material})',
  or: ' or ',
  range: '{low} to {high} %',
  times: '{low} to {high} times',
  screwInBone:
    '{material}: {upDown} of the bending stiffness up and down, {sideways} sideways; largest tension in the bone {bone} that without; stress in the screw {ofYield} of its yield',
  screwLess:
    '{material}: {upDown} of the bending stiffness up and down, {sideways} sideways; largest tension in the bone lower with it, as {share} of the draws agree; no size is stated',
  screwNotLess:
    '{material}: {upDown} of the bending stiffness up and down, {sideways} sideways; largest tension in the bone no lower with it, as {share} of the draws agree; no size is stated',
  screwUnsure:
    '{material}: {upDown} of the bending stiffness up and down, {sideways} sideways; whether the bone is pulled less with it, the model cannot tell: {share} of the draws agree',
  aloneMore:
    '{material}: nearer to its limit than in whole bone, as {share} of the draws agree; far cortex opens by {perNm} of the gap for each N m; ends turn {turn} for each N m and mm of gap',
  aloneNotMore:
    '{material}: no nearer to its limit than in whole bone, as {share} of the draws agree; far cortex opens by {perNm} of the gap for each N m; ends turn {turn} for each N m and mm of gap',
  aloneUnsure:
    '{material}: whether nearer to its limit than in whole bone, the model cannot tell ({share} of the draws agree); far cortex opens by {perNm} of the gap for each N m; ends turn {turn} for each N m and mm of gap',
  screwAlone:
    '{material}: {ofYield} of its yield moment; far cortex opens by {opening} of the gap, {perNm} for each N m; ends turn {turn} for each N m and mm of gap',
  rod: '{reach} at {diameter}',
  rodWhole: 'through to the head at {diameter} ({low} where the wall is thick)',
  rodBand: '{reach} ({low} to {high}) at {diameter}',
} as const;
