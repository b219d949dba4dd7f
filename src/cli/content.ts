/**
 * `npm run -s content`: the coverage of injuries and cards part by part, and in plain words what is missing, weakly sourced or written
 * against the rules. A report and no test: it ends with 0 whatever it finds; only content that cannot be read ends with 1, and says
 * where and what to do.
 */
import { checkedContent } from './content-report';
import { contentFiles } from './read-content';

// A reader that has seen enough (`| head`) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));
const { text, readable } = checkedContent(contentFiles());
if (!readable) process.exitCode = 1;
(readable ? process.stdout : process.stderr).write(text);
