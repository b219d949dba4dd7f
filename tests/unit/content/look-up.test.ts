import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import {
  activityOf,
  attachmentOf,
  boneOf,
  cautionOf,
  factorOf,
  hasId,
  injuryOf,
  jointOf,
  jointsAt,
  mechanismOf,
  optionOf,
  regionOf,
  sourceOf,
  stageOf,
  studyOf,
  vesselOf,
} from '../../../src/content';

const content = readContent();

const LOOK_UPS = [
  ['bone', content.bones, (id: string) => boneOf(content, id)],
  ['joint', content.joints, (id: string) => jointOf(content, id)],
  ['region', content.regions, (id: string) => regionOf(content, id)],
  ['attachment', content.attachments, (id: string) => attachmentOf(content, id)],
  ['vessel', content.vessels, (id: string) => vesselOf(content, id)],
  ['mechanism', content.mechanisms, (id: string) => mechanismOf(content, id)],
  ['activity', content.activities, (id: string) => activityOf(content, id)],
  ['injury', content.injuries, (id: string) => injuryOf(content, id)],
  ['option', content.options, (id: string) => optionOf(content, id)],
  ['stage', content.stages, (id: string) => stageOf(content, id)],
  ['study', content.studies, (id: string) => studyOf(content, id)],
  ['caution', content.cautions, (id: string) => cautionOf(content, id)],
  ['factor', content.factors, (id: string) => factorOf(content, id)],
  ['source', content.sources, (id: string) => sourceOf(content, id)],
] as const;

describe('each record is found by its id, and an id that is not there throws', () => {
  test.each(LOOK_UPS)('%s', (kind, records, find) => {
    expect(records.length).toBeGreaterThan(0);
    for (const record of records) expect(find(record.id)).toBe(record);
    expect(() => find('nowhere')).toThrow(`no ${kind} "nowhere"`);
    expect(hasId(records, 'nowhere')).toBe(false);
  });
});

test('the fifth metatarsal meets the cuboid, the fourth metatarsal and the little toe', () => {
  const others = jointsAt(content, 'metatarsal5').flatMap((j) => j.bones.filter((b) => b !== 'metatarsal5'));
  expect(others.toSorted()).toEqual(['cuboid', 'metatarsal4', 'phalanxProximal5']);
});
