/** Finds a browser when nobody named one, builds when there is no build, serves dist/ for the whole run. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { serve } from '../../src/cli/serve.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default async function setup(): Promise<() => Promise<void>> {
  if (!existsSync(`${root}/dist/index.html`)) {
    spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build'], { cwd: root, stdio: 'inherit' });
  }
  const server = await serve({ folder: `${root}/dist` });
  process.env.UNDERFOOT_URL = server.url;
  return server.close;
}
