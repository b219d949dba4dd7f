/** Templates of what raises the load on a bone, and of what an answer hangs on, each in three tellings. */
export const CONTRIBUTOR_SENTENCES = {
  'contributor.raises': {
    patient: '{contributor}: about {percent} more pull on this bone in the model.',
    broadcast: '{contributor}: in the model about {percent} more pull on this bone.',
    study:
      '{contributor} ({step}): largest tension {percent} higher ({band}); {share} of the draws agree that it rises.',
  },
  'contributor.lowers': {
    patient: '{contributor}: about {percent} less pull on this bone in the model.',
    broadcast: '{contributor}: in the model about {percent} less pull on this bone.',
    study:
      '{contributor} ({step}): largest tension {percent} lower ({band}); {share} of the draws agree that it falls.',
  },
  'contributor.raisesRank': {
    patient: '{contributor}: more pull on this bone in the model.',
    broadcast: '{contributor}: in the model more pull on this bone.',
    study: '{contributor} ({step}): largest tension rises, as {share} of the draws agree; no size is stated.',
  },
  'contributor.lowersRank': {
    patient: '{contributor}: less pull on this bone in the model.',
    broadcast: '{contributor}: in the model less pull on this bone.',
    study: '{contributor} ({step}): largest tension falls, as {share} of the draws agree; no size is stated.',
  },
  'contributor.byTask': {
    patient: '{contributor}: more pull in some movements, less in others.',
    broadcast: '{contributor}: in the model more pull in some movements and less in others.',
    study:
      '{contributor} ({step}): raises the largest tension in some tasks and lowers it in others, either with four fifths of the draws of a task; no sign is stated.',
  },
  'contributor.hardly': {
    patient: '{contributor}: hardly any change in the model.',
    broadcast: '{contributor}: in the model hardly any change.',
    study: '{contributor} ({step}): largest tension changes by {band}; less than one part in twenty.',
  },
  'contributor.cannotTell': {
    patient: '{contributor}: the model cannot tell what it does to this bone.',
    broadcast: '{contributor}: the model cannot tell what it does to this bone.',
    study: '{contributor} ({step}): the model cannot tell ({band}); {share} of the draws agree on the sign.',
  },
  'contributor.cannotTellRank': {
    patient: '{contributor}: the model cannot tell what it does to this bone.',
    broadcast: '{contributor}: the model cannot tell what it does to this bone.',
    study: '{contributor} ({step}): the model cannot tell; {share} of the draws agree on the sign.',
  },
  contributorPublished: {
    patient: 'Published on {contributor}: {text}',
    broadcast: 'Published on {contributor}: {text}',
    study: 'Published on {contributor} ({says}): {text}',
  },
  'contributorShift.toHead.sized': {
    patient: 'The hardest pull moves towards the toes.',
    broadcast: 'The hardest pull moves towards the toes by about {by}.',
    study: 'The middle of the plateau moves {by} towards the head; {share} of the draws agree on the direction.',
  },
  'contributorShift.toHead.rank': {
    patient: 'The hardest pull moves towards the toes.',
    broadcast: 'The hardest pull moves towards the toes.',
    study: 'The middle of the plateau moves towards the head, as {share} of the draws agree; no size is stated.',
  },
  'contributorShift.toTip.sized': {
    patient: 'The hardest pull moves towards the heel.',
    broadcast: 'The hardest pull moves towards the heel by about {by}.',
    study: 'The middle of the plateau moves {by} towards {end}; {share} of the draws agree on the direction.',
  },
  'contributorShift.toTip.rank': {
    patient: 'The hardest pull moves towards the heel.',
    broadcast: 'The hardest pull moves towards the heel.',
    study: 'The middle of the plateau moves towards {end}, as {share} of the draws agree; no size is stated.',
  },
  'contributorShift.stays.sized': {
    patient: 'Where it pulls hardest does not move in the model.',
    broadcast: 'Where it pulls hardest does not move in the model.',
    study:
      'The middle of the plateau moves by no more than a cut’s distance ({by}, positive towards the head), as {share} of the draws agree.',
  },
  'contributorShift.stays.rank': {
    patient: 'Where it pulls hardest does not move in the model.',
    broadcast: 'Where it pulls hardest does not move in the model.',
    study: 'The middle of the plateau moves by no more than a cut’s distance, as {share} of the draws agree.',
  },
  'contributorShift.cannotTell': {
    patient: 'Whether the hardest pull moves, the model cannot tell.',
    broadcast: 'Whether the hardest pull moves, the model cannot tell.',
    study: 'The model cannot tell whether the middle of the plateau moves: no more than {share} of the draws agree.',
  },
  'loadSensitivity.two': {
    patient: 'What matters most for this answer: {most}. Then: {second}.',
    broadcast: 'What matters most for this answer is {most}, then {second}.',
    study:
      'The ratio depends most on {most} ({mostShare} of its spread by squared rank correlation), then on {second} ({secondShare}); by chance the largest of {figures} figures reaches {chance} in {draws} draws.',
  },
  'loadSensitivity.one': {
    patient: 'What matters most for this answer: {most}. No other figure stands out.',
    broadcast: 'What matters most for this answer is {most}; no other figure stands out.',
    study:
      'The ratio depends most on {most} ({mostShare} of its spread by squared rank correlation); no other of {figures} figures is above what the largest reaches by chance in {draws} draws ({chance}), in either half of them.',
  },
  'loadSensitivity.none': {
    patient: 'No one figure of the model stands out for this answer.',
    broadcast: 'No one figure of the model stands out for this answer.',
    study:
      'No one figure stands out: none of {figures} is above the squared rank correlation that the largest of them reaches by chance in {draws} draws ({chance}), with one sign in either half of them.',
  },
} as const;
