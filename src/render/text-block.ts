/** Lines of text on a canvas: broken to a width, never smaller than asked, never cut off. */
import { FAMILIES } from '../stage';

export interface TextStyle {
  readonly px: number;
  readonly weight: number;
  readonly family: keyof typeof FAMILIES;
  readonly colour: string;
}

export const fontOf = ({ px, weight, family }: TextStyle): string => `${weight} ${px}px ${FAMILIES[family]}`;

/** Words into lines no wider than `width`; a word wider than that has a line of its own. */
export const breakLines = (text: string, width: number, measure: (text: string) => number): string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
};
