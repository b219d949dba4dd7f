/** The stage's words, by key from content. No text is written here. */
import type { Content } from './types';

export const STAGE_WORDS = [
  'stage.label',
  'stage.keys',
  'stage.figure',
  'stage.side.right',
  'stage.side.left',
  'stage.side.asReported',
  'stage.side.notStated',
  'stage.side.working',
  'stage.side.contradiction',
  'stage.plain',
  'stage.view.outer',
  'stage.view.inner',
  'stage.view.top',
  'stage.view.sole',
  'stage.view.front',
  'stage.view.back',
  'stage.view.close',
  'stage.outlineNote',
  'stage.here',
  'stage.here.reported',
  'stage.here.inferred',
  'stage.here.region',
  'stage.here.whatIf',
  'stage.here.zone',
  'stage.bodyWeights',
  'stage.bodyWeights.forefootN',
  'stage.bodyWeights.fasciaN',
  'stage.turnLeft',
  'stage.turnRight',
  'stage.turnUp',
  'stage.turnDown',
  'stage.closer',
  'stage.farther',
  'stage.whole',
  'stage.left',
  'stage.tool.hand',
  'stage.tool.pointer',
  'stage.tool.pen',
  'stage.tool.undo',
  'stage.tool.wipe',
  'stage.noPicture',
  'pair.keys',
  'pair.turned',
  'pair.noPicture',
  'foot.pose.asScanned',
  'foot.pose.standing',
  'foot.pose.seated',
  'foot.pose.heelRaise',
  'foot.pose.pushOff',
  'foot.pose.inversion',
] as const;
export type StageWord = (typeof STAGE_WORDS)[number];

export type StageSay = (key: StageWord, values?: Readonly<Record<string, string | number>>) => string;

/** A key without a text shows itself: a test holds the list against content/words.yaml. */
export const stageSay =
  (words: Content['words']): StageSay =>
  (key, values = {}) =>
    (words[key] ?? key).replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
