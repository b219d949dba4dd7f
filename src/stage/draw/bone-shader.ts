/**
 * The engraver, in GLSL 3. One texture on a bone says one thing: shade, zones, blood or stress are compile-time variants.
 * Lengths called `Px` are device pixels; `uCss` is device pixels per CSS pixel. p is in mm of the foot frame, so everything
 * cut into the bone stays glued to it. Colours are sRGB and leave as they came.
 */

/** What lines are laid by. g: mm of u a pixel; then how far apart those that stay are, mm, and how far the others have faded. */
const RULING = /* glsl */ `
vec3 ruling(float g, float pitchPx) {
  float level = log2(g * pitchPx);
  float whole = floor(level);
  return vec3(g, exp2(whole + 1.0), level - whole);
}`;

/**
 * A facet is flat and the projection parallel: its shade, and how its lines lie on the screen, are one for all its pixels. They
 * are found here, once a corner, and handed on flat.
 */
export const BONE_VERTEX = /* glsl */ `
in vec3 bary;
in vec3 along;
uniform vec3 uAxisOrigin, uAxis, uDorsal, uLateral;
uniform vec3 uFill, uShade;
uniform float uCss, uPitch, uMmPerPx;
out vec3 vBary;
out float vAcross;
flat out vec3 vRuling;
flat out vec3 vFill;
flat out float vShare;
#ifndef MOVING
out float vSlanting;
flat out vec3 vSlantRuling;
#endif
#ifdef MEANING
out vec3 vLocal;
flat out vec3 vNormal;
#endif
${RULING}
// mm of dot(p, d) a pixel on the facet with normal n, both seen from the eye.
float slopeOn(vec3 n, vec3 d) { return max(uMmPerPx * length(d.xy - d.z / max(n.z, 1e-4) * n.xy), 1e-6); }
void main() {
  vBary = bary;
  vec3 n = normalMatrix * normal;
  float lit = 0.5 * dot(n, normalize(vec3(-0.5, 0.68, 0.54))) + 0.5;
  float q = floor(6.0 * lit + 0.5) / 6.0;
  vFill = mix(uShade, uFill, smoothstep(0.15, 0.85, q));
  // Unlike the fill, the lines take their facet's own shade: stepped, whole facets of lines would jump while the foot turns.
#ifdef WHITE_LINE
  vShare = clamp(1.25 * lit - 0.62, 0.0, 0.6);
#else
  vShare = clamp(0.92 - 1.15 * lit, 0.0, 0.78);
#endif
  float pitch = uPitch * uCss;
#ifdef STRESS
  pitch = pitch * 1.3;
#endif
  vAcross = dot(position, along);
  vRuling = ruling(slopeOn(n, mat3(modelViewMatrix) * along), pitch);
#ifndef MOVING
  vec3 slant = 0.6 * along + 0.8 * cross(normal, along);
  vSlanting = dot(position, slant);
  vSlantRuling = ruling(slopeOn(n, mat3(modelViewMatrix) * slant), pitch * 1.4);
#endif
#ifdef MEANING
  vec3 d = position - uAxisOrigin;
  vLocal = vec3(dot(d, uAxis), dot(d, uDorsal), dot(d, uLateral));
  vNormal = normal;
#endif
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`;

const ENGRAVING = /* glsl */ `
// Share of a pixel under a line of the given half width whose middle is d away, all in px.
// While the camera moves the pixel is taken wider: sharp lines between coarse pixels would flicker.
#ifdef MOVING
const float PIXEL = 3.0;
#else
const float PIXEL = 1.0;
#endif
float under(float d, float halfWidth) {
  return clamp(min(d + 0.5 * PIXEL, halfWidth) - max(d - 0.5 * PIXEL, -halfWidth), 0.0, PIXEL) / PIXEL;
}
float slope(float u) { return max(length(vec2(dFdx(u), dFdy(u))), 1e-6); }
// Lines of constant pitch on the screen, glued to the bone: two families in powers of two, one of them fading in.
float lines(float u, vec3 by, float halfWidth) {
  float t = fract(u / by.y);
  float wide = by.y / by.x;
  // Those that stay lie on multiples of the spacing, those that fade between them: where the spacing doubles no line jumps.
  float first = under((0.5 - abs(t - 0.5)) * wide, halfWidth);
  float second = under(abs(t - 0.5) * wide, halfWidth * (1.0 - by.z));
  return max(first, second);
}
${RULING}`;

const STIPPLE = /* glsl */ `
vec2 scatter(vec2 cell) {
  vec3 q = fract(vec3(cell.xyx) * vec3(0.1031, 0.1030, 0.0973));
  q += dot(q, q.yzx + 33.33);
  return fract((q.xx + q.yz) * q.zy);
}
// Round dots on the screen whose ink share is exact whatever the slant: radius from the cell's own area in pixels. The cell
// is one size on the whole bone, so that neighbouring facets of one share never differ in dots.
float stipple(vec3 local, vec3 n, float share, float cellMm) {
  vec3 m = abs(vec3(dot(n, uAxis), dot(n, uDorsal), dot(n, uLateral)));
  vec2 q = m.x > m.y && m.x > m.z ? local.yz : (m.y > m.z ? local.xz : local.xy);
  mat2 jacobian = mat2(dFdx(q), dFdy(q));
  float det = determinant(jacobian);
  if (abs(det) < 1e-9 || share <= 0.0) return 0.0;
  mat2 toPx = inverse(jacobian);
  // A disc with a soft edge one pixel wide covers a twelfth of pi more than one cut sharply.
  float radius = sqrt(max(share * cellMm * cellMm / (3.14159265 * abs(det)) - 1.0 / 12.0, 0.0));
  vec2 here = floor(q / cellMm);
  float ink = 0.0;
  for (int i = -1; i <= 1; i++) for (int j = -1; j <= 1; j++) {
    vec2 cell = here + vec2(i, j);
    vec2 middle = (cell + 0.5 + 0.5 * (scatter(cell) - 0.5)) * cellMm;
    ink = max(ink, clamp(radius - length(toPx * (q - middle)) + 0.5, 0.0, 1.0));
  }
  return ink;
}`;

