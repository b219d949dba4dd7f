/**
 * The real content with one study more, invented for tests: a third study of professionals that prints how its people lie apart. Without
 * it no level has three, and nothing is pooled; with it the odds of match play after a screw can be tried as they are told. The real
 * studies of match play mix zones 2 and 3, or do not name the operation, and make no forecast: here they stand as if told of zone 2
 * and a screw.
 */
import { factsOf } from '../../src/cases';
import type { Content, Study } from '../../src/content/schema';
import { type ExplainOptions, type Explanation, explain, NO_WHAT_IF } from '../../src/explain';
import { idOf } from '../../src/ids';
import { foot, content as real } from './explained';

const THIRD: Study = {
  id: idOf('invented-third'),
  source: idOf('invented-third'),
  mark: 'seen',
  injuries: [idOf('mt5-metaphyseal')],
  option: idOf('screw'),
  trial: 'invented-third',
  design: 'series',
  population: 'invented for tests',
  plain: 'nobody, this is invented',
  level: 'professional',
  n: 20,
  nUnit: 'people',
  time: {
    endpoint: 'match play',
    centreWeeks: 11,
    centre: 'mean',
    sdWeeks: 3,
    rangeWeeks: null,
    quartilesWeeks: null,
    branch: 'all',
    since: 'first treatment',
  },
  event: null,
  events: [],
  asPrinted: 'Invented for tests.',
  read: 'abstract',
};

const ZONE_2: Study['injuries'][number] = idOf('mt5-metaphyseal');
const SHAFT: Study['injuries'][number] = idOf('mt5-proximal-shaft');
const toldApart = (row: Study): Study =>
  row.injuries.includes(ZONE_2) && row.injuries.includes(SHAFT)
    ? { ...row, injuries: [ZONE_2], option: row.option === 'operated' ? idOf('screw') : row.option }
    : row;

/** Without the third study: two that print a spread, side by side. */
export const twoOnly: Content = { ...real, studies: real.studies.map(toldApart) };

export const content: Content = {
  ...real,
  studies: [...twoOnly.studies, THIRD],
  sources: [...real.sources, { id: idOf('invented-third'), type: 'article-journal', title: '[Invented for tests]' }],
};

export const explained = (file: Parameters<typeof factsOf>[0], options?: ExplainOptions): Explanation =>
  explain(content, factsOf(file), NO_WHAT_IF, foot, options);
