/** `npm run words`: every string a person can see, one a line, `where<TAB>text`, so that all of them can be read in one go. */
import { CASE_PROBLEM_WORDS } from '../cases';
import { FIXTURE_PROBLEM_WORDS } from '../cases/fixtures/problems';
import { CHECK_PROBLEM_WORDS } from '../checks/problems';
import { SESSION_PROBLEM_WORDS } from '../session/session-problems';
import { studyTemplates } from '../study';
import { tellingTemplates } from '../telling';
import { wordingTemplates } from '../wording';
import { readContent } from './read-content';
import { type ListedWord, wordsOfContent, wordsText } from './words-of';

const PROBLEMS = { CASE_PROBLEM_WORDS, CHECK_PROBLEM_WORDS, FIXTURE_PROBLEM_WORDS, SESSION_PROBLEM_WORDS };
/** What can be wrong, and what to do. */
const problemWords = (): readonly ListedWord[] =>
  Object.entries(PROBLEMS).flatMap(([list, codes]) =>
    Object.entries<Readonly<Record<string, string>>>(codes).flatMap(([code, words]) =>
      Object.entries(words).map(([key, text]) => ({ where: `problems/${list}/${code}/${key}`, text })),
    ),
  );

export const allWords = (): readonly ListedWord[] => [
  ...wordsOfContent(readContent()),
  ...wordingTemplates(),
  ...tellingTemplates(),
  ...studyTemplates(),
  ...problemWords(),
];

if (import.meta.filename === process.argv[1]) {
  // A reader that has seen enough (`| head`) closes the pipe: that is no error.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));
  process.stdout.write(wordsText(allWords()));
}
