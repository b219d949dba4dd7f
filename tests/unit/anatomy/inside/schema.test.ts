import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type Inside, insideSchema } from '../../../../src/anatomy/inside';
import { inside } from '../../../tools/inside-material';

const tubeOf = (bone: string) => inside.tubes.find((t) => (t.bones as string[]).includes(bone));

describe('content/anatomy/inside.yaml', () => {
  test('every metatarsal is a tube with base, metaphysis, midshaft, neck and head', () => {
    for (const ray of [1, 2, 3, 4, 5]) {
      const names = tubeOf(`metatarsal${ray}`)?.stations.map((s) => s.name) ?? [];
      expect(names).toEqual(expect.arrayContaining(['base', 'metaphysis', 'midshaft', 'neck', 'head']));
    }
  });
});

describe('insideSchema', () => {
  const refused = (change: (copy: Inside) => unknown): string => {
    const result = v.safeParse(insideSchema, change(structuredClone(inside)));
    return result.success ? 'accepted' : result.issues.map((i) => i.message).join('; ');
  };
  const described = (cortex: object) => (copy: Inside) => ({
    ...copy,
    cortex: { ...copy.cortex, end: { ...copy.cortex.end, ...cortex } },
  });
  const [first] = inside.tubes;
  if (!first) throw new Error('no tube');
  const along = (stations: object[]) => (copy: Inside) => ({
    ...copy,
    tubes: [{ ...first, stations }, ...copy.tubes.slice(1)],
  });

  test('takes the file', () => expect(refused((copy) => copy)).toBe('accepted'));

  test('refuses a bone that is missing or listed twice', () => {
    expect(refused((copy) => ({ ...copy, shells: copy.shells.slice(1) }))).toContain('every bone is listed once');
    expect(refused((copy) => ({ ...copy, tubes: [...copy.tubes, first] }))).toContain('every bone is listed once');
  });

  test('refuses a band that falls, a cortex too thin to see, a published figure without its source', () => {
    expect(refused(described({ band: [1, 0.9, 2] }))).toContain('low, usual, high');
    expect(refused(described({ band: [0.1, 0.9, 2] }))).toContain('at least 0.3');
    expect(refused(described({ how: 'abstract' }))).toContain('names its source');
    expect(refused(described({ source: 'somebody' }))).toContain('names its source');
  });

  test('refuses a cortex that nobody described or nobody uses', () => {
    const named = first.stations.map((s) => (s.name === 'midshaft' ? { ...s, cortex: 'other' } : s));
    expect(refused(along(named))).toContain('every one described is used');
    const more = (copy: Inside) => ({ ...copy, cortex: { ...copy.cortex, more: copy.cortex.end } });
    expect(refused(more)).toContain('every one described is used');
  });

  test('refuses stations out of order, a tube without a neck, a wall from a canal that nobody measured', () => {
    expect(refused(along([...first.stations].reverse()))).toContain('follow each other');
    expect(refused(along(first.stations.filter((s) => s.name !== 'neck')))).toContain('to its neck');
    const open = first.stations.map((s) => (s.name === 'head' ? { ...s, cortex: 'fromCanal' } : s));
    expect(refused(along(open))).toContain('measured once for every bone');
    expect(refused((copy) => ({ ...copy, canals: copy.canals.slice(1) }))).toContain('measured once for every bone');
  });
});
