/**
 * A browser for the tests, in the order of the toolchain notes: CHROME_PATH, Playwright's own download, the system's Chromium,
 * Chrome or Edge, on Linux x64 the one packed in @sparticuz/chromium; as root on Debian one is installed.
 */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { delimiter, join } from 'node:path';

export const HEADLESS_FLAGS = [
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--force-color-profile=srgb',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

const runnable = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const onPath = (names) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)))
    .find(runnable);

const INSTALLED_ELSEWHERE = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) =>
    process.env[name]
      ? [
          join(process.env[name], 'Google/Chrome/Application/chrome.exe'),
          join(process.env[name], 'Microsoft/Edge/Application/msedge.exe'),
        ]
      : [],
  ),
];

const systemBrowser = () =>
  onPath(['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']) ??
  INSTALLED_ELSEWHERE.find(runnable);

const playwrightBrowser = async () => {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
};

const packedBrowser = async () => {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  try {
    process.env.TMPDIR = join(tmpdir(), `underfoot-browser-${userInfo().username}`);
    process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs20.x';
    const { mkdirSync } = await import('node:fs');
    mkdirSync(process.env.TMPDIR, { recursive: true });
    const packed = await import('@sparticuz/chromium');
    const path = await packed.default.executablePath();
    process.env.LD_LIBRARY_PATH = [join(process.env.TMPDIR, 'al2023/lib'), process.env.LD_LIBRARY_PATH]
      .filter(Boolean)
      .join(':');
    const works = spawnSync(path, ['--version'], { stdio: 'ignore' });
    return works.status === 0 ? path : undefined;
  } catch {
    return undefined;
  }
};

const installOnDebian = () => {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined;
  console.log("No browser found: installing Debian's chromium ...");
  const apt = (args) =>
    spawnSync('apt-get', args, { stdio: ['ignore', 2, 2], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
  apt(['update', '-qq']);
  apt(['install', '-y', '-qq', '--no-install-recommends', 'chromium']);
  return systemBrowser();
};

/** @returns {Promise<{ path: string, from: string } | null>} */
export const findBrowser = async () => {
  const named = process.env.CHROME_PATH;
  if (named) {
    if (runnable(named)) return { path: named, from: 'CHROME_PATH' };
    console.error(`CHROME_PATH names ${named}, which cannot be run; looking further.`);
  }
  const own = await playwrightBrowser();
  if (own) return { path: own, from: "Playwright's download" };
  const system = systemBrowser();
  if (system) return { path: system, from: 'this system' };
  const installed = installOnDebian();
  if (installed) return { path: installed, from: 'Debian, installed just now' };
  const packed = await packedBrowser();
  if (packed) return { path: packed, from: '@sparticuz/chromium' };
  return null;
};

export const THREE_WAYS = `No browser was found. Three ways to get one:
  1. install Chromium, Chrome or Edge (on Debian or Ubuntu: apt-get install chromium),
  2. npx playwright install chromium,
  3. set CHROME_PATH to the program of a Chromium-based browser.`;
