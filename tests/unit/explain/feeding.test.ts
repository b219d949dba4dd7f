/** The feeding of the real bones: what breaks leave of each, worked by hand; patterns; talar neck; refinement and mirror. */
import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, meshOf, mirrorFoot, partAxis, partsOf, regionsOf, stationOf } from '../../../src/anatomy';
import type { Foot } from '../../../src/anatomy/types';
import { factsOf } from '../../../src/cases';
import type { Content } from '../../../src/content/schema';
import { explain, NO_WHAT_IF } from '../../../src/explain';
import { contextOf } from '../../../src/explain/context';
import { type FeedingRun, feedingFor, isFed } from '../../../src/explain/feeding';
import { chosenAt, type VesselChoices, withChoice } from '../../../src/explain/vessel-choices';
import { BONE_IDS, type BoneId, type InjuryId, idOf, type RegionId, type VesselEdgeId } from '../../../src/ids';
import { CELLS, FEEDING_STATES, type FeedingTable, feedingOf, groundOf } from '../../../src/perfusion';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingNamed, foot } from '../../tools/explained';

const context = contextOf(content, foot);
const run = (bone: BoneId, over: Partial<FeedingRun> = {}): FeedingRun => ({
  foot: DEFAULT_FOOT,
  bone,
  place: null,
  choices: {},
  cuts: [],
  taken: [],
  ...over,
});
const chosen = (choices: Readonly<Record<string, string>>): VesselChoices => choices as VesselChoices;
const broken = (bone: BoneId, mm: number, choices: Readonly<Record<string, string>> = {}): FeedingTable =>
  feedingFor(context, run(bone, { place: { by: 'distance', mm }, choices: chosen(choices) }));
const states = (table: FeedingTable) => table.parts.map((p) => `${p.region} ${p.state}`);
const middleOf = (bone: BoneId, region: string): number => {
  const part = partsOf(foot, bone).find((p) => p.region === region);
  if (part === undefined) throw new Error(`no ${region}`);
  return (part.fromMm + part.toMm) / 2;
};
const rank = (state: string) => FEEDING_STATES.indexOf(state as (typeof FEEDING_STATES)[number]);

describe('the three zones of the fifth metatarsal', () => {
  test('zone 1: both pieces keep arteries of the base, nothing changes', () => {
    const { parts } = broken('metatarsal5', middleOf('metatarsal5', 'mt5-zone-1'));
    expect(parts.every((p) => p.state === 'asBefore')).toBe(true);
  });

  test('zone 2: one side of the break loses its main feeder and lives on its borders; nothing else changes', () => {
    expect(states(broken('metatarsal5', middleOf('metatarsal5', 'mt5-zone-2')))).toEqual([
      'mt5-zone-1 asBefore',
      'mt5-zone-2 asBefore',
      'mt5-zone-2 borderOnly',
      'mt5-zone-3 asBefore',
      'mt5-shaft asBefore',
      'mt5-head asBefore',
    ]);
  });

  test('zone 3, proximal to the foramen: the stump of the shaft loses the nutrient artery', () => {
    const sMm = middleOf('metatarsal5', 'mt5-zone-3');
    const foramen = regionsOf(foot).find((r) => r.id === 'mt5-foramen-nutrient');
    if (foramen === undefined) throw new Error('no foramen');
    expect(sMm).toBeLessThan(stationOf(partAxis(foot, 'metatarsal5'), foramen.centre));
    expect(states(broken('metatarsal5', sMm))).toEqual([
      'mt5-zone-1 asBefore',
      'mt5-zone-2 asBefore',
      'mt5-zone-3 borderOnly',
      'mt5-zone-3 asBefore',
      'mt5-shaft asBefore',
      'mt5-head asBefore',
    ]);
  });

  test('where the source and the nearest way in disagree, the source is followed and the other is said', () => {
    const shaft = explained(caseOf(['place', { by: 'region', region: idOf<RegionId>('mt5-shaft') }]));
    const found = findingNamed(shaft, 'why.fedBy');
    expect(found?.message.args).toMatchObject({ main: ['mt5-nutrient'], mainBy: 'source', nearest: 'mt5-capital' });
    if (found === undefined) throw new Error('no finding');
    expect(plainText(wordFinding(content, shaft, found, 'study'))).toContain('nearest way in would make it');
  });
});

