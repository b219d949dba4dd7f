/** `npm run model`: builds the default standing foot and writes public/models: right and left as drawn, the fine right foot, and its sections. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { prepareAnatomy } from '../anatomy';
import { modelFiles } from './model-files';
import { readContent } from './read-content';
import { readShape } from './read-shape';

await prepareAnatomy();
const started = performance.now();
const files = await modelFiles(readShape(), readContent());
const folder = fileURLToPath(new URL('../../public/models/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [name, bytes] of files) writeFileSync(`${folder}${name}`, bytes);
process.stdout.write(
  `${[...files].map(([name, bytes]) => `${name} ${bytes.length} bytes`).join(', ')}; ${Math.round(performance.now() - started)} ms\n`,
);
