/** What an answer of question 2 hangs on: what raises the load on the bone, and which figures of the frame matter for it. */
import { CONTRIBUTORS, type Contributor, type ContributorId, ENOUGH_AGREEMENT, LEAST_SHIFT_MM } from '../mechanics';
import { agreed, statedBy } from './agreed';
import { compute, message } from './build';
import type { Context } from './context';
import { type BoneRun, bandsOf, hundredths, rankingInBands, sizeMayBeTold, tooManyBeyond } from './how-computes';
import type { ContributorShift } from './load-messages';
import { contributorsFor, rayOf, taskBoundFor } from './loads';
import { tenth } from './place';

/**
 * Where enough draws hardly move it, it stays; where they move it one way, and the told run does so too, it moves. A told run that the
 * draws contradict gives no size: the way is told where nine draws in ten go more than the least shift. Else nobody can tell.
 */
export const shiftTold = ({ shift }: Pick<Contributor, 'shift'>, sized: boolean): ContributorShift => {
  const { mm, toHead, toTip, still } = shift;
  const by = {
    value: tenth(mm.told),
    unit: 'mm',
    lowHigh: [tenth(Math.min(mm.low, mm.told)), tenth(Math.max(mm.high, mm.told))],
  } as const;
  if (still >= ENOUGH_AGREEMENT) return { moves: 'stays', by, sized, agreed: agreed(still) };
  const [head, most] = [toHead > toTip, Math.max(toHead, toTip)];
  const unsure = {
    moves: 'cannotTell',
    by,
    sized,
    agreed: { ...agreed(Math.max(most, still)), enough: false },
  } as const;
  if (most < ENOUGH_AGREEMENT) return unsure;
  // Told as so much towards the tip: a draw that goes the other way has a minus.
  const back = { ...by, value: -by.value, lowHigh: [-by.lowHigh[1], -by.lowHigh[0]] } as const;
  const way = head ? ({ moves: 'toHead', by } as const) : ({ moves: 'toTip', by: back } as const);
  if (head ? mm.told > LEAST_SHIFT_MM : mm.told < -LEAST_SHIFT_MM) return { ...way, sized, agreed: agreed(most) };
  const far = head ? mm.low > LEAST_SHIFT_MM : mm.high < -LEAST_SHIFT_MM;
  return far ? { ...way, sized: false, agreed: { ...agreed(most), contrary: true } } : unsure;
};

export const contributor = compute(
  'how.contributor',
  (context, inputs: BoneRun & { readonly contributor: ContributorId }) => {
    const ray = rayOf(inputs.bone);
    if (ray === null) throw new RangeError(`no frame for ${inputs.bone}`);
    const found = contributorsFor(context, inputs, ray).find((c) => c.id === inputs.contributor);
    if (found === undefined) throw new RangeError(`${inputs.contributor} finds no answer`);
    const ranks = rankingInBands(context, inputs);
    const raises = statedBy(found.raises);
    return message('contributor', {
      contributor: found.id,
      byTask: taskBoundFor(context, inputs, ray).includes(found.id),
      ratio: hundredths(found.ratio),
      ranking: ranks || !sizeMayBeTold(found) || raises.agreed.contrary === true,
      raises: raises.holds,
      agreed: raises.agreed,
      shift: shiftTold(found, !ranks && !found.ranks && !tooManyBeyond(found)),
    });
  },
);
export const contributorPublished = compute(
  'how.contributorPublished',
  (_, inputs: { readonly contributor: ContributorId; readonly index: number }) =>
    message('contributorPublished', inputs),
);

/** Contributors that find an answer in this run, in the order of the list. */
export const contributorIds = (context: Context, run: BoneRun): readonly ContributorId[] => {
  const ray = rayOf(run.bone);
  const found = ray === null ? [] : contributorsFor(context, run, ray);
  return CONTRIBUTORS.filter((id) => found.some((c) => c.id === id));
};

/** So many figures are named at most. */
const NAMED = 2;
const percents = (share: number) => ({ value: Math.round(100 * share) / 100, unit: 'share' }) as const;

export const loadSensitivity = compute('how.loadSensitivity', (context, inputs: BoneRun) => {
  const { sensitivity, chanceShare, draws, unsolved } = bandsOf(context, inputs);
  return message('loadSensitivity', {
    standOut: sensitivity
      .filter(({ standsOut }) => standsOut)
      .slice(0, NAMED)
      .map(({ figure, share }) => ({ figure, share: percents(share) })),
    chance: percents(chanceShare),
    figures: sensitivity.length,
    draws: draws - unsolved,
  });
});
