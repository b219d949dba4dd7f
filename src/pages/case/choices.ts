/** The choices a subject offers, with their words: names from content, closed lists from the words of the screens. */
import { FOLLOW_UP_FINDINGS, OUTCOME_RESULTS, type Subject, subjectValues } from '../../cases';
import type { Content } from '../../content/schema';
import { AGE_BANDS, ENDPOINTS, FILM_MEASURES, type Reader } from '../../ids';
import { type Say, wordKey } from '../words';

export interface Choice {
  readonly value: string;
  readonly text: string;
}

const closed = (say: Say, list: readonly string[], prefix: string): readonly Choice[] =>
  list.map((value) => ({ value, text: say(`${prefix}.${wordKey(value)}`) }));

export const resultChoices = (say: Say): readonly Choice[] => closed(say, OUTCOME_RESULTS, 'outcome');

export const choicesFor = (content: Content, subject: Subject, reader: Reader, say: Say): readonly Choice[] => {
  const named = (list: readonly { readonly id: string; readonly term: string; readonly plain?: string }[]) =>
    list.map((item) => ({ value: item.id, text: (reader === 'patient' ? item.plain : undefined) ?? item.term }));
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
      return named(content.options.filter((option) => option.named));
    case 'activity':
      return named(content.activities);
    case 'riskFactor':
      return named(content.factors.filter(({ saidBy }) => saidBy === null));
    case 'side':
      return subjectValues.side.options.map((value) => ({
        value,
        text: say(value === 'right' ? 'side.chooseRight' : 'side.chooseLeft'),
      }));
    case 'direction':
    case 'onset':
    case 'footShape':
    case 'level':
      return closed(say, subjectValues[subject].options, subject);
    case 'measure':
      return closed(say, FILM_MEASURES, 'measure');
    case 'followUp':
      return closed(say, FOLLOW_UP_FINDINGS, 'followUp');
    case 'outcome':
    case 'timetable':
      return ENDPOINTS.map((value) => {
        const key = wordKey(value);
        return { value, text: say(reader === 'patient' ? `endpoint.plain.${key}` : `endpoint.${key}`) };
      });
    case 'ageBand':
      return AGE_BANDS.map((value) => ({ value, text: say('ageBand.years', { band: value }) }));
    case 'displacement':
      return closed(say, ['yes', 'no'], 'displaced');
    default:
      return [];
  }
};
