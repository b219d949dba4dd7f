/** The named views and the view each question opens with. Angles are of a right foot; a left foot mirrors the azimuth. */
import type { BoneId, QuestionId } from '../../ids';
import type { ViewId } from '../../session/types';
import { radians } from '../../units';
import type { Explanation } from '../types';

interface Angles {
  readonly azimuthRad: number;
  readonly elevationRad: number;
}

const view = (azimuthDeg: number, elevationDeg: number): Angles => ({
  azimuthRad: radians(azimuthDeg),
  elevationRad: radians(elevationDeg),
});

/** A little from the front and from above, so that the five rays fan out; top and sole lie along the plate's long side. */
export const VIEW_ANGLES: Readonly<Record<ViewId, Angles>> = {
  outer: view(-66, 24),
  inner: view(68, 18),
  top: view(-90, 90),
  sole: view(-90, -90),
  front: view(-8, 22),
  back: view(-172, 14),
  close: view(-66, 28),
};

/** Number keys 1 to 7 ask for the views in this order. */
export const anglesOf = (id: ViewId, mirrored: boolean): Angles => {
  const { azimuthRad, elevationRad } = VIEW_ANGLES[id];
  return { azimuthRad: mirrored ? -azimuthRad : azimuthRad, elevationRad };
};

/** Bones of the outer edge and the heel: the others are hidden behind them from there, and are looked at from above. */
const FROM_OUTSIDE: readonly BoneId[] = ['calcaneus', 'talus', 'cuboid', 'metatarsal5', 'phalanxProximal5'];

/** What a question opens with: a view of the whole foot, or one from near the bone in question. */
export interface Opening {
  readonly view: ViewId;
  readonly near: boolean;
}

const OUTSIDE: Opening = { view: 'outer', near: false };

/** On a narrow plate the parts would be noise from afar: it opens near. The way of a load is seen on the whole foot only. */
export const openingOf = (
  question: QuestionId,
  explanation: Pick<Explanation, 'bone' | 'loads'> | null,
  narrow: boolean,
): Opening => {
  if (explanation === null || explanation.bone === null) return OUTSIDE;
  if (question === 'how' && explanation.loads !== null) return OUTSIDE;
  if (question === 'back') return OUTSIDE;
  const outside = FROM_OUTSIDE.includes(explanation.bone);
  if (question === 'where' && !narrow) return outside ? OUTSIDE : { view: 'top', near: false };
  return { view: outside ? 'close' : 'top', near: true };
};
