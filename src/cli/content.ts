/**
 * `npm run -s content`: the coverage of injuries and cards part by part, and in plain words what is missing or weakly sourced. A report
 * and no test: it ends with 0 whatever it finds; only content that cannot be read ends with 1.
 */
import { contentReport } from './content-report';
import { readContent } from './read-content';

// A reader that has seen enough (`| head`) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));
process.stdout.write(contentReport(readContent()));
