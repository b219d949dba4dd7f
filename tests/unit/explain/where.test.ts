/** The place of a break: stated, only the bone, in dispute, dragged. */
import { describe, expect, it } from 'vitest';
import { boneAxis } from '../../../src/anatomy/bone-axis';
import { type InjuryId, idOf, type OptionId, type RegionId } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { CONFIRMED, caseOf, content, explained, findingNamed, foot, REPORTED } from '../../tools/explained';

const zone = (n: 1 | 2 | 3) => ({ by: 'region', region: idOf<RegionId>(`mt5-zone-${n}`) }) as const;
const injury = (id: string) => idOf<InjuryId>(id);

describe('where', () => {
  it('takes the class from the place only as an inference, and only when one class fits', () => {
    const explanation = explained(caseOf(['place', zone(2)]));
    expect(explanation.injury).toBe('mt5-metaphyseal');
    expect(findingNamed(explanation, 'where.class')?.message.args).toMatchObject({ claim: { status: 'inferred' } });
    expect(explanation.given).toBe('inferred');
  });

  it('does not infer a class that has been ruled out', () => {
    const explanation = explained(
      caseOf(
        ['place', zone(2)],
        ['injury', injury('mt5-metaphyseal'), { status: 'ruledOut', source: { kind: 'imaging' } }],
      ),
    );
    expect(explanation.injury).toBeNull();
    expect(findingNamed(explanation, 'where.classOpen')).toBeDefined();
  });

  it('carries the weaker status of bone and place to the headline and the drawn break', () => {
    const explanation = explained(caseOf(['bone', 'metatarsal5'], ['place', zone(3), REPORTED]));
    expect(findingNamed(explanation, 'where.headline')?.message.args).toMatchObject({ claim: { status: 'reported' } });
    expect(explanation.breakAt?.status).toBe('reported');
  });

  it('draws a named part at its middle and says so', () => {
    const { breakAt, zones } = explained(caseOf(['place', zone(2)]));
    const home = zones.find((z) => z.region === 'mt5-zone-2');
    expect(breakAt?.precision).toBe('region');
    expect(breakAt?.sMm).toBeCloseTo(((home?.fromMm ?? 0) + (home?.toMm ?? 0)) / 2, 1);
  });

  it('puts a stated distance into the zone that holds it', () => {
    const { zones } = explained(caseOf(['place', zone(2)]));
    for (const z of zones) {
      const mm = (z.fromMm + z.toMm) / 2;
      const { breakAt } = explained(caseOf(['bone', 'metatarsal5'], ['place', { by: 'distance', mm }]));
      expect(breakAt?.region).toBe(z.region);
    }
  });

  it('draws nothing where two places are claimed', () => {
    const explanation = explained(caseOf(['bone', 'metatarsal5'], ['place', zone(2)], ['place', zone(3)]));
    expect(explanation.breakAt).toBeNull();
    expect(findingNamed(explanation, 'where.place')?.message.id).toBe('contradiction');
    expect(explanation.given).toBe('contradiction');
  });

  it('says when place and class do not fit', () => {
    const explanation = explained(
      caseOf(
        ['place', zone(3)],
        ['injury', injury('mt5-metaphyseal')],
        ['treatment', { option: idOf<OptionId>('screw') }],
      ),
    );
    expect(findingNamed(explanation, 'where.placeAgainstClass')?.message.args).toMatchObject({
      stated: 'mt5-zone-3',
      expected: 'mt5-zone-2',
    });
    // Why it heals as it does and when it is back hang on the class: neither is told as settled.
    expect(explanation.given).toBe('contradiction');
    for (const id of ['why.headline', 'back.headline']) {
      const finding = findingNamed(explanation, id);
      if (finding === undefined) throw new Error(`no ${id}`);
      expect(plainText(wordFinding(content, explanation, finding, 'patient')), id).toMatch(/^Reports disagree/);
    }
  });

  it('says that reports disagree where they do, and not that nothing was stated', () => {
    const disputed = explained(caseOf(['bone', 'metatarsal5'], ['bone', 'metatarsal2', REPORTED]));
    const headline = findingNamed(disputed, 'where.headline');
    expect(headline && plainText(wordFinding(content, disputed, headline, 'patient'))).toBe(
      'Reports disagree on where it is.',
    );
  });

  it('a mere report of another bone takes back nothing that is confirmed, and is told as a clash', () => {
    const midfoot = caseOf(
      ['bone', 'metatarsal2'],
      ['injury', injury('lisfranc')],
      ['place', zone(2), REPORTED],
      ['treatment', { option: idOf<OptionId>('cast-nwb') }],
    );
    const explanation = explained(midfoot);
    expect(explanation.injury).toBe('lisfranc');
    expect(explanation.breakAt).toBeNull();
    expect(findingNamed(explanation, 'where.overruled')?.message).toMatchObject({
      id: 'boneClash',
      args: { stated: 'metatarsal2', implied: 'metatarsal5' },
    });
    expect(findingNamed(explanation, 'back.weightToday')).toBeDefined();
    // Both only reported, or both confirmed: nobody is believed.
    for (const said of [REPORTED, CONFIRMED]) {
      const open = explained(
        caseOf(['bone', 'metatarsal2', said], ['injury', injury('lisfranc'), said], ['place', zone(2), said]),
      );
      expect(open.injury).toBeNull();
    }
  });

  it('handles two sides as a contradiction and draws a right foot by default', () => {
    const explanation = explained(caseOf(['side', 'left', REPORTED], ['side', 'right', REPORTED]));
    expect(explanation.side).toEqual({ state: 'contradiction' });
    expect(findingNamed(explanation, 'where.sideDefault')).toBeDefined();
  });
});

