/** Every sentence and word of this layer that a person can see, for `npm run words`. */
import { BACK_PARTS, CENTRE_PARTS } from './en/back-messages';
import { BASIS_LINES, PICTURE_LINES } from './en/basis';
import { CLAUSES, CONDITIONS, HEDGES, PIECES } from './en/clauses';
import { FORECAST_PARTS, REACH_WORDS } from './en/forecast-messages';
import * as values from './en/lists';
import { PARTS, SENTENCES } from './en/messages';
import { STAGE_PARTS } from './en/stage-messages';
import { SUPPORT_PARTS } from './en/support-messages';
import { TROUBLE_PARTS } from './en/trouble-messages';

export interface Template {
  readonly where: string;
  readonly text: string;
}

const flat = (where: string, words: object): readonly Template[] =>
  Object.entries(words).flatMap(([key, word]) =>
    typeof word === 'string' ? [{ where: `${where}/${key}`, text: word }] : flat(`${where}/${key}`, word),
  );

export const wordingTemplates = (): readonly Template[] =>
  Object.entries({
    SENTENCES,
    PARTS,
    BACK_PARTS,
    CENTRE_PARTS,
    FORECAST_PARTS,
    REACH_WORDS,
    STAGE_PARTS,
    SUPPORT_PARTS,
    TROUBLE_PARTS,
    CLAUSES,
    HEDGES,
    CONDITIONS,
    PIECES,
    BASIS_LINES,
    PICTURE_LINES,
    ...values,
  }).flatMap(([name, words]) => flat(`wording/${name}`, words));
