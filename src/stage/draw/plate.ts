/**
 * Draws one plate: the quiet outline, the bones, their contour and the strokes laid on them. Knows colours, pixels and triangles;
 * knows nothing of cases. Used by the live stage and for pictures made off screen. Parallel projection only.
 *
 * Plain three.js, not fiber: the scene is four meshes whose state is a handful of uniforms, so a reconciler would add weight
 * (about 120 kB compressed) and no clarity. No multisampling: one fine frame at rest is smoother and cheaper.
 */
import {
  type BufferGeometry,
  Group,
  OrthographicCamera,
  Scene,
  type ShaderMaterial,
  type Camera as ThreeCamera,
  Mesh as ThreeMesh,
  WebGLRenderer,
} from 'three';
import type { Foot, Mesh } from '../../anatomy/types';
import { BONE_IDS, type BoneId } from '../../ids';
import { add, scale } from '../../units';
import { basisOf, type Camera, type Size } from '../camera/camera';
import { contourGeometry, facetGeometry } from './geometry';
import { boneMaterial, flatMaterial, hullMaterial, type Layer, type LayerKind } from './materials';
import { facetsOf, type PlateMesh, plateMesh } from './plate-mesh';
import { type Stroke, strokeMesh } from './strokes';
import { rgb, type Tokens } from './tokens';

/** What is to be seen, in the words of the drawing. */
export interface Drawing {
  readonly chosen: BoneId | null;
  /** More bones in full ink, without texture: those that the picture is of beside the chosen one. */
  readonly also: readonly BoneId[];
  /** A second bone in full ink, when the person looks at another than the chosen one. */
  readonly selected: BoneId | null;
  /** What the chosen bone's texture says. */
  readonly layer: Layer;
  /** The other bones stand back. */
  readonly dimOthers: boolean;
  readonly strokes: readonly Stroke[];
  /** A small bone that not everybody has, in full ink. */
  readonly beside: Mesh | null;
  readonly mirrored: boolean;
  /** CSS px. */
  readonly contourPx: number;
}

/** The bones whose contour is in full ink. */
const inkedIn = ({ chosen, selected, also }: Drawing): ReadonlySet<BoneId> =>
  new Set([chosen, selected, ...also].filter((bone) => bone !== null));

const noBones = (meshes: readonly Mesh[]): (readonly [null, Mesh])[] => meshes.map((mesh) => [null, mesh]);

/** CSS px from dot to dot, as in the key. */
const DOT_PITCH_PX = 5.6;

const EYE_DISTANCE_MM = 1000;
const DEPTH_MM = 2000;

export class Plate {
  mesh: PlateMesh;
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly group = new Group();
  private readonly eye = new OrthographicCamera();
  private readonly bones: ThreeMesh<BufferGeometry, ShaderMaterial[]>;
  private readonly hull: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private readonly outlineHull: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private readonly outlineBody: ThreeMesh<BufferGeometry, ShaderMaterial>;
  /** The ends of tibia and fibula: never what the picture is about. */
  private readonly leg: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private readonly legHull: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private readonly beside: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private readonly besideHull: ThreeMesh<BufferGeometry, ShaderMaterial>;
  private strokes: readonly ReturnType<typeof strokeMesh>[] = [];
  private drawing: Drawing | null = null;
  private tokens: Tokens | null = null;
  private moving: boolean | null = null;
  /** Spacing of the dots on the bone: that of the key where the picture rests, held while it moves, so that none jumps. */
  private dotsMm: number | null = null;

  /** Throws when the browser gives no WebGL 2. */
  constructor(
    readonly canvas: HTMLCanvasElement,
    foot: Foot,
  ) {
    // Asked for here, so that a device without it is an answer and not a complaint in the console.
    const context = canvas.getContext('webgl2', { antialias: false, alpha: true, depth: true, stencil: false });
    if (context === null) throw new Error('Plate: this browser gives no WebGL 2');
    this.renderer = new WebGLRenderer({ canvas, context, antialias: false, alpha: true, stencil: false });
    this.renderer.setClearColor(0, 0);
    this.renderer.info.autoReset = false;
    this.mesh = plateMesh(foot.bones);
    const around = contourGeometry([[null, foot.outline]]);
    this.bones = new ThreeMesh(facetGeometry(this.mesh), []);
    this.hull = new ThreeMesh(contourGeometry(foot.bones), hullMaterial());
    this.outlineHull = new ThreeMesh(around, hullMaterial({ behind: true }));
    this.outlineBody = new ThreeMesh(around, flatMaterial());
    const leg = [...foot.leg.values()];
    this.leg = new ThreeMesh(facetGeometry(facetsOf(leg)), flatMaterial());
    this.legHull = new ThreeMesh(contourGeometry(noBones(leg)), hullMaterial());
    this.beside = new ThreeMesh(facetGeometry(facetsOf([])), flatMaterial());
    this.besideHull = new ThreeMesh(contourGeometry([]), hullMaterial());
    // From front to back: what is covered costs nothing.
    const order = [this.bones, this.hull, this.beside, this.besideHull, this.leg, this.legHull];
    [...order, this.outlineBody, this.outlineHull].forEach((mesh, order) => {
      mesh.renderOrder = order;
      mesh.frustumCulled = false;
      this.group.add(mesh);
    });
    this.scene.add(this.group);
  }

