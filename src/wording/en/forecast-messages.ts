/** Sentences of the forecast of question 5. Counts are of 100 people throughout; a week is never a date. */
import type { Tellings } from '../../content/schema';

export const FORECAST_SENTENCES = {
  forecastOdds: {
    patient:
      'think of 100 {people} with such an injury and this treatment. {half}{ninety} About {trouble} have trouble: healing goes wrong, or they do not get there. Those who do not get there are about {notBack}',
    broadcast:
      'of 100 {people} with such an injury and this treatment, {halfShort}{middle}. About {trouble} of them run into trouble: healing goes wrong, or they do not come back. Those who do not come back are about {notBack}',
    study:
      '{option}, {endpoint}: 10, 50 and 90 % there by {tenWeek}, {halfWeek} and {ninetyWeek} ({studies}; {counted} people, all {people}; medians of the studies {apart}). Without trouble {uneventful}; trouble {trouble} of 100, which is back after a healing problem {problemBand}, not back {notBackBand}',
  },
  forecastNot: {
    patient: '{why} Weeks told here are rough.',
    broadcast: '{why} So no odds exist for the time {endpoint}.',
    study: '{why} No pooled forecast ({option}, {endpoint}): {studies} side by side.',
  },
  'forecastMoved.notThere': {
    patient:
      'As far as is known, at week {week} you did not yet {reach}. Of 100 people like that, {half}{ninety} The odds of trouble go from {troubleBefore} to {troubleAfter} of 100. Trouble means that healing goes wrong, or that you never get there. Those without trouble are mostly back sooner.',
    broadcast:
      'As far as is known, at week {week} this person did not yet {reach}. Of 100 people like that, {halfShort}{middle}. The odds of trouble with healing, or of never coming back, go from {troubleBefore} to {troubleAfter} of 100.',
    study:
      'Not there at week {week} ({finding}): 10, 50 and 90 % by {tenWeek}, {halfWeek} and {ninetyWeek}. Bayes on not being there: trouble (healing problem or not back) {troubleBefore} to {troubleAfter} of 100, of these not back {notBackBefore} to {notBackAfter}.',
  },
  'forecastMoved.healing': {
    patient:
      'As far as is known, at week {week} you did not yet {reach}. Of 100 people like that, {half}{ninety} What was found speaks for healing, and raises no odds of trouble.',
    broadcast:
      'As far as is known, at week {week} this person did not yet {reach}. Of 100 people like that, {halfShort}{middle}. What was found speaks for healing.',
    study:
      'Not there at week {week} ({finding}): 10, 50 and 90 % by {tenWeek}, {halfWeek} and {ninetyWeek}. The finding speaks for healing: times conditioned, odds of the three ways left as they were (trouble {troubleAfter} of 100, of these not back {notBackAfter}), for no study of these bones says how much it lowers them.',
  },
  borrowedScore: {
    patient:
      'the film shows bone growing over the break. How far such films have come is scored for shin bones only. Borrowed here, the score changes no odds',
    broadcast:
      'the film shows bone growing over the break. The usual score for that was made for the shin bone: borrowed here, it changes no odds',
    study:
      'borrowed score, {finding}: {term} {low} to {high} of {least} to {most}, by points for each side of the bone. Made for the {bone}: by analogy only, it conditions no odds',
  },
  forecastSecond: {
    patient: 'The studies are of people treated for the first time. For a second treatment no odds are given here.',
    broadcast: 'The studies are of first treatments. For a second one there are no odds to give.',
    study: 'An earlier treatment or a refracture is on record: arms are of first treatments, no forecast.',
  },
  'forecastSecond.changed': {
    patient:
      'The studies are of people with one treatment from start to end. Yours was changed, so their weeks are not told here.',
    broadcast:
      'The studies are of one treatment from start to end. This one was changed, so there are no odds to give.',
    study: 'The treatment was changed: arms are of one treatment, no forecast, no weeks from the change on.',
  },
  forecastProblem: {
    patient:
      '{found}, and the quick way is closed. Of 100 such people about {back} still get there, most of them later',
    broadcast:
      '{found}, and the quick way is closed. Of 100 such people about {back} still get there, most of them later',
    study: 'healing problem known ({found}): uneventful branch at zero; {endpoint}: {back} of 100 still reach it',
  },
  forecastScored: {
    patient: 'what was said at week {madeAt}{madeOn} {place}: {what}',
    broadcast: 'the forecast made at week {madeAt}{madeOn} {place}: {what}',
    study:
      'forecast at week {madeAt}{madeOn}, {endpoint}: {what}, which {place}; continuous ranked probability score {crps} up to week {horizon}',
  },
  timetableAsks: {
    patient:
      'To what those weeks count was not said: to a bone that has grown together, to training or to a match? Ask that first.',
    broadcast:
      'To what those weeks count was not said: a healed bone, training, or a match? Until that is known, the number cannot be judged.',
    study: 'Endpoint not stated: union, release, training or match play? Not judged.',
  },
  timetableNoOdds: {
    patient: 'Our studies give no odds for those weeks, so they are not judged here.',
    broadcast: 'Our studies give no odds for those weeks, so the number is not judged here.',
    study: 'No pooled forecast to this endpoint: not judged.',
  },
  timetableJudged: {
    patient: 'Of 100 people {who} about {longer} took longer, or never got there.',
    broadcast: 'Of 100 people {who} about {longer} took longer, or never got there{nine}.',
    study: 'Time exceeded (or endpoint never reached) by {longer} of 100 {who}, by the pooled forecast.',
  },
  timetableByStudy: {
    patient: 'Studies lie too far apart for one answer. Of 100 people {who}, longer took: {studies}.',
    broadcast: 'No odds can be given, but study by study: of 100 people {who}, longer took {studies}{nine}.',
    study: 'No pooled forecast. By single studies, of 100 {who}, longer took: {studies}.',
  },
  timetableOverrun: {
    patient: 'That time has passed. As far as is known, at week {week} you were not there yet.',
    broadcast: 'That time is over: as far as is known, at week {week} this person was not there yet.',
    study: 'Overrun: not there at week {week}. No chance is counted from the start.',
  },
  'timetableEnded.kept': {
    patient: 'As far as is known it came in week {week}, within that time.',
    broadcast: 'As far as is known it came in week {week}, within that time.',
    study: 'Endpoint reached in week {week}: within the time named.',
  },
  'timetableEnded.late': {
    patient: 'As far as is known it came in week {week}, later than that.',
    broadcast: 'As far as is known it came in week {week}, later than that.',
    study: 'Endpoint reached in week {week}: later than the time named.',
  },
  'timetableEnded.given up': {
    patient: 'As far as is known it was given up in week {week}.',
    broadcast: 'As far as is known it was given up in week {week}.',
    study: 'Given up in week {week}.',
  },
  'reviewMove.there': {
    patient: 'If this is found: {findings}. Then this one point is reached.',
    broadcast: 'If this is found: {findings}. Then this one point is reached.',
    study: 'Review about week {week}: {findings}: endpoint reached, forecast ends.',
  },
  'reviewMove.healing': {
    patient:
      'If about week {week} you do not yet {reach}, but the signs are good: {half}. Odds of trouble: {after} of 100, as now.',
    broadcast:
      'If about week {week} this person does not yet {reach}, but the signs are good: {half}. The odds of trouble stay at {after} of 100.',
    study: 'Review about week {week}, any of these: {findings}. Then {half}; trouble stays at {after} of 100.',
  },
  'reviewMove.notThere': {
    patient:
      'If it still hurts when pressed about week {week}, or the line still shows: {half}. Odds of trouble: {after} of 100, now {now}.',
    broadcast:
      'If about week {week} it still hurts when pressed, or the line still shows: {half}. Odds of trouble: {after} of 100, now {now}.',
    study: 'Review about week {week}, any of these: {findings}. Then {half}; trouble {after} of 100, now {now}.',
  },
  'reviewMove.problem': {
    patient: 'If this is found: {findings}. Then the quick way is closed: {half}.',
    broadcast: 'If this is found: {findings}. Then the quick way is closed: {half}.',
    study: 'Review about week {week}: {findings}: uneventful branch at zero, {half}.',
  },
  'reviewPoints.there': {
    patient: 'If this is found: {findings}. Then this one point is reached.',
    broadcast: 'If this is found: {findings}. Then this one point is reached.',
    study: '{findings}: endpoint reached.',
  },
  'reviewPoints.healing': {
    patient: 'Good signs, before you {reach}: {findings}. None of them alone opens a step.',
    broadcast: 'Good signs on the way back: {findings}. How much they change, no study says here.',
    study: '{findings}: not reached, speaks for healing. No pooled forecast to move.',
  },
  'reviewPoints.notThere': {
    patient: 'Signs that it takes longer: {findings}. How much longer, no study says here.',
    broadcast: 'Signs that it takes longer: {findings}. How much longer, no study says here.',
    study: '{findings}: not reached. No pooled forecast to move.',
  },
  'reviewPoints.problem': {
    patient: 'If this is found: {findings}. Then the weeks told here no longer hold.',
    broadcast: 'If this is found: {findings}. Then the weeks told here no longer hold.',
    study: '{findings}: healing problem, the weeks of first treatments no longer hold.',
  },
  factorEffect: {
    patient: '{says}: {of}.',
    broadcast: '{says}: {of}.',
    study: '{factor}: {measure} {size}, {of}{n} ({bones}).',
  },
  factorWaits: {
    patient: '{says}: {of}.',
    broadcast: '{says}: {of}.',
    study: '{factor}: {centre} {weeks} {endpoint}{without}{p}, {of}{n}; no interval printed.',
  },
  factorsDisagree: {
    patient: '{factor}: studies disagree on this.',
    broadcast: '{factor}: studies disagree on this.',
    study: '{factor}: sources contradict one another; none enters the forecast.',
  },
  forecastReached: {
    patient: 'this was reached by week {week}',
    broadcast: 'that was reached by week {week}',
    study: 'reached by week {week} ({endpoint})',
  },
} as const satisfies Record<string, Tellings>;

