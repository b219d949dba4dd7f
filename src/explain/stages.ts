/** The stages of question 5: what each is, its usual weeks, what opens the next, what sends back, what may be done in it today. */
import type { Injury, Stage } from '../content/schema';
import type { OptionId, Reader, StageId } from '../ids';
import { find } from './build';
import { criteriaIn, isOfOptions, optionsInQuestion } from './in-question';
import { nextCheckFinding } from './next-check';
import { currentTreatment, tagOf } from './resolve';
import { isUnder12, mayGrow, type Situation } from './situation';
import {
  type ShareBand,
  sharesOf,
  stageOvershoot,
  stageSheet,
  stagesOf,
  stageToday,
  stageUsual,
  weightNotKnown,
  weightOf,
} from './stage-computes';
import { stageLoadFindings } from './stage-load-findings';
import { isFoundBeyond, isStagePassed, stageNow } from './stage-now';
import { type TextSpec, textFinding } from './texts';
import type { Finding } from './types';
import { usualOptions } from './usual-options';
import { weeksElsewhere } from './weeks-hold';

const PERCENT = 100;

const ownNotes = ({ facts }: Situation, stage: StageId) =>
  Object.hasOwn(facts.clinic.stages, stage) ? (facts.clinic.stages[stage] ?? null) : null;

/** What the clinic of this case set itself, as shares of body weight. */
const ownShare = (s: Situation, stage: StageId): ShareBand | null => {
  const set = ownNotes(s, stage)?.sharePercent;
  return set == null ? null : { low: set.low / PERCENT, high: set.high / PERCENT };
};

/**
 * The treatment whose weights are told: a confirmed one that no break anew ended, and under which the bone heals. What the content says of a boot it says of breaks that
 * usually get one, and of adults: under an injury for which it is not usual, in a foot that grows, after a mere report, or with another treatment said since that allows
 * less, weight as pain allows could do harm, and how much is for the clinic to say. That no weight is allowed may always be told.
 */
const weighedOption = (s: Situation, record: Stage): OptionId | null => {
  const { option, brokenAgain, healsBadly } = s.known;
  if (option === null) return null;
  // Where pain decides it can come to the whole weight.
  const most = (of: OptionId): number => weightOf(record, of)?.share?.high ?? 1;
  if (most(option.value) === 0) return option.value;
  const usual = usualOptions(s).options.includes(option.value);
  if (option.status !== 'confirmed' || brokenAgain !== null || healsBadly !== null || !usual || mayGrow(s)) return null;
  const inForce = currentTreatment(s.facts);
  const since = s.facts.treatments.slice(inForce === null ? 0 : s.facts.treatments.indexOf(inForce) + 1);
  return since.some(({ value }) => most(value.option) < most(option.value)) ? null : option.value;
};

/** A usual share that no treatment of this case gave is for whoever treats or tells of it, and no order to a patient. */
const notForPatients = (untold: boolean): { readonly readers?: readonly Reader[] } =>
  untold ? { readers: ['broadcast', 'study'] } : {};

/** The share that holds in a stage: the clinic's own, else the usual one; null where neither is a figure. */
const shareIn = (s: Situation, record: Stage): ShareBand | null =>
  ownShare(s, record.id) ?? weightOf(record, weighedOption(s, record))?.share ?? null;

