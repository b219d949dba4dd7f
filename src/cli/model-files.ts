/** The model files that are shipped: names and bytes. The same content gives the same bytes. */
import { buildFoot, DEFAULT_FOOT, encodeGlb, mirrorFoot, type Shape } from '../anatomy';
import type { Content } from '../content';
import { bodyNotes } from '../wording';

export const modelFiles = async (shape: Shape, content: Content): Promise<ReadonlyMap<string, Uint8Array>> => {
  const right = buildFoot(shape, DEFAULT_FOOT, 'standing');
  const fine = buildFoot(shape, DEFAULT_FOOT, 'standing', 'fine');
  const notes = bodyNotes(content);
  return new Map([
    ['foot-right.glb', await encodeGlb(right, notes)],
    ['foot-left.glb', await encodeGlb(mirrorFoot(right), notes)],
    ['foot-right-fine.glb', await encodeGlb(fine, notes)],
  ]);
};
