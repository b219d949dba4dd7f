/** Parts of the way of the load by name: joints and bones from content, ties, tendons, pads and leg from the words of the screens. */
import type { Content } from '../../content/schema';
import type { PathPart } from '../../mechanics/foot/types';
import type { Say } from '../words';

/** In the order of the way from leg to ground. */
export const PATH_KINDS = [
  'leg',
  'joint',
  'bone',
  'tie',
  'tendon',
  'ground',
] as const satisfies readonly PathPart['kind'][];

/** Names in words.yaml, each in the trade's words and in plain ones. `{n}` and `{m}` are numbers of rays. */
export const PART_NAMES = [
  'tibia',
  'fascia',
  'longPlantar',
  'shortPlantar',
  'springLigament',
  'lisfranc',
  'plantarTarsometatarsal',
  'plantarNaviculocuneiformMedial',
  'plantarNaviculocuneiformIntermediate',
  'plantarNaviculocuneiformLateral',
  'cuboideonavicular',
  'intermetatarsal',
  'deepTransverse',
  'achilles',
  'fibularisLongus',
  'fibularisBrevis',
  'tibialisPosterior',
  'flexorHallucis',
  'flexorDigitorum',
  'heelMedial',
  'heelLateral',
  'sesamoidMedial',
  'sesamoidLateral',
  'head',
  'firstToe',
  'base',
] as const;

/** `plantar-tarsometatarsal-3` is the name plantarTarsometatarsal of ray 3; `head2` the name head of ray 2. */
export const partNameOf = (id: string): { readonly name: string; readonly rays: readonly string[] } => {
  const rays = id.match(/\d/g) ?? [];
  const name = id.replace(/-?\d/g, '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  return { name, rays };
};

export const partName = (say: Say, content: Content, study: boolean, part: Pick<PathPart, 'id' | 'kind'>): string => {
  if (part.kind === 'bone') {
    const bone = content.bones.find(({ id }) => id === part.id);
    return (study ? bone?.term : bone?.plain) ?? part.id;
  }
  if (part.kind === 'joint') return jointName(say, content, study, part.id);
  const { name, rays } = partNameOf(part.id);
  return say(study ? `part.${name}` : `part.${name}.plain`, { n: rays[0] ?? '', m: rays[1] ?? '' });
};

/** The frame has one spring for both facets under the talus. */
const UNDER_TALUS = 'talus-calcaneus';

export const jointName = (say: Say, content: Content, study: boolean, id: string): string => {
  if (id === UNDER_TALUS) return say(study ? 'part.subtalar' : 'part.subtalar.plain');
  const joint = content.joints.find((each) => each.id === id);
  return (study ? joint?.term : joint?.plain) ?? id;
};

/** Joints of the foot that the frame has no part for. */
export const jointsLeftOut = (content: Content, modelled: readonly string[]): readonly Content['joints'][number][] =>
  content.joints.filter(
    ({ id, articular }) => articular && !modelled.some((each) => id === each || id.startsWith(`${each}-`)),
  );
