import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { insideSchema } from '../../../../src/anatomy/inside';
import { inside } from '../../../tools/inside-material';

const beam = parse(readFileSync(fileURLToPath(new URL('../../../../content/beam.yaml', import.meta.url)), 'utf8'))
  .records[0] as Record<string, { value: number; low: number; high: number }>;
const bandOf = (key: string): number[] => {
  const figure = beam[key];
  return figure ? [figure.low, figure.value, figure.high] : [];
};
const tubeOf = (bone: string) => inside.tubes.find((t) => t.bone === bone);

describe('content/anatomy/inside.yaml', () => {
  test('every metatarsal is a tube with base, metaphysis, midshaft, neck and head', () => {
    for (const ray of [1, 2, 3, 4, 5]) {
      const names = tubeOf(`metatarsal${ray}`)?.stations.map((s) => s.name) ?? [];
      expect(names).toEqual(expect.arrayContaining(['base', 'metaphysis', 'midshaft', 'neck', 'head']));
    }
  });

  test('the beam of the fifth metatarsal is fed the same canal and the same thin cortex', () => {
    const tube = tubeOf('metatarsal5');
    expect(tube?.canal?.across.band).toEqual(bandOf('canalAcrossMm'));
    expect(tube?.canal?.upDown.band).toEqual(bandOf('canalUpDownMm'));
    expect(tube?.canal?.at).toBe(beam.canalAtShare?.value);
    expect(tube?.stations.find((s) => s.name === 'tubeBegins')?.at).toEqual(bandOf('canalFromShare'));
    for (const name of ['base', 'metaphysis', 'head'])
      expect(tube?.stations.find((s) => s.name === name)?.cortex).toMatchObject({ band: bandOf('cortexMetaphysisMm') });
  });
});

describe('insideSchema', () => {
  const refused = (change: (copy: typeof inside) => unknown): string => {
    const copy = structuredClone(inside);
    const result = v.safeParse(insideSchema, change(copy));
    return result.success ? 'accepted' : result.issues.map((i) => i.message).join('; ');
  };
  const [first] = inside.tubes;
  if (!first) throw new Error('no tube');

  test('takes the file', () => expect(refused((copy) => copy)).toBe('accepted'));
  test('refuses a bone that is missing or listed twice', () => {
    expect(refused((copy) => ({ ...copy, shells: copy.shells.slice(1) }))).toContain('every bone is listed once');
    expect(refused((copy) => ({ ...copy, tubes: [...copy.tubes, first] }))).toContain('every bone is listed once');
  });
  test('refuses a band that falls, a cortex too thin to see, a published figure without its source', () => {
    const shell = (cortex: unknown) => (copy: typeof inside) => ({
      ...copy,
      shells: [{ bone: 'calcaneus', cortex }, ...copy.shells.slice(1)],
    });
    expect(refused(shell({ band: [1, 0.9, 2], how: 'assumed' }))).toContain('low, usual, high');
    expect(refused(shell({ band: [0.1, 0.9, 2], how: 'assumed' }))).toContain('at least 0.3');
    expect(refused(shell({ band: [0.4, 0.9, 2], how: 'abstract' }))).toContain('source');
    expect(refused(shell({ band: [0.4, 0.9, 2], how: 'assumed', source: 'somebody' }))).toContain('source');
  });
  test('refuses stations out of order, and a wall from a canal that nobody measured', () => {
    const tube = (change: object) => (copy: typeof inside) => ({
      ...copy,
      tubes: [{ ...first, ...change }, ...copy.tubes.slice(1)],
    });
    expect(refused(tube({ stations: [...first.stations].reverse() }))).toContain('follow each other');
    const open = first.stations.map((s) => (s.name === 'midshaft' ? { ...s, cortex: 'fromCanal' } : s));
    expect(refused(tube({ stations: open }))).toContain('no canal');
    expect(refused(tube({ stations: first.stations.filter((s) => s.name !== 'neck') }))).toContain('to its neck');
  });
});
