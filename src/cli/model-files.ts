/** The model files that are shipped: names and bytes. The same content gives the same bytes. */
import { assembleFoot, buildFoot, DEFAULT_FOOT, decodeGlb, encodeGlb, mirrorFoot, type Shape } from '../anatomy';
import type { Content } from '../content';
import { raySections, sectionsText } from '../mechanics';
import { bodyNotes } from '../wording';

export const modelFiles = async (shape: Shape, content: Content): Promise<ReadonlyMap<string, Uint8Array>> => {
  const right = buildFoot(shape, DEFAULT_FOOT, 'standing');
  const fine = buildFoot(shape, DEFAULT_FOOT, 'standing', 'fine');
  const notes = bodyNotes(content);
  const fineFile = await encodeGlb(fine, notes);
  // Cut on the foot as it will be read, whose corners the file has rounded.
  const read = assembleFoot(shape, DEFAULT_FOOT, 'standing', { ...decodeGlb(fineFile), level: 'fine' });
  return new Map([
    ['foot-right.glb', await encodeGlb(right, notes)],
    ['foot-left.glb', await encodeGlb(mirrorFoot(right), notes)],
    ['foot-right-fine.glb', fineFile],
    ['foot-right-sections.json', new TextEncoder().encode(sectionsText(raySections(read, shape, true)))],
  ]);
};
