/** The named view that looks at a look-alike from outside its bone. */
import type { LookAlikeRule } from '../../anatomy/look-alike-schema';
import { lookAlike } from '../../anatomy/look-alikes';
import { meshCentroid } from '../../anatomy/mesh';
import type { Foot } from '../../anatomy/types';
import type { ViewId } from '../../session/types';
import { subtract } from '../../units';

export const viewOf = (foot: Foot, rule: LookAlikeRule): ViewId => {
  const bone = foot.bones.get(rule.bone);
  if (bone === undefined) return 'outer';
  const [x, y, z] = subtract(lookAlike(foot, rule.id).at, meshCentroid(bone));
  const most = Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
  if (Math.abs(x) === most) return x > 0 ? 'inner' : 'outer';
  if (Math.abs(y) === most) return y > 0 ? 'top' : 'sole';
  return z > 0 ? 'front' : 'back';
};