describe('the navicular', () => {
  const SAGITTAL = middleOf('navicular', 'navicular-middle-third');

  test('diffuse: both sides of a sagittal break in the middle third keep entries of their own', () => {
    const { parts } = broken('navicular', SAGITTAL);
    expect(parts.every((p) => p.state === 'asBefore')).toBe(true);
  });

  test('central third without vessels: nothing we know of reaches it, broken or not; both ends keep theirs', () => {
    const bare = { 'navicular-inside': 'bare-middle' };
    for (const table of [
      feedingFor(context, run('navicular', { choices: chosen(bare) })),
      broken('navicular', SAGITTAL, bare),
    ])
      for (const p of table.parts) expect(p.state).toBe(p.region === 'navicular-middle-third' ? 'none' : 'asBefore');
  });
});

describe('a break of the talar neck', () => {
  const types = ['type-1', 'type-2', 'type-3', 'type-4'].map((type) =>
    broken('talus', middleOf('talus', 'talus-neck'), { 'talar-neck-torn': type }),
  );
  const keeps = types.map(({ parts }) => parts.reduce((sum, p) => sum + p.keeps * (p.toMm - p.fromMm), 0));

  test('type I keeps more than II, II more than III, III more than IV', () => {
    for (const [i, kept] of keeps.entries()) if (i > 0) expect(kept).toBeLessThan((keeps[i - 1] ?? 0) - 1);
  });

  test('no part is fed better in a later type', () => {
    for (const [i, { parts }] of types.entries())
      for (const [j, p] of parts.entries())
        if (i > 0) expect(rank(p.state)).toBeGreaterThanOrEqual(rank(types[i - 1]?.parts[j]?.state ?? 'none'));
  });

  test('the body: as before in I, main feeder lost in II, nothing left in III and IV; the head only suffers in IV', () => {
    const of = (region: string) => types.map(({ parts }) => parts.find((p) => p.region === region)?.state);
    expect(of('talus-body')).toEqual(['asBefore', 'mainCut', 'none', 'none']);
    expect(of('talus-head')).toEqual(['asBefore', 'asBefore', 'asBefore', 'borderOnly']);
  });
});

const fedBones = BONE_IDS.filter((bone) => isFed(content, bone));
const tableOn = (on: Foot, bone: BoneId, cells = CELLS, breakMm: number | null = null): FeedingTable =>
  feedingOf({
    bone,
    ground: groundOf(meshOf(on, bone), partAxis(on, bone), cells),
    places: { zones: partsOf(on, bone), regions: regionsOf(on).filter((r) => r.bone === bone) },
    vessels: content.vessels,
    lacking: chosenAt(content, bone, {}).lacking,
    bare: [],
    cuts: new Set(),
    joined: content.boneSupplies.some(({ id, noBorder }) => id === bone && noBorder !== undefined),
    breakMm,
  });

