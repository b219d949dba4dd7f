/** `npm run model`: builds the default standing right foot and writes it to public/models/foot-right.glb. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildFoot, DEFAULT_FOOT, encodeGlb, prepareAnatomy } from '../anatomy';
import { readShape } from './read-shape';

await prepareAnatomy();
const started = performance.now();
const foot = buildFoot(readShape(), DEFAULT_FOOT, 'standing');
const built = performance.now();
const bytes = await encodeGlb(foot);
const folder = fileURLToPath(new URL('../../public/models/', import.meta.url));
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}foot-right.glb`, bytes);
const triangles = [...foot.bones.values()].reduce((sum, m) => sum + m.indices.length / 3, 0);
process.stdout.write(
  `${foot.bones.size} bones, ${triangles} triangles, outline ${foot.outline.indices.length / 3}, ` +
    `${Math.round(built - started)} ms, ${bytes.length} bytes\n`,
);
