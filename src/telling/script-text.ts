/** A script as plain text: running time, claim status, line. For a terminal, a file or a prompter. */
import { confidenceWord, fill, statusWord } from '../wording';
import { TELLING_PHRASES as P } from './phrases';
import type { Script } from './script';
import type { ScriptLine } from './script-lines';

/** `m:ss`, whole seconds gone by. */
export const clock = (seconds: number): string => {
  const whole = Math.floor(seconds + 1e-9);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};

/** The status a reader must not lose: that of the claim, else how sure the finding is. */
export const lineStatus = (line: ScriptLine): string | null => {
  if (line.stamp !== null) return statusWord(line.stamp);
  return line.confidence === null ? null : confidenceWord(line.confidence);
};

export const scriptText = (script: Script): string => {
  const spoken = script.lines.map((line) => {
    const status = lineStatus(line);
    return `[${clock(line.startSecond)}] ${status === null ? '' : `(${status}) `}${line.text}`;
  });
  const heading = fill(P['script.heading'], {
    length: clock(script.totalSeconds),
    seconds: script.seconds,
    rate: script.wordsPerMinute,
  });
  const notes = [script.sideLine, script.caseLine, script.demoLine, script.whatIfLine].filter((line) => line !== null);
  return [
    heading,
    ...notes,
    '',
    ...spoken,
    `[${clock(script.totalSeconds)}]`,
    '',
    P['script.unknownHeading'],
    ...script.unknowns.map(({ text }) => `- ${text}`),
    '',
    P['script.doNotSayHeading'],
    ...script.doNotSay.map((text) => `- ${text}`),
    '',
  ].join('\n');
};
