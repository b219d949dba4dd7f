/** Figures beside the source that printed them, and marks no better than what was read; what is told of a film fits the injury. */
import { describe, expect, it, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { evidenceIn } from '../../../src/content/references';
import type { Tellings } from '../../../src/content/schema';
import { cautionsFor } from '../../../src/wording';

const content = readContent();
const { sources: _, words: __, shape: ___, reviews: ____, ...kinds } = content;

const injuryNamed = (id: string) => {
  const found = content.injuries.find((i) => i.id === id);
  if (found === undefined) throw new Error(`no injury ${id}`);
  return found;
};

const tellingsIn = (value: unknown): Tellings[] => {
  if (typeof value !== 'object' || value === null) return [];
  if ('patient' in value && 'broadcast' in value && 'study' in value) return [value as Tellings];
  return Object.values(value).flatMap(tellingsIn);
};

describe('each figure stands beside its own source', () => {
  it('how many Lisfranc injuries are missed comes from a weak page, and stands under no stronger one', () => {
    const lisfranc = injuryNamed('lisfranc');
    expect(lisfranc.heals.what.study).not.toMatch(/miss/);
    const told = content.cautions.filter((c) => c.what.study.includes('20 to 24 %'));
    expect(told.map(({ evidence }) => evidence.mark)).toEqual(['weak']);
  });

  it('films of subtle cases are counted by their own study', () => {
    const told = injuryNamed('lisfranc').notSeen.filter(({ what }) => what.study.includes('65.4'));
    expect(told.map(({ evidence }) => evidence)).toEqual([{ source: 'ponkilainen-2020', mark: 'seen' }]);
  });

  it('an abstract that tells of three arteries does not stand behind their branches', () => {
    const branches = content.vessels.filter(({ id }) => id === 'tarsal-canal' || id === 'deltoid-branch');
    expect(branches.flatMap((v) => evidenceIn(v)).map(({ evidence }) => evidence.mark)).not.toContain('seen');
    expect(branches).toHaveLength(2);
  });

  it('one editorial has one mark', () => {
    const marks = evidenceIn(kinds).flatMap(({ evidence }) => (evidence.source === 'bjr-2017' ? [evidence.mark] : []));
    expect([marks.length > 1, new Set(marks).size]).toEqual([true, 1]);
  });
});

describe('how people are counted', () => {
  test('nobody is told of one in so many: it is out of a hundred, or of a thousand where it is rarer', () => {
    const bad = tellingsIn(kinds).flatMap(({ patient, broadcast }) =>
      [patient, broadcast].filter((text) => /\b(one|1) in (about )?(\d|[a-z]+ (hundred|thousand))/i.test(text)),
    );
    expect(bad).toEqual([]);
  });

  test('what is said of it is said whole', () => {
    const rule = content.contradictions.find(({ id }) => id === 'one-in-four')?.weDo.patient;
    expect(rule).toMatch(/hundred[\s\S]*thousand[\s\S]*twenty/);
  });
});

describe('what a first film misses', () => {
  const KINDS = {
    'tired bone': ['metatarsal-shaft-stress', 'mt2-base-stress', 'mt5-proximal-shaft', 'navicular-stress'],
    'small break': ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-spiral-shaft'],
    'joint that came apart': ['lisfranc'],
    'joint in the heel': ['calcaneus-intra-articular'],
  };
  test.each(Object.entries(KINDS))('a %s is told of in the spoken script of such injuries alone', (kind, ids) => {
    const told = content.injuries.filter(({ id }) =>
      cautionsFor(content, { injury: id, option: null, age: null }, 'broadcast').some(
        ({ what }) => /X-ray/.test(what.broadcast) && what.broadcast.includes(kind),
      ),
    );
    expect(told.map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
  });
});
