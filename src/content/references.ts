/** Which ids a record points at. A reference that leads nowhere is a problem with its line. */
import type { Kind } from './kinds';
import { regionsOfCard } from './look-up';
import type {
  Activity,
  Attachment,
  Bone,
  BoneSupply,
  Card,
  Caution,
  Contradiction,
  DailyTopic,
  DecisionRule,
  Evidence,
  Factor,
  FindWord,
  Fixation,
  Injury,
  JointRecord,
  Mechanism,
  Option,
  Other,
  Rate,
  RegionRecord,
  ReturnTest,
  Stage,
  StageSheet,
  Strand,
  Study,
  Vessel,
  VesselPattern,
  WalkStop,
} from './schema';
import type { Path } from './yaml-file';

export interface Reference {
  readonly path: Path;
  readonly to: Kind;
  readonly id: string;
}

const ref = (to: Kind, id: string, ...path: Path): Reference => ({ to, id, path });
const list = (to: Kind, ids: readonly string[], ...path: Path): Reference[] =>
  ids.map((id, i) => ref(to, id, ...path, i));

const apartFrom = (apart: readonly { readonly from: Other }[]): (Reference | null)[] =>
  apart.map(({ from }, i) =>
    from.is === 'injury'
      ? ref('injuries', from.injury, 'tellApart', i, 'from', 'injury')
      : from.is === 'card'
        ? ref('cards', from.card, 'tellApart', i, 'from', 'card')
        : null,
  );

