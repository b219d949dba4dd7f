/** The releases of Node that package.json admits are those that every package we install admits, and the README names them. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { root } from '../../tools/tracked';

interface Entry {
  readonly optional?: boolean;
  readonly engines?: { readonly node?: string };
}
const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')) as {
  readonly packages: Readonly<Record<string, Entry>>;
};
const own = (JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as Entry).engines?.node ?? '';

type Version = readonly [number, number, number];
const versionIn = (text: string): Version => {
  const [major = 0, minor = 0, patch = 0] = (/[\d.]+/.exec(text)?.[0] ?? '').split('.').map(Number);
  return [major, minor, patch];
};
const notBefore = (a: Version, b: Version): boolean =>
  a[0] !== b[0] ? a[0] > b[0] : a[1] !== b[1] ? a[1] > b[1] : a[2] >= b[2];

/** The two forms that are in use: `^x` stays within its major release, `>=x` is open. Another form fails the test. */
const admits = (range: string, version: Version): boolean =>
  range.split('||').some((part) => {
    const [, sign, floor] = /^\s*(\^|>=)\s*([\d.]+)\s*$/.exec(part) ?? [];
    if (floor === undefined) throw new Error(`a range in another form: ${range}`);
    const least = versionIn(floor);
    return notBefore(version, least) && (sign === '>=' || version[0] === least[0]);
  });

test.each(own.split('||').map((each) => each.trim()))('what %s begins with, every package admits', (range) => {
  const version = versionIn(range);
  const against = Object.entries(packages)
    .filter(([path, { optional }]) => path !== '' && optional !== true)
    .filter(([, { engines }]) => engines?.node !== undefined && engines.node !== '*' && !admits(engines.node, version))
    .map(([path, { engines }]) => `${path} ${engines?.node}`);
  expect(against).toEqual([]);
});

test('the lock file and the README say the same', () => {
  expect(packages['']?.engines?.node).toBe(own);
  const readme = readFileSync(`${root}README.md`, 'utf8');
  for (const range of own.split('||')) {
    const [major, minor] = versionIn(range);
    expect(readme).toMatch(
      new RegExp(`Node\\.js\\]\\([^)]*\\)[^\n]*\\b${minor === 0 ? major : `${major}\\.${minor}`}\\b`),
    );
  }
});
