/** Which two feet stand side by side. Only shapes and sides are told apart here; drawing and measuring are done elsewhere. Pure. */
import { DEFAULT_FOOT } from '../../anatomy/parameters';
import type { FootParameters } from '../../anatomy/types';
import type { Explanation } from '../../explain/types';
import type { Side } from '../../ids';

/** The case and what was tried; the case and its other side; two kinds of arch. */
export const PAIR_KINDS = ['tried', 'other', 'high', 'low'] as const;
export type PairKind = (typeof PAIR_KINDS)[number];

export type HalfKind = 'case' | 'whatIf' | 'otherSide' | 'usualArch' | 'highArch' | 'lowArch';

export interface Half {
  readonly is: HalfKind;
  readonly parameters: FootParameters;
  /** Null: nothing certain was stated, and nothing certain is written. */
  readonly side: Side | null;
  /** How the side is known. A side of nobody's foot is simply that. */
  readonly known: 'stated' | 'reported' | 'notStated' | 'contradiction';
  /** Drawn as a left foot. */
  readonly mirrored: boolean;
}
export type PairOf = readonly [Half, Half];

export interface Compared {
  readonly known: FootParameters;
  readonly tried: FootParameters;
  /** Null while nothing is explained. */
  readonly side: Explanation['side'] | null;
}

const OTHER: Readonly<Record<Side, Side>> = { left: 'right', right: 'left' };

export const isTried = ({ known, tried }: Pick<Compared, 'known' | 'tried'>): boolean =>
  (Object.keys(known) as (keyof FootParameters)[]).some((key) => known[key] !== tried[key]);

/** What can be asked for: no what-if, no before and after. */
export const kindsFor = (compared: Compared): readonly PairKind[] =>
  PAIR_KINDS.filter((kind) => kind !== 'tried' || isTried(compared));

export const pairOf = (kind: PairKind, { known, tried, side: stated }: Compared): PairOf => {
  const side = stated?.state === 'stated' ? stated.side : null;
  const howKnown =
    stated?.state === 'stated' && stated.status !== 'confirmed' ? 'reported' : (stated?.state ?? 'notStated');
  const ofCase: Half = { is: 'case', parameters: known, side, known: howKnown, mirrored: side === 'left' };
  if (kind === 'tried') return [ofCase, { ...ofCase, is: 'whatIf', parameters: tried }];
  if (kind === 'other')
    return [
      ofCase,
      { ...ofCase, is: 'otherSide', side: side === null ? null : OTHER[side], mirrored: !ofCase.mirrored },
    ];
  // Feet of nobody, drawn of the side that is spoken of so that both hands see the same.
  const nobody: Pick<Half, 'side' | 'known' | 'mirrored'> = {
    side: side ?? 'right',
    known: 'stated',
    mirrored: ofCase.mirrored,
  };
  const usual: Half = { ...nobody, is: 'usualArch', parameters: DEFAULT_FOOT };
  return [
    usual,
    kind === 'high'
      ? { ...nobody, is: 'highArch', parameters: { ...DEFAULT_FOOT, arch: 1 } }
      : { ...nobody, is: 'lowArch', parameters: { ...DEFAULT_FOOT, arch: -1 } },
  ];
};