const REFERENCES: { readonly [K in Kind]?: (record: never) => readonly (Reference | null)[] } = {
  joints: (r: JointRecord) => list('bones', r.bones, 'bones'),
  regions: (r: RegionRecord) => [ref('bones', r.bone, 'bone')],
  attachments: (r: Attachment) => [ref('regions', r.region, 'region'), ref('bones', r.bone, 'bone')],
  vessels: (r: Vessel) => [
    ...r.from.map((f, i) => ref('vessels', f.vessel, 'from', i, 'vessel')),
    ...r.ends.map((end, i) => (end.at === null ? null : ref('regions', end.at, 'ends', i, 'at'))),
    ...r.said.map((s, i) => ref('regions', s.region, 'said', i, 'region')),
  ],
  vesselPatterns: (r: VesselPattern) => r.choices.flatMap((c, i) => list('regions', c.bare, 'choices', i, 'bare')),
  boneSupplies: (r: BoneSupply) => [ref('bones', r.id, 'id')],
  mechanisms: (r: Mechanism) => [r.activity ? ref('activities', r.activity, 'activity') : null],
  activities: (r: Activity) => [r.otherEdge ? ref('activities', r.otherEdge, 'otherEdge') : null],
  injuries: (r: Injury) => [
    ref('bones', r.bone, 'bone'),
    ref('regions', r.region, 'region'),
    ref('regions', r.occursAt.region, 'occursAt', 'region'),
    ...list('mechanisms', r.mechanisms, 'mechanisms'),
    ...list('options', r.options, 'options'),
    ...list('factors', r.factors, 'factors'),
    ...list('bones', r.alsoBones, 'alsoBones'),
    ...list('regions', r.alsoRegions, 'alsoRegions'),
    ...list('codes', r.codes, 'codes'),
    ...list('codes', r.codesBeside, 'codesBeside'),
    ...list('codes', r.codeOfGrowing === undefined ? [] : [r.codeOfGrowing], 'codeOfGrowing'),
    ...list('strands', r.strands, 'strands'),
    ...r.classification.flatMap((c, i) =>
      (c.rules ?? []).map((rule, j) =>
        rule.by === 'place' ? ref('regions', rule.region, 'classification', i, 'rules', j, 'region') : null,
      ),
    ),
    ...r.classification.flatMap((c, i) =>
      list('options', c.usual?.options ?? [], 'classification', i, 'usual', 'options'),
    ),
    ...apartFrom(r.tellApart),
    ...r.stages.flatMap((s, i) => [
      ref('stages', s.stage, 'stages', i, 'stage'),
      s.option ? ref('options', s.option, 'stages', i, 'option') : null,
    ]),
  ],
  cards: (r: Card) => [
    ...list('bones', r.bones, 'bones'),
    ...list('regions', regionsOfCard(r), 'place', 'regions'),
    ...list('codes', r.codes, 'codes'),
    ...list('strands', r.strands, 'strands'),
    ...apartFrom(r.tellApart),
  ],
  rates: (r: Rate) => [
    ...list('options', r.options ?? [], 'options'),
    ref('troubles', r.trouble, 'trouble'),
    ref('sources', r.source, 'source'),
    ...list('injuries', r.injuries, 'injuries'),
    ...list('cards', r.cards, 'cards'),
  ],
  contradictions: (r: Contradiction) => [
    ...list('injuries', r.injuries, 'injuries'),
    ...list('cards', r.cards, 'cards'),
    ...r.sides.flatMap((side, i) => [
      ...list('studies', side.studies, 'sides', i, 'studies'),
      ...list('rates', side.rates, 'sides', i, 'rates'),
    ]),
  ],
  decisionRules: (r: DecisionRule) =>
    r.steps.flatMap(({ at }, i) =>
      at === null
        ? []
        : [
            ref('bones', at.bone, 'steps', i, 'at', 'bone'),
            at.region === null ? null : ref('regions', at.region, 'steps', i, 'at', 'region'),
          ],
    ),
  strands: (r: Strand) => [r.from ? ref('regions', r.from, 'from') : null, r.to ? ref('regions', r.to, 'to') : null],
  studies: (r: Study) => [
    ref('sources', r.source, 'source'),
    ref('options', r.option, 'option'),
    ...list('injuries', r.injuries, 'injuries'),
  ],
  walk: (r: WalkStop) => [ref('bones', r.bone, 'bone')],
  findWords: (r: FindWord) => [
    ...list('bones', r.bones, 'bones'),
    ...list('regions', r.regions, 'regions'),
    ...list('mechanisms', r.mechanisms, 'mechanisms'),
    ...list('findWords', r.covers, 'covers'),
    r.whenNot === undefined ? null : ref('findWords', r.whenNot, 'whenNot'),
    r.opposite === undefined ? null : ref('findWords', r.opposite, 'opposite'),
    r.says === undefined ? null : ref('findWords', r.says, 'says'),
  ],
  fixations: (r: Fixation) => [ref('bones', r.bone, 'bone')],
  cautions: (r: Caution) => [
    ...list('injuries', r.injuries, 'injuries'),
    ...list('options', r.options, 'options'),
    ...list('stages', r.stages, 'stages'),
    ...r.figures.flatMap((f, i) => [
      ...list('injuries', f.injuries, 'figures', i, 'injuries'),
      ...list('options', f.options, 'figures', i, 'options'),
    ]),
  ],
  stages: (r: Stage) => [
    ...r.opensNext.flatMap((c, i) => list('options', c.options, 'opensNext', i, 'options')),
    ...r.today.weights.flatMap((w, i) => list('options', w.options, 'today', 'weights', i, 'options')),
  ],
  stageSheets: (r: StageSheet) => [
    ref('stages', r.stage, 'stage'),
    ...list('injuries', r.injuries, 'injuries'),
    ...list('options', r.options, 'options'),
  ],
  dailyLife: (r: DailyTopic) => [
    ...list('stages', r.stages, 'stages'),
    ...r.says.flatMap((s, i) => [
      ...list('options', s.options, 'says', i, 'options'),
      ...list('injuries', s.injuries, 'says', i, 'injuries'),
      ...list('stages', s.stages ?? [], 'says', i, 'stages'),
    ]),
  ],
  factors: (r: Factor) => [
    ...list('injuries', r.besideForecastOf, 'besideForecastOf'),
    ...list('bones', r.studiedAt ?? [], 'studiedAt'),
    ...r.waits.map((each, i) => ('fromStudy' in each ? ref('studies', each.fromStudy, 'waits', i, 'fromStudy') : null)),
  ],
  returnTests: (r: ReturnTest) => list('stages', r.stages, 'stages'),
};

/** Every `{source, mark}` in a record, wherever it sits. */
export const evidenceIn = (value: unknown, path: Path = []): { path: Path; evidence: Evidence }[] => {
  if (value === null || typeof value !== 'object') return [];
  const record = value as Record<string, unknown>;
  const here =
    'source' in record && 'mark' in record && Object.keys(record).length === 2
      ? [{ path, evidence: record as unknown as Evidence }]
      : [];
  const entries: [string | number, unknown][] = Array.isArray(value)
    ? value.map((v, i) => [i, v])
    : Object.entries(record);
  return [...here, ...entries.flatMap(([key, inner]) => evidenceIn(inner, [...path, key]))];
};

export const referencesOf = (kind: Kind, record: Bone | Stage | Option | object): Reference[] => {
  const own = (REFERENCES[kind] as ((r: object) => readonly (Reference | null)[]) | undefined)?.(record) ?? [];
  const evidence = evidenceIn(record).map(({ path, evidence: e }) =>
    e.source ? ref('sources', e.source, ...path, 'source') : null,
  );
  return [...own, ...evidence].filter((r): r is Reference => r !== null);
};
