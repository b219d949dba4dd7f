import { test } from 'vitest';
import { content, foot } from '../../../tools/explained';
import { contextOf } from '../../../../src/explain/context';
import { feedingFor } from '../../../../src/explain/feeding';
import { DEFAULT_FOOT } from '../../../../src/anatomy';
import type { BoneId } from '../../../../src/ids';
test('p', () => {
  const context = contextOf(content, foot);
  const show = (bone: BoneId, mm: number | null, choices: Record<string, string> = {}) => {
    const t0 = performance.now();
    const t = feedingFor(context, { foot: DEFAULT_FOOT, bone, place: mm === null ? null : { by: 'distance', mm }, choices: choices as never, cuts: [] });
    const dt = performance.now() - t0;
    console.log(`${bone} ${mm} ${JSON.stringify(choices)} ${dt.toFixed(0)}ms borders ${t.borders.map((b) => `${b.between.join('|')} ${b.sMm.toFixed(1)}±${b.halfWidthMm.toFixed(1)}`).join('; ')}\n` + t.parts.map((p) => `   ${p.region} ${p.fromMm.toFixed(1)}-${p.toMm.toFixed(1)} ${p.state} main ${p.main}(${p.mainBy}) terr ${p.territories.map((x) => `${x.vessel} ${(x.share * 100).toFixed(0)}`).join(' ')} remaining [${p.remaining}] border [${p.fromBorder}] keeps ${p.keeps.toFixed(2)}`).join('\n'));
  };
  for (const mm of [null, 6, 17, 20, 30, 35, 45, 60]) show('metatarsal5', mm);
  show('metatarsal5', 30, { 'mt5-nutrient-side': 'elsewhere' });
  for (const b of ['metatarsal1', 'metatarsal2', 'metatarsal3', 'metatarsal4', 'calcaneus', 'cuboid', 'cuneiformMedial', 'sesamoidMedial', 'sesamoidLateral'] as BoneId[]) show(b, null);
  for (const mm of [null, 20.4]) for (const c of ['diffuse', 'bare-middle']) show('navicular', mm, { 'navicular-inside': c });
  show('talus', null);
  for (const c of ['type-1', 'type-2', 'type-3', 'type-4']) show('talus', 32, { 'talar-neck-torn': c });
});