export const BONE_FRAGMENT = /* glsl */ `
precision highp float;
in vec3 vBary;
in float vAcross;
flat in vec3 vRuling;
flat in vec3 vFill;
flat in float vShare;
#ifndef MOVING
in float vSlanting;
flat in vec3 vSlantRuling;
#endif
#ifdef MEANING
in vec3 vLocal;
flat in vec3 vNormal;
#endif
uniform vec3 uAxis, uDorsal, uLateral;
uniform vec3 uFill, uInk, uBlood;
uniform vec3 uStress[6];
uniform float uCss, uPitch, uCellMm, uLengthMm, uTopMPa;
uniform sampler2D uField;
out vec4 colour;
${ENGRAVING}
#ifdef BLOOD
${STIPPLE}
#endif
vec4 fieldAt(float s, int row) {
  float x = clamp(s / uLengthMm, 0.0, 1.0) * 255.0;
  int i = int(floor(x));
  return mix(texelFetch(uField, ivec2(i, row), 0), texelFetch(uField, ivec2(min(i + 1, 255), row), 0), fract(x));
}
vec4 stepAt(float s) {
  return texelFetch(uField, ivec2(int(clamp(s / uLengthMm, 0.0, 1.0) * 255.0 + 0.5), 0), 0);
}
// Screen hatch: its direction is the code and must not turn with the bone.
float hatch(float pitchPx, float share, float sign) {
  float u = (gl_FragCoord.x + sign * gl_FragCoord.y) * 0.70710678;
  return under(abs(fract(u / pitchPx) - 0.5) * pitchPx, 0.5 * share * pitchPx);
}
void main() {
  vec3 fill = vFill;
  float pitch = uPitch * uCss;
  float w = vShare;
  float ink = 0.0;
  float ridge = 0.55;
  vec3 inkColour = uInk;
#if defined(ZONES)
  float zone = stepAt(vLocal.x).x;
  float shaded = zone > 3.5 ? 1.0 : 0.0;
#ifndef MOVING
  float hatchPx = 6.0 * uCss;
  if (zone < 1.5) ink = hatch(hatchPx, 0.25, -1.0);
  else if (zone < 2.5) ink = max(hatch(hatchPx, 0.25, 1.0), hatch(hatchPx, 0.25, -1.0));
  else if (zone < 3.5) ink = hatch(hatchPx, 0.25, 1.0);
#endif
  fill = mix(uFill, fill, shaded);
  w *= shaded;
  ridge *= 0.35 + 0.65 * shaded;
#elif defined(BLOOD)
  fill = uFill;
  ink = stipple(vLocal, vNormal, stepAt(vLocal.x).x, uCellMm);
  inkColour = uBlood;
  w = 0.0;
  ridge = 0.0;
#elif defined(STRESS)
  vec4 f = fieldAt(vLocal.x, 0);
  vec4 middle = fieldAt(vLocal.x, 1);
  float sigma = f.x + f.y * (vLocal.y - middle.x) + f.z * (vLocal.z - middle.y);
  float band = 6.0 * abs(sigma) / uTopMPa;
  float nearest = clamp(floor(band + 0.5), 1.0, 5.0);
  float isoPx = abs(band - nearest) / slope(band);
  int step6 = int(clamp(floor(band), 0.0, 5.0));
  if (f.w > 0.5) {
    fill = uFill;
    float u = dot(vLocal, vec3(0.8, 0.5, 0.5));
    float dash = step(0.4, fract(dot(vLocal, vec3(-0.5, 0.7, 0.7)) / (uPitch * 1.6 * uCellMm)));
    ink = lines(u, ruling(slope(u), pitch * 1.5), 0.15 * pitch) * dash;
  } else {
    ridge = 0.0;
#ifdef LINE_WIDTH_ONLY
    fill = uFill;
    ink = lines(vAcross, vRuling, 0.5 * float(step6) / 6.8 * pitch * 1.3);
#else
    fill = uStress[step6];
    ink = 0.0;
    inkColour = step6 >= 4 ? uFill : uInk;
#endif
    ink = max(ink, under(isoPx, 0.5 * uCss));
  }
  w = 0.0;
#elif defined(OPEN)
  w = 0.0;
  ridge = 0.18;
  fill = uFill;
#endif
  if (w > 0.01) {
    ink = max(ink, lines(vAcross, vRuling, 0.5 * w * pitch));
#ifndef MOVING
    if (w > 0.55) ink = max(ink, lines(vSlanting, vSlantRuling, 0.25 * w * pitch * 1.4));
#endif
  }
#ifdef CONTEXT
  ink *= 0.42;
  ridge *= 0.3;
#endif
  vec3 edge = vBary / max(fwidth(vBary), vec3(1e-6));
  ink = max(ink, ridge * clamp(0.35 * uCss + 0.5 - min(edge.x, min(edge.y, edge.z)), 0.0, 1.0));
  colour = vec4(mix(fill, inkColour, ink), 1.0);
}`;
