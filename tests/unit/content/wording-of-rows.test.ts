/** Rows say what their source said: to which point time was counted, how people were treated, and of which bone a caution speaks. */
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';

const content = readContent();
const studies = content.studies.filter(({ injuries }) => injuries.some((id) => id === 'navicular-stress'));

describe('study rows of the navicular', () => {
  test('time printed to "activity" counts to activity and to nothing else', () => {
    const toActivity = content.studies.filter(({ asPrinted }) => /return to activity/.test(asPrinted));
    expect(toActivity.map(({ id }) => id)).toEqual([
      'saxena-2000-operated',
      'saxena-2000-not-operated',
      'saxena-2017-operated',
      'saxena-2017-not-operated',
    ]);
    for (const { time } of toActivity) expect(time?.endpoint).toBe('activity');
    for (const { id, time } of content.studies)
      if (time?.endpoint === 'activity') expect(toActivity.map((s) => s.id)).toContain(id);
  });

  test('people without surgery whose treatment was not stated are not told as people in a cast', () => {
    const casts = studies.filter(({ option }) => option === 'cast-nwb');
    expect(casts.length).toBeGreaterThan(0);
    for (const { id, population, asPrinted } of casts)
      expect([id, `${population} ${asPrinted}`]).toEqual([id, expect.stringMatching(/without weight|no weight/)]);
    // They stand under a treatment that names none.
    expect(studies.filter(({ option }) => option === 'no-surgery').length).toBeGreaterThan(0);
  });
});

describe('cautions on growing bone', () => {
  const says = (id: string) => content.cautions.find((c) => c.id === id);
  test('the one for every injury names no bone', () => {
    const general = says('child-growth-plate');
    expect(general?.injuries).toEqual([]);
    expect(Object.values(general?.what ?? {}).join(' ')).not.toMatch(/metatarsal|apophysis|bump/);
  });

  test('the growth cap of the fifth metatarsal is told under its base only', () => {
    expect(says('child-growth-cap-mt5')?.injuries).toEqual(['mt5-tuberosity', 'mt5-metaphyseal']);
    for (const { injuries, what } of content.cautions)
      if (/apophysis of metatarsal 5/.test(what.study))
        expect(injuries.every((id) => id.startsWith('mt5-'))).toBe(true);
  });
});
