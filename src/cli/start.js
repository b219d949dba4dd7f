/** `npm start`: installs what is missing, builds, serves the built app with the real headers, says where. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from '../../tests/tools/install.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const PORT = Number(process.env.PORT ?? 4173);

/** Opens the address where there is a desktop to open it on; a server or a test run just gets the address. */
const openInBrowser = (url) => {
  if (process.env.CI || !process.stdout.isTTY) return;
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return;
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', url]
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '', url]
        : ['xdg-open', url];
  spawn(command, args, { stdio: 'ignore', detached: true })
    .on('error', () => {})
    .unref();
};

ensureInstalled(root);
const built = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], {
  cwd: root,
  stdio: 'inherit',
});
if (built.status !== 0 || !existsSync(`${root}/dist/index.html`)) {
  console.error('The app could not be built; the messages above say why.');
  process.exit(1);
}
const { serve } = await import('./serve.js');
const { url } = await serve({ folder: `${root}/dist`, port: PORT });
console.log(`
Underfoot is ready. Its start page, with three doors:

    ${url}

An invented demo case, at once:

    ${url}#demo=demo-handball

Stop it with Ctrl+C.`);
openInBrowser(url);
