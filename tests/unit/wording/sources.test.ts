/** A source in one line: no full stop twice, however its parts end. */
import { expect, it } from 'vitest';
import { sourceLine } from '../../../src/wording';
import { content } from '../../tools/explained';

it.each(content.sources.map((source) => [source.id, source] as const))('%s is one line that ends once', (_, source) => {
  const line = sourceLine(source);
  expect(line).not.toContain('..');
  expect(line.endsWith('.')).toBe(true);
  if (source.DOI !== undefined) expect(line.endsWith(`doi:${source.DOI}.`)).toBe(true);
});
