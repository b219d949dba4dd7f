/**
 * The head of a metatarsal: an upright oval with two condyles at the sole, behind them a tubercle on each side, and before each
 * tubercle the hollow where the collateral ligament starts. Of the lesser rays the outer condyle stands lower (common practice).
 */
import { add, scale, type Vec3 } from '../../units';
import type { Mass } from './mass';

export interface HeadValues {
  readonly headWidth: number;
  readonly headHeight: number;
  readonly pitDepth: number;
}
/**
 * Where the condyles stand, as a share of the half width of the head; their width as a share of it; how far below the head, mm; by
 * which share of that the outer one stands lower and the inner one higher.
 */
export interface Condyles {
  readonly apart: number;
  readonly width: number;
  readonly drop: number;
  readonly outerLower: number;
}
export interface HeadFrame {
  readonly along: Vec3;
  readonly side: Vec3;
  readonly top: Vec3;
  readonly head: Vec3;
  readonly headLength: number;
}

/** A point of the head, by shares of its half width, half height and half length: inwards, upwards, towards the toe. */
export const inHead = (v: HeadValues, f: HeadFrame, inwards: number, upwards: number, ahead: number): Vec3 =>
  add(
    f.head,
    add(
      scale(f.side, (inwards * v.headWidth) / 2),
      add(scale(f.top, (upwards * v.headHeight) / 2), scale(f.along, (ahead * f.headLength) / 2)),
    ),
  );

const SIDES = [
  { to: 1, of: 'medial' },
  { to: -1, of: 'lateral' },
] as const;

export const headMasses = (v: HeadValues, f: HeadFrame, condyles: Condyles): Mass[] => [
  {
    is: 'ellipsoid',
    name: 'head',
    at: f.head,
    size: [v.headWidth * 0.92, v.headHeight, f.headLength],
    along: f.along,
    join: 'fine',
  },
  ...SIDES.flatMap(({ to, of }): Mass[] => {
    const drop = condyles.drop * (1 - to * condyles.outerLower);
    return [
      {
        is: 'ellipsoid',
        name: `${of}Condyle`,
        at: add(inHead(v, f, to * condyles.apart, -0.6, -0.36), scale(f.top, -drop / 2)),
        size: [v.headWidth * condyles.width, v.headHeight * 0.34 + drop, f.headLength * 0.72],
        along: f.along,
        join: 'fine',
      },
      {
        is: 'ellipsoid',
        name: `${of}Tubercle`,
        at: inHead(v, f, to * 0.74, 0.36, -0.8),
        size: [v.headWidth * 0.34, v.headHeight * 0.34, f.headLength * 0.5],
        along: f.along,
        join: 'fine',
      },
    ];
  }),
];

export const headPits = (v: HeadValues, f: HeadFrame): Mass[] =>
  SIDES.map(({ to, of }) => ({
    is: 'ellipsoid',
    name: `${of}Pit`,
    at: add(inHead(v, f, to, -0.1, -0.2), scale(f.side, to * v.pitDepth)),
    size: [v.pitDepth * 4, v.headHeight * 0.46, f.headLength * 0.46],
    along: f.along,
    join: 'fine',
  }));

/** The hollow between the condyles, in which the long tendons run under the head. */
export const underHead = (v: HeadValues, f: HeadFrame, drop: number): Mass => ({
  is: 'rod',
  name: 'underHead',
  from: add(inHead(v, f, 0, -1, -1.2), scale(f.top, -drop * 0.9)),
  to: add(inHead(v, f, 0, -1, 0.1), scale(f.top, -drop * 0.9)),
  radius: [v.headWidth * 0.19, v.headWidth * 0.19],
  join: 'fine',
});
