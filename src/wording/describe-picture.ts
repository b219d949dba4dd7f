/** The picture in words, made from the same explanation that the stage draws. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId, Reader } from '../ids';
import { PICTURE_LINES as P } from './en/basis';
import { STATUS_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { feedingLine } from './feeding-line';
import { fill, listRuns } from './fill';
import { type MainLoad, mainLoadsOf, walkingScale } from './load-scale';
import { namesFor } from './names';
import { formatQuantity } from './quantities';
import { plainText } from './types';

export interface PictureWords {
  readonly short: string;
  readonly long: string;
}

const inWords = (items: readonly string[]): string => plainText({ runs: listRuns(items, PARTS.and, PARTS.nothing) });

const sideLine = ({ side }: Explanation): string =>
  side.state === 'stated' ? P[`side.${side.side}`] : P[`side.${side.state}`];

const boneLines = (content: Content, explanation: Explanation, reader: Reader): readonly string[] => {
  const names = namesFor(content, reader);
  const { bone, zones, breakAt, part } = explanation;
  if (bone === null) return [P.noBone];
  const lines = [fill(P.bone, { bone: plainText({ runs: names.bone(bone) }) })];
  if (zones.length > 0) lines.push(fill(P.zones, { zones: inWords(zones.map((zone) => names.region(zone.region))) }));
  if (breakAt !== null) {
    const region = names.region(breakAt.region);
    lines.push(
      breakAt.whatIf
        ? fill(P.breakWhatIf, { region })
        : fill(P.break, { region, status: STATUS_WORDS[breakAt.status] }),
    );
  }
  // A joint that came apart has no line of a break: its part is named.
  if (breakAt === null && part !== null)
    lines.push(fill(P.part, { region: names.region(part.region), status: STATUS_WORDS[part.status] }));
  return lines;
};

type Loads = NonNullable<Explanation['loads']>;

const TRADE = {
  tibiaN: P['way.tibia.term'],
  achillesN: P['way.achilles.term'],
  fasciaN: P['way.fascia.term'],
} as const;
const PLAIN = { tibiaN: P['way.tibia'], achillesN: P['way.achilles'], fasciaN: P['way.fascia'] } as const;
const GROUND = {
  forefootN: P['way.forefoot'],
  outerEdgeN: P['way.outerEdge'],
  heelN: P['way.heel'],
} as const satisfies Partial<Record<MainLoad, string>>;

/** The way of the load from the same parts as it is drawn from, in body weights; in study in newtons as well. */
const wayLines = (loads: Loads, reader: Reader): readonly string[] => {
  const sums = mainLoadsOf(loads);
  const force = (main: MainLoad): string => {
    const weights = formatQuantity({ value: sums[main] / loads.told.weightN, unit: 'body weight' });
    if (reader !== 'study') return weights;
    return fill(P['way.newtons'], { newtons: formatQuantity({ value: Math.round(sums[main]), unit: 'N' }), weights });
  };
  // Beyond the theory the picture carries no numbers, and so do its words not.
  if (loads.forcesRank) return [P.way];
  const lines = (['tibiaN', 'achillesN', 'fasciaN'] as const).filter((main) => sums[main] > 0);
  const grounds = (['forefootN', 'outerEdgeN', 'heelN'] as const).filter((main) => sums[main] > 0);
  return [
    P.way,
    ...lines.map((main) => fill((reader === 'patient' ? PLAIN : TRADE)[main], { force: force(main) })),
    ...(grounds.length === 0
      ? []
      : [fill(P['way.ground'], { list: inWords(grounds.map((main) => fill(GROUND[main], { force: force(main) }))) })]),
  ];
};

const howLine = (explanation: Explanation, reader: Reader): string => {
  const { stations, loads } = explanation;
  const scale = walkingScale(explanation);
  const bands =
    stations === null || scale === null
      ? P.noStress
      : fill(loads?.ranksOnly ? P.stressRank : P.stress, {
          most: formatQuantity({ value: scale.topTimes, unit: 'count' }),
          peakAt: formatQuantity({ value: stations.peakTension.sMm, unit: 'mm' }),
        });
  return [...(loads === null ? [] : wayLines(loads, reader)), bands].join(' ');
};

const layerLine = (content: Content, explanation: Explanation, question: QuestionId, reader: Reader): string | null => {
  const names = namesFor(content, reader);
  switch (question) {
    case 'where':
      return null;
    case 'how':
      return howLine(explanation, reader);
    case 'why': {
      const parts = explanation.feeding?.parts ?? [];
      return parts.length === 0 ? P.noFeeding : fill(P.feeding, { parts: feedingLine(parts, names.region) });
    }
    case 'options': {
      const screw = explanation.questions.some(
        (each) => each.id === 'options' && each.findings.some((f) => f.shows.some((shown) => shown.kind === 'screw')),
      );
      return screw ? P.screw : P.noScrew;
    }
    case 'back':
      return P.back;
  }
};

export const describePicture = (
  content: Content,
  explanation: Explanation,
  question: QuestionId,
  reader: Reader,
): PictureWords => {
  const side = sideLine(explanation);
  const bones = boneLines(content, explanation, reader);
  const layer = layerLine(content, explanation, question, reader);
  const what = question === 'where' ? (bones.at(-1) ?? '') : (layer ?? '');
  return {
    short: fill(P.short, { side, what }),
    long: [side, ...bones, ...(layer === null ? [] : [layer]), P.drawn].join(' '),
  };
};
