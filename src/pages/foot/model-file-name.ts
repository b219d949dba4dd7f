/** The name of a saved foot says what the foot is not: a stated side, the foot of the case, a standing one. */
import type { PoseName } from '../../anatomy/types';
import type { Side } from '../../ids';

interface Saved {
  readonly kind: 'glb' | 'stl';
  readonly side: Side | null;
  readonly pose: PoseName;
  readonly whatIf: boolean;
}

export const modelFileName = ({ kind, side, pose, whatIf }: Saved): string =>
  `${[
    'foot',
    side ?? 'side-not-stated',
    ...(whatIf ? ['what-if'] : []),
    ...(pose === 'standing' ? [] : [pose.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)]),
  ].join('-')}.${kind}`;
