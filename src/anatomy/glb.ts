/**
 * The foot as a GLB file (glTF 2.0, Khronos): metres, +Y up, one node a bone named by its id and one for the outline. Bones have
 * normals, so that other programs shade them as round as they are; the outline has none and is shaded flat. The reader reads what this writer writes, not any glTF.
 */
import { type BoneId, isBoneId, LEG_IDS, type LegId } from '../ids';
import { meshBounds, rounded } from './mesh';
import type { Foot, Mesh } from './types';

const MAGIC = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BIN_CHUNK = 0x004e4942;
const [FLOAT, UNSIGNED_SHORT, ARRAY_BUFFER, ELEMENT_ARRAY_BUFFER] = [5126, 5123, 34962, 34963];
const MM_PER_METRE = 1000;
const OUTLINE = 'outline';

const padded = (bytes: Uint8Array, filler: number): Uint8Array => {
  const out = new Uint8Array(Math.ceil(bytes.length / 4) * 4).fill(filler);
  out.set(bytes);
  return out;
};

/** What is written beside a bone's node: its term and its ids in open lists. */
export type NodeNotes = Readonly<Record<string, string>>;

const metresOf = (mesh: Mesh): Float32Array => mesh.positions.map((p) => p / MM_PER_METRE);

/** Async so that a heavier writer may take its place. Two calls with equal feet give equal bytes. */
export const encodeGlb = async (
  foot: Foot,
  notes: ReadonlyMap<string, NodeNotes>,
  /** What else is to be known of the whole foot. */
  about: NodeNotes = {},
): Promise<Uint8Array> => {
  const all: [string, Mesh][] = [...foot.bones, ...foot.leg, [OUTLINE, foot.outline]];
  const named = all.map(([name, mesh]): [string, Mesh] => [name, rounded(mesh)]);
  const parts: Uint8Array[] = [];
  const bufferViews: object[] = [];
  const accessors: object[] = [];
  let offset = 0;
  const push = (bytes: Uint8Array, target: number): number => {
    const whole = padded(bytes, 0);
    bufferViews.push({ buffer: 0, byteOffset: offset, byteLength: bytes.length, target });
    parts.push(whole);
    offset += whole.length;
    return bufferViews.length - 1;
  };
  const meshes = named.map(([name, mesh]) => {
    const metres = metresOf(mesh);
    const bounds = meshBounds({ positions: metres, indices: mesh.indices });
    const count = metres.length / 3;
    const positionView = push(new Uint8Array(metres.buffer), ARRAY_BUFFER);
    accessors.push({ bufferView: positionView, componentType: FLOAT, count, type: 'VEC3', ...bounds });
    const indexView = push(new Uint8Array(Uint16Array.from(mesh.indices).buffer), ELEMENT_ARRAY_BUFFER);
    accessors.push({
      bufferView: indexView,
      componentType: UNSIGNED_SHORT,
      count: mesh.indices.length,
      type: 'SCALAR',
    });
    const indices = accessors.length - 1;
    const attributes: Record<string, number> = { POSITION: indices - 1 };
    if (mesh.normals !== undefined) {
      const view = push(new Uint8Array(mesh.normals.buffer), ARRAY_BUFFER);
      accessors.push({ bufferView: view, componentType: FLOAT, count, type: 'VEC3' });
      attributes.NORMAL = accessors.length - 1;
    }
    return { name, primitives: [{ attributes, indices, material: 0 }] };
  });
  const json = {
    asset: { version: '2.0', generator: 'Underfoot' },
    scene: 0,
    scenes: [{ name: 'foot', nodes: named.map((_, i) => i) }],
    nodes: named.map(([name], i) => ({ name, mesh: i, extras: { id: name, ...notes.get(name) } })),
    meshes,
    materials: [{ name: 'bone', pbrMetallicRoughness: { metallicFactor: 0, roughnessFactor: 1 } }],
    accessors,
    bufferViews,
    buffers: [{ byteLength: offset }],
    extras: {
      ...foot.parameters,
      pose: foot.pose,
      side: foot.side,
      note: 'illustration: shape modelled on few feet; outline drawn',
      ...about,
    },
  };
  const text = padded(new TextEncoder().encode(JSON.stringify(json)), 0x20);
  const out = new Uint8Array(12 + 8 + text.length + 8 + offset);
  const view = new DataView(out.buffer);
  for (const [at, word] of [MAGIC, 2, out.length, text.length, JSON_CHUNK].entries())
    view.setUint32(4 * at, word, true);
  out.set(text, 20);
  view.setUint32(20 + text.length, offset, true);
  view.setUint32(24 + text.length, BIN_CHUNK, true);
  let at = 28 + text.length;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
};

interface Written {
  readonly meshes: {
    name: string;
    primitives: { attributes: { POSITION: number; NORMAL?: number }; indices: number }[];
  }[];
  readonly accessors: { bufferView: number; count: number }[];
  readonly bufferViews: { byteOffset: number }[];
}

export interface ReadModel {
  readonly bones: Map<BoneId, Mesh>;
  readonly leg: Map<LegId, Mesh>;
  readonly outline: Mesh;
}

/** Reads a model file written by `encodeGlb`. Throws RangeError for anything else: the file is part of the program. */
export const decodeGlb = (bytes: Uint8Array): ReadModel => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 28 || view.getUint32(0, true) !== MAGIC) throw new RangeError('decodeGlb: not a GLB file');
  const textLength = view.getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + textLength))) as Written;
  const start = 28 + textLength;
  const numbers = (accessor: number | undefined, read: (at: number) => number, size: number, per: number): number[] => {
    const { bufferView, count } = json.accessors[accessor ?? -1] ?? { bufferView: -1, count: 0 };
    const from = start + (json.bufferViews[bufferView]?.byteOffset ?? 0);
    return Array.from({ length: count * per }, (_, i) => read(from + size * i));
  };
  const bones = new Map<BoneId, Mesh>();
  const leg = new Map<LegId, Mesh>();
  let outline: Mesh | null = null;
  for (const { name, primitives } of json.meshes) {
    const [p] = primitives;
    const metres = numbers(p?.attributes.POSITION, (at) => view.getFloat32(at, true), 4, 3);
    const normal = p?.attributes.NORMAL;
    const mesh: Mesh = {
      positions: Float32Array.from(metres, (x) => x * MM_PER_METRE),
      indices: Uint32Array.from(numbers(p?.indices, (at) => view.getUint16(at, true), 2, 1)),
      ...(normal !== undefined && {
        normals: Float32Array.from(numbers(normal, (at) => view.getFloat32(at, true), 4, 3)),
      }),
    };
    const legId = LEG_IDS.find((id) => id === name);
    if (isBoneId(name)) bones.set(name, mesh);
    else if (legId) leg.set(legId, mesh);
    else if (name === OUTLINE) outline = mesh;
  }
  if (!outline) throw new RangeError('decodeGlb: no outline in the model file');
  return { bones, leg, outline };
};
