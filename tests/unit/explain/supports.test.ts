import { describe, expect, it } from 'vitest';
import { rerun } from '../../../src/explain';
import { awaitsBands } from '../../../src/explain/awaits';
import type { MessageOf } from '../../../src/explain/messages';
import { REPEATED_LOAD } from '../../../src/explain/repeated-load';
import { type InjuryId, idOf, type OptionId } from '../../../src/ids';
import { caseOf, content, demoOnDefaultFoot, explained, findingNamed, findingsOf, foot } from '../../tools/explained';

const MANY_RUNS_MS = 240_000;
const messageOf = <K extends 'support' | 'screwShare' | 'screwBridge' | 'screwLength'>(
  explanation: ReturnType<typeof explained>,
  id: string,
) => findingNamed(explanation, `options.${id}`)?.message as MessageOf<K> | undefined;

describe('what supports and a screw do', () => {
  const handball = demoOnDefaultFoot('handball-zone-2');
  const banded = explained(handball, {}, { bands: 'all' });

  it('waits for the ensembles, and then says it', () => {
    const plain = explained(handball);
    expect(awaitsBands(plain)).toBe(true);
    expect(findingNamed(plain, 'options.supportPending')).toBeDefined();
    expect(awaitsBands(banded)).toBe(false);
    expect(findingsOf(banded, 'options').map((f) => f.message.id)).toEqual(
      expect.arrayContaining(['support', 'supportStandIn', 'screwShare', 'screwBridge', 'screwLength']),
    );
  });

  it(
    'runs every basis again to the stored message',
    () => {
      const stored: typeof banded = JSON.parse(JSON.stringify(banded));
      const added = findingsOf(stored, 'options').filter((f) => /^options\.(support|screw)/.test(f.id));
      expect(added.length).toBeGreaterThan(8);
      for (const { id, basis, message } of added) expect([id, rerun(basis, content, foot)]).toEqual([id, message]);
    },
    MANY_RUNS_MS,
  );

  it('trusts no figure of the frame more than the frame', () => {
    for (const id of ['support.boot', 'supportStandIn', 'screwShare', 'screwBridge'])
      expect(findingNamed(banded, `options.${id}`)?.confidence.level, id).toBe('uncertain');
  });

  it('does not let the frame speak of a sole at any ray but the first', () => {
    expect(messageOf<'support'>(banded, 'support.stiffSole')?.args.speaks).toBe(false);
    expect(messageOf<'support'>(banded, 'support.boot')?.args).toMatchObject({ speaks: true, raises: false });
  });

  it('states no size of a screw from a push-off that may have none, only what its draws agree on', () => {
    const share = messageOf<'screwShare'>(banded, 'screwShare')?.args.screws ?? [];
    const alone = messageOf<'screwBridge'>(banded, 'screwBridge')?.args.screws ?? [];
    expect(share.map((s) => s.material)).toEqual(['titanium', 'steel']);
    // The same rule as the boot beside it.
    expect(messageOf<'support'>(banded, 'support.boot')?.args.ranking).toBe(true);
    for (const s of share) expect(s).toMatchObject({ bone: null, ofYield: null });
    for (const s of alone)
      expect(s).toMatchObject({ opening: null, ofYield: null, more: true, agreed: { enough: true } });
    // Shares of stiffness and figures for each N m ask nothing of the push-off.
    expect(share[1]?.upDown.value).toBeGreaterThan(share[0]?.upDown.value ?? 1);
    expect(alone[1]?.openingPerNm.value).toBeLessThan(alone[0]?.openingPerNm.value ?? 0);
  });

  it('lets a thicker screw go no deeper, and none beyond the bone', () => {
    const { rods, bone } = messageOf<'screwLength'>(banded, 'screwLength')?.args ?? { rods: [], bone: { value: 0 } };
    expect(rods.map((r) => r.diameter.value)).toEqual([4, 4.5, 5.5]);
    rods.forEach(({ reach }, i) => {
      expect(reach.value).toBeLessThanOrEqual(Math.min(bone.value, rods[i - 1]?.reach.value ?? bone.value));
      expect(reach.lowHigh?.[0]).toBeLessThanOrEqual(reach.value);
    });
  });

  it('says nothing of a screw where none is an option, and that it has none for another bone', () => {
    const tuberosity = explained(caseOf(['injury', idOf<InjuryId>('mt5-tuberosity')]));
    expect(findingsOf(tuberosity, 'options').some((f) => f.message.id.startsWith('screw'))).toBe(false);
    const second = explained(caseOf(['bone', 'metatarsal2'], ['treatment', { option: idOf<OptionId>('screw') }]));
    expect(findingNamed(second, 'options.screwNotModelled')?.message.args).toEqual({ bone: 'metatarsal2' });
    const heel = explained(caseOf(['bone', 'calcaneus']));
    expect(findingsOf(heel, 'options').some((f) => f.message.id.startsWith('support'))).toBe(false);
  });
});

describe('repeated load', () => {
  it('is told where the bone tired of many steps, as a range over the exponents', () => {
    const tired = explained(caseOf(['mechanism', REPEATED_LOAD]));
    const message = findingNamed(tired, 'how.repeatedLoad')?.message as MessageOf<'repeatedLoad'>;
    expect(message.args.damage).toEqual({ value: 1.9, unit: 'times', lowHigh: [1.7, 2.4] });
    expect(message.args.mark).toBe('from memory');
    expect(findingNamed(explained(demoOnDefaultFoot('handball-zone-2')), 'how.repeatedLoad')).toBeUndefined();
  });
});