/** The weight on the foot in one stage, and what it does to the bone. */
const weightFindings = (
  s: Situation,
  record: Stage,
  id: string,
  shares: readonly number[],
  bands: boolean,
): readonly Finding[] => {
  const { context, known } = s;
  const { content } = context;
  const option = weighedOption(s, record);
  const row = weightOf(record, option);
  const own = ownShare(s, record.id);
  if (row === null && own === null) return [];
  const { massKg } = known;
  const whatIf = (s.injury?.whatIf ?? false) || (massKg?.whatIf ?? false);
  const claims = [known.option, massKg].flatMap((k) => (k === null || k.whatIf ? [] : [tagOf(k)]));
  const today = { depth: 'more', compute: stageToday, claims, whatIf } as const;
  const weighed = { stage: record.id, option, massKg: massKg?.value ?? null };
  const share = shareIn(s, record);
  const partly = share !== null && share.high > 0 && share.low < 1;
  const readers = notForPatients(partly && own === null && option === null);
  return [
    ...(row === null
      ? []
      : [
          find(context, 'back', {
            ...today,
            id: `${id}.today`,
            inputs: { ...weighed, own: null },
            evidence: [row.evidence],
          }),
        ]),
    ...(own === null ? [] : [find(context, 'back', { ...today, id: `${id}.ownToday`, inputs: { ...weighed, own } })]),
    ...(partly
      ? content.weightPractice.flatMap((practice): readonly Finding[] => {
          const at = `${id}.practice.${practice.id}`;
          const told = textFinding(context, 'back', {
            id: at,
            at: { kind: 'weightPractice', practice: practice.id },
            whatIf,
            ...readers,
          });
          // Which share it was counted at is part of it: said only where the order comes down to that.
          if (practice.overshoot === undefined || massKg === null || share.low > practice.overshoot.told) return told;
          return [
            ...told,
            find(context, 'back', {
              id: `${at}.kilograms`,
              depth: 'more',
              compute: stageOvershoot,
              inputs: { stage: record.id, practice: practice.id, massKg: massKg.value },
              evidence: [practice.evidence],
              claims: massKg.whatIf ? [] : [tagOf(massKg)],
              whatIf,
              ...readers,
            }),
          ];
        })
      : []),
    ...(share === null
      ? []
      : stageLoadFindings(s, { stage: record.id, id, band: share, shares, own: own !== null, bands }).map((found) => ({
          ...found,
          ...readers,
        }))),
  ];
};

const partFindings = (s: Situation, record: Stage, id: string): readonly Finding[] => {
  const { context } = s;
  const { content } = context;
  const option = s.known.option?.value ?? null;
  const inQuestion = optionsInQuestion(option, s.injuryRecord);
  const child = isUnder12(s);
  const ownSide = s.facts.side.state === 'stated' ? s.facts.side.value : null;
  const whatIf = s.injury?.whatIf ?? false;
  const stage = record.id;
  const text = (name: string, at: TextSpec['at']): readonly Finding[] =>
    textFinding(context, 'back', { id: `${id}.${name}`, at, whatIf });
  return [
    ...text('what', { kind: 'stage', stage, part: 'what' }),
    ...criteriaIn(record, inQuestion, s.injuryRecord?.kind ?? null).flatMap((index) =>
      text(`opens.${index + 1}`, { kind: 'stageOpens', stage, index }),
    ),
    ...record.sendsBack.flatMap((_, index) => text(`back.${index + 1}`, { kind: 'stageSendsBack', stage, index })),
    ...content.stageSheets
      .filter(
        (sheet) =>
          sheet.stage === stage &&
          sheet.injuries.some((injury) => injury === s.injury?.value) &&
          isOfOptions(sheet.options, inQuestion),
      )
      .map((sheet) =>
        find(context, 'back', {
          id: `${id}.sheet.${sheet.id}`,
          depth: 'more',
          compute: stageSheet,
          // Orders of treatments that no clinic is known to have chosen would be read as one's own.
          ...notForPatients(
            s.known.option?.status !== 'confirmed' || s.known.brokenAgain !== null || s.known.healsBadly !== null,
          ),
          inputs: { sheet: sheet.id, of: option === null ? sheet.options.filter((id) => inQuestion.includes(id)) : [] },
          evidence: [sheet.evidence],
          whatIf,
        }),
      ),
    ...text('aids', { kind: 'stageAids', stage }),
    ...record.today.exercises.flatMap(({ id: exercise }, index) =>
      text(`exercise.${exercise}`, { kind: 'stageExercise', stage, index }),
    ),
    ...content.dailyLife
      .filter(({ stages, adultsOnly }) => (stages.length === 0 || stages.includes(stage)) && !(adultsOnly && child))
      .flatMap((topic) =>
        topic.says.flatMap(({ options, injuries, side, stages }, index) =>
          isOfOptions(options, inQuestion) &&
          (stages === undefined || stages.includes(stage)) &&
          (side === undefined || ownSide === null || side === ownSide) &&
          (injuries.length === 0 || injuries.some((injury) => injury === s.injury?.value))
            ? text(`daily.${topic.id}.${index + 1}`, { kind: 'daily', topic: topic.id, index })
            : [],
        ),
      ),
    ...content.returnTests
      .filter(({ stages }) => stages.includes(stage))
      .flatMap((test) => [
        ...text(`test.${test.id}`, { kind: 'returnTest', test: test.id }),
        ...(child
          ? []
          : test.norms.flatMap((_, index) =>
              text(`test.${test.id}.norm.${index + 1}`, { kind: 'returnNorm', test: test.id, index }),
            )),
      ]),
  ];
};

