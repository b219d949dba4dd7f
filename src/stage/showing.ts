/** From the session to what the engine shows: scene, labels in the reader's words, type sizes. Pure but for the measure passed in. */
import { fromBone, partAxis } from '../anatomy';
import type { Angle } from '../anatomy/angles';
import type { LookAlike } from '../anatomy/look-alikes';
import type { Foot } from '../anatomy/types';
import type { Card } from '../content/schema';
import type { BoneId, QuestionId, Reader, StrandId } from '../ids';
import type { SessionState } from '../session/types';
import type { MainLoad } from '../wording/load-scale';
import { formatNumber } from '../wording/quantities';
import type { Tokens } from './draw/tokens';
import type { Showing } from './engine';
import { boneLabels, capital } from './labels/choose';
import type { LabelText } from './overlay/labels';
import { fontsFor, type Measure } from './overlay/shapes';
import { type BreakScene, type StageScene, sceneOf } from './scene/scene';
import type { StrandScene } from './scene/strand';
import type { Content, Explanation } from './types';
import { type StageSay, type StageWord, stageSay } from './words';

export interface ShowingInput {
  readonly foot: Foot;
  readonly content: Content;
  readonly explanation: Explanation | null;
  readonly question: QuestionId;
  readonly reader: Reader;
  readonly selectedBone: BoneId | null;
  readonly quiz: SessionState['quiz'];
  readonly lit: SessionState['lit'];
  readonly dragMm: number | null;
  readonly measured: Angle | null;
  readonly lookAlike: string | null;
  readonly strand: StrandId | null;
  readonly card: Card | null;
  readonly tokens: Tokens;
  readonly measure: Measure;
  readonly labelPx: number;
  readonly contourPx: number;
  readonly narrow: boolean;
}

/** A sum stands at one arrow or cord of several, so it says what it is the sum of. */
const SUM_WORDS: Partial<Record<MainLoad, StageWord>> = {
  forefootN: 'stage.bodyWeights.forefootN',
  fasciaN: 'stage.bodyWeights.fasciaN',
};

/** The plain foot: nothing explained, nothing chosen. */
export const NOTHING_ASKED = {
  explanation: null,
  question: 'where',
  reader: 'patient',
  selectedBone: null,
  quiz: null,
  lit: null,
  dragMm: null,
  measured: null,
  lookAlike: null,
  strand: null,
  card: null,
} as const satisfies Partial<ShowingInput>;

export const isMirrored = (explanation: Explanation | null): boolean =>
  explanation?.side.state === 'stated' && explanation.side.side === 'left';

/** What "here" is said of: a break, or the part in which a joint came apart. */
type Here = Pick<BreakScene['at'], 'region' | 'status' | 'whatIf' | 'precision'>;

/** "Here" says how it is known: a reported break is never shown as a confirmed one. It names the zone, whose number the break may hide. */
const hereText = (at: Here, say: StageSay): string => {
  const word: StageWord = at.whatIf
    ? 'stage.here.whatIf'
    : at.status === 'reported'
      ? 'stage.here.reported'
      : at.status === 'inferred'
        ? 'stage.here.inferred'
        : at.precision === 'region'
          ? 'stage.here.region'
          : 'stage.here';
  const number = at.region.match(/^mt5-zone-(\d)$/)?.[1];
  return number === undefined ? say(word) : say('stage.here.zone', { here: say(word), number });
};

/** Nothing stands in the picture without a name, least of all a bone that most people do not have. */
const besideLabel = ({ id, at }: LookAlike, foot: Foot, reader: Reader): LabelText | null => {
  const rule = foot.reference.lookAlikes.find((each) => each.id === id);
  if (rule === undefined) return null;
  const text = capital(reader === 'study' ? rule.term : rule.plain);
  const outMm = rule.shape.is === 'ossicle' ? Math.max(...rule.shape.size) : 1;
  return { id: 'beside', text, second: null, tag: null, spot: { at, outMm }, priority: 900 };
};

/** Farther than any bone of the foot is thick, so that only what lies before that bone hides the label. mm. */
const OUT_OF_BONE_MM = 40;

