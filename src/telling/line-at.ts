/** Which line of a timed script is being spoken at a second: the last that has begun; the first before it starts. -1 without lines. */
import type { ScriptLine } from './script-lines';

export const lineAt = (lines: readonly Pick<ScriptLine, 'startSecond'>[], second: number): number =>
  Math.max(
    lines.findLastIndex(({ startSecond }) => startSecond <= second),
    Math.min(0, lines.length - 1),
  );
