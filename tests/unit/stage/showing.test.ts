/** What is only reported, supposed or not stated never looks like something known. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boneAxis, inBone } from '../../../src/anatomy/bone-axis';
import { decodeGlb } from '../../../src/anatomy/glb';
import { DEFAULT_FOOT } from '../../../src/anatomy/parameters';
import type { Foot, Zone } from '../../../src/anatomy/types';
import { idOf, QUESTION_IDS, type RegionId, type VesselId } from '../../../src/ids';
import { stressAt } from '../../../src/mechanics';
import { bloodField, FEEDING_SHARES, stressField, zoneField } from '../../../src/stage/scene/fields';
import { breakStrokes } from '../../../src/stage/scene/scene';
import { type ShowingInput, showingOf, sideText } from '../../../src/stage/showing';
import type { BreakAt, Content, Explanation, FeedingTable, StationTable } from '../../../src/stage/types';
import { STAGE_WORDS, stageSay } from '../../../src/stage/words';
import type { Vec3 } from '../../../src/units';
import { UNMOVED } from '../../tools/tubes';
import { plainShowing } from './plain-showing';

const model = decodeGlb(
  new Uint8Array(readFileSync(new URL('../../../public/models/foot-right.glb', import.meta.url))),
);
const foot: Foot = {
  parameters: DEFAULT_FOOT,
  pose: 'standing',
  side: 'right',
  level: 'display',
  bones: model.bones,
  leg: model.leg,
  joints: new Map(),
  outline: model.outline,
  reference: UNMOVED,
};
const { lengthMm } = boneAxis(foot, 'metatarsal5');
const region = (name: string): RegionId => idOf<RegionId>(name);
const zones: Zone[] = [
  { region: region('mt5-zone-1'), fromMm: 0, toMm: 12 },
  { region: region('mt5-zone-2'), fromMm: 12, toMm: 24 },
  { region: region('mt5-zone-3'), fromMm: 24, toMm: 39 },
  { region: region('mt5-shaft'), fromMm: 39, toMm: 56 },
  { region: region('mt5-head'), fromMm: 56, toMm: lengthMm },
];
const breakAt: BreakAt = {
  bone: 'metatarsal5',
  sMm: 18,
  region: region('mt5-zone-2'),
  precision: 'distance',
  status: 'confirmed',
  whatIf: false,
  direction: 'transverse',
};
/** Every text is its key; the one that names the zone says both of its parts. */
const words = {
  ...Object.fromEntries(STAGE_WORDS.map((key) => [key, key])),
  'stage.here.zone': '{here}, zone {number}',
};
const content = {
  strands: [],
  words,
  bones: [...foot.bones.keys()].map((id) => ({ id, plain: `plain ${id}`, term: id, latin: `os ${id}` })),
} as unknown as Content;
const explanation = {
  side: { state: 'stated', side: 'right', status: 'confirmed' },
  bone: 'metatarsal5',
  breakAt,
  zones,
  stations: null,
  feeding: null,
  questions: QUESTION_IDS.map((id) => ({ id, findings: [] })),
} as unknown as Explanation;

const input = (change: Partial<ShowingInput> = {}): ShowingInput => ({
  ...plainShowing(foot, content),
  explanation,
  ...change,
});
const withBreak = (change: Partial<BreakAt>): Explanation => ({ ...explanation, breakAt: { ...breakAt, ...change } });
const hereOf = (e: Explanation) => showingOf(input({ explanation: e })).labels.find(({ id }) => id === 'here');

