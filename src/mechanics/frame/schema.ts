/**
 * The frame file. Any consistent units (`units` is a note to the reader). Axes right-handed; supports, imposed motions, ground
 * springs and nodal loads in global axes. Member axes: x from i to j, y the part of `orientation` across it, z = x cross y. Iz
 * resists bending in the member's x-y plane, Iy in x-z, J torsion; Asy, Asz are shear areas for shear along y and z, absent = no shear
 * deformation. `endSprings` sit between node and member end in member axes, k = 0 releases. `distributed` is force per unit of true
 * length, constant over the member; entries add up, as do nodal loads and ground springs at one place. A motion
 * that is imposed is held, whether `fixed` lists it or not.
 *
 * Our own extension: a member with `segments` instead of `section` is a chain of straight pieces from node i to node j, each of its
 * own section, `to` being where a piece ends (the last one ends at node j and has none). `orientation` serves every piece; end
 * springs and printed end forces are in the axes of the straight line from i to j. It takes no distributed load.
 */
import * as v from 'valibot';
import { DOFS, type Dof } from './dofs';
import { type FrameProblem, problem } from './problem';

/**
 * Forces and moments are compared by their squares, and those of much larger numbers are infinite: the frame would then be blamed for
 * its load. Levers and sums have room between this and 1e154, whose square is the last number.
 */
const MOST = 1e100;
const TOO_LARGE = `is too large to be reckoned with: at most ${MOST.toExponential(0).replace('+', '')} either way`;
const number = v.pipe(
  v.number('expected a number'),
  v.finite('expected a finite number'),
  v.maxValue(MOST, TOO_LARGE),
  v.minValue(-MOST, TOO_LARGE),
);
const positive = v.pipe(number, v.gtValue(0, 'must be more than 0'));
const notNegative = v.pipe(number, v.minValue(0, 'must not be less than 0'));
const three = v.strictTuple([number, number, number], 'expected three numbers');
const six = v.strictTuple([number, number, number, number, number, number], 'expected six numbers');
const name = v.pipe(
  v.union([v.pipe(v.string(), v.nonEmpty()), number], 'expected a name'),
  v.transform((value) => String(value)),
);
const dof = v.picklist(DOFS, `expected one of ${DOFS.join(' ')}`);
const record = <S extends v.GenericSchema>(schema: S) => v.record(v.string(), schema, 'expected an object of names');
const list = <S extends v.GenericSchema>(schema: S) => v.array(schema, 'expected a list');

const section = v.strictObject({
  A: positive,
  Iy: positive,
  Iz: positive,
  J: positive,
  Asy: v.optional(positive),
  Asz: v.optional(positive),
});

const member = v.strictObject({
  id: name,
  i: name,
  j: name,
  section: v.optional(name),
  segments: v.optional(list(v.strictObject({ section: name, to: v.optional(three) }))),
  material: name,
  orientation: three,
  endSprings: v.optional(
    list(v.strictObject({ end: v.picklist(['i', 'j'], 'expected "i" or "j"'), dof, k: notNegative })),
    [],
  ),
  distributed: v.optional(
    list(v.strictObject({ axes: v.picklist(['local', 'global'], 'expected "local" or "global"'), q: three })),
    [],
  ),
});

const note = v.optional(v.union([v.string(), v.number()], 'expected text'));

const frame = v.strictObject({
  id: note,
  title: note,
  units: note,
  nodes: list(v.strictObject({ id: name, xyz: three })),
  materials: record(v.strictObject({ E: positive, G: positive })),
  sections: record(section),
  members: list(member),
  supports: list(
    v.strictObject({
      node: name,
      fixed: list(dof),
      imposed: v.optional(
        v.strictObject({
          ux: v.optional(number),
          uy: v.optional(number),
          uz: v.optional(number),
          rx: v.optional(number),
          ry: v.optional(number),
          rz: v.optional(number),
        }),
        {},
      ),
    }),
  ),
  groundSprings: v.optional(list(v.strictObject({ node: name, dof, k: notNegative })), []),
  nodalLoads: v.optional(list(v.strictObject({ node: name, F: six })), []),
});