/** A joint that came apart has no line to point at: the part is named at the end of the bone that the joint is at. */
const jointLabel = (foot: Foot, e: Explanation | null, say: StageSay): LabelText | null => {
  const zone = e?.zones.find(({ region }) => region === e.part?.region);
  if (e == null || e.bone === null || e.part === null || zone === undefined) return null;
  const middleMm = (zone.fromMm + zone.toMm) / 2;
  return {
    id: 'joint',
    text: hereText({ ...e.part, precision: 'region' }, say),
    second: null,
    tag: null,
    spot: { at: fromBone(partAxis(foot, e.bone), middleMm), outMm: OUT_OF_BONE_MM },
    priority: 1000,
  };
};

/** Named at the middle of its way. */
const strandLabel = (strand: StrandScene | null, content: Content, reader: Reader): LabelText | null => {
  const record = content.strands.find(({ id }) => id === strand?.id);
  const at = strand?.way[Math.floor(strand.way.length / 2)];
  if (record === undefined || at === undefined) return null;
  const text = capital(reader === 'study' ? record.term : record.plain);
  return { id: 'strand', text, second: null, tag: null, spot: { at, outMm: 1 }, priority: 890 };
};

/** The outlined parts of an injury told in short, in the words of their regions; the first keeps its place longest. */
const placeLabels = ({ marked }: StageScene, content: Content, reader: Reader): readonly LabelText[] =>
  marked.flatMap(({ region: id, at }, i) => {
    const region = content.regions.find((each) => each.id === id);
    if (region === undefined || at === null) return [];
    const text = capital(reader === 'study' ? region.term : region.plain);
    const name = i === 0 ? 'place' : `place.${i + 1}`;
    return [{ id: name, text, second: null, tag: null, spot: { at, outMm: 1 }, priority: 950 - i }];
  });

export const showingOf = (input: ShowingInput): Showing => {
  const scene = sceneOf(input.foot, input);
  const say = stageSay(input.content.words);
  const labels: LabelText[] = [];
  if (scene.breakAt !== null && !scene.inQuiz) {
    const { whatIf, status } = scene.breakAt.at;
    const filled = !whatIf && status === 'confirmed';
    labels.push({
      id: 'here',
      text: hereText(scene.breakAt.at, say),
      second: null,
      tag: filled ? 'filled' : 'open',
      spot: null,
      priority: 1000,
    });
  }
  const joint = scene.breakAt === null && !scene.inQuiz ? jointLabel(input.foot, scene.explanation, say) : null;
  if (joint !== null) labels.push(joint);
  const beside = scene.beside === null ? null : besideLabel(scene.beside, input.foot, input.reader);
  if (beside !== null) labels.push(beside);
  const strand = strandLabel(scene.strand, input.content, input.reader);
  if (strand !== null) labels.push(strand);
  labels.push(...placeLabels(scene, input.content, input.reader));
  if (!scene.inQuiz) {
    const room = { narrow: input.narrow, latin: !input.narrow, path: scene.loadPath !== null };
    const seen = { ...scene, also: input.card?.bones ?? [] };
    for (const { bone, text, second, priority } of boneLabels(input.foot, input.content, seen, input.reader, room)) {
      labels.push({ id: bone, text, second, tag: null, spot: null, priority });
    }
  }
  return {
    scene,
    labels,
    fonts: fontsFor(input.labelPx),
    measure: input.measure,
    loadText: ({ of, bodyWeights }) => say(SUM_WORDS[of] ?? 'stage.bodyWeights', { value: formatNumber(bodyWeights) }),
    tokens: input.tokens,
    mirrored: isMirrored(input.explanation),
    contourPx: input.contourPx,
  };
};

/** The side as written in the picture: stated, stated but only reported, not stated, or in dispute. */
export const sideText = (explanation: Explanation | null, say: StageSay): string => {
  if (explanation === null) return say('stage.side.working');
  const { side } = explanation;
  if (side.state === 'notStated') return say('stage.side.notStated');
  if (side.state === 'contradiction') return say('stage.side.contradiction');
  const name = say(side.side === 'right' ? 'stage.side.right' : 'stage.side.left');
  return side.status === 'confirmed' ? name : say('stage.side.asReported', { side: name });
};
