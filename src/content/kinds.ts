/** Which file holds which kind of record, and the schema it is held to. The order here is the order of reading. */
import {
  activity,
  attachment,
  bone,
  boneSupply,
  card,
  caution,
  code,
  contradiction,
  count,
  dailyTopic,
  decisionRule,
  factor,
  filmScore,
  findWord,
  fixation,
  frameFigure,
  injury,
  joint,
  loadCheck,
  loadFactor,
  measuredLoad,
  mechanism,
  option,
  rate,
  region,
  repetition,
  returnTest,
  source,
  stage,
  stageSheet,
  strain,
  strand,
  study,
  trouble,
  vessel,
  vesselPattern,
  walkStop,
  weightPractice,
} from './schema';

export const KINDS = {
  bones: { file: 'bones.yaml', schema: bone, key: 'id' },
  joints: { file: 'joints.yaml', schema: joint, key: 'id' },
  regions: { file: 'regions.yaml', schema: region, key: 'id' },
  attachments: { file: 'attachments.yaml', schema: attachment, key: 'id' },
  vessels: { file: 'vessels.yaml', schema: vessel, key: 'id' },
  vesselPatterns: { file: 'vessel-patterns.yaml', schema: vesselPattern, key: 'id' },
  boneSupplies: { file: 'bone-supplies.yaml', schema: boneSupply, key: 'id' },
  mechanisms: { file: 'mechanisms.yaml', schema: mechanism, key: 'id' },
  activities: { file: 'activities.yaml', schema: activity, key: 'id' },
  loadFactors: { file: 'load-factors.yaml', schema: loadFactor, key: 'id' },
  strains: { file: 'strains.yaml', schema: strain, key: 'id' },
  measuredLoads: { file: 'measured-loads.yaml', schema: measuredLoad, key: 'id' },
  frame: { file: 'frame-figures.yaml', schema: frameFigure, key: 'id' },
  repetitions: { file: 'repetition.yaml', schema: repetition, key: 'id' },
  loadChecks: { file: 'load-checks.yaml', schema: loadCheck, key: 'id' },
  fixations: { file: 'fixation.yaml', schema: fixation, key: 'id' },
  injuries: { file: 'injuries/', schema: injury, key: 'id' },
  cards: { file: 'cards/', schema: card, key: 'id' },
  codes: { file: 'codes.yaml', schema: code, key: 'id' },
  troubles: { file: 'troubles.yaml', schema: trouble, key: 'id' },
  rates: { file: 'rates.yaml', schema: rate, key: 'id' },
  counts: { file: 'counts.yaml', schema: count, key: 'id' },
  contradictions: { file: 'contradictions.yaml', schema: contradiction, key: 'id' },
  decisionRules: { file: 'decision-rules.yaml', schema: decisionRule, key: 'id' },
  strands: { file: 'strands.yaml', schema: strand, key: 'id' },
  options: { file: 'options.yaml', schema: option, key: 'id' },
  stages: { file: 'stages.yaml', schema: stage, key: 'id' },
  stageSheets: { file: 'stage-sheets.yaml', schema: stageSheet, key: 'id' },
  weightPractice: { file: 'weight-practice.yaml', schema: weightPractice, key: 'id' },
  dailyLife: { file: 'daily-life.yaml', schema: dailyTopic, key: 'id' },
  returnTests: { file: 'return-tests.yaml', schema: returnTest, key: 'id' },
  filmScores: { file: 'film-scores.yaml', schema: filmScore, key: 'id' },
  studies: { file: 'studies.yaml', schema: study, key: 'id' },
  cautions: { file: 'cautions.yaml', schema: caution, key: 'id' },
  factors: { file: 'factors.yaml', schema: factor, key: 'id' },
  walk: { file: 'walk.yaml', schema: walkStop, key: 'id' },
  findWords: { file: 'find-words.yaml', schema: findWord, key: 'id' },
  sources: { file: 'sources.yaml', schema: source, key: 'id' },
} as const;
export type Kind = keyof typeof KINDS;
export const KIND_NAMES = Object.keys(KINDS) as readonly Kind[];

export const WORDS_FILE = 'words.yaml';
export const SHAPE_FOLDER = 'anatomy/';

/** `content/bones.yaml`, `/x/content/bones.yaml` and `bones.yaml` are the same file. */
export const nameOf = (path: string): string => {
  const parts = path.replaceAll('\\', '/').split('/');
  const at = parts.lastIndexOf('content');
  return parts.slice(at + 1).join('/');
};

export const kindOf = (name: string): Kind | 'words' | 'shape' | null => {
  if (name === WORDS_FILE) return 'words';
  if (name.startsWith(SHAPE_FOLDER)) return 'shape';
  return (
    KIND_NAMES.find((k) => (KINDS[k].file.endsWith('/') ? name.startsWith(KINDS[k].file) : name === KINDS[k].file)) ??
    null
  );
};
