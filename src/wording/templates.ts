/** Every sentence and word of this layer that a person can see, for `npm run words`. */
import { BASIS_LINES, PICTURE_LINES } from './en/basis';
import { CLAUSES, CONDITIONS, HEDGES, PIECES } from './en/clauses';
import * as values from './en/lists';
import { PARTS, SENTENCES } from './en/messages';

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
    CLAUSES,
    HEDGES,
    CONDITIONS,
    PIECES,
    BASIS_LINES,
    PICTURE_LINES,
    ...values,
  }).flatMap(([name, words]) => flat(`wording/${name}`, words));
