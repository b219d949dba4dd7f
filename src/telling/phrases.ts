/**
 * The fixed lines of the tellings, as data, so that `npm run words` lists them: frames, headings and labels. Sentences about
 * findings are in `src/wording` only. {braces} are filled with words of the content or of `src/wording`.
 */
export const TELLING_PHRASES = {
  // Every telling
  'side.right': 'Right foot',
  'side.left': 'Left foot',
  'side.notStated': 'Side not stated: drawn as a right foot',
  'side.contradiction': 'Reports disagree on the side: drawn as a right foot',
  'side.disputed.right': 'Reports disagree on the side: drawn as a right foot ({status})',
  'side.disputed.left': 'Reports disagree on the side: drawn as a left foot ({status})',
  'side.withStatus': '{side} ({status})',
  'status.break': 'Place of the injury: {status}',
  'status.both': 'Place: {place}. Cause: {cause}',
  'status.none': 'Place of the injury: not known',
  demo: 'Invented example, no real person',
  whatIf: 'What if: this is not what is known of the case',
  illustration: 'Illustration, not an image of any person',
  draft: 'Draft: not yet reviewed by a clinician',
  'source.line': 'Sources: {sources}',
  'source.none': 'Sources: common practice',
  'source.more': '{sources} and {count} more',
  // Script
  'script.opening': 'In general terms: nobody here has examined this person.',
  'script.whatIf': 'This is a what-if, not the case.',
  'script.unknown': 'How this one foot will heal, nobody can know yet.',
  'script.heading': 'Script, {length} of {seconds} seconds, {rate} words a minute',
  'script.unknownHeading': 'What we do not know',
  'script.doNotSayHeading': 'What not to say',
  'doNotSay.side': 'Do not name a side: it is not known.',
  'doNotSay.diagnosis': 'Do not state the injury as a fact: it is not confirmed.',
  'doNotSay.cause': 'Do not say what caused it: how it happened is not known.',
  'doNotSay.person': 'Do not guess at the person behind the case: say only what is reported or confirmed.',
  // Handout
  'handout.title': 'Your foot: {part}',
  'handout.titleNoPart': 'Your foot',
  'handout.stages': 'The usual stages',
  'handout.opens': 'Before the next stage',
  'handout.warnings': 'Warning signs',
  'handout.call': 'Who to call',
  'handout.callName': 'Name',
  'handout.callPhone': 'Telephone',
  'handout.callHours': 'Hours',
  'handout.sources': 'Where this comes from',
  'handout.limits': 'Good to know',
  // Stages and reviews to take along, as a list or for a calendar
  'plan.title': 'The usual stages after this foot injury',
  'plan.weeks':
    'Weeks are counted from the start: week 0 is the day of the treatment or, where none is known, of the injury.',
  'plan.between': 'Week {from} to {to}',
  'plan.from': 'From week {from}',
  'plan.at': 'Week {week}',
  'plan.noWeeks': 'No usual week known',
  'plan.entry': '{when}: {what}',
  'plan.stage': 'Foot: {stage} ({when})',
  'plan.review': 'a usual time to look at the foot again',
  'plan.reviewShort': 'Foot: look again ({when})',
  'plan.opens': 'What opens the next stage:',
  'plan.item': '- {text}',
  'plan.evidence': 'Where the weeks come from: {source}.',
  'plan.practice': 'common practice',
  'plan.reviewWhy': 'Where the day comes from: common practice, the end of a usual stage.',
  'plan.own': 'the clinic’s own',
  'plan.reviewOwn': 'Where the day comes from: the end of a stage as the clinic set it.',
  'plan.caution':
    'This is for learning. It is not a treatment plan. How the foot is opens a stage, not the day. The one who treats you decides.',
} as const;

export const tellingTemplates = (): readonly { readonly where: string; readonly text: string }[] =>
  Object.entries(TELLING_PHRASES).map(([key, text]) => ({ where: `telling/${key}`, text }));
