/**
 * The input of CalculiX (a general finite-element program, GPL, calculix.de) for a slender frame of ours. What it can't say
 * (releases, springs, loads along members) is not handed over.
 *
 * Rectangles as B31, which it expands into solids: they know nothing of beam theory. Elements about as long as
 * the section is deep: much longer ones make stiff corners (1.5 % less motion), much shorter ones let clamped ends give way (0.4 %
 * more). Their torsion is 15 % too stiff
 * (a square of one solid does not warp): only for frames that do not twist.
 * Circles as U1, its own Timoshenko element (Luo 2008), which twists rightly and takes circles only; many a member, since
 * it comes near slowly (0.3 % off with one, 0.01 % with 60). Out of the plane X-Z it answered wrongly, so rods lie in that plane.
 * Expanded circles (B32) were 2.1 % too soft in torsion. All measured with version 2.20.
 */
import type { FrameModel } from '../../src/mechanics/frame';
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../src/units';

/** Sizes along local y and z, or the diameter; mm. */
export type Shape = { readonly y: number; readonly z: number } | { readonly diameter: number };

export interface SlenderFrame {
  readonly model: FrameModel;
  readonly shapes: Readonly<Record<string, Shape>>;
  /** Elements a member; of a rod three times as many. */
  readonly divisions: number;
  /** Whether its forces on supports are asked for: of U1 and of clamps in skew directions it prints others than it balances with. */
  readonly reactions: boolean;
}

/** Section values of a full rectangle or circle; shear areas of Cowper 1966 for Poisson's ratio 0.3 (from memory: 0.85 and 0.89 A). */
export const valuesOf = (shape: Shape): FrameModel['sections'][string] => {
  if ('diameter' in shape) {
    const d = shape.diameter;
    const A = (Math.PI * d ** 2) / 4;
    const inertia = (Math.PI * d ** 4) / 64;
    return { A, Iy: inertia, Iz: inertia, J: 2 * inertia, Asy: 0.89 * A, Asz: 0.89 * A };
  }
  const { y, z } = shape;
  const [long, thin] = [Math.max(y, z), Math.min(y, z)];
  // Torsion of a rectangle, Roark's short form; no rectangle here is twisted.
  const J = long * thin ** 3 * (1 / 3 - 0.21 * (thin / long) * (1 - thin ** 4 / (12 * long ** 4)));
  return { A: y * z, Iz: (z * y ** 3) / 12, Iy: (y * z ** 3) / 12, J, Asy: 0.85 * y * z, Asz: 0.85 * y * z };
};

const number = (value: number): string => value.toPrecision(12);
const DOF = { ux: 1, uy: 2, uz: 3, rx: 4, ry: 5, rz: 6 } as const;

/** Node numbers of the frame's own nodes are 1, 2, ... in its order; the deck prints motions and reactions of these. */
export const deckOf = ({ model, shapes, divisions }: SlenderFrame): string => {
  const numbers = new Map(model.nodes.map(({ id }, i) => [String(id), i + 1]));
  const placeOf = (id: string | number): Vec3 => model.nodes[(numbers.get(String(id)) ?? 0) - 1]?.xyz ?? [0, 0, 0];
  const nodes = model.nodes.map(({ xyz }, i) => [i + 1, ...xyz.map(number)].join(', '));
  const lines: string[] = [];
  let [next, element] = [model.nodes.length + 1, 1];
  for (const member of model.members) {
    const shape = shapes[String(member.section)];
    if (!shape) throw new Error(`no shape for section ${member.section}`);
    const round = 'diameter' in shape;
    const [from, to] = [placeOf(member.i), placeOf(member.j)];
    const steps = round ? 3 * divisions : divisions;
    const chain = [numbers.get(String(member.i)) ?? 0];
    for (let step = 1; step < steps; step++) {
      nodes.push([next, ...add(scale(from, 1 - step / steps), scale(to, step / steps)).map(number)].join(', '));
      chain.push(next++);
    }
    chain.push(numbers.get(String(member.j)) ?? 0);
    lines.push(`*ELEMENT, TYPE=${round ? 'U1' : 'B31'}, ELSET=M${member.id}`);
    for (let at = 0; at < steps; at++) lines.push([element++, ...chain.slice(at, at + 2)].join(', '));
    const x = normalize(subtract(to, from));
    const y = normalize(cross(cross(x, member.orientation), x));
    const { A, Iy, Iz, Asy = A } = valuesOf(shape);
    const values = round ? [A, Iz, 0, Iy, Asy / A] : [shape.y, shape.z];
    lines.push(
      `*BEAM SECTION, ELSET=M${member.id}, MATERIAL=${member.material}, SECTION=${round ? 'GENERAL' : 'RECT'}`,
      values.map(number).join(', '),
      y.map(number).join(', '),
    );
  }
  const materials = Object.entries(model.materials).flatMap(([name, { E, G }]) => [
    `*MATERIAL, NAME=${name}`,
    '*ELASTIC',
    `${number(E)}, ${number(E / (2 * G) - 1)}`,
  ]);
  const held = model.supports.flatMap(({ node, fixed, imposed = {} }) =>
    fixed.map((dof) => `${numbers.get(String(node))}, ${DOF[dof]}, ${DOF[dof]}, ${number(imposed[dof] ?? 0)}`),
  );
  const loads = (model.nodalLoads ?? []).flatMap(({ node, F }) =>
    F.flatMap((value, i) => (value === 0 ? [] : [`${numbers.get(String(node))}, ${i + 1}, ${number(value)}`])),
  );
  const own = model.nodes.map((_, i) => String(i + 1));
  return [
    '*USER ELEMENT, TYPE=U1, NODES=2, INTEGRATION POINTS=2, MAXDOF=6',
    '*NODE, NSET=ALL',
    ...nodes,
    '*NSET, NSET=OWN',
    ...own,
    ...materials,
    ...lines,
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    ...held,
    ...(loads.length > 0 ? ['*CLOAD', ...loads] : []),
    '*NODE PRINT, NSET=OWN',
    'U, RF',
    '*END STEP',
    '',
  ].join('\n');
};
