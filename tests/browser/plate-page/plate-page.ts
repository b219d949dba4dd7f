/**
 * The plate on a page of its own, to be measured pixel by pixel: how calm the engraving stays while the foot turns, how much ink
 * stipple and hatch lay on the bone, what a frame costs beside a plain lit scene. Numbers only; the specs judge them.
 */
import {
  BufferAttribute,
  BufferGeometry,
  DirectionalLight,
  Mesh,
  MeshLambertMaterial,
  OrthographicCamera,
  Scene,
  WebGLRenderer,
} from 'three';
import { decodeGlb } from '../../../src/anatomy';
import type { BoneAxis, Foot } from '../../../src/anatomy/types';
import { basisOf, type Camera, project, rayAt, type Size } from '../../../src/stage/camera/camera';
import { FIELD_LENGTH, type Layer } from '../../../src/stage/draw/materials';
import { firstHit } from '../../../src/stage/draw/pick';
import { type Drawing, Plate } from '../../../src/stage/draw/plate';
import { type Facets, facetsOf } from '../../../src/stage/draw/plate-mesh';
import { PRINT, readTokens, tokensFrom } from '../../../src/stage/draw/tokens';
import '../../../src/pages/tokens.css';
import { length, radians, subtract, type Vec3 } from '../../../src/units';
import { type Asked, drawn } from './drawn';

const model = decodeGlb(new Uint8Array(await (await fetch('./models/foot-right.glb')).arrayBuffer()));
const foot = model as unknown as Foot;
const canvas = document.createElement('canvas');
const plate = new Plate(canvas, foot);
const SIZE: Size = { width: 900, height: 600 };

const drawing = (more: Partial<Drawing>): Drawing => ({
  chosen: null,
  also: [],
  selected: null,
  layer: { kind: 'shade' },
  dimOthers: false,
  strokes: [],
  beside: null,
  mirrored: false,
  contourPx: 1.9,
  ...more,
});

interface Frame {
  readonly pixels: Uint8Array;
  readonly width: number;
  readonly height: number;
}

