/** Sentences about what the frame of the foot finds. */
import type { PullAgainstBreaks, StationNumber } from '../explain/load-messages';
import type { Message, MessageOf } from '../explain/messages';
import { BONE_IDS } from '../ids';
import { LARGE_TURN_DEG } from '../mechanics/foot/types';
import type { Quantity } from '../units';
import { changeOf } from './change';
import { CASE_FIGURE_WORDS, FACE_WORDS, SAYS_WORDS, STATION_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { fill, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { withOddRun } from './odd-run';
import { list, type Pen, quantity, sentence } from './pen';
import { formatNumber, formatQuantity } from './quantities';
import type { Run } from './types';

const LOAD_MESSAGES = [
  'loadPull',
  'loadRatio',
  'loadSide',
  'loadMostOfFive',
  'pullPending',
  'pullAgrees',
  'pullDisagrees',
  'pullUnsure',
  'pullSilent',
  'beamLeavesOut',
  'outsideBeam',
  'contributor',
  'contributorPublished',
  'oneStep',
  'loadForces',
  'loadStation',
  'loadAlong',
  'loadSensitivity',
  'loadFlagged',
  'loadUnknown',
  'otherEdge',
  'loadFails',
  'loadPending',
] as const;
export type LoadMessage = MessageOf<(typeof LOAD_MESSAGES)[number]>;

const IDS: ReadonlySet<string> = new Set(LOAD_MESSAGES);
export const isLoadMessage = (message: Message): message is LoadMessage => IDS.has(message.id);

/** A figure of the frame, or of the load case (`case.total`) or the reference (`reference.total`), in words. */
const figureName = (pen: Pen, id: string, reference: string): string => {
  const [which, name] = id.split('.');
  const words = CASE_FIGURE_WORDS[name as keyof typeof CASE_FIGURE_WORDS] as string | undefined;
  if (words !== undefined) return which === 'reference' ? fill(PARTS.ofReference, { what: words, reference }) : words;
  const record = pen.content.frame.find((r) => r.id === id);
  return record === undefined ? id : pen.reader === 'study' ? record.term : record.plain;
};

/** What moves the load on a bone, in the reader's words, and the step that is taken of it. */
export const loadFactorName = (pen: Pen, id: string): { readonly name: string; readonly step: string } => {
  const factor = pen.content.loadFactors.find((f) => f.id === id);
  return { name: (pen.reader === 'study' ? factor?.term : factor?.plain) ?? id, step: factor?.step ?? '' };
};

/** Where the pull is highest: its stretch, and the parts of the bone that it covers as far as the draws agree. */
const plateauWords = (
  pen: Pen,
  { plateau, parts, perhaps, spoken }: Pick<PullAgainstBreaks, 'plateau' | 'parts' | 'perhaps' | 'spoken'>,
) => {
  const { region } = namesFor(pen.content, pen.reader);
  const some = (named: PullAgainstBreaks['parts']): readonly Run[] => list(named.map(region));
  const sure = parts.length > 0;
  return {
    plateau: plateauRuns(pen, plateau),
    spoken: stretch(spoken),
    peak: !sure
      ? perhaps.length > 0
        ? PARTS.partsInRuns
        : PARTS.middleOfBone
      : perhaps.length > 0
        ? fillRuns(PARTS.partsAndPerhaps, { parts: some(parts), perhaps: some(perhaps) })
        : some(parts),
  };
};

/** N -120 N (-180 to -60). Where the draws leave open which way: from where to where. */
const stationNumber = (pen: Pen, { of, value, agreed }: StationNumber): readonly Run[] =>
  fillRuns(agreed.enough ? PARTS.stationNumber : PARTS.stationOpen, {
    what: STATION_WORDS[of],
    value: quantity(pen, value),
    from: pen.number(formatNumber(value.lowHigh?.[0] ?? value.value)),
    to: pen.number(formatQuantity({ value: value.lowHigh?.[1] ?? value.value, unit: value.unit })),
  });

export const loadRuns = (pen: Pen, message: LoadMessage): readonly Run[] => {
  const names = namesFor(pen.content, pen.reader);
  const { region } = names;
  const number = (value: number): Run => pen.number(formatNumber(value));
  switch (message.id) {
    case 'loadPull': {
      const a = message.args;
      const mass = formatQuantity(a.mass);
      const note = fill(a.massAssumed ? PARTS.massAssumed : PARTS.massStated, { mass });
      const sure = a.sideUnsure ? (a.pressedUnsure ? 'neither' : 'pressed') : a.pressedUnsure ? 'pulled' : 'both';
      return sentence(pen, `loadPull.${sure}`, {
        activity: names.activity(a.activity),
        massNote: a.carried.value > 0 ? `${note} ${fill(PARTS.carried, { mass: formatQuantity(a.carried) })}` : note,
        plateau: plateauRuns(pen, a.plateau),
        pulledSide: FACE_WORDS[a.pulledSide],
        pressedSide: FACE_WORDS[a.pressedSide],
      });
    }
    case 'loadRatio': {
      const a = message.args;
      const [low, high] = a.ratio.lowHigh ?? [a.ratio.value, a.ratio.value];
      const unsure = a.ranking ? 'cannotTell' : 'unsure';
      const told = a.ranking ? (a.more ? 'more' : 'less') : 'sized';
      const key = a.same ? 'same' : a.agreed.enough ? told : unsure;
      return withOddRun(pen, a.agreed, `loadRatio.${key}`, {
        share: quantity(pen, a.agreed.share),
        activity: names.activity(a.activity),
        reference: names.activity(a.reference),
        times: pen.number(`${formatNumber(a.ratio.value)} times`),
        low: number(low),
        high: number(high),
        draws: String(a.draws),
        unsolved: String(a.unsolved),
      });
    }
    case 'loadSide': {
      const { side, agreed } = message.args;
      return sentence(pen, `loadSide.${agreed.enough ? 'enough' : 'cannotTell'}`, {
        side: FACE_WORDS[side],
        share: quantity(pen, agreed.share),
      });
    }
    case 'loadMostOfFive': {
      const { most, agreed } = message.args;
      const key = agreed.enough ? (most ? 'most' : 'notMost') : 'cannotTell';
      return withOddRun(pen, agreed, `loadMostOfFive.${key}`, { share: quantity(pen, agreed.share) });
    }
    case 'pullPending':
      return sentence(pen, 'pullPending', { occurs: region(message.args.occursRegion) });
    case 'pullSilent': {
      const { beyond, occursRegion } = message.args;
      const occurs = region(occursRegion);
      if (beyond === null) return sentence(pen, 'pullSilent.alone', { occurs });
      return sentence(pen, beyond.parts.length > 0 ? 'pullSilent.beyond' : 'pullSilent.unsure', {
        occurs,
        ...plateauWords(pen, beyond),
      });
    }
    case 'pullAgrees':
    case 'pullDisagrees':
    case 'pullUnsure': {
      const { occursRegion, edge, agreed } = message.args;
      const key = message.id === 'pullUnsure' ? message.id : (`${message.id}.${edge ? 'edge' : 'inside'}` as const);
      return withOddRun(pen, agreed, key, {
        ...plateauWords(pen, message.args),
        occurs: region(occursRegion),
        share: quantity(pen, agreed.share),
      });
    }
    case 'beamLeavesOut':
      return sentence(pen, 'beamLeavesOut', { region: region(message.args.region) });
    case 'outsideBeam':
      return sentence(pen, 'outsideBeam', {
        stretches: list(
          message.args.stretches.map(({ from, to }) =>
            fill(PARTS.stretch, { from: formatQuantity(from), to: formatQuantity(to) }),
          ),
        ),
      });
    case 'contributor': {
      const { contributor, ratio, raises, agreed, ranking, byTask } = message.args;
      const told = changeOf(pen, ratio, raises, agreed);
      const { values } = told;
      const key = told.key === 'hardly' || !ranking ? told.key : (`${told.key}Rank` as const);
      const { name, step } = loadFactorName(pen, contributor);
      // Where the sign depends on the task, so does the place.
      if (byTask) return sentence(pen, 'contributor.byTask', { contributor: name, step });
      const { moves, by, sized, agreed: sure } = message.args.shift;
      // That nothing moves is news to whoever checks it, and eleven times the same line to everybody else.
      const change = withOddRun(pen, agreed, `contributor.${key}`, { contributor: name, step, ...values });
      if ((moves === 'stays' || moves === 'cannotTell') && pen.reader !== 'study') return change;
      const size = sized ? ('sized' as const) : ('rank' as const);
      return joined([
        ...change,
        { text: ' ' },
        ...withOddRun(
          pen,
          sure,
          moves === 'cannotTell' ? 'contributorShift.cannotTell' : `contributorShift.${moves}.${size}`,
          {
            by: quantity(pen, by),
            share: quantity(pen, sure.share),
          },
        ),
      ]);
    }
    case 'contributorPublished': {
      const { contributor, index } = message.args;
      const factor = pen.content.loadFactors.find((f) => f.id === contributor);
      const published = factor?.published[index];
      return sentence(pen, 'contributorPublished', {
        contributor: loadFactorName(pen, contributor).name,
        says: published === undefined ? '' : SAYS_WORDS[published.says],
        text: published?.text ?? '',
      });
    }
    case 'oneStep':
      return sentence(pen, `oneStep.${message.args.verdict}`, {
        ratio: quantity(pen, message.args.ratio),
        factor: quantity(pen, message.args.factor),
        activity: names.activity(message.args.activity),
        reference: names.activity(message.args.reference),
      });
    case 'loadForces':
      return sentence(pen, 'loadForces', {
        activity: names.activity(message.args.activity),
        fascia: quantity(pen, message.args.fascia),
        achilles: quantity(pen, message.args.achilles),
        tibia: quantity(pen, message.args.tibia),
      });
    case 'loadStation': {
      const { at, activity, reference, numbers, open, all, draws } = message.args;
      return sentence(pen, open === 0 ? 'loadStation.all' : 'loadStation.some', {
        at: quantity(pen, at),
        activity: names.activity(activity),
        numbers: list(numbers.map((one) => stationNumber(pen, one))),
        measure: fill(
          reference === null ? PARTS.stressOfMost : PARTS.stressOfReference,
          reference === null ? {} : { reference: names.activity(reference) },
        ),
        sure: String(all - open),
        all: String(all),
        draws: String(draws),
      });
    }
    case 'loadAlong': {
      const { activity, ratio, leg, banded } = message.args;
      const values = { activity: names.activity(activity), ratio: quantity(pen, ratio) };
      if (leg === null) return sentence(pen, banded ? 'loadAlong.ranking' : 'loadAlong.pending', values);
      return sentence(pen, `loadAlong.${leg.from}`, {
        ...values,
        along: quantity(pen, leg.along),
        moment: quantity(pen, leg.moment),
      });
    }
    case 'loadSensitivity': {
      const { standOut, chance, figures, draws } = message.args;
      const [most, second] = standOut;
      const named = (one: typeof most) => ({
        name: one === undefined ? '' : figureName(pen, one.figure, PARTS.theReference),
        share: one === undefined ? '' : quantity(pen, one.share),
      });
      return sentence(pen, `loadSensitivity.${most === undefined ? 'none' : second === undefined ? 'one' : 'two'}`, {
        most: named(most).name,
        mostShare: named(most).share,
        second: named(second).name,
        secondShare: named(second).share,
        chance: quantity(pen, chance),
        figures: String(figures),
        draws: String(draws),
      });
    }
    case 'loadFlagged':
      return sentence(pen, `loadFlagged.${message.args.flag}`, {
        degrees: formatQuantity({ value: LARGE_TURN_DEG, unit: 'deg' }),
      });
    case 'loadUnknown': {
      const activity = pen.content.activities.find((a) => a.id === message.args.activity);
      return sentence(pen, 'loadUnknown', { unknown: activity?.unknown[pen.reader] ?? '' });
    }
    case 'otherEdge':
      return sentence(pen, 'otherEdge', { other: names.activity(message.args.other) });
    case 'loadFails':
      return sentence(pen, `loadFails.${message.args.problem}`, { at: failsAt(pen, message.args.at) });
    case 'loadPending':
      return sentence(pen, 'loadPending');
  }
};

/** " (second metatarsal)", or nothing. */
const failsAt = (pen: Pen, at: MessageOf<'loadFails'>['args']['at']): string => {
  if (at === null) return '';
  const bone = BONE_IDS.find((each) => each === at);
  return ` (${bone === undefined ? figureName(pen, at, at) : namesFor(pen.content, pen.reader).bone(bone)})`;
};

/** 34.5 mm (32 to 40) to 46.9 mm (44 to 51); without its spread: 34.5 mm to 46.9 mm. */
const plateauRuns = (pen: Pen, { from, to }: MessageOf<'loadPull'>['args']['plateau']): readonly Run[] =>
  fillRuns(PARTS.stretch, { from: quantity(pen, from), to: quantity(pen, to) });

/** 33.5 to 52.1 mm. */
const stretch = ({ value, unit, lowHigh }: Quantity): string => {
  const [from, to] = lowHigh ?? [value, value];
  return from === to
    ? formatQuantity({ value, unit })
    : fill(PARTS.stretch, { from: formatNumber(from), to: formatQuantity({ value: to, unit }) });
};
