/** What a model file says beside each bone: its term and its ids in open lists, as content has them. */
import type { NodeNotes } from '../anatomy';
import type { Content } from '../content/schema';

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
