/** The shader variants and their uniforms. A variant is compiled once and kept by three under its text. */
import {
  BackSide,
  DataTexture,
  FloatType,
  FrontSide,
  GLSL3,
  NearestFilter,
  RGBAFormat,
  ShaderMaterial,
  type Texture,
} from 'three';
import type { BoneAxis } from '../../anatomy/types';
import { BONE_IDS } from '../../ids';
import { BONE_FRAGMENT, BONE_VERTEX } from './bone-shader';
import { FLAT_FRAGMENT, FLAT_VERTEX, HULL_FRAGMENT, HULL_VERTEX } from './shaders';
import { rgb, type TokenName, type Tokens } from './tokens';

/** `field`: FIELD_LENGTH texels along the bone, two rows of four numbers (see src/stage/scene/fields.ts). */
export type Layer =
  | { readonly kind: 'shade' | 'context' | 'open' }
  | { readonly kind: 'zones' | 'blood'; readonly axis: BoneAxis; readonly field: Float32Array }
  | { readonly kind: 'stress'; readonly axis: BoneAxis; readonly field: Float32Array; readonly topMPa: number };
export type LayerKind = 'shade' | 'context' | 'open';

export const FIELD_LENGTH = 256;

/** Engraved lines, CSS px from middle to middle. */
const PITCH_PX = 4.6;

const fieldTexture = (field: Float32Array): DataTexture => {
  const texture = new DataTexture(field, FIELD_LENGTH, 2, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
};

const DEFINES: Readonly<Record<Layer['kind'], string | null>> = {
  shade: null,
  context: 'CONTEXT',
  open: 'OPEN',
  zones: 'ZONES',
  blood: 'BLOOD',
  stress: 'STRESS',
};

export const boneMaterial = (layer: Layer, tokens: Tokens, moving: boolean): ShaderMaterial => {
  const name = DEFINES[layer.kind];
  const defines: Record<string, string> = {};
  if (name !== null) defines[name] = '';
  if ('field' in layer) defines.MEANING = '';
  if (moving) defines.MOVING = '';
  if (tokens.whiteLine) defines.WHITE_LINE = '';
  if (tokens.lineWidthOnly) defines.LINE_WIDTH_ONLY = '';
  const hex = (token: TokenName): [number, number, number] => rgb(tokens.colours[token]);
  const context = layer.kind === 'context';
  const axis: BoneAxis | null = 'axis' in layer ? layer.axis : null;
  const texture: Texture | null = 'field' in layer ? fieldTexture(layer.field) : null;
  const material = new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: BONE_VERTEX,
    fragmentShader: BONE_FRAGMENT,
    defines,
    side: FrontSide,
    uniforms: {
      uAxisOrigin: { value: axis?.origin ?? [0, 0, 0] },
      uAxis: { value: axis?.axis ?? [0, 0, 1] },
      uDorsal: { value: axis?.dorsal ?? [0, 1, 0] },
      uLateral: { value: axis?.lateral ?? [-1, 0, 0] },
      uLengthMm: { value: axis?.lengthMm ?? 1 },
      uFill: { value: context ? hex('context-fill') : layer.kind === 'open' ? hex('plate') : hex('ivory') },
      uShade: { value: context ? hex('context-fill') : hex('shade') },
      uInk: { value: hex('engraving') },
      uBlood: { value: hex('blood') },
      uStress: { value: [1, 2, 3, 4, 5, 6].flatMap((i) => hex(`stress-${i}` as TokenName)) },
      uField: { value: texture },
      uTopMPa: { value: layer.kind === 'stress' ? layer.topMPa : 1 },
      uCss: { value: 1 },
      uPitch: { value: PITCH_PX },
      uCellMm: { value: 1 },
      uMmPerPx: { value: 1 },
    },
  });
  if (texture !== null) material.addEventListener('dispose', () => texture.dispose());
  return material;
};

/** `behind`: what has this contour lies behind all else, only what reaches beyond it is seen. */
export const hullMaterial = ({ behind = false } = {}): ShaderMaterial =>
  new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: HULL_VERTEX,
    fragmentShader: HULL_FRAGMENT,
    side: BackSide,
    defines: behind ? { BEHIND: '' } : {},
    uniforms: {
      uWidth: { value: 1 },
      uChosenWidth: { value: 1 },
      uChosen: { value: BONE_IDS.map(() => 0) },
      uSize: { value: [1, 1] },
      uColour: { value: [0, 0, 0] },
      uChosenColour: { value: [0, 0, 0] },
    },
  });

export const flatMaterial = (): ShaderMaterial =>
  new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: FLAT_VERTEX,
    fragmentShader: FLAT_FRAGMENT,
    uniforms: { uColour: { value: [1, 1, 1] } },
  });
