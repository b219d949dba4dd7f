import { describe, expect, test } from 'vitest';
import { idOf, type RegionId, type VesselEdgeId, type VesselId } from '../../../src/ids';
import { endsIn, reachedVessels, type VesselNode } from '../../../src/perfusion';

const id = (text: string) => idOf<VesselId>(text);
const node = (name: string, from: string[], at?: string): VesselNode => ({
  id: id(name),
  from: from.map((v) => ({ vessel: id(v) })),
  ends: at === undefined ? [] : [{ bone: 'talus', at: idOf<RegionId>(at) }],
  said: [],
});
const gone = (...edges: string[]) => new Set(edges as VesselEdgeId[]);

/** Two ways from the leg to one end, and a ring between them. */
const vessels = [
  node('front', []),
  node('back', []),
  node('arch', ['front', 'sole']),
  node('sole', ['back', 'arch']),
  node('branch', ['arch'], 'spot'),
];

describe('vessels as a graph', () => {
  test('an end is fed as long as one way from the leg is open, round a ring too', () => {
    expect(endsIn('talus', vessels, gone())).toHaveLength(1);
    expect(endsIn('talus', vessels, gone('front>arch'))).toHaveLength(1);
    expect(endsIn('talus', vessels, gone('front>arch', 'back>sole'))).toEqual([]);
  });

  test('a ring that is cut off from the leg feeds nothing', () => {
    expect([...reachedVessels(vessels, gone('front>arch', 'back>sole'))]).toEqual(['front', 'back']);
  });

  test('a cut end feeds nothing, though its vessel is reached', () => {
    expect(endsIn('talus', vessels, gone('branch>spot'))).toEqual([]);
    expect(reachedVessels(vessels, gone('branch>spot'))).toContain('branch');
  });

  test('an end counts in its own bone only', () => {
    expect(endsIn('navicular', vessels, gone())).toEqual([]);
  });
});
