import { beforeAll, test } from 'vitest';
import { buildFoot, DEFAULT_FOOT, prepareAnatomy, regionsOf } from '../../../../src/anatomy';
import { readShape } from '../../../../src/cli/read-shape';
import { spread } from '../../../tools/surface';
beforeAll(prepareAnatomy);
test('q', () => {
  const shape = readShape();
  for (const [name, p] of Object.entries({ usual: DEFAULT_FOOT, turned: { ...DEFAULT_FOOT, adductusDeg: 25, halluxDeg: 25, firstRayMm: 4, heelToSecondHeadMm: 140 } })) {
    const foot0 = buildFoot(shape, p, 'standing', 'display');
    for (const [shift, towards, size] of [
      [[6, -2, -2], [0.6, -1, -0.3], [8, 4]], [[6, -2, 0], [0.2, -1, -0.3], [8, 4]], [[4, -2, 0], [0.1, -1, -0.15], [8, 4]], [[8, -2, 0], [0.8, -1, -0.3], [8, 4]], [[5, -2, -1], [0.3, -1, -0.5], [8, 4]], [[5, -2, 0], [0.3, -1, 0], [8, 4]], [[7, -3, 0], [0.8, -0.8, 0.2], [7, 4]],
    ] as never[][]) {
      const regs = shape.regions;
      const foot = { ...foot0, reference: { ...foot0.reference, regions: { ...regs, patches: regs.patches.map((x) => x.id === 'navicular-spot-plantar' ? { ...x, from: { middle: true, shift }, towards, size } : x) } } } as never as typeof foot0;
      const regions = regionsOf(foot).filter((r) => r.bone === 'navicular');
      const r = regions.find((x) => x.id === 'navicular-spot-plantar')!;
      const facets = regions.filter((f) => f.kind === 'facet');
      let [own, shared] = [0, 0]; const by: Record<string, number> = {};
      for (const { at, area } of spread(foot.bones.get('navicular')!, 1.2)) { if (!r.contains(at)) continue; own += area; if (facets.some((f) => f.contains(at))) shared += area; for (const f of facets) if (f.contains(at)) by[f.id] = (by[f.id] ?? 0) + area; }
      console.log('ok', name, JSON.stringify([shift, towards, size]), (shared / own).toFixed(2), own.toFixed(0), JSON.stringify(by));
    }
  }
}, 200000);
