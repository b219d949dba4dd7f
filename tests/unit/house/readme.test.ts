/** The README opens with the job, then a picture, then the two commands. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { root } from '../../tools/tracked';

const readme = readFileSync(`${root}README.md`, 'utf8');
const blocks = readme.split(/\n\s*\n/).map((block) => block.trim());
const job = blocks[1] ?? '';

describe('the first block under the title', () => {
  test('is one paragraph of 80 to 160 words', () => {
    expect(blocks[0]).toBe('# Underfoot');
    expect(job).not.toMatch(/^[#>*\-!|`]/);
    const words = job.split(/\s+/).length;
    expect(words).toBeGreaterThanOrEqual(80);
    expect(words).toBeLessThanOrEqual(160);
  });

  test.each([
    ['who explains', /clinician.*commentator.*student/s],
    ['to whom', /patient/],
    ['from first report to revision', /first report.*revise/s],
    ['what must get done', /where exactly.*how load broke it.*heals.*what can be done.*when it is back/s],
    ['what goes wrong today', /Today that is done with/],
    ['what this does', /Underfoot makes one explanation/],
  ])('says %s', (_, pattern) => {
    expect(job).toMatch(pattern);
  });
});

test('a picture that exists, then the two commands', () => {
  const picture = blocks[2]?.match(/^!\[[^\]]{20,}\]\(([^)]+)\)$/);
  expect(picture?.[1] && existsSync(`${root}${picture[1]}`)).toBe(true);
  expect(readme.indexOf('npm start')).toBeGreaterThan(readme.indexOf('!['));
  expect(readme.indexOf('npm test')).toBeGreaterThan(readme.indexOf('npm start'));
});

test('the counts of the way in are stated', () => {
  expect(readme).toMatch(/zone 2 handout takes \*\*\d+ clicks and \d+ typed characters\*\*/);
  expect(readme).toMatch(/90-second script, \*\*\d+ clicks\*\*/);
});
