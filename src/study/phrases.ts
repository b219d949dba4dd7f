/**
 * The words of the quiz and of teach-back, as data, so that `npm run words` lists them. {braces} are filled from content.
 * Teach-back checks the explaining, not the person: no phrase here says that somebody failed.
 */
export const QUIZ_PHRASES = {
  'nameLit.prompt': 'Which bone is lit?',
  'pointTo.prompt': 'Point to this bone: {bone}.',
  'order.prompt': 'Put these bones in order, heel to toe.',
  'meets.prompt': 'Which bones does it meet at a joint? The {bone} is lit. Choose all of them.',
  'zone.prompt': 'A break is drawn on the {bone}. Which part is it in?',
  'why.thisIs': 'This is the {bone} ({latin}).',
  'why.meets': 'It meets: {bones}.',
  'why.order': 'Heel to toe: {bones}. Each of these lies further forward than the one before it.',
  'why.zone': 'It lies in: {zone}.',
  'why.border': 'How its border is found: {border}',
  'feedback.full': 'Right.',
  'feedback.part': 'Partly right: {hits} of {of}.',
  'feedback.partExtra': 'Partly right: {hits} of {of}, and {extra} that does not belong.',
  'feedback.partOrder': 'Partly right: {hits} of {of} pairs are in order.',
  'feedback.none': 'Not this time. The answer: {answer}.',
  'list.and': ' and ',
} as const;

export const TEACH_BACK_PHRASES = {
  'where.prompt': 'In your own words: where on your foot is it? Which of these is closest?',
  'where.place': '{part} ({bone})',
  'where.right': 'Yes, that is the place: {place}.',
  'where.again': 'Let us look at the picture once more. It is here: {place}.',
  'help.prompt': 'Which of these should make you ask for help at once?',
  'help.right': 'Yes. Ask for help at once, day or night.',
  'help.again': 'That one can wait. If you are not sure, ask. This is one that cannot wait: {sign}',
  'help.other1': 'Get help now if the other shoe feels old.',
  'help.other2': 'Get help now if you forgot the day of your next visit.',
  'next.prompt': 'What has to be true before you move to the next stage?',
  'next.right': 'Yes. The person treating you checks this with you.',
  'next.again': 'We can say that more clearly. What opens the next stage is this: {criterion}',
  'next.other1': 'A friend was faster.',
  'next.other2': 'The number of weeks alone.',
  'weeks.prompt': 'What do the weeks on your sheet mean?',
  'weeks.answer': 'How long it took other people. Mine can be shorter or longer.',
  'weeks.other1': 'The exact day I will be back.',
  'weeks.other2': 'The longest it can take.',
  'weeks.right': 'Yes. They come from groups of other people.',
  'weeks.again':
    'We can say that more clearly. The weeks come from groups of other people. Yours can be shorter or longer.',
  'side.prompt': 'Which foot are we talking about?',
  'side.rightFoot': 'The right foot.',
  'side.leftFoot': 'The left foot.',
  'side.unknown': 'That has not been said yet.',
  'side.right': 'Yes.',
  'side.again': 'Let us check that together. Here it says: {side}',
  'known.prompt': 'How sure is what we say about the injury?',
  'known.confirmed': 'An examination or a scan has confirmed it.',
  'known.reported': 'Somebody has said so. It has not been checked yet.',
  'known.inferred': 'It is our own best guess from general knowledge.',
  'known.unknown': 'It is not known yet.',
  'known.right': 'Yes, that is how sure it is.',
  'known.again': 'We can say that more clearly. How sure it is: {known}',
} as const;

export interface ListedText {
  readonly where: string;
  readonly text: string;
}

export const studyTemplates = (): readonly ListedText[] => [
  ...Object.entries(QUIZ_PHRASES).map(([key, text]) => ({ where: `study/quiz/${key}`, text })),
  ...Object.entries(TEACH_BACK_PHRASES).map(([key, text]) => ({ where: `study/teach-back/${key}`, text })),
];
