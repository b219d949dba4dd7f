/** Strokes laid on the bone: zone borders, the break, each of constant width on the screen and hidden by what lies in front. */
import {
  BufferAttribute,
  CustomBlending,
  GLSL3,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  OneFactor,
  OneMinusSrcAlphaFactor,
  ShaderMaterial,
  Mesh as ThreeMesh,
} from 'three';
import { length, subtract, type Vec3 } from '../../units';
import { STROKE_FRAGMENT, STROKE_VERTEX } from './shaders';
import { rgb, type TokenName, type Tokens } from './tokens';

export interface Stroke {
  /** Polylines on the surface, mm, foot frame. */
  readonly lines: readonly (readonly Vec3[])[];
  readonly colour: TokenName;
  /** CSS px. */
  readonly widthPx: number;
  /** Length of one dash with its gap; 0 = unbroken. */
  readonly dashMm: number;
  /** How far towards the eye it is lifted to win over the surface it lies on. */
  readonly liftMm: number;
}

const DEPTH_MM = 2000;

export const strokeMesh = (stroke: Stroke, tokens: Tokens): ThreeMesh<InstancedBufferGeometry, ShaderMaterial> => {
  const from: number[] = [];
  const to: number[] = [];
  const travelled: number[] = [];
  for (const line of stroke.lines) {
    let way = 0;
    line.slice(1).forEach((end, i) => {
      const start = line[i] ?? end;
      from.push(...start);
      to.push(...end);
      travelled.push(way);
      way += length(subtract(end, start));
    });
  }
  const geometry = new InstancedBufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array([0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0]), 3));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  geometry.setAttribute('from', new InstancedBufferAttribute(new Float32Array(from), 3));
  geometry.setAttribute('to', new InstancedBufferAttribute(new Float32Array(to), 3));
  geometry.setAttribute('travelled', new InstancedBufferAttribute(new Float32Array(travelled), 1));
  geometry.instanceCount = travelled.length;
  const material = new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: STROKE_VERTEX,
    fragmentShader: STROKE_FRAGMENT,
    transparent: true,
    premultipliedAlpha: true,
    blending: CustomBlending,
    blendSrc: OneFactor,
    blendDst: OneMinusSrcAlphaFactor,
    depthWrite: false,
    side: 2,
    uniforms: {
      uHalf: { value: 1 },
      uCss: { value: 1 },
      uLift: { value: (2 * stroke.liftMm) / DEPTH_MM },
      uSize: { value: [1, 1] },
      uDashMm: { value: stroke.dashMm },
      uColour: { value: rgb(tokens.colours[stroke.colour]) },
    },
  });
  const mesh = new ThreeMesh(geometry, material);
  mesh.frustumCulled = false;
  mesh.userData.widthPx = stroke.widthPx;
  return mesh;
};