describe('"here"', () => {
  it.each([
    [{}, 'stage.here, zone 2', 'filled'],
    [{ precision: 'region' }, 'stage.here.region, zone 2', 'filled'],
    [{ status: 'reported' }, 'stage.here.reported, zone 2', 'open'],
    [{ status: 'reported', precision: 'region' }, 'stage.here.reported, zone 2', 'open'],
    [{ status: 'inferred' }, 'stage.here.inferred, zone 2', 'open'],
    [{ whatIf: true }, 'stage.here.whatIf, zone 2', 'open'],
    [{ whatIf: true, status: 'reported' }, 'stage.here.whatIf, zone 2', 'open'],
  ] as const)('%j says %s and is %s', (change, text, tag) => {
    expect(hereOf(withBreak(change))).toMatchObject({ text, tag });
  });

  it('is drawn solid only when confirmed, hollow when not, dashed when supposed', () => {
    const strokes = (change: Partial<BreakAt>) => {
      const { breakAt: scene } = showingOf(input({ explanation: withBreak(change) })).scene;
      if (scene === null) throw new Error('no break');
      return breakStrokes(scene).map(({ colour, dashMm }) => [colour, dashMm > 0]);
    };
    expect(strokes({})).toEqual([
      ['ivory', false],
      ['here', false],
    ]);
    expect(strokes({ status: 'reported' }).at(-1)).toEqual(['ivory', false]);
    expect(strokes({ status: 'inferred' }).at(-1)).toEqual(['ivory', false]);
    expect(strokes({ whatIf: true }).at(-1)).toEqual(['here', true]);
  });

  it('under a dragging hand looks like a what-if at once', () => {
    const { scene, labels } = showingOf(input({ dragMm: 30 }));
    expect(scene.breakAt).toMatchObject({ sMm: 30, at: { whatIf: true } });
    expect(labels.find(({ id }) => id === 'here')).toMatchObject({ text: 'stage.here.whatIf, zone 2', tag: 'open' });
  });
});

describe('the side in the picture', () => {
  const say = stageSay({ ...words, 'stage.side.asReported': '{side} as reported' });
  const side = (value: unknown): string => sideText({ ...explanation, side: value } as Explanation, say);
  it('is written as it is known', () => {
    expect(side({ state: 'stated', side: 'left', status: 'confirmed' })).toBe('stage.side.left');
    expect(side({ state: 'stated', side: 'left', status: 'reported' })).toBe('stage.side.left as reported');
    expect(side({ state: 'notStated' })).toBe('stage.side.notStated');
    expect(side({ state: 'contradiction' })).toBe('stage.side.contradiction');
    expect(sideText(null, say)).toBe('stage.side.working');
  });
  it('mirrors the drawing for a stated left foot only', () => {
    const mirrored = (value: unknown): boolean =>
      showingOf(input({ explanation: { ...explanation, side: value } as Explanation })).mirrored;
    expect(mirrored({ state: 'stated', side: 'left', status: 'reported' })).toBe(true);
    expect(mirrored({ state: 'stated', side: 'right', status: 'confirmed' })).toBe(false);
    expect(mirrored({ state: 'notStated' })).toBe(false);
    expect(mirrored({ state: 'contradiction' })).toBe(false);
  });
});

describe('a question of the quiz', () => {
  it('names no bone and gives no zone away', () => {
    const { labels, scene } = showingOf(input({ quiz: { litBone: 'cuboid', litRegion: null, picking: false } }));
    expect(labels).toEqual([]);
    expect(scene).toMatchObject({ chosen: 'cuboid', breakAt: null, layer: { kind: 'shade' }, borders: [] });
  });
});

describe('labels', () => {
  it('speak plainly to a patient and add Latin for study', () => {
    const texts = (change: Partial<ShowingInput>) => showingOf(input(change)).labels.filter(({ tag }) => tag === null);
    expect(texts({})[0]).toMatchObject({ text: 'Plain metatarsal5', second: null });
    expect(texts({ reader: 'study' })[0]).toMatchObject({ text: 'Metatarsal5', second: 'Os metatarsal5' });
    expect(texts({ reader: 'study', narrow: true })[0]?.second).toBeNull();
    expect(texts({ narrow: true }).length).toBeLessThanOrEqual(3);
    expect(texts({}).length).toBeLessThanOrEqual(4);
  });
});