/** A frame as the file has it. */
export type FrameModel = v.InferInput<typeof frame>;
/** The same with every list there and every name a string. */
export type ReadFrame = v.InferOutput<typeof frame>;
type Support = ReadFrame['supports'][number];
export type ReadMember = ReadFrame['members'][number];
export type ReadSection = ReadFrame['sections'][string];

/** The motions that a support holds, at nothing or at what is imposed. */
export const heldBy = ({ fixed, imposed }: Support): readonly Dof[] => [
  ...new Set([...fixed, ...DOFS.filter((motion) => imposed[motion] !== undefined)]),
];

const SINGULAR: Readonly<Record<string, string>> = {
  nodes: 'node',
  members: 'member',
  materials: 'material',
  sections: 'section',
  supports: 'support of node',
  groundSprings: 'ground spring at node',
  nodalLoads: 'load at node',
};

const nameOf = (item: unknown, key: unknown): string => {
  if (typeof key === 'string') return `"${key}"`;
  const named = (item ?? {}) as { readonly id?: unknown; readonly node?: unknown };
  const own = named.id ?? named.node;
  return typeof own === 'string' || typeof own === 'number' ? `"${own}"` : `number ${Number(key) + 1}`;
};

/** More names than these say less than their count. */
const FEW_MEMBERS = 5;

/** The members of a file, which may be no frame, that are made of a section or material; nothing for other parts of the file. */
const usedBy = (file: unknown, list: string, name: string): string => {
  if (list !== 'sections' && list !== 'materials') return '';
  const given: unknown = (file as { readonly members?: unknown } | null)?.members;
  const members: readonly unknown[] = Array.isArray(given) ? given : [];
  const using = members.filter((each) => {
    const { section, segments, material } = (each ?? {}) as Readonly<Record<string, unknown>>;
    const parts = (Array.isArray(segments) ? segments : []).map((part) => part?.section);
    const names = list === 'materials' ? [material] : [section, ...parts];
    return names.some((used) => used !== undefined && String(used) === name);
  });
  if (using.length === 0) return '';
  const named = using.map((member) => nameOf(member, members.indexOf(member)));
  if (named.length === 1) return ` (of member ${named[0]})`;
  if (named.length <= FEW_MEMBERS) return ` (of members ${named.join(', ')})`;
  return ` (of member ${named[0]} and ${named.length - 1} more)`;
};

const formProblem = (file: unknown, issue: v.BaseIssue<unknown>): FrameProblem => {
  const path = (issue.path ?? []) as readonly { readonly key: unknown; readonly value: unknown }[];
  const [list, item, ...rest] = path;
  const kind = SINGULAR[String(list?.key)];
  const named = kind !== undefined && item !== undefined;
  const where = named ? `${kind} ${nameOf(item.value, item.key)}` : 'frame';
  const inside = (named ? rest : path).map(({ key }) => String(key)).join('.');
  const missing = issue.kind === 'schema' && issue.received === 'undefined';
  const what =
    issue.type === 'strict_object'
      ? issue.expected === 'never'
        ? `the key "${inside}" is not known`
        : missing || issue.received === 'undefined'
          ? `${inside} is missing`
          : `${inside} ${issue.message}`
      : missing
        ? `${inside} is missing`
        : `${inside} ${issue.message}, got ${issue.received}`;
  return problem('form', where, what.trim() + (named ? usedBy(file, String(list?.key), String(item.key)) : ''));
};

/** A frame from anything, or the first thing that keeps it from being one, naming the member, node, section or material. */
export const readFrame = (value: unknown): { readonly ok: true; readonly frame: ReadFrame } | FrameProblem => {
  const read = v.safeParse(frame, value);
  if (read.success) return { ok: true, frame: read.output };
  return formProblem(value, read.issues[0]);
};
