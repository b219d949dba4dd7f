import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { mirrorFoot } from '../../../src/anatomy';
import { readCase } from '../../../src/cases';
import { checkCase, checkContent, checkShape } from '../../../src/checks';
import { readContent } from '../../../src/cli/read-content';
import { modelFoot } from '../../tools/model-foot';

const FOLDER = fileURLToPath(new URL('../../../content/cases/', import.meta.url));
const content = readContent();
const foot = modelFoot();

describe('content and foot fit', () => {
  test('as they are', () => {
    expect(checkContent(content, foot)).toEqual([]);
  });

  test('a left foot has the same parts', () => {
    expect(checkContent(content, mirrorFoot(foot))).toEqual([]);
  });

  test('a region, a joint and a bone that do not fit are told', () => {
    const [region] = content.regions;
    const [joint] = content.joints;
    if (!region || !joint) throw new Error('no content');
    const faults = checkContent(
      {
        ...content,
        bones: content.bones.slice(1),
        regions: [{ ...region, bone: 'talus' }],
        joints: [{ ...joint, bones: ['talus', 'cuboid'] }, ...content.joints.slice(2)],
      },
      foot,
    );
    expect(faults.map((f) => f.where)).toEqual([
      'bones calcaneus',
      `joints ${joint.id}`,
      `joints ${content.joints[1]?.id}`,
      `regions ${region.id}`,
      // It lives on its own bone no longer.
      'injuries mt5-tuberosity',
    ]);
  });

  test('an injury in a part of a bone that it has none to do with, and a look-alike that nobody knows, are told', () => {
    const shaft = content.injuries.find(({ id }) => id === 'metatarsal-shaft-stress');
    const [apart] = shaft?.tellApart ?? [];
    if (shaft === undefined || apart === undefined) throw new Error('no content');
    const faults = checkContent(
      {
        ...content,
        injuries: [
          { ...shaft, alsoBones: ['metatarsal3'] },
          { ...shaft, tellApart: [{ ...apart, from: { is: 'lookAlike', id: 'os-nobody' } }] },
        ],
      },
      foot,
    );
    expect(faults.map(({ got }) => got)).toEqual(['mt4-shaft of metatarsal4', 'os-nobody']);
  });

  test('shape parameters that do not fit their schema are told with their place', () => {
    const shape = { ...(content.shape as object), scale: { referenceHMm: 'tall' } };
    expect(checkShape(shape).map((f) => f.where)).toContain('shape scale.referenceHMm');
    expect(checkShape(content.shape)).toEqual([]);
  });
});

describe('every demo case fits content and foot', () => {
  test.each(readdirSync(FOLDER))('%s', (name) => {
    const read = readCase(readFileSync(`${FOLDER}${name}`, 'utf8'));
    if (!read.ok) throw new Error(read.problem.what);
    expect(checkCase(read.file, content, foot)).toEqual([]);
  });
});
