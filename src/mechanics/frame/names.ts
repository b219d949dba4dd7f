/** Whether the names of a frame file fit together: each once, each known, each thing said once. */
import { type FrameProblem, problem } from './problem';
import { heldBy, type ReadFrame, type ReadMember } from './schema';

const twice = (names: readonly string[]): string | undefined => {
  const seen = new Set<string>();
  return names.find((name) => seen.size === seen.add(name).size);
};

const memberProblem = (frame: ReadFrame, nodes: ReadonlySet<string>, member: ReadMember): FrameProblem | null => {
  const where = `member "${member.id}"`;
  for (const end of [member.i, member.j])
    if (!nodes.has(end)) return problem('name', where, `there is no node "${end}"`);
  if (!Object.hasOwn(frame.materials, member.material))
    return problem('name', where, `there is no material "${member.material}"`);
  const { section, segments } = member;
  if ((section === undefined) === (segments === undefined))
    return problem('form', where, 'it needs either a section or segments');
  if (segments?.length === 0) return problem('form', where, 'it needs at least one segment');
  for (const name of section === undefined ? (segments ?? []).map((part) => part.section) : [section])
    if (!Object.hasOwn(frame.sections, name)) return problem('name', where, `there is no section "${name}"`);
  if (segments !== undefined && member.distributed.length > 0)
    return problem('form', where, 'a member of segments takes no distributed load: put nodes where its pieces meet');
  const spring = twice(member.endSprings.map(({ end, dof }) => `${dof} at end ${end}`));
  return spring === undefined ? null : problem('name', where, `two end springs for ${spring}`);
};

const supportProblem = (frame: ReadFrame): FrameProblem | null => {
  const held = twice(
    frame.supports.flatMap((support) => heldBy(support).map((dof) => `node "${support.node}" ${dof}`)),
  );
  return held === undefined ? null : problem('name', held, 'supported twice');
};

/** Each load is a number; together they may be more than one can hold. */
const loadProblem = (frame: ReadFrame): FrameProblem | null => {
  const sums = new Map<string, readonly number[]>();
  for (const { node, F } of frame.nodalLoads)
    sums.set(
      node,
      F.map((value, d) => value + (sums.get(node)?.[d] ?? 0)),
    );
  const over = [...sums].find(([, sum]) => !sum.every(Number.isFinite));
  return over === undefined
    ? null
    : problem('form', `node "${over[0]}"`, 'its loads add up to more than a number holds');
};

/** A node that no member meets belongs to no frame, held or not: most likely a member lacks. */
const looseNode = (frame: ReadFrame): FrameProblem | null => {
  const met = new Set(frame.members.flatMap(({ i, j }) => [i, j]));
  const loose = frame.nodes.find(({ id }) => !met.has(id));
  return loose === undefined ? null : problem('name', `node "${loose.id}"`, 'no member meets it: it is disconnected');
};

/** The first name used twice, unknown, or left hanging; null when all fit. */
export const nameProblem = (frame: ReadFrame): FrameProblem | null => {
  if (frame.nodes.length === 0) return problem('form', 'frame', 'it has no nodes');
  const node = twice(frame.nodes.map(({ id }) => id));
  if (node !== undefined) return problem('name', `node "${node}"`, 'two nodes have this name');
  const member = twice(frame.members.map(({ id }) => id));
  if (member !== undefined) return problem('name', `member "${member}"`, 'two members have this name');
  const nodes = new Set(frame.nodes.map(({ id }) => id));
  for (const each of frame.members) {
    const wrong = memberProblem(frame, nodes, each);
    if (wrong) return wrong;
  }
  for (const [what, list] of [
    ['support', frame.supports],
    ['ground spring', frame.groundSprings],
    ['load', frame.nodalLoads],
  ] as const)
    for (const each of list)
      if (!nodes.has(each.node))
        return problem('name', `node "${each.node}"`, `a ${what} names it, but there is no such node`);
  return supportProblem(frame) ?? loadProblem(frame) ?? looseNode(frame);
};