  /** Another foot in the same picture. */
  setFoot(foot: Foot): void {
    this.mesh = plateMesh(foot.bones);
    const give = (
      geometry: BufferGeometry,
      ...meshes: ThreeMesh<BufferGeometry, ShaderMaterial | ShaderMaterial[]>[]
    ) => {
      meshes[0]?.geometry.dispose();
      for (const mesh of meshes) mesh.geometry = geometry;
    };
    const leg = [...foot.leg.values()];
    give(facetGeometry(this.mesh), this.bones);
    give(contourGeometry(foot.bones), this.hull);
    give(contourGeometry([[null, foot.outline]]), this.outlineHull, this.outlineBody);
    give(facetGeometry(facetsOf(leg)), this.leg);
    give(contourGeometry(noBones(leg)), this.legHull);
    if (this.drawing !== null && this.tokens !== null) this.setDrawing(this.drawing, this.tokens);
  }

  /** True when pixels are made by the processor: frames are then dear. */
  get software(): boolean {
    const gl = this.renderer.getContext();
    const info = gl.getExtension('WEBGL_debug_renderer_info');
    const name = info === null ? '' : String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL));
    return /swiftshader|llvmpipe|software|basic render/i.test(name);
  }

  get counts(): { readonly triangles: number; readonly calls: number } {
    return { triangles: this.renderer.info.render.triangles, calls: this.renderer.info.render.calls };
  }

  setDrawing(drawing: Drawing, tokens: Tokens): void {
    this.drawing = drawing;
    this.tokens = tokens;
    this.moving = null;
    this.group.scale.x = drawing.mirrored ? -1 : 1;
    for (const old of this.strokes) {
      this.group.remove(old);
      old.geometry.dispose();
      old.material.dispose();
    }
    this.strokes = drawing.strokes.map((stroke, i) => {
      const mesh = strokeMesh(stroke, tokens);
      mesh.renderOrder = 10 + i;
      this.group.add(mesh);
      return mesh;
    });
    this.beside.geometry.dispose();
    this.besideHull.geometry.dispose();
    const beside = drawing.beside === null ? [] : [drawing.beside];
    this.beside.geometry = facetGeometry(facetsOf(beside));
    this.besideHull.geometry = contourGeometry(noBones(beside));
    this.beside.visible = drawing.beside !== null;
    this.besideHull.visible = drawing.beside !== null;
    this.bones.geometry.clearGroups();
    const inked = inkedIn(drawing);
    const runs: { start: number; count: number; material: number }[] = [];
    for (const { bone, start, count } of this.mesh.ranges) {
      const material = bone === drawing.chosen ? 1 : bone !== null && inked.has(bone) ? 2 : 0;
      const last = runs.at(-1);
      if (last?.material === material) last.count += count;
      else runs.push({ start, count, material });
    }
    for (const { start, count, material } of runs) this.bones.geometry.addGroup(start, count, material);
  }

  /** One frame. `ratio`: device pixels per CSS pixel. */
  draw(camera: Camera, size: Size, ratio: number, moving: boolean): void {
    if (this.drawing === null || this.tokens === null) throw new Error('Plate.draw: nothing to draw yet');
    if (this.moving !== moving) this.cut(this.drawing, this.tokens, moving);
    this.renderer.setPixelRatio(ratio);
    this.renderer.setSize(size.width, size.height, false);
    this.aim(camera, size);
    if (!moving || this.dotsMm === null) this.dotsMm = DOT_PITCH_PX * camera.mmPerPx;
    this.measure(camera, size, ratio, this.drawing, this.dotsMm);
    this.renderer.info.reset();
    this.renderer.render(this.scene, this.eye as ThreeCamera);
  }

  dispose(): void {
    const surfaces = [this.bones, this.hull, this.outlineHull, this.outlineBody, this.leg, this.legHull];
    const all = [...surfaces, this.beside, this.besideHull, ...this.strokes];
    for (const mesh of all) {
      mesh.geometry.dispose();
      for (const material of [mesh.material].flat()) material.dispose();
    }
    this.renderer.dispose();
  }

  /** Gives the context back at once: browsers keep only a few. For canvases that nobody draws on again. */
  release(): void {
    this.renderer.forceContextLoss();
  }

  /** Chooses the shader variants for this drawing. Zone hatch swims while the camera moves, so it waits for rest. */
  private cut(drawing: Drawing, tokens: Tokens, moving: boolean): void {
    this.moving = moving;
    for (const material of [...this.bones.material, this.leg.material, this.beside.material]) material.dispose();
    this.beside.material = boneMaterial({ kind: 'shade' }, tokens, moving);
    this.leg.material = boneMaterial({ kind: 'context' }, tokens, moving);
    const other: LayerKind = drawing.dimOthers ? 'context' : 'shade';
    this.bones.material = [
      boneMaterial({ kind: other }, tokens, moving),
      boneMaterial(drawing.layer, tokens, moving),
      boneMaterial({ kind: 'shade' }, tokens, moving),
    ];
    const { colours } = tokens;
    const set = (mesh: ThreeMesh<BufferGeometry, ShaderMaterial>, name: string, value: unknown): void => {
      const uniform = mesh.material.uniforms[name];
      if (uniform !== undefined) uniform.value = value;
    };
    set(this.hull, 'uColour', rgb(drawing.dimOthers ? colours['context-contour'] : colours.ink));
    set(this.hull, 'uChosenColour', rgb(colours.ink));
    const inked = inkedIn(drawing);
    set(
      this.hull,
      'uChosen',
      BONE_IDS.map((bone) => Number(inked.has(bone))),
    );
    set(this.besideHull, 'uColour', rgb(colours.ink));
    set(this.legHull, 'uColour', rgb(colours['context-contour']));
    set(this.outlineHull, 'uColour', rgb(colours['context-contour']));
    set(this.outlineBody, 'uColour', rgb(colours.plate));
  }

  private aim(camera: Camera, size: Size): void {
    const { right, up, eye } = basisOf(camera);
    const at = add(camera.target, scale(eye, EYE_DISTANCE_MM));
    const e = this.eye;
    e.left = (-size.width / 2) * camera.mmPerPx;
    e.right = -e.left;
    e.top = (size.height / 2) * camera.mmPerPx;
    e.bottom = -e.top;
    e.near = 0;
    e.far = DEPTH_MM;
    e.updateProjectionMatrix();
    e.matrixAutoUpdate = false;
    // biome-ignore format: the matrix is easier to check as rows
    e.matrix.set(
      right[0], up[0], eye[0], at[0],
      right[1], up[1], eye[1], at[1],
      right[2], up[2], eye[2], at[2],
      0, 0, 0, 1,
    );
    e.matrixWorldNeedsUpdate = true;
  }

  private measure(camera: Camera, size: Size, ratio: number, drawing: Drawing, dotsMm: number): void {
    const pixels = [size.width * ratio, size.height * ratio];
    const materials = [
      ...this.bones.material,
      this.leg.material,
      this.legHull.material,
      this.beside.material,
      this.besideHull.material,
      this.hull.material,
      this.outlineHull.material,
      ...this.strokes.map((mesh) => mesh.material),
    ];
    const values: Readonly<Record<string, unknown>> = {
      uCss: ratio,
      uSize: pixels,
      uCellMm: dotsMm,
      uMmPerPx: camera.mmPerPx / ratio,
    };
    for (const material of materials) {
      for (const [name, value] of Object.entries(values)) {
        const uniform = material.uniforms[name];
        if (uniform !== undefined) uniform.value = value;
      }
    }
    const width = (mesh: ThreeMesh<BufferGeometry, ShaderMaterial>, name: string, px: number): void => {
      const uniform = mesh.material.uniforms[name];
      if (uniform !== undefined) uniform.value = px * ratio;
    };
    width(this.hull, 'uWidth', drawing.dimOthers ? 0.7 * drawing.contourPx : drawing.contourPx);
    width(this.hull, 'uChosenWidth', drawing.contourPx);
    width(this.besideHull, 'uWidth', drawing.contourPx);
    width(this.legHull, 'uWidth', 0.7 * drawing.contourPx);
    width(this.outlineHull, 'uWidth', 1.1);
    for (const mesh of this.strokes) {
      const uniform = mesh.material.uniforms.uHalf;
      if (uniform !== undefined) uniform.value = (mesh.userData.widthPx as number) * 0.5 * ratio;
    }
  }
}
