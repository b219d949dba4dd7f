/** The choices a subject offers, with their words: names from content, closed lists from the words of the screens. */
import { FOLLOW_UP_FINDINGS, type Subject, subjectValues } from '../../cases';
import type { Content } from '../../content/schema';
import { AGE_BANDS, type Reader } from '../../ids';
import { type Say, wordKey } from '../words';

export interface Choice {
  readonly value: string;
  readonly text: string;
}

export const choicesFor = (content: Content, subject: Subject, reader: Reader, say: Say): readonly Choice[] => {
  const named = (list: readonly { readonly id: string; readonly term: string; readonly plain?: string }[]) =>
    list.map((item) => ({ value: item.id, text: (reader === 'patient' ? item.plain : undefined) ?? item.term }));
  const closed = (list: readonly string[], prefix: string) =>
    list.map((value) => ({ value, text: say(`${prefix}.${wordKey(value)}`) }));
  switch (subject) {
    case 'bone':
      return named([...content.bones].sort((a, b) => a.order - b.order));
    case 'place':
      return named(content.regions.filter((region) => region.kind === 'zone'));
    case 'injury':
      return named(content.injuries);
    case 'mechanism':
      return named(content.mechanisms);
    case 'treatment':
      return named(content.options);
    case 'activity':
      return named(content.activities);
    case 'riskFactor':
      return named(content.factors);
    case 'side':
      return subjectValues.side.options.map((value) => ({
        value,
        text: say(value === 'right' ? 'side.chooseRight' : 'side.chooseLeft'),
      }));
    case 'direction':
    case 'onset':
    case 'footShape':
    case 'level':
      return closed(subjectValues[subject].options, subject);
    case 'followUp':
      return closed(FOLLOW_UP_FINDINGS, 'followUp');
    case 'ageBand':
      return AGE_BANDS.map((value) => ({ value, text: say('ageBand.years', { band: value }) }));
    case 'displacement':
      return closed(['yes', 'no'], 'displaced');
    default:
      return [];
  }
};
