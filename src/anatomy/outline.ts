/**
 * The quiet outline of foot and ankle: rods around the bones, joined smoothly, cut flat at the sole and through the leg.
 * Drawn by hand to be read as a foot, not measured on anybody. Its rods are given for the standing neutral foot and go along
 * with the bones they lie on, so that it fits any pose.
 */
import { dot, normalize, scale, subtract } from '../units';
import { type Box, type Field, rod, smoothMax, smoothMin } from './field';
import { mapMesh } from './mesh';
import { everywhere, rounded, sampleGrid } from './meshing/grid';
import { closedWith, largestPiece } from './meshing/simplify';
import { surfaceNets } from './meshing/surface-nets';
import { DEFAULT_FOOT } from './parameters';
import type { Shape, Skin } from './shape';
import { inverse, movePoint, STILL } from './stance/motion';
import { motionsOf } from './stance/stance';
import type { FootForm, FootParameters, Mesh, PoseName } from './types';

/** Rounding of the sole's rim and of the edge of the cut leg, mm. */
const RIM = 5;

type Carry = (p: Skin['from'], bone: Skin['on'][0]) => Skin['from'];

/** Where a point of the standing neutral foot goes with a bone. */
const carriedIn = (shape: Shape, form: FootForm, pose: PoseName): Carry => {
  const home = motionsOf(shape, DEFAULT_FOOT, 'standing');
  const now = motionsOf(shape, form, pose);
  return (p, bone) => {
    const [x, y, z] = movePoint(now.get(bone) ?? STILL, movePoint(inverse(home.get(bone) ?? STILL), p));
    return [x, y, z];
  };
};

/** The rods as they lie in a pose. */
const laid = (carry: Carry, rods: readonly Skin[]): readonly Skin[] =>
  rods.map((s) => ({ ...s, from: carry(s.from, s.on[0]), to: carry(s.to, s.on[1]) }));

const bounds = (rods: readonly Skin[], k: 0 | 1 | 2, reach: number): readonly [number, number] => [
  Math.min(...rods.map((s) => Math.min(s.from[k], s.to[k]) - Math.max(...s.radius))) - reach,
  Math.max(...rods.map((s) => Math.max(s.from[k], s.to[k]) + Math.max(...s.radius))) + reach,
];

/** Two toes that just touch can meet in a single cell, in a few feet of some hundreds: a grid of another width parts or joins them. */
const GRIDS = [1, 1.05, 0.95, 1.1, 0.9, 0.85, 0.8, 1.2] as const;

/** The outline in a pose. Throws Error where it closes on no grid, which no foot within the bounds was seen to do. */
export const buildOutline = (shape: Shape, parameters: FootParameters, pose: PoseName): Mesh => {
  const { join, step, triangles, sole, top } = shape.outline;
  const carry = carriedIn(shape, parameters, pose);
  const skins = laid(carry, shape.outline.masses);
  const fieldsOf = (rods: readonly Skin[]) =>
    rods.map((s) => ({ field: rod(s.from, s.to, s.radius), join: s.join ?? join }));
  const masses = fieldsOf(skins);
  const hollows = fieldsOf(laid(carry, shape.outline.hollows));
  // The cut through the leg goes along with the leg: square to it however the foot is held.
  const cut = carry([0, top, 0], 'tibia');
  const upwards = normalize(subtract(carry([0, top + 1, 0], 'tibia'), cut));
  const field: Field = (x, y, z) => {
    let d = 1e3;
    for (const m of masses) d = smoothMin(d, m.field(x, y, z), m.join);
    for (const h of hollows) d = smoothMax(d, -h.field(x, y, z), h.join);
    return smoothMax(smoothMax(d, sole - y, RIM), dot(subtract([x, y, z], cut), upwards), 2);
  };
  const [x, y, z] = [bounds(skins, 0, 6), bounds(skins, 1, 6), bounds(skins, 2, 6)];
  const box: Box = { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  for (const width of GRIDS) {
    const net = largestPiece(surfaceNets(rounded(sampleGrid(everywhere(field), box, width * step), 1)));
    const mesh = closedWith(net, triangles);
    if (mesh !== null) return mapMesh(mesh, (p) => scale(p, k));
  }
  throw new Error('outline: no closed surface on any grid');
};
