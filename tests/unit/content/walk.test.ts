/** The walk goes from heel to toe over bones that are there, in one sentence a stop that a listener can follow. */
import { describe, expect, it } from 'vitest';
import { contentFiles, readContent } from '../../../src/cli/read-content';
import { compileContent } from '../../../src/content';
import { BONE_IDS, READERS } from '../../../src/ids';
import { modelFoot } from '../../tools/model-foot';

const content = readContent();
const files = contentFiles();
const [walkFile, walkText] = [...files].find(([name]) => name.endsWith('content/walk.yaml')) ?? ['', ''];

const GROUPS = ['hindfoot', 'midfoot', 'forefoot', 'toes'];
/** Sesamoids lie under the heads of the first metatarsal. */
const rankOf = (bone: string): number => {
  const { group } = content.bones.find(({ id }) => id === bone) ?? { group: 'none' };
  return GROUPS.indexOf(group === 'sesamoids' ? 'forefoot' : group);
};

describe('the walk', () => {
  it('has eight to ten stops, each another bone of the foot', () => {
    const { bones } = modelFoot();
    expect(content.walk.length).toBeGreaterThanOrEqual(8);
    expect(content.walk.length).toBeLessThanOrEqual(10);
    expect(new Set(content.walk.map(({ bone }) => bone)).size).toBe(content.walk.length);
    for (const { bone } of content.walk) {
      expect(BONE_IDS).toContain(bone);
      expect(bones.has(bone)).toBe(true);
    }
  });

  it('goes from the heel to the toes and never back', () => {
    const ranks = content.walk.map(({ bone }) => rankOf(bone));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect([ranks[0], ranks.at(-1)]).toEqual([0, GROUPS.length - 1]);
  });

  it('says one sentence a stop to each reader', () => {
    for (const { id, what } of content.walk)
      for (const reader of READERS) expect(what[reader].match(/[.!?](\s|$)/g), `${id} ${reader}`).toHaveLength(1);
  });

  it('is marked for what it is: common practice, and not reviewed', () => {
    for (const { evidence } of content.walk) expect(evidence).toEqual({ source: null, mark: 'common practice' });
    expect(content.reviews['walk.yaml']?.state).toBe('not reviewed');
    expect(walkText).toMatch(/^#.*no clinician has reviewed it/m);
  });

  it.each([
    ['a bone that does not exist', 'bone: talus', 'bone: ankle'],
    ['a side that has no name', 'view: sole', 'view: below'],
    ['a key that is not known', 'bone: talus', 'bone: talus\n    patient: x'],
    ['a stop named twice', 'id: ankle', 'id: heel'],
  ])('is refused with its line: %s', (_name, from, to) => {
    const broken = walkText.replace(from, to);
    expect(broken).not.toBe(walkText);
    const compiled = compileContent(new Map([...files, [walkFile, broken]]));
    expect(compiled.ok).toBe(false);
    if (!compiled.ok)
      expect(compiled.problems.map(({ file, line }) => `${file} ${line > 1}`)).toEqual(['walk.yaml true']);
  });
});
