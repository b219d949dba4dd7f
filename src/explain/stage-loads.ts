/** A share of body weight on the frame of the foot, fed from content: which shares, whose foot, the draws it has in common with supports. */
import { type ActivityId, type BoneId, idOf } from '../ids';
import { type ShareLoad, shareLoadsOf } from '../mechanics';
import type { Context } from './context';
import {
  activityIn,
  bandedCase,
  DRAWS,
  drawsFor,
  loaded,
  personOf,
  REFERENCE_ACTIVITY,
  rayOf,
  remembered,
} from './loads';
import type { OnFoot } from './place';
import { FLAT_ACTIVITY } from './support-loads';

/** What standing on a bathroom scale is: still, the whole sole down. */
export const STANDING_ACTIVITY = idOf<ActivityId>('standing');

export interface ShareRun extends OnFoot {
  readonly bone: BoneId;
  readonly massKg: number;
  /** Where the break lies on the bone; null: not known, or on another bone. */
  readonly sMm: number | null;
  /** Each of body weight and more than none, in rising order. */
  readonly shares: readonly number[];
}

/** By way and share. Empty where the frame knows no such bone, or finds no answer as told. */
export const shareLoadsFor = (context: Context, run: ShareRun): readonly ShareLoad[] => {
  const ray = rayOf(run.bone);
  if (ray === null || run.shares.length === 0) return [];
  const { content } = context;
  const plain = {
    foot: run.foot,
    massKg: run.massKg,
    activity: REFERENCE_ACTIVITY,
    carriedKg: 0,
    soleBending: 0,
    speed: null,
    tiltDeg: null,
  };
  return remembered(context, plain, `shares ${ray} ${run.sMm} ${run.shares.join(' ')}`, (foot) => {
    const on = loaded(context, foot, true);
    const asTold = { speed: null, tiltDeg: null };
    const pushOff = bandedCase(activityIn(content, REFERENCE_ACTIVITY), asTold);
    const casesOf = (activity: ActivityId) => {
      const banded = bandedCase(activityIn(content, activity), asTold);
      return { banded, draws: drawsFor(content, on, banded, pushOff, DRAWS) };
    };
    return shareLoadsOf(on, {
      standing: casesOf(STANDING_ACTIVITY),
      flat: casesOf(FLAT_ACTIVITY),
      pushOff,
      person: personOf(plain),
      ray,
      sMm: run.sMm,
      shares: run.shares,
    });
  });
};
