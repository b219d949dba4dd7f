/** The contour, the quiet outline and the strokes, in GLSL 3; lengths as in bone-shader.ts. */
import { BONE_IDS } from '../../ids';

/** The contour: back faces pushed outwards on the screen by `uWidth` device px along the smoothed normal. */
export const HULL_VERTEX = /* glsl */ `
in vec3 smoothNormal;
in float bone;
uniform float uWidth, uChosenWidth;
uniform vec2 uSize;
uniform float uChosen[${BONE_IDS.length}];
flat out float vChosen;
void main() {
  // What is no bone of the foot has the number -1.
  vChosen = bone < -0.5 ? 0.0 : uChosen[int(bone + 0.5)];
  vec4 clip = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec2 n = (projectionMatrix * vec4(normalMatrix * smoothNormal, 0.0)).xy * uSize;
  float size = length(n);
  float width = mix(uWidth, uChosenWidth, vChosen);
  if (size > 1e-6) clip.xy += n / size * width * 2.0 / uSize * clip.w;
#ifdef BEHIND
  clip.z = 0.01 * clip.z + 0.95 * clip.w;
#endif
  gl_Position = clip;
}`;

export const HULL_FRAGMENT = /* glsl */ `
precision highp float;
flat in float vChosen;
uniform vec3 uColour, uChosenColour;
out vec4 colour;
void main() { colour = vec4(mix(uColour, uChosenColour, vChosen), 1.0); }`;

/** One colour, no more: the body of the quiet outline. It lies behind every bone, and its contour (BEHIND) behind it. */
export const FLAT_VERTEX = /* glsl */ `
void main() {
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  gl_Position.z = 0.01 * gl_Position.z + 0.9 * gl_Position.w;
}`;
export const FLAT_FRAGMENT = /* glsl */ `
precision highp float;
uniform vec3 uColour;
out vec4 colour;
void main() { colour = vec4(uColour, 1.0); }`;

/** A stroke of constant width on the screen, with round ends, hidden by what lies in front of it. */
export const STROKE_VERTEX = /* glsl */ `
in vec3 from;
in vec3 to;
in float travelled;
uniform float uHalf, uCss, uLift;
uniform vec2 uSize;
out vec2 vAt;
flat out float vLength;
out float vTravelled;
void main() {
  vec4 a = projectionMatrix * modelViewMatrix * vec4(from, 1.0);
  vec4 b = projectionMatrix * modelViewMatrix * vec4(to, 1.0);
  vec2 d = (b.xy - a.xy) * 0.5 * uSize;
  float size = length(d);
  vec2 dir = size > 1e-4 ? d / size : vec2(1.0, 0.0);
  float reach = uHalf + 1.0;
  float x = position.x < 0.5 ? -reach : size + reach;
  float y = position.y * reach;
  vAt = vec2(x, y);
  vLength = size;
  vTravelled = travelled + clamp(x / max(size, 1e-4), 0.0, 1.0) * distance(from, to);
  vec2 offset = dir * (position.x < 0.5 ? -reach : reach) + vec2(-dir.y, dir.x) * y;
  vec4 clip = position.x < 0.5 ? a : b;
  clip.xy += offset * 2.0 / uSize;
  clip.z -= uLift;
  gl_Position = clip;
}`;

export const STROKE_FRAGMENT = /* glsl */ `
precision highp float;
in vec2 vAt;
flat in float vLength;
in float vTravelled;
uniform float uHalf, uDashMm;
uniform vec3 uColour;
out vec4 colour;
void main() {
  if (uDashMm > 0.0 && fract(vTravelled / uDashMm) > 0.62) discard;
  float d = length(vec2(vAt.x - clamp(vAt.x, 0.0, vLength), vAt.y));
  float a = clamp(uHalf - d + 0.5, 0.0, 1.0);
  if (a <= 0.0) discard;
  colour = vec4(uColour, 1.0) * a;
}`;
