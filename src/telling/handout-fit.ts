/**
 * How much text goes on one handout page. The page is the smaller of both papers in each direction: A4 is narrower (210 mm), US
 * Letter is lower (279 mm). Text is counted in lines of a column; a sentence is taken whole or left out, never cut.
 *
 * Measured in the printed page on Letter (10 pt on 13.5 pt, two columns of 94 mm, all frames on): 62.3 lines counted here took
 * 142 mm and left the figure 59 mm of height. So 70 lines leave it about 45 mm. The browser test prints both papers and looks
 * that nothing is cut and that the figure keeps its size.
 */
export const HANDOUT_LIMITS = {
  columnLetters: 50,
  columnLines: 70,
  stages: 8,
  criteriaPerStage: 2,
  sources: 4,
  disclaimers: 3,
  sourceLetters: 150,
} as const;

/** A heading takes a line, the rule above it and the space around both. */
export const HEADING_LINES = 1.9;

/** Lines of a text broken at blanks, as a browser does it. */
export const linesOf = (text: string, letters: number = HANDOUT_LIMITS.columnLetters): number => {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/).filter((w) => w.length > 0)) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed <= letters) used = needed;
    else {
      lines += Math.max(1, Math.ceil(word.length / letters)) - (used === 0 ? 1 : 0);
      used = word.length % letters || Math.min(word.length, letters);
    }
  }
  return lines;
};

export interface Wish {
  readonly key: string;
  readonly lines: number;
}

/** Takes wishes in order while there is room; a wish that does not fit is left out and the next one is tried. */
export const takeWhileRoom = (wishes: readonly Wish[], room: number): ReadonlySet<string> => {
  let left = room;
  const taken = new Set<string>();
  for (const wish of wishes) {
    if (wish.lines > left) continue;
    left -= wish.lines;
    taken.add(wish.key);
  }
  return taken;
};
