/** The real bones, joints and regions of content/, and zones of a stand-in length: the quiz needs no mesh. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { parse } from 'yaml';
import type { Zone } from '../../../src/anatomy/types';
import { bone, joint, region } from '../../../src/content/schema';
import { idOf, type RegionId } from '../../../src/ids';

const records = (name: string): unknown =>
  parse(readFileSync(join(import.meta.dirname, '../../../content', name), 'utf8')).records;

export const material = {
  bones: v.parse(v.array(bone), records('bones.yaml')),
  joints: v.parse(v.array(joint), records('joints.yaml')),
  regions: v.parse(v.array(region), records('regions.yaml')),
};

const BORDERS: readonly [string, number, number][] = [
  ['mt5-zone-1', 0, 14],
  ['mt5-zone-2', 14, 24],
  ['mt5-zone-3', 24, 39],
  ['mt5-shaft', 39, 62],
  ['mt5-head', 62, 72],
];
export const zones: readonly Zone[] = BORDERS.map(([id, fromMm, toMm]) => ({
  region: idOf<RegionId>(id),
  fromMm,
  toMm,
}));
