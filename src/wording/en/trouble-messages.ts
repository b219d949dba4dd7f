/** Sentences about what was counted of a trouble in one group, and about sources that disagree. No sentence speaks of one person. */
import type { Tellings } from '../../content/schema';

export const TROUBLE_SENTENCES = {
  'troubleCount.hundred': {
    patient: 'Of 100 such people, {hundred} {plain}.{interval}{span}{number}{people}',
    broadcast: 'Of 100 such people, {hundred} {plain}.{interval}{span}{number}{people}',
    study: '{study}{type}: {figure}{interval}{span}; {group} ({source}).',
  },
  'troubleCount.few': {
    patient: 'Of {of} people in one study, {count} {plain}.{interval}{span}{few}{people}',
    broadcast: 'Of {of} people in one study, {count} {plain}.{interval}{span}{few}{people}',
    study: '{study}{type}: {figure}{interval}{span}; {group} ({source}).',
  },
  'troubleCount.hundredBreaks': {
    patient: 'Of 100 such breaks, {hundred} {plain}.{interval}{span}{number}{people}',
    broadcast: 'Of 100 such breaks, {hundred} {plain}.{interval}{span}{number}{people}',
    study: '{study}{type}: {figure}{interval}{span}; {group} ({source}).',
  },
  'troubleCount.fewBreaks': {
    patient: 'Of {of} breaks in one study, {count} {plain}.{interval}{span}{few}{people}',
    broadcast: 'Of {of} breaks in one study, {count} {plain}.{interval}{span}{few}{people}',
    study: '{study}{type}: {figure}{interval}{span}; {group} ({source}).',
  },
  troublesNotCounted: {
    patient: 'We found no count of these for this spot: {troubles}.',
    broadcast: 'We found no study of this spot that counted: {troubles}.',
    study: 'Not counted for this class in what was read: {troubles}.',
  },
  sourcesDisagree: {
    patient: 'Sources disagree: {topic}. {weDo}',
    broadcast: 'Sources disagree: {topic}. {weDo}',
    study: 'Sources disagree: {topic}. {sides} Here: {weDo}',
  },
} as const satisfies Record<string, Tellings>;

export const TROUBLE_PARTS = {
  none: 'none',
  about: 'about {number}',
  'interval.said': ' The true number may be anything from {low} to {high} of 100.',
  'interval.study': ' (95 % interval {low} to {high} %, {by})',
  'by.print': 'as printed',
  'by.Wilson': 'Wilson',
  'span.said': ' That was counted over {span}.',
  'span.study': ', over {span}',
  'number.counted': ' Counted: {count} of {of}.',
  'number.of': ' There were {of} of them.',
  'number.countedBreaks': ' Counted: {count} of {of} breaks.',
  'number.ofBreaks': ' There were {of} breaks.',
  'number.unknown': ' How many they were is not told in what we read.',
  few: ' That is too few people to be sure.',
  fewBreaks: ' That is too few breaks to be sure.',
  people: ' Who they were: {group}.{type}',
  treated: ' Treatment: {type}.',
  kind: ' Kind: {type}.',
  typed: ', {type}',
  'figure.count': '{count} of {of}, {percent} %',
  'figure.countBreaks': '{count} of {of} breaks, {percent} %',
  'figure.percentOfBreaks': '{percent} % of {of} breaks',
  'figure.percent': '{percent} %',
  'figure.percentOf': '{percent} % of {of}',
  side: '{says} ({source}{figures}).',
  figures: '; {figures}',
} as const;
