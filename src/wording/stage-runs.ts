/** Sentences about what may be done in a stage: weight on the foot, what single clinics wrote, what a share does to the bone. */
import type { Message, MessageOf } from '../explain/messages';
import { textAt } from '../explain/texts';
import type { Quantity } from '../units';
import { ENDPOINT_WORDS, EVENT_WORDS } from './en/lists';
import { STAGE_PARTS } from './en/stage-messages';
import { fill } from './fill';
import { namesFor } from './names';
import { withOddRun } from './odd-run';
import { type Pen, quantity, sentence } from './pen';
import { formatDate, formatNumber, formatWeeks } from './quantities';
import { sourceName, sourceSaid } from './sources';
import type { Run } from './types';

const STAGE_MESSAGES = [
  'stageToday',
  'stageOvershoot',
  'stageSheet',
  'stageLoad',
  'stageAtReview',
  'nextCheck',
  'stepNotKnown',
  'weightNotKnown',
  'backSooner',
  'backRunning',
  'backHarm',
  'stageLoadPending',
  'stageNoLoad',
] as const;
export type StageMessage = MessageOf<(typeof STAGE_MESSAGES)[number]>;

const IDS: ReadonlySet<string> = new Set(STAGE_MESSAGES);
export const isStageMessage = (message: Message): message is StageMessage => IDS.has(message.id);

const ends = ({ value, lowHigh }: Quantity): readonly [number, number] => lowHigh ?? [value, value];

const range = (low: string, high: string): string => (low === high ? low : fill(STAGE_PARTS.range, { low, high }));
const percents = (low: number, high: number): string => {
  const [from, to] = [low, high].map((share) => String(Math.round(100 * share))) as [string, string];
  return `${range(from, to)} %`;
};
const kilograms = (of: Quantity): string => {
  const [low, high] = ends(of).map(formatNumber) as [string, string];
  return `${range(low, high)} kg`;
};

const todayRuns = (
  pen: Pen,
  { own, treated, share, kilograms: kg }: MessageOf<'stageToday'>['args'],
): readonly Run[] => {
  const values = {
    own: own ? STAGE_PARTS.own : treated ? '' : STAGE_PARTS[`untold.${pen.reader}`],
    share: share === null ? '' : pen.number(percents(...ends(share))),
    kilograms: kg === null ? '' : pen.number(kilograms(kg)),
  };
  const partly = share !== null && ends(share)[1] > 0 && ends(share)[0] < 1;
  // A usual share is no order: whose treatment no clinic confirmed is told to wait for one.
  if (partly && !own && !treated && pen.reader === 'patient') return sentence(pen, 'stageToday.untold', values);
  if (share === null) return sentence(pen, treated ? 'stageToday.asPain' : 'stageToday.untold', values);
  const [low, high] = ends(share);
  if (high === 0) return sentence(pen, 'stageToday.none', values);
  const scale = kg !== null;
  if (low === 1) return sentence(pen, scale ? 'stageToday.wholeScale' : 'stageToday.whole', values);
  if (own) return sentence(pen, scale ? 'stageToday.ownScale' : 'stageToday.ownShare', values);
  return sentence(pen, scale ? 'stageToday.scale' : 'stageToday.share', values);
};

const weeksOf = (weeks: Quantity | null, openEnded: boolean): string => {
  if (weeks === null) return STAGE_PARTS.noWeeks;
  const [from, to] = ends(weeks);
  const [low, high] = [formatNumber(from), formatNumber(to)];
  if (openEnded) return from === 0 ? STAGE_PARTS.fromStart : fill(STAGE_PARTS.weeksFrom, { low });
  return to === 0 ? STAGE_PARTS.atOnce : fill(STAGE_PARTS.weeks, { low, high });
};

const sheetRuns = (pen: Pen, { sheet: id, weeks, openEnded, of }: MessageOf<'stageSheet'>['args']): readonly Run[] => {
  const { option } = namesFor(pen.content, pen.reader);
  const sheet = pen.content.stageSheets.find((s) => s.id === id);
  const source = sheet?.evidence.source ?? null;
  return sentence(pen, 'stageSheet', {
    weeks: pen.number(weeksOf(weeks, openEnded)),
    of: of.map((each) => fill(STAGE_PARTS.sheetOf, { option: option(each) })).join(''),
    text: sheet?.what[pen.reader] ?? '',
    source: source === null ? '' : sourceSaid(pen.content, source, pen.reader),
  });
};

const loadRuns = (pen: Pen, args: MessageOf<'stageLoad'>['args']): readonly Run[] => {
  const { way, at, reference, speaks, low, high, ranking, less, agreed } = args;
  const values = {
    way: STAGE_PARTS[`way.${way}`],
    at: STAGE_PARTS[`at.${at}`],
    reference: namesFor(pen.content, pen.reader).activity(reference),
    share: percents(low.share.value, high.share.value),
    percent: pen.number(percents(low.ratio.value, high.ratio.value)),
    band: percents(ends(low.ratio)[0], ends(high.ratio)[1]),
    agree: quantity(pen, agreed.share),
  };
  if (!speaks) return sentence(pen, 'stageLoad.oneJoint', values);
  if (!ranking) return sentence(pen, 'stageLoad.size', values);
  return withOddRun(pen, agreed, `stageLoad.${!agreed.enough ? 'cannotTell' : less ? 'less' : 'more'}`, values);
};

