import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAPER, PRINT, rgb, tokensFrom } from '../../../src/stage/draw/tokens';

const css = readFileSync(new URL('../../../src/pages/tokens.css', import.meta.url), 'utf8');

const lookOf = (name: string): Map<string, string> => {
  const block = new RegExp(`:root\\[data-look="${name}"\\] \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
  return new Map([...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map((m) => [m[1] ?? '', m[2] ?? '']));
};

describe('the colours of pictures made off screen', () => {
  it.each([
    ['paper', PAPER],
    ['print', PRINT],
  ] as const)('are those of the look %s in the style sheet', (name, table) => {
    const sheet = lookOf(name);
    for (const [token, value] of Object.entries(table)) expect(sheet.get(token), token).toBe(value);
  });

  it('know a dark plate from a light one, and black and white from colour', () => {
    expect(tokensFrom(PAPER)).toMatchObject({ whiteLine: false, lineWidthOnly: false });
    expect(tokensFrom(PRINT)).toMatchObject({ whiteLine: false, lineWidthOnly: true });
    const slate = Object.fromEntries(Object.keys(PAPER).map((k) => [k, lookOf('slate').get(k) ?? '#000']));
    expect(tokensFrom(slate as typeof PAPER)).toMatchObject({ whiteLine: true, lineWidthOnly: false });
  });

  it('read short and long hex and nothing else', () => {
    expect(rgb('#fff')).toEqual([1, 1, 1]);
    expect(rgb('#ff0080')).toEqual([1, 0, 128 / 255]);
    expect(() => rgb('red')).toThrow('expected #rrggbb');
  });
});