describe('a dragged break', () => {
  const file = caseOf(['bone', 'metatarsal5'], ['injury', injury('mt5-metaphyseal')], ['place', zone(2)]);
  const moved = explained(file, { place: zone(3) });

  it('takes zone, class and wording with it', () => {
    expect(moved.breakAt).toMatchObject({ region: 'mt5-zone-3', whatIf: true, status: 'inferred' });
    expect(moved.injury).toBe('mt5-proximal-shaft');
    expect(findingNamed(moved, 'where.headline')?.message.args).toMatchObject({ region: 'mt5-zone-3' });
  });

  it('marks what follows from it, and leaves what the case says alone', () => {
    for (const id of ['where.headline', 'where.zoneBorder', 'why.headline', 'why.breakLeaves', 'back.headline'])
      expect([id, findingNamed(moved, id)?.whatIf]).toEqual([id, true]);
    expect(findingNamed(moved, 'where.injury')).toMatchObject({
      whatIf: false,
      message: { args: { claim: { status: 'confirmed' } } },
    });
  });

  it('is gone when it is dropped', () => {
    expect(explained(file, {})).toEqual(explained(file));
  });
});

describe('from which end a part is counted', () => {
  const said = (bone: 'navicular' | 'calcaneus', region: string) => {
    const place = { by: 'region', region: idOf<RegionId>(region) } as const;
    const explanation = explained(caseOf(['bone', bone], ['place', place]));
    const finding = findingNamed(explanation, 'where.zoneBorder');
    return finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'patient'));
  };

  it('the navicular lies across the foot: its length begins at the inner end', () => {
    // +X is medial on the right foot.
    expect(foot.side).toBe('right');
    expect(boneAxis(foot, 'navicular').axis[0]).toBeLessThan(-0.7);
    expect(said('navicular', 'navicular-middle-third')).toMatch(/^From the inner end of the drawn bone /);
  });

  it('any other bone begins towards the heel', () => {
    expect(boneAxis(foot, 'calcaneus').axis[2]).toBeGreaterThan(0.7);
    expect(said('calcaneus', 'calcaneus-middle')).toMatch(/^From the back end of the drawn bone /);
  });
});
