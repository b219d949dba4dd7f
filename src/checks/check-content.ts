/**
 * What of the content only holds together with a foot: the shape parameters fit the builder's schema, every region and joint that
 * the content names is on the foot and on the same bones, and no bone is missing.
 */
import { getDotPath, safeParse } from 'valibot';
import { type Foot, regionsOf, shapeSchema } from '../anatomy';
import { bonesOf, type Content, homesOf, regionsOfCard } from '../content';
import { BONE_IDS } from '../ids';

export interface ContentFault {
  /** Kind and id, such as `regions mt5-zone-1`. */
  readonly where: string;
  readonly expected: string;
  readonly got: string;
}

type Checked = Pick<Content, 'bones' | 'joints' | 'regions' | 'injuries' | 'cards' | 'shape'>;

const fault = (where: string, expected: string, got: string): ContentFault => ({ where, expected, got });

/** content/anatomy against the schema of `src/anatomy`. Needs no foot, so that it can run before one is built. */
export const checkShape = (shape: unknown): readonly ContentFault[] => {
  const parsed = safeParse(shapeSchema, shape);
  if (parsed.success) return [];
  return parsed.issues.map((i) => fault(`shape ${getDotPath(i) ?? ''}`, i.expected ?? i.message, i.received));
};

const checkBones = (content: Checked, foot: Foot): ContentFault[] => {
  const described = new Set<string>(content.bones.map((b) => b.id));
  return BONE_IDS.flatMap((id) => [
    ...(described.has(id) ? [] : [fault(`bones ${id}`, 'a record of this bone', 'none')]),
    ...(foot.bones.has(id) ? [] : [fault(`bones ${id}`, 'a bone of the foot', 'none')]),
  ]);
};

const checkJoints = (content: Checked, foot: Foot): ContentFault[] => {
  const records = content.joints.flatMap((record) => {
    const joint = foot.joints.get(record.id);
    // Near neighbours without a joint surface have no joint on the foot.
    if (!joint && !record.articular) return [];
    if (!joint) return [fault(`joints ${record.id}`, 'a joint of the foot', 'none')];
    const [first, second] = record.bones;
    if (joint.first === first && joint.second === second) return [];
    return [fault(`joints ${record.id}`, `${joint.first} and ${joint.second}`, record.bones.join(' and '))];
  });
  const described = new Set<string>(content.joints.map((j) => j.id));
  const missing = [...foot.joints.keys()].filter((id) => !described.has(id));
  return [...records, ...missing.map((id) => fault(`joints ${id}`, 'a record of this joint', 'none'))];
};

const checkRegions = (content: Checked, foot: Foot): ContentFault[] => {
  const onFoot = new Map(regionsOf(foot).map((r) => [r.id, r]));
  return content.regions.flatMap((record) => {
    const region = onFoot.get(record.id);
    if (!region) return [fault(`regions ${record.id}`, 'a region of the foot', 'none')];
    const said = `${record.kind} of ${record.bone}`;
    const is = `${region.kind} of ${region.bone}`;
    return said === is ? [] : [fault(`regions ${record.id}`, is, said)];
  });
};

/** An injury lives on its own bones. */
const checkHomes = (content: Checked): ContentFault[] =>
  content.injuries.flatMap((injury) =>
    homesOf(injury).flatMap((home) => {
      const bone = content.regions.find((r) => r.id === home)?.bone;
      return bone === undefined || bonesOf(injury).includes(bone)
        ? []
        : [fault(`injuries ${injury.id}`, `parts of ${bonesOf(injury).join(', ')}`, `${home} of ${bone}`)];
    }),
  );

/** A card's place is on a bone of it, and a look-alike that something is told from is drawn on the foot. */
const checkCards = (content: Checked, foot: Foot): ContentFault[] => {
  const drawn = new Set<string>(foot.reference.lookAlikes.map(({ id }) => id));
  const onBones = content.cards.flatMap((card) => {
    const { id, bones } = card;
    return regionsOfCard(card).flatMap((region) => {
      const bone = content.regions.find((record) => record.id === region)?.bone;
      return bone === undefined || bones.includes(bone)
        ? []
        : [fault(`cards ${id}`, `a place on ${bones.join(' or ')}`, `${region} of ${bone}`)];
    });
  });
  const told = [
    ...content.injuries.map((record) => ({ ...record, kind: 'injuries' })),
    ...content.cards.map((record) => ({ ...record, kind: 'cards' })),
  ];
  const undrawn = told.flatMap(({ kind, id, tellApart }) =>
    tellApart.flatMap(({ from }) =>
      from.is !== 'lookAlike' || drawn.has(from.id)
        ? []
        : [fault(`${kind} ${id}`, 'a look-alike of the foot', from.id)],
    ),
  );
  return [...onBones, ...undrawn];
};

/** Empty when the content fits the foot. References inside the content are checked when it is compiled. */
export const checkContent = (content: Checked, foot: Foot): readonly ContentFault[] => [
  ...checkShape(content.shape),
  ...checkBones(content, foot),
  ...checkJoints(content, foot),
  ...checkRegions(content, foot),
  ...checkHomes(content),
  ...checkCards(content, foot),
];
