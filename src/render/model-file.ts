/** A foot as a file: GLB (glTF 2.0, metres, nodes named by bone) or binary STL (mm, true size, one closed surface a bone). */
import { BufferAttribute, BufferGeometry, Group, Mesh } from 'three';
import { STLExporter } from 'three/addons/exporters/STLExporter.js';
import { encodeGlb, type NodeNotes } from '../anatomy/glb';
import { mirrorFoot } from '../anatomy/mirror';
import type { Foot, Mesh as Surface } from '../anatomy/types';
import type { Side } from '../ids';

export interface ModelFileInput {
  readonly kind: 'glb' | 'stl';
  /** A right foot. */
  readonly foot: Foot;
  /** Null: not stated, drawn as a right foot. */
  readonly side: Side | null;
  /** Something of it was changed to see what would follow. */
  readonly whatIf: boolean;
  readonly notes: ReadonlyMap<string, NodeNotes>;
}

const geometryOf = ({ positions, indices }: Surface): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
};

/** What a file says of itself: a foot whose side nobody stated is not passed on as a right one, nor a what-if as a person's. */
const aboutOf = ({ foot, side, whatIf }: ModelFileInput) => ({
  ...(side === null ? { sideStated: 'not stated, drawn as a right foot' } : {}),
  ...(whatIf ? { whatIf: 'a what-if, not the foot of the case' } : {}),
  ...(foot.pose === 'standing' ? {} : { held: foot.pose }),
});

const HEADER_BYTES = 80;

const stlOf = (foot: Foot, about: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> => {
  const group = new Group();
  for (const surface of [...foot.bones.values(), ...foot.leg.values()]) group.add(new Mesh(geometryOf(surface)));
  const view = new STLExporter().parse(group, { binary: true });
  const bytes = new Uint8Array(view.buffer as ArrayBuffer, view.byteOffset, view.byteLength);
  const header = ['Underfoot, mm', ...Object.values(about)].join('; ');
  bytes.set(new TextEncoder().encode(header).subarray(0, HEADER_BYTES));
  return bytes;
};

export const modelFile = async (input: ModelFileInput): Promise<Blob> => {
  const { kind, foot, side, notes } = input;
  const about = aboutOf(input);
  const sided = side === 'left' ? mirrorFoot(foot) : foot;
  return kind === 'stl'
    ? new Blob([stlOf(sided, about)], { type: 'model/stl' })
    : new Blob([(await encodeGlb(sided, notes, about)) as Uint8Array<ArrayBuffer>], { type: 'model/gltf-binary' });
};
