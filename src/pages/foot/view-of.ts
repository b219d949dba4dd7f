/** The named view that looks at a look-alike from the side of its bone where it lies. */
import type { LookAlikeRule } from '../../anatomy/look-alike-schema';
import type { ViewId } from '../../session/types';

export const viewOf = ({ shape }: LookAlikeRule): ViewId => {
  const [x, y, z] = shape.towards;
  const most = Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
  if (Math.abs(x) === most) return x > 0 ? 'inner' : 'outer';
  if (Math.abs(y) === most) return y > 0 ? 'top' : 'sole';
  return z > 0 ? 'front' : 'back';
};
