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
  readonly side: Side;
  readonly notes: ReadonlyMap<string, NodeNotes>;
}

const geometryOf = ({ positions, indices }: Surface): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
};

export const stlOf = (foot: Foot): Uint8Array<ArrayBuffer> => {
  const group = new Group();
  for (const surface of [...foot.bones.values(), ...foot.leg.values()]) group.add(new Mesh(geometryOf(surface)));
  const view = new STLExporter().parse(group, { binary: true });
  return new Uint8Array(view.buffer as ArrayBuffer, view.byteOffset, view.byteLength);
};

export const modelFile = async ({ kind, foot, side, notes }: ModelFileInput): Promise<Blob> => {
  const sided = side === 'left' ? mirrorFoot(foot) : foot;
  return kind === 'stl'
    ? new Blob([stlOf(sided)], { type: 'model/stl' })
    : new Blob([(await encodeGlb(sided, notes)) as Uint8Array<ArrayBuffer>], { type: 'model/gltf-binary' });
};