const frameOf = (camera: Camera, ratio: number, moving: boolean): Frame => {
  plate.draw(camera, SIZE, ratio, moving);
  const gl = canvas.getContext('webgl2');
  if (gl === null) throw new Error('no WebGL 2');
  const pixels = new Uint8Array(4 * canvas.width * canvas.height);
  gl.readPixels(0, 0, canvas.width, canvas.height, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
  return { pixels, width: canvas.width, height: canvas.height };
};

/** 0..255 over the plate's own colour; rows from the top. */
const greyAt = ({ pixels, width, height }: Frame, x: number, y: number): number => {
  const i = 4 * ((height - 1 - Math.floor(y)) * width + Math.floor(x));
  const [r, g, b, a] = [0, 1, 2, 3].map((k) => pixels[i + k] ?? 0) as [number, number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b + (255 - a);
};

/** Between the four pixels around a place. */
const greyBetween = (frame: Frame, x: number, y: number): number => {
  const [u, v] = [x - 0.5, y - 0.5];
  const [i, j] = [Math.floor(u), Math.floor(v)];
  const [s, t] = [u - i, v - j];
  return (
    (1 - t) * ((1 - s) * greyAt(frame, i, j) + s * greyAt(frame, i + 1, j)) +
    t * ((1 - s) * greyAt(frame, i, j + 1) + s * greyAt(frame, i + 1, j + 1))
  );
};

const camera = (azimuthDeg: number, elevationDeg: number, mmPerPx: number, target: Vec3 = [0, 40, 100]): Camera => ({
  target,
  azimuthRad: radians(azimuthDeg),
  elevationRad: radians(elevationDeg),
  mmPerPx,
});

export interface Calm {
  readonly samples: number;
  /** Share of the surface's pixels that change by more than 60 of 255 when the foot turns. */
  readonly flipped: number;
}

/** Every surface point of one frame looked up in the next one. */
const calmOf = (look: string, azimuthDeg: number, stepDeg: number, ratio: number, moving: boolean): Calm => {
  document.documentElement.dataset.look = look;
  plate.setDrawing(drawing({}), readTokens(document.documentElement));
  const [first, second] = [camera(azimuthDeg, 24, 0.34), camera(azimuthDeg + stepDeg, 24, 0.34)];
  const before = frameOf(first, ratio, moving);
  const after = frameOf(second, ratio, moving);
  const basis = basisOf(second);
  let [samples, flipped] = [0, 0];
  for (let y = 2.5; y < SIZE.height - 2; y += 5) {
    for (let x = 2.5; x < SIZE.width - 2; x += 5) {
      const ray = rayAt(first, SIZE, x, y);
      const hit = firstHit(plate.mesh, ray.from, ray.along);
      if (hit === null) continue;
      const [u, v] = project(second, basis, SIZE, hit.point);
      const again = rayAt(second, SIZE, u, v);
      const seen = firstHit(plate.mesh, again.from, again.along);
      if (seen === null || length(subtract(seen.point, hit.point)) > 0.2) continue;
      samples += 1;
      if (Math.abs(greyBetween(before, x * ratio, y * ratio) - greyBetween(after, u * ratio, v * ratio)) > 60)
        flipped += 1;
    }
  }
  return { samples, flipped: flipped / samples };
};

const boundsOf = (bone: 'metatarsal5' | 'calcaneus'): { min: Vec3; max: Vec3 } => {
  const { positions } = model.bones.get(bone) ?? { positions: new Float32Array() };
  const of = (k: number): number[] => [...positions].filter((_, i) => i % 3 === k);
  const all = [of(0), of(1), of(2)];
  const reach = (pick: (...n: number[]) => number): Vec3 => all.map((n) => pick(...n)) as unknown as Vec3;
  return { min: reach(Math.min), max: reach(Math.max) };
};

const axisOf = (bone: 'metatarsal5' | 'calcaneus'): BoneAxis => {
  const { min, max } = boundsOf(bone);
  const [x, y] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  const lengthMm = max[2] - min[2];
  return { origin: [x, y, min[2]], axis: [0, 0, 1], dorsal: [0, 1, 0], lateral: [-1, 0, 0], lengthMm } as BoneAxis;
};

export interface Ink {
  readonly pixels: number;
  readonly share: number;
}

/** Share of ink on the bone in black and white, its contour and ridges left out by looking well inside its facets only. */
const inkOf = (
  kind: 'blood' | 'zones',
  value: number,
  bone: 'metatarsal5' | 'calcaneus',
  mmPerPx: number,
  azimuthDeg: number,
): Ink => {
  const field = new Float32Array(FIELD_LENGTH * 2 * 4);
  for (let i = 0; i < FIELD_LENGTH; i++) field[4 * i] = value;
  const layer: Layer = { kind, axis: axisOf(bone), field };
  plate.setDrawing(drawing({ chosen: bone, layer, contourPx: 0.1 }), tokensFrom(PRINT));
  const { min, max } = boundsOf(bone);
  const middle = min.map((low, k) => (low + (max[k] ?? low)) / 2) as unknown as Vec3;
  const eye = camera(azimuthDeg, 24, mmPerPx, middle);
  const frame = frameOf(eye, 1, false);
  let [pixels, ink] = [0, 0];
  const clear = (x: number, y: number): boolean =>
    [-6, 0, 6].every((dx) =>
      [-6, 0, 6].every((dy) => {
        const ray = rayAt(eye, SIZE, x + dx, y + dy);
        return firstHit(plate.mesh, ray.from, ray.along)?.bone === bone;
      }),
    );
  for (let y = 4; y < SIZE.height - 4; y += 4) {
    for (let x = 4; x < SIZE.width - 4; x += 4) {
      if (!clear(x + 2, y + 2)) continue;
      for (let j = 0; j < 4; j++) {
        for (let i = 0; i < 4; i++) {
          pixels += 1;
          ink += 1 - greyAt(frame, x + i + 0.5, y + j + 0.5) / 255;
        }
      }
    }
  }
  return { pixels, share: ink / pixels };
};

const COST_SIZE = { width: 1280, height: 720 };
const FRAMES = 16;

/** The best quarter of some frames, each ended by reading pixels back, ms. */
const timeOf = (draw: (turn: number) => void, gl: WebGL2RenderingContext): number => {
  const one = new Uint8Array(4);
  const times = Array.from({ length: FRAMES }, (_, i) => {
    const started = performance.now();
    draw(i);
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, one);
    return performance.now() - started;
  }).sort((a, b) => a - b);
  const best = times.slice(0, FRAMES / 4);
  return best.reduce((sum, each) => sum + each, 0) / best.length;
};

const contextOf = (of: HTMLCanvasElement): WebGL2RenderingContext => {
  const gl = of.getContext('webgl2');
  if (gl === null) throw new Error('no WebGL 2');
  return gl;
};

const litGeometry = ({ positions, normals }: Facets): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  return geometry;
};

