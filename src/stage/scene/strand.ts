/** Soft tissue that a person asked to see: one way at a time, told apart by its line and not by colour alone. */
import { strandOn } from '../../anatomy/strands';
import type { Foot } from '../../anatomy/types';
import type { StrandId } from '../../ids';
import type { Vec3 } from '../../units';
import type { Stroke } from '../draw/strokes';
import type { Content } from '../types';

type Kind = Content['strands'][number]['kind'];

export interface StrandScene {
  readonly id: StrandId;
  readonly kind: Kind;
  readonly between: boolean;
  /** From end to end, mm, foot frame. */
  readonly way: readonly Vec3[];
}

export const strandScene = (foot: Foot, strands: Content['strands'], id: StrandId | null): StrandScene | null => {
  const record = strands.find((each) => each.id === id);
  return record === undefined
    ? null
    : { id: record.id, kind: record.kind, between: record.between, way: strandOn(foot, record.id) };
};

/** Lifted so far over the bones, mm, what lies between them is in sight. */
const OVER_MM = 30;

/** A band is solid, a cord is hollow, a nerve is dashed, a vessel is red. */
export const strandStrokes = (strand: StrandScene | null): Stroke[] => {
  if (strand === null) return [];
  const line = (colour: Stroke['colour'], widthPx: number, liftMm: number, dashMm = 0): Stroke => ({
    lines: [strand.way],
    colour,
    widthPx,
    dashMm,
    liftMm: strand.between ? OVER_MM + liftMm : liftMm,
  });
  switch (strand.kind) {
    case 'ligament':
      return [line('ivory', 8, 2), line('ink', 5, 2.1)];
    case 'tendon':
      return [line('ink', 6.5, 2), line('ivory', 3.5, 2.1)];
    case 'nerve':
      return [line('ivory', 6, 2), line('ink', 2.6, 2.1, 4)];
    case 'vessel':
      return [line('ivory', 6, 2), line('blood', 3.2, 2.1)];
  }
};
