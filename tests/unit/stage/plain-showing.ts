/** What the stage is told where nothing is asked for and nothing is tried: tests say only what they change. */
import type { Foot } from '../../../src/anatomy/types';
import { PAPER, tokensFrom } from '../../../src/stage/draw/tokens';
import { NOTHING_ASKED, type ShowingInput } from '../../../src/stage/showing';
import type { Content } from '../../../src/stage/types';

export const plainShowing = (foot: Foot, content: Content): ShowingInput => ({
  ...NOTHING_ASKED,
  foot,
  content,
  tokens: tokensFrom(PAPER),
  // Half a font size a letter: no fonts in Node.
  measure: (text, { px }) => text.length * px * 0.5,
  labelPx: 15,
  contourPx: 1.9,
  narrow: false,
});
