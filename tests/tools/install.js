/** Installs the packages of the lock file when what is there is missing or different. Plain Node: nothing is installed yet. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const packagesOf = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {});

/** Packages the lock file wants and the folder lacks. Optional ones may rightly be absent on this platform. */
const missingPackages = (root) => {
  const wanted = packagesOf(`${root}/package-lock.json`);
  const present = packagesOf(`${root}/node_modules/.package-lock.json`);
  return Object.entries(wanted)
    .filter(([path, entry]) => path !== '' && !entry.optional && present[path]?.version !== entry.version)
    .map(([path]) => path);
};

export const ensureInstalled = (root) => {
  const missing = missingPackages(root);
  if (missing.length === 0) return;
  console.log(`Installing ${missing.length} packages ...`);
  const npm = spawnSync('npm', ['ci'], { cwd: root, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' });
  if (npm.status !== 0) {
    console.error(
      'The packages could not be installed. Is there a network and a package registry? Then run the command again.',
    );
    process.exit(1);
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url))
  ensureInstalled(fileURLToPath(new URL('../..', import.meta.url)));
