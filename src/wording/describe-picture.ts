/** The picture in words, made from the same explanation that the stage draws. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId, Reader } from '../ids';
import { PICTURE_LINES as P } from './en/basis';
import { STATUS_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { feedingLine } from './feeding-line';
import { fill, listRuns } from './fill';
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
  const { bone, zones, breakAt } = explanation;
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
  return lines;
};

const layerLine = (content: Content, explanation: Explanation, question: QuestionId, reader: Reader): string | null => {
  const names = namesFor(content, reader);
  switch (question) {
    case 'where':
      return null;
    case 'how': {
      const peak = explanation.stations?.peakTension;
      return peak === undefined
        ? P.noStress
        : fill(P.stress, { peakAt: formatQuantity({ value: peak.sMm, unit: 'mm' }) });
    }
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
