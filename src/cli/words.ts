/** `npm run words`: every string a person can see, one a line, `where<TAB>text`, so that all of them can be read in one go. */
import { studyTemplates } from '../study';
import { tellingTemplates } from '../telling';
import { wordingTemplates } from '../wording';
import { readContent } from './read-content';
import { type ListedWord, wordsOfContent, wordsText } from './words-of';

export const allWords = (): readonly ListedWord[] => [
  ...wordsOfContent(readContent()),
  ...wordingTemplates(),
  ...tellingTemplates(),
  ...studyTemplates(),
];

if (import.meta.filename === process.argv[1]) {
  // A reader that has seen enough (`| head`) closes the pipe: that is no error.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));
  process.stdout.write(wordsText(allWords()));
}