/** What they are put together from. */
export const FORECAST_PARTS = {
  half: 'By week {week} about 50 of them {reach}.',
  halfNow: 'about 50 do by week {week}.',
  halfNever: 'Fewer than 50 of them ever {reach}.',
  halfNowNever: 'fewer than 50 ever do.',
  ninety: ' By week {week} it is about 90.',
  ninetyNever: ' It never gets to 90.',
  halfShort: 'about half {reach} by week {week}',
  halfShortNever: 'fewer than half ever {reach}',
  middle: ', and eighty get there between week {ten} and week {ninety}',
  middleNever: ', and it never gets to ninety',
  never: 'never',
  weekOf: 'week {week}',
  tooFew: 'Fewer than three studies show how far their people lie apart.',
  levels: 'Of one level there are too few such studies, and levels are not mixed.',
  // To a patient why, in a sentence that needs no other.
  'tooFew.patient': 'How likely you are to be back by a given week, nobody can say: too few studies tell.',
  'levels.patient':
    'How likely you are to be back by a given week, nobody can say: too few studies are of people like you.',
  'noRate.patient':
    'How likely you are to be back by a given week, nobody can say: no study counted both trouble and the way back.',
  noRate: 'No study of these counts both those who healed badly and those who came back.',
  whoAll: 'in such studies',
  whoNotThere: 'who were not there at week {week}',
  whoBack: 'who came back',
  whoBackLater: 'who came back after week {week}',
  longerAmong: 'about {longer} in a study of {people}',
  longerIn: 'about {longer} in {source} ({level})',
  shorterThanNine: ': that is shorter than for nine in ten',
  longerThanNine: ': that is longer than for nine in ten',
  'effect.more': 'Seen more often',
  'effect.less': 'Seen less often',
  'effect.unclear': 'No clear difference',
  counted: '; n {n}',
  waitsLonger: 'Took longer',
  waitsNoLonger: 'Took no longer',
  waitsAlone: 'Counted by itself',
  against: ' against {weeks}',
  byChance: ' (p {p})',
  reviewHalf: 'half {reach} by week {week}',
  reviewNever: 'fewer than half ever {reach}',
  or: ' or ',
  madeOn: ' on {date}',
  reached: 'it came in week {week}',
  'given up': 'it was given up in week {week}',
  inside: 'held',
  early: 'missed, it came earlier than for nine in ten',
  late: 'missed, it came later than for nine in ten',
  gaveUp: 'is scored as never back',
  noPlace: 'named no weeks',
} as const;

/** What of 100 people do once the point is reached. */
export const REACH_WORDS = {
  union: 'have a bone that has grown together',
  'clinical healing': 'walk without pain',
  release: 'have leave from the doctor',
  training: 'train again',
  sport: 'do sport again',
  'match play': 'play matches again',
  performance: 'perform again',
  activity: 'do what they usually do again',
  work: 'work again',
} as const;
