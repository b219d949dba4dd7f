/** A pose and a level of mesh as words of a command; standing and fine where they are not given. Throws RangeError for others. */
import { type Level, POSE_NAMES, type PoseName } from '../anatomy';

export const poseAndLevel = ([asked = 'standing', level = 'fine']: readonly string[]): {
  readonly pose: PoseName;
  readonly level: Level;
} => {
  if (level !== 'fine' && level !== 'display') throw new RangeError(`no level ${level}; there are fine and display`);
  const pose = POSE_NAMES.find((name) => name === asked);
  if (!pose) throw new RangeError(`no pose ${asked}; there are ${POSE_NAMES.join(', ')}`);
  return { pose, level };
};
