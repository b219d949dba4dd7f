/** `npm run tokens`: writes the page of reasons beside tokens.css. */
import { writeFileSync } from 'node:fs';
import { PAGE, tokenPage } from './token-page';
import { root } from './tracked';

writeFileSync(`${root}${PAGE}`, tokenPage());
