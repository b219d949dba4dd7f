/** Lines of "How do you know?". */
export const BASIS_LINES = {
  foot: 'Foot: {size} from heel to second head, {shape}.',
  region: 'Part: {region}.',
  injury: 'Class: {injury}.',
  option: 'Treatment: {option}.',
  activity: 'Load: {activity}.',
  mass: 'Body mass: {mass}.',
  more: 'Added mass: {mass}.',
  carried: 'Load carried: {mass}.',
  sole: 'The sole adds {stiffness} at the ball of the foot.',
  speed: 'Speed: {speed}.',
  tilt: 'Ground higher under the outer edge by {tilt}.',
  held: 'Held end moved to {share} of the bone, by hand.',
  practice: 'Common practice, without a source of its own.',
  people: 'Studied: {group}; {n}.',
  'people.n': '{n} counted',
  'people.none': 'how many is not told in what was read',
  noGroup: 'No group of people is kept with this statement.',
  'read.read': 'Read in the source.',
  'read.abstract': 'Read in its abstract.',
  'read.secondary': 'Read second-hand, not in the source.',
  'mark.seen': 'Read in the source or its abstract.',
  'mark.weak': 'Read on a secondary or unreviewed page.',
  'mark.common practice': 'Taken from common practice.',
  'mark.from memory': 'From memory; it was not read.',
} as const;

/** The picture in words. */
export const PICTURE_LINES = {
  'side.right': 'A right foot.',
  'side.left': 'A left foot.',
  'side.notStated': 'The side is not stated; a right foot is drawn.',
  'side.contradiction': 'Reports disagree on the side; a right foot is drawn.',
  noBone: 'All bones are drawn alike: which one is hurt is not known.',
  bone: 'The {bone} is drawn in full ink, the other bones are pale, inside the outline of the foot.',
  zones: 'It is divided from its back end into {zones}, each with its own hatching.',
  break: 'A zigzag line marks the break in {region}; the place is {status}.',
  part: 'No line of a break is drawn; what is hurt lies at {region}; the place is {status}.',
  breakWhatIf: 'A dashed zigzag line marks a break in {region}, as a what-if.',
  stress:
    'Bands in six steps, from 0 to {most} times the largest pull of walking, show how hard the surface of this bone is pulled or pressed. The largest pull lies {peakAt} from its back end. Hatched parts lie outside what the model can say.',
  stressRank:
    'Bands in six steps, from none to the most, show how hard the surface of this bone is pulled or pressed. The largest pull lies {peakAt} from its back end. Hatched parts lie outside what the model can say.',
  way: 'The way of the load runs over the foot: rows of blocks are pressed, cords of three threads are pulled, and the wider, the more force.',
  'way.tibia': 'The shin presses the ankle bone with {force}.',
  'way.tibia.term': 'The tibia presses the talus with {force}.',
  'way.achilles': 'The heel cord pulls the heel up with {force}.',
  'way.achilles.term': 'The Achilles tendon pulls the calcaneus up with {force}.',
  'way.fascia': 'The band under the sole pulls with {force}.',
  'way.fascia.term': 'The plantar fascia pulls with {force}.',
  'way.ground': 'The ground presses up: {list}.',
  'way.forefoot': '{force} under the ball of the foot and the toes',
  'way.outerEdge': '{force} under the outer edge',
  'way.heel': '{force} under the heel',
  'way.newtons': '{newtons} ({weights})',
  noStress: 'No stress is drawn: no model applies, or how it happened is not known.',
  feeding:
    'Dots show who feeds each part, the more dots the better fed: {parts}. A bare line marks the border of two supplies.',
  noFeeding: 'No blood supply is drawn: the bone is not known, or the content has none for it.',
  screw: 'A screw is drawn inside the bone, from its back end into the hollow.',
  noScrew: 'The bone is drawn as it is; the options are told beside the picture.',
  back: 'The bone is drawn calm; the stages are told beside the picture on a rule of weeks.',
  drawn: 'The bones are modelled on few feet and the outline is drawn. It is not an image of any person.',
  short: '{side} {what}',
} as const;

/** What a source without authors is called in a sentence. */
export const SOURCE_KINDS = { study: 'one study', sheet: 'one clinic’s sheet' } as const;
