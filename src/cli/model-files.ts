/** The model files that are shipped: names and bytes. The same content gives the same bytes. */
import { buildFoot, DEFAULT_FOOT, encodeGlb, mirrorFoot, type NodeNotes, type Shape } from '../anatomy';
import type { Content } from '../content';

/** Terms and ids of the bones in open lists, as content has them. */
export const bodyNotes = (content: Content): ReadonlyMap<string, NodeNotes> =>
  new Map(
    content.bones.map((bone) => [
      bone.id,
      {
        term: bone.term,
        latin: bone.latin,
        ...(bone.uberon ? { uberon: bone.uberon } : {}),
        ...(bone.fma ? { fma: bone.fma } : {}),
      },
    ]),
  );

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