describe('every bone with vessels', () => {
  test('borders across the bone: two in the second to fifth metatarsals, none where vessels join or meet round an entry', () => {
    const across = fedBones.map((bone) => [bone, feedingFor(context, run(bone)).borders.length] as const);
    const two = across.filter(([, count]) => count === 2).map(([bone]) => bone);
    expect(two).toEqual(['metatarsal2', 'metatarsal3', 'metatarsal4', 'metatarsal5']);
    expect(across.filter(([bone, count]) => !two.includes(bone) && count > 0)).toEqual([]);
  });

  test('metatarsals, navicular, talus, calcaneus, sesamoids, cuboid and cuneiforms have them, toes have none', () => {
    expect(fedBones).toEqual(BONE_IDS.filter((bone) => !bone.startsWith('phalanx')));
  });

  test.each(fedBones)('%s: territories cover each part once, and every part has a feeder', (bone) => {
    for (const p of feedingFor(context, run(bone)).parts) {
      expect(p.territories.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(p).toMatchObject({ state: 'asBefore', keeps: 1 });
      expect(p.main.length).toBeGreaterThan(0);
    }
  });

  // Entries keep their places and cells shrink to 0.63 of their width: territories move by less than one coarse cell.
  test.each(fedBones)(
    '%s: four times the cells move no share by more than 0.03 and no border by more than a coarse cell',
    (bone) => {
      const [coarse, finer] = [tableOn(foot, bone), tableOn(foot, bone, 4 * CELLS)];
      for (const [i, p] of coarse.parts.entries())
        for (const { vessel, share } of p.territories) {
          const other = finer.parts[i]?.territories.find((t) => t.vessel === vessel)?.share ?? 0;
          expect(Math.abs(other - share), `${p.region} ${vessel}`).toBeLessThan(0.03);
        }
      const { stepMm } = groundOf(meshOf(foot, bone), partAxis(foot, bone));
      expect(finer.borders.map((b) => b.between)).toEqual(coarse.borders.map((b) => b.between));
      for (const [i, border] of coarse.borders.entries())
        expect(Math.abs((finer.borders[i]?.sMm ?? Number.NaN) - border.sMm)).toBeLessThan(stepMm);
    },
  );

  const left = mirrorFoot(foot);
  test.each(fedBones)('%s: the left foot has the same answer', (bone) => {
    const breakMm = partAxis(foot, bone).lengthMm * 0.45;
    const [here, there] = [tableOn(foot, bone, CELLS, breakMm), tableOn(left, bone, CELLS, breakMm)];
    expect(there.parts.map((p) => [p.region, p.state, p.remaining])).toEqual(
      here.parts.map((p) => [p.region, p.state, p.remaining]),
    );
    for (const [i, p] of here.parts.entries()) expect(there.parts[i]?.keeps).toBeCloseTo(p.keeps, 2);
  });
});

describe('patterns', () => {
  test('the commonest is the default, and a pattern that is tried makes a what-if', () => {
    const file = caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')]);
    const usual = explained(file);
    const tried = explained(file, { vessels: chosen({ 'mt5-nutrient-side': 'elsewhere' }) });
    expect(findingNamed(usual, 'why.fedBy')?.whatIf).toBe(false);
    expect(findingNamed(tried, 'why.fedBy')?.whatIf).toBe(true);
    expect(tried.feeding).not.toEqual(usual.feeding);
  });

  test('every choice of every pattern leaves a foot that can be computed, and none feeds a part that has no vessel', () => {
    for (const pattern of content.vesselPatterns)
      for (const choice of pattern.choices)
        for (const bone of pattern.bones) {
          const { parts } = feedingFor(context, run(bone, { choices: chosen({ [pattern.id]: choice.id }) }));
          for (const p of parts)
            expect(p.state === 'none').toBe(
              p.main.length === 0 || (p.remaining.length === 0 && p.fromBorder.length === 0),
            );
        }
  });

  test('going back to the commonest leaves no what-if behind', () => {
    const [pattern] = content.vesselPatterns;
    const [first, second] = pattern?.choices ?? [];
    if (pattern === undefined || first === undefined || second === undefined) throw new Error('no pattern');
    const tried = withChoice(content, {}, pattern, second);
    expect(tried).toEqual({ [pattern.id]: second.id });
    expect(withChoice(content, tried, pattern, first)).toEqual({});
  });

  test('a class that tears vessels leaves less, and says which', () => {
    const cuts = ['mt5-nutrient>mt5-foramen-nutrient'] as unknown as readonly VesselEdgeId[];
    const displaced = content.injuries.map((i) =>
      i.id === 'mt5-metaphyseal'
        ? {
            ...i,
            classification: [
              ...i.classification,
              { ...i.classification[0], id: 'torn', rules: [{ by: 'displaced', displaced: true }], cuts },
            ],
          }
        : i,
    ) as Content['injuries'];
    const stated = caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')], ['displacement', { displaced: true }]);
    const torn = explain({ ...content, injuries: displaced }, factsOf(stated), NO_WHAT_IF, foot);
    expect(findingNamed(torn, 'why.breakLeaves')?.message.args).toMatchObject({ torn: ['mt5-nutrient'], taken: [] });
    expect(findingNamed(torn, 'why.breakLeaves')?.basis.claims).toHaveLength(2);
    for (const p of torn.feeding?.parts ?? []) expect(p.remaining).not.toContain('mt5-nutrient');
  });

  test('a choice that the content does not have is no choice', () => {
    const odd = feedingFor(
      context,
      run('navicular', { choices: chosen({ 'navicular-inside': 'nonsense', other: 'x' }) }),
    );
    expect(odd).toEqual(feedingFor(context, run('navicular')));
  });
});

test('a bone without vessels says so', () => {
  const toe = explained(caseOf(['bone', 'phalanxProximal3']));
  expect(toe.feeding).toBeNull();
  expect(findingNamed(toe, 'why.noVessels')?.message).toMatchObject({ id: 'feedingUnknown' });
});