/** The same triangles in the same picture, the outline behind the bones, lit plainly by three.js, without antialiasing. */
const bareCost = (): number => {
  const bareCanvas = document.createElement('canvas');
  const renderer = new WebGLRenderer({ canvas: bareCanvas, antialias: false });
  renderer.setSize(COST_SIZE.width, COST_SIZE.height, false);
  const scene = new Scene();
  const light = new DirectionalLight(0xffffff, 2);
  light.position.set(-1, 1, 1);
  scene.add(light);
  const lit = { color: 0xf0e6c8, flatShading: true };
  const behind = { ...lit, depthTest: false, depthWrite: false };
  const add = (mesh: Facets, how: typeof lit, order: number): void => {
    const each = new Mesh(litGeometry(mesh), new MeshLambertMaterial(how));
    each.renderOrder = order;
    scene.add(each);
  };
  add(facetsOf([foot.outline]), behind, 0);
  add(facetsOf([...foot.leg.values()]), lit, 1);
  add(plate.mesh, lit, 2);
  const k = 0.25;
  const [w, h] = [(COST_SIZE.width / 2) * k, (COST_SIZE.height / 2) * k];
  const eye = new OrthographicCamera(-w, w, h, -h, 0, 2000);
  const gl = contextOf(bareCanvas);
  const ms = timeOf((turn) => {
    const a = radians(-66 + turn);
    eye.position.set(1000 * Math.sin(a), 400, 100 + 1000 * Math.cos(a));
    eye.lookAt(0, 40, 100);
    renderer.render(scene, eye);
  }, gl);
  renderer.dispose();
  renderer.forceContextLoss();
  return ms;
};

export type Costed = 'bare' | 'plate' | 'zones' | 'blood' | 'stress';

/** Milliseconds of a moving frame of 1280 x 720, one device pixel a pixel. */
const costOf = (what: Costed): number => {
  if (what === 'bare') return bareCost();
  const field = new Float32Array(FIELD_LENGTH * 2 * 4);
  for (let i = 0; i < FIELD_LENGTH; i++) field.set(what === 'zones' ? [1 + Math.floor(i / 86)] : [0.2, 4, 4], 4 * i);
  const axis = axisOf('metatarsal5');
  const layer: Layer =
    what === 'plate'
      ? { kind: 'shade' }
      : what === 'stress'
        ? { kind: what, axis, field, topMPa: 60 }
        : { kind: what, axis, field };
  plate.setDrawing(
    drawing(what === 'plate' ? {} : { chosen: 'metatarsal5', layer, dimOthers: true }),
    readTokens(document.documentElement),
  );
  return timeOf((turn) => plate.draw(camera(-66 + turn, 24, 0.25), COST_SIZE, 1, false), contextOf(canvas));
};

export const measures = { calmOf, inkOf, costOf, drawn: (asked: Asked) => drawn(plate, foot, asked) };
declare global {
  interface Window {
    plateMeasures?: typeof measures;
  }
}
window.plateMeasures = measures;
document.body.dataset.ready = 'true';