describe('textures along the bone', () => {
  const at = (field: Float32Array, sMm: number): number[] => {
    const i = Math.round((sMm / lengthMm) * 255);
    return [...field.slice(4 * i, 4 * i + 4)];
  };
  it('zones are coded in order from the tip, the shaft keeps its shade', () => {
    const field = zoneField(zones, lengthMm);
    expect([6, 18, 30, 48, 62].map((s) => at(field, s)[0])).toEqual([1, 2, 3, 4, 4]);
  });
  it('feeding states have four shares that fall; the border is bare', () => {
    const states = ['asBefore', 'mainCut', 'borderOnly', 'none', 'asBefore'] as const;
    const feeding: FeedingTable = {
      bone: 'metatarsal5',
      parts: zones.map((zone, i) => ({
        ...zone,
        main: [],
        mainBy: 'territory' as const,
        feeders: [],
        territories: [],
        remaining: [],
        fromBorder: [],
        keeps: 1,
        state: states[i] ?? 'none',
      })),
      borders: [{ between: [idOf<VesselId>('a'), idOf<VesselId>('b')] as const, sMm: 24, halfWidthMm: 2 }],
    };
    const field = bloodField(feeding, lengthMm);
    const shares = [6, 16, 32, 48].map((s) => at(field, s)[0] ?? -1);
    shares.forEach((share, i) => {
      expect(share).toBeCloseTo(FEEDING_SHARES[states[i] ?? 'none'], 6);
      if (i > 0) expect(share).toBeLessThan(shares[i - 1] ?? 0);
    });
    expect(at(field, 24)[0]).toBe(0);
  });
  it('stress in the texture is what the sampler of the mechanics says at points of the surface', () => {
    const station = (sMm: number, k: number) => ({
      sMm,
      field: [k, 2 - k / 9, k / 7 - 1],
      outsideBeamTheory: sMm < 12 || sMm > 60,
      section: { centroidMm: [k / 20, -k / 30] },
    });
    const stations = Array.from({ length: 24 }, (_, i) => station(2 + i * 2.8, 10 * Math.sin(i / 4)));
    const table = { stations } as unknown as StationTable;
    const field = stressField(table, lengthMm);
    const axis = boneAxis(foot, 'metatarsal5');
    const positions = foot.bones.get('metatarsal5')?.positions ?? new Float32Array();
    let compared = 0;
    for (let v = 0; v < positions.length; v += 3) {
      const p: Vec3 = [positions[v] ?? 0, positions[v + 1] ?? 0, positions[v + 2] ?? 0];
      const expected = stressAt(table, p, axis);
      // The shader's own reading: two texels mixed.
      const { sMm, dorsalMm, lateralMm } = inBone(axis, p);
      const x = Math.min(1, Math.max(0, sMm / lengthMm)) * 255;
      const texel = (row: number, k: number): number => {
        const read = (i: number): number => field[(row * 256 + Math.min(255, i)) * 4 + k] ?? 0;
        return read(Math.floor(x)) + (read(Math.floor(x) + 1) - read(Math.floor(x))) * (x - Math.floor(x));
      };
      if (expected === null) continue;
      compared += 1;
      const drawn = texel(0, 0) + texel(0, 1) * (dorsalMm - texel(1, 0)) + texel(0, 2) * (lateralMm - texel(1, 1));
      // Texels lie 0.27 mm apart: a kink between two of them is rounded by this much at most.
      expect(Math.abs(drawn - expected)).toBeLessThan(0.4);
    }
    expect(compared).toBeGreaterThan(20);
  });
  it('stress is interpolated between stations, and beyond them there is no beam', () => {
    const station = (sMm: number, a: number, outside: boolean) => ({
      sMm,
      field: [a, 2 * a, 0],
      outsideBeamTheory: outside,
      section: { centroidMm: [a / 10, 0] },
    });
    const table = { stations: [station(10, 0, true), station(30, 20, false), station(50, 40, false)] };
    const field = stressField(table as unknown as StationTable, lengthMm);
    expect(at(field, 40)[0]).toBeCloseTo(30, 0);
    expect(at(field, 40)[1]).toBeCloseTo(60, 0);
    expect(at(field, 40)[3]).toBe(0);
    expect(at(field, 12)[3]).toBe(1);
    expect(at(field, 3)[3]).toBe(1);
    expect(at(field, 60)[3]).toBe(1);
  });
});