/** What a patient asks first of the way back: the weight that may go on the foot today, of the stage in which they are. */
const weightToday = (s: Situation, injury: Injury): readonly Finding[] => {
  const now = stageNow(s, injury, s.known.option?.value ?? null);
  const record = s.context.content.stages.find(({ id }) => id === now?.stage);
  if (record === undefined) return [];
  const option = weighedOption(s, record);
  const [row, own] = [weightOf(record, option), ownShare(s, record.id)];
  if (row === null && own === null) return [];
  const shared = { id: 'weightToday', depth: 'claim', readers: ['patient'] } as const;
  // Where less is certain the stricter word stands: none until the clinic has said how much.
  const settled = option !== null && s.known.option?.status === 'confirmed';
  if (own === null && now?.stated !== true && (isFoundBeyond(s) || (settled && isStagePassed(s, injury, option))))
    return [find(s.context, 'back', { ...shared, compute: weightNotKnown, inputs: {}, unsure: 'notStated' })];
  return [
    find(s.context, 'back', {
      ...shared,
      compute: stageToday,
      inputs: { stage: record.id, option, massKg: s.known.massKg?.value ?? null, own },
      evidence: row === null || own !== null ? [] : [row.evidence],
      claims: [s.known.option, s.known.massKg].flatMap((k) => (k === null || k.whatIf ? [] : [tagOf(k)])),
      whatIf: (s.injury?.whatIf ?? false) || (s.known.massKg?.whatIf ?? false),
    }),
  ];
};

/** How often the dangers of a treatment come, by what was counted in others: those that belong to this case. */
const dangerFigures = (s: Situation): readonly Finding[] => {
  const { context } = s;
  const inQuestion = optionsInQuestion(s.known.option?.value ?? null, s.injuryRecord);
  return context.content.cautions
    .filter(
      ({ kind, options, injuries }) =>
        kind === 'treatment danger' &&
        isOfOptions(options, inQuestion) &&
        (injuries.length === 0 || injuries.some((injury) => injury === s.injury?.value)),
    )
    .flatMap(({ id: caution, figures }) =>
      figures.flatMap((figure, index) =>
        isOfOptions(figure.options, inQuestion) &&
        (figure.injuries.length === 0 || figure.injuries.some((injury) => injury === s.injury?.value))
          ? textFinding(context, 'back', {
              id: `danger.${caution}.${index + 1}`,
              at: { kind: 'cautionFigure', caution, index },
            })
          : [],
      ),
    );
};

/** `bands`: with what the frame of the foot makes of each share, which takes some seconds. */
export const stageFindings = (s: Situation, injury: Injury, bands: boolean): readonly Finding[] => {
  const { context, known } = s;
  const option = known.option?.value ?? null;
  const elsewhere = weeksElsewhere(s);
  const whatIf = s.injury?.whatIf ?? false;
  const rows = stagesOf(injury, option).map((row) => ({
    row,
    record: context.content.stages.find((r) => r.id === row.stage),
  }));
  const bandsOfAll = rows.flatMap(({ record }) => (record === undefined ? [] : (shareIn(s, record) ?? [])));
  const shares = [...new Set(bandsOfAll.flatMap(sharesOf))].sort((a, b) => a - b);
  const found = rows.flatMap(({ row, record }, index) => {
    const id = `stage.${index + 1}`;
    return [
      find(context, 'back', {
        id,
        depth: 'more',
        compute: stageUsual,
        inputs: {
          injury: injury.id,
          option,
          index,
          start: known.start?.value ?? null,
          own: ownNotes(s, row.stage)?.weeks ?? null,
          elsewhere,
        },
        evidence: [row.evidence],
        claims: known.start === null ? [] : [tagOf(known.start)],
        whatIf,
      }),
      ...(record === undefined
        ? []
        : [...partFindings(s, record, id), ...weightFindings(s, record, id, shares, bands)]),
    ];
  });
  return [...weightToday(s, injury), ...nextCheckFinding(s, injury), ...found, ...dangerFigures(s)];
};