/** Criteria are sentences of their own: one after the other. */
const reviewRuns = (pen: Pen, args: MessageOf<'stageAtReview'>['args']): readonly Run[] => {
  const { stage, next, stated, opens, sendsBack } = args;
  const names = namesFor(pen.content, pen.reader);
  const texts = (list: typeof opens): string =>
    list.flatMap((at) => textAt(pen.content, at)?.tellings[pen.reader] ?? []).join(' ');
  return sentence(pen, next === null ? 'stageAtReview.last' : 'stageAtReview.opens', {
    here: fill(stated ? STAGE_PARTS.hereNow : STAGE_PARTS.hereFirst, { stage: names.stage(stage) }),
    next: next === null ? '' : names.stage(next),
    opens: opens.length === 0 ? STAGE_PARTS.allMet : texts(opens),
    // Before the first stage there is none to go back to.
    watch: STAGE_PARTS[stage === pen.content.stages[0]?.id ? 'watchFirst' : 'watchBack'],
    sendsBack: texts(sendsBack),
  });
};

const checkRuns = (
  pen: Pen,
  { stage, also, next, stated, own, ask, wound, week, date }: MessageOf<'nextCheck'>['args'],
): readonly Run[] => {
  const names = namesFor(pen.content, pen.reader);
  const number = week === null ? '' : formatNumber(week.value);
  const when =
    week === null
      ? STAGE_PARTS[ask ? 'check.askWeek' : 'check.noWeek']
      : own
        ? fill(STAGE_PARTS['check.ownWeek'], { week: number })
        : date === null
          ? fill(STAGE_PARTS['check.week'], { week: number })
          : fill(STAGE_PARTS['check.weekDate'], { week: number, date: formatDate(date) });
  return sentence(pen, next === null ? 'nextCheck.last' : 'nextCheck.opens', {
    here:
      also === null || stated
        ? fill(STAGE_PARTS[stated ? 'check.hereNow' : 'check.hereFirst'], { stage: names.stage(stage) })
        : fill(STAGE_PARTS['check.hereTogether'], { stage: names.stage(stage), also: names.stage(also) }),
    next: next === null ? '' : names.stage(next),
    wound: wound ? STAGE_PARTS['check.wound'] : '',
    // The clinic's own week has no source, and so no mark.
    when: own ? when : pen.number(when),
  });
};

export const stageRuns = (pen: Pen, message: StageMessage): readonly Run[] => {
  switch (message.id) {
    case 'stageToday':
      return todayRuns(pen, message.args);
    case 'stageOvershoot':
      return sentence(pen, 'stageOvershoot', {
        told: pen.number(kilograms(message.args.told)),
        reached: pen.number(kilograms(message.args.reached)),
      });
    case 'stageSheet':
      return sheetRuns(pen, message.args);
    case 'stageLoad':
      return loadRuns(pen, message.args);
    case 'stageAtReview':
      return reviewRuns(pen, message.args);
    case 'backSooner': {
      const { stage, begins, endpoint, weeks, from } = message.args;
      return sentence(pen, begins ? 'backSooner.begins' : 'backSooner.goesOn', {
        stage: namesFor(pen.content, pen.reader).stage(stage),
        weeks: pen.number(formatWeeks(weeks)),
        until: ENDPOINT_WORDS[endpoint],
        from: fill(STAGE_PARTS.week, { number: formatNumber(from.value) }),
      });
    }
    case 'backRunning': {
      const { week } = message.args;
      return week === null
        ? sentence(pen, 'backRunning.signs')
        : sentence(pen, 'backRunning.week', {
            week: pen.number(fill(STAGE_PARTS.week, { number: formatNumber(week.value) })),
          });
    }
    case 'backHarm': {
      const { endpoint, study, what, count, of, unit } = message.args;
      const row = pen.content.studies.find(({ id }) => id === study);
      return sentence(pen, 'backHarm', {
        until: ENDPOINT_WORDS[endpoint],
        count: pen.number(String(count)),
        of: pen.number(String(of)),
        unit: unit === 'breaks' ? STAGE_PARTS.ofBreaks : '',
        what: EVENT_WORDS[what],
        source: row === undefined ? '' : sourceName(pen.content, row.source),
      });
    }
    case 'nextCheck':
      return checkRuns(pen, message.args);
    case 'stepNotKnown':
    case 'weightNotKnown':
    case 'stageLoadPending':
    case 'stageNoLoad':
      return sentence(pen, message.id);
  }
};
