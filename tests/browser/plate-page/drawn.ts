/**
 * One picture of the plate as PNG: bones, contour, layer and strokes, no letter in it. `otherwise` changes words of the shaders on
 * their way to the driver: a plate as it would be with a fault, for the tests that have to see one.
 */
import { decodeGlb } from '../../../src/anatomy';
import type { Foot } from '../../../src/anatomy/types';
import type { Camera, Size } from '../../../src/stage/camera/camera';
import { type Drawing, Plate } from '../../../src/stage/draw/plate';
import { readTokens } from '../../../src/stage/draw/tokens';

export interface Asked {
  readonly look: string;
  /** Its layer lacks the field, which stands beside it as plain numbers: all of this comes as JSON. */
  readonly drawing: Omit<Drawing, 'beside' | 'layer'> & { readonly layer: object };
  readonly field: readonly number[] | null;
  readonly camera: Camera;
  readonly size: Size;
  /** Another foot than the shipped one: its model file, base 64. */
  readonly glb: string | null;
  readonly otherwise: readonly (readonly [from: string, to: string])[];
}

const changingShaders = (otherwise: Asked['otherwise'], work: () => void): void => {
  const { prototype } = WebGL2RenderingContext;
  const honest = prototype.shaderSource;
  const met = new Set<string>();
  prototype.shaderSource = function (shader, source) {
    let changed = source;
    for (const [from, to] of otherwise) {
      if (changed.includes(from)) met.add(from);
      changed = changed.replaceAll(from, to);
    }
    honest.call(this, shader, changed);
  };
  try {
    work();
  } finally {
    prototype.shaderSource = honest;
  }
  // A fault that was not made would be one that nobody could see.
  for (const [from] of otherwise) if (!met.has(from)) throw new Error(`no shader says "${from}"`);
};

/** Base 64 of a PNG. */
const paint = (plate: Plate, asked: Asked): string => {
  document.documentElement.dataset.look = asked.look;
  const tokens = readTokens(document.documentElement);
  const { size, field } = asked;
  const layer = field === null ? asked.drawing.layer : { ...asked.drawing.layer, field: Float32Array.from(field) };
  plate.setDrawing({ ...asked.drawing, layer: layer as Drawing['layer'], beside: null }, tokens);
  changingShaders(asked.otherwise, () => plate.draw(asked.camera, size, 1, false));
  const paper = document.createElement('canvas');
  Object.assign(paper, size);
  const context = paper.getContext('2d');
  if (context === null) throw new Error('no 2D canvas');
  context.fillStyle = tokens.colours.plate;
  context.fillRect(0, 0, size.width, size.height);
  context.drawImage(plate.canvas, 0, 0);
  return paper.toDataURL('image/png').split(',')[1] ?? '';
};

export const drawn = (plate: Plate, shipped: Foot, asked: Asked): string => {
  const { glb } = asked;
  const bytes = glb === null ? null : Uint8Array.from(atob(glb), (letter) => letter.charCodeAt(0));
  const foot = bytes === null ? shipped : (decodeGlb(bytes) as unknown as Foot);
  if (asked.otherwise.length === 0) {
    plate.setFoot(foot);
    return paint(plate, asked);
  }
  // Shaders once compiled are kept: a changed one needs a plate of its own.
  const faulty = new Plate(document.createElement('canvas'), foot);
  try {
    return paint(faulty, asked);
  } finally {
    faulty.dispose();
    faulty.release();
  }
};
