/** Every token of the style sheet has its reason on the page beside it. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PAGE, tokenPage, withoutReason } from '../../tools/token-page';
import { COLOURS } from '../../tools/tokens';
import { root } from '../../tools/tracked';

const css = readFileSync(`${root}src/pages/tokens.css`, 'utf8');

test('the page is what the tokens and their reasons make: npm run tokens', () => {
  const page = readFileSync(`${root}${PAGE}`, 'utf8');
  expect(page).toBe(tokenPage());
  for (const name of COLOURS) expect(page).toContain(`| \`${name}\` |`);
});

test('a token without a reason is found', () => {
  expect(withoutReason(css)).toEqual([]);
  expect(withoutReason(`${css}\n:root { --glow: #fff; }`)).toEqual(['glow']);
});
