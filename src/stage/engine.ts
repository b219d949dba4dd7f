/**
 * The live stage without React: one plate, one camera, one overlay, and the clock of frames. A frame is drawn only when something
 * asked for it: coarse ones while the camera moves, one fine one at rest. Everything else here is bookkeeping of these two.
 */
import type { Foot } from '../anatomy/types';
import type { BoneId } from '../ids';
import type { ViewId } from '../session/types';
import type { Vec3 } from '../units';
import {
  type Bounds,
  between,
  boundsOf,
  type Camera,
  keepInside,
  orbit,
  pan,
  rayAt,
  type Size,
  zoomAbout,
} from './camera/camera';
import {
  type Framing,
  frameAsTurned,
  frameView,
  isOff,
  isWhole,
  labelSpace,
  type Shown,
  shownOf,
  shownWith,
} from './camera/framing';
import { viewThatShows } from './camera/seen-from';
import { firstHit } from './draw/pick';
import { Plate } from './draw/plate';
import { plateMesh } from './draw/plate-mesh';
import type { Tokens } from './draw/tokens';
import type { LabelBox } from './labels/layout';
import { NO_LABELS } from './overlay/labelled';
import type { LabelText } from './overlay/labels';
import { type Overlay, overlayOf } from './overlay/overlay';
import type { Fonts, Measure } from './overlay/shapes';
import { type PenPoint, type PenStroke, penPointAt } from './pen/stroke';
import { besideStrokes } from './scene/aside';
import { breakStrokes, type StageScene, showsRing } from './scene/scene';

export interface Showing {
  readonly scene: StageScene;
  readonly labels: readonly LabelText[];
  readonly fonts: Fonts;
  readonly measure: Measure;
  readonly tokens: Tokens;
  readonly mirrored: boolean;
  readonly contourPx: number;
}

export interface Frame {
  readonly overlay: Overlay;
  readonly camera: Camera;
  readonly size: Size;
  readonly tokens: Tokens;
  /** The named view, or null once a hand has turned it. */
  readonly view: ViewId | null;
  readonly atRest: boolean;
  /** What this frame shows: ready means that it is what is asked for now. */
  readonly showing: Showing;
  readonly count: number;
  readonly triangles: number;
  readonly calls: number;
}

const REST_MS = 140;
const MOTION_MS = 380;
const MOST_PIXELS = 9e6;
/** One pointer pixel turns the foot by this much. */
export const TURN_PER_PX = 0.0085;

const ease = (t: number): number => 1 - (1 - t) ** 3;

export class Engine {
  frame: Frame | null = null;
  private readonly plate: Plate;
  private readonly coarse: number;
  private bounds: Bounds;
  private shown: Shown;
  private readonly listeners = new Set<() => void>();
  private showing: Showing | null = null;
  private strokes: readonly PenStroke[] = [];
  private size: Size = { width: 0, height: 0 };
  private camera: Camera | null = null;
  private widest = 1;
  private mode: LabelBox['mode'] = 'ends';
  private view: ViewId = 'outer';
  private near = false;
  private turned = false;
  private memory = NO_LABELS;
  private motion: { from: Camera; to: Camera; start: number } | null = null;
  private waiting = 0;
  private rest: ReturnType<typeof setTimeout> | undefined;
  private wantsRest = false;
  private ring: boolean | null = null;
  /** Whether the whole foot was on the plate before the foot changed; null when nothing has changed since it was fitted. */
  private wasWhole: boolean | null = null;
  private count = 0;

  /** `beside`: another right foot that every view leaves room for. Throws when the browser gives no WebGL 2. */
  constructor(
    canvas: HTMLCanvasElement,
    foot: Foot,
    private beside: Foot | null = null,
  ) {
    this.plate = new Plate(canvas, foot);
    // Below two device pixels a pixel fine lines flicker while the foot turns; a processor cannot afford them and draws coarse ones.
    this.coarse = this.plate.software ? 0.75 : 2;
    this.shown = this.besides(foot);
    this.bounds = boundsOf(this.plate.mesh.positions);
  }

  /** Another foot, or another beside it, seen from where one was looking. */
  setFoot(foot: Foot, beside: Foot | null = null): void {
    this.wasWhole ??= this.showsWhole();
    this.beside = beside;
    this.plate.setFoot(foot);
    this.shown = this.besides(foot);
    this.bounds = boundsOf(this.plate.mesh.positions);
    this.ring = null;
  }

  /** This foot with room for the one beside it. */
  private besides(foot: Foot): Shown {
    const own = shownOf(this.plate.mesh, foot.outline);
    if (this.beside === null) return own;
    const other = shownOf(plateMesh(this.beside.bones), this.beside.outline);
    return { mesh: own.mesh, whole: Float32Array.from([...own.whole, ...other.whole]) };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };
  readonly getFrame = (): Frame | null => this.frame;

  setSize(size: Size): void {
    if (size.width === this.size.width && size.height === this.size.height) return;
    this.size = size;
    if (!this.turned || this.camera === null) this.look(this.view, false, this.near);
    else this.request(true);
  }

  show(showing: Showing): void {
    const mirrorChanged = this.showing !== null && this.showing.mirrored !== showing.mirrored;
    // What another explanation said does not linger on its way out: the case may be shut.
    if (this.showing?.scene.explanation !== showing.scene.explanation) this.memory = { ...this.memory, drawn: [] };
    this.showing = showing;
    this.ring = null;
    if (this.camera === null || mirrorChanged) this.look(this.view, false, this.near);
    else this.request(this.motion === null);
  }

  private showsWhole(): boolean {
    const { showing, size } = this;
    const camera = this.motion?.to ?? this.camera;
    return camera !== null && showing !== null && isWhole(this.shownNow(showing), camera, showing.mirrored, size);
  }

  private shownNow({ scene }: Showing): Shown {
    return shownWith(this.shown, scene.measured?.lines.flat() ?? []);
  }

  private framed(showing: Showing): Framing {
    const bone = showing.scene.chosen ?? showing.scene.selected;
    const shown = this.shownNow(showing);
    return frameView(shown, this.view, bone, showing.mirrored, this.size, labelSpace(showing), this.near);
  }

  /**
   * After the foot has changed, or what is drawn on it: fitted again where it has left the plate or looks lost on it. Where a hand
   * has turned it, it is seen from there on, and only made whole again where it was whole.
   */
  fitAgain(animated: boolean): void {
    const { showing, size, wasWhole } = this;
    const camera = this.motion?.to ?? this.camera;
    this.wasWhole = null;
    if (showing === null || camera === null || size.width === 0) return;
    if (!this.turned) {
      const { camera: fitted } = this.framed(showing);
      const linesLost = showing.scene.measured !== null && !this.showsWhole();
      if (linesLost || isOff(camera, fitted, size)) this.look(this.view, animated, this.near);
    } else if (wasWhole === true && !this.showsWhole()) {
      const shown = this.shownNow(showing);
      this.goTo(frameAsTurned(shown, camera, showing.mirrored, size, this.mode, labelSpace(showing)), animated);
    }
  }

  /** `near`: from that side, but no more than the bone in question and what lies around it. */
  look(view: ViewId, animated: boolean, near = view === 'close'): void {
    this.view = view;
    this.near = near;
    this.turned = false;
    this.wasWhole = null;
    const { showing, size } = this;
    if (showing === null || size.width === 0) return;
    const { camera, mode } = this.framed(showing);
    const whole = frameView(this.shownNow(showing), view, null, showing.mirrored, size, labelSpace(showing), false);
    this.widest = 1.5 * whole.camera.mmPerPx;
    this.mode = mode;
    this.goTo(camera, animated);
  }

  private goTo(camera: Camera, animated: boolean): void {
    if (this.camera === null || !animated) {
      this.motion = null;
      this.camera = camera;
      this.request(true);
    } else {
      this.motion = { from: this.camera, to: camera, start: performance.now() };
      this.request(false);
    }
  }

  /** The named view in which that bone of the foot as it is held now is in sight. */
  viewOf(bone: BoneId): ViewId {
    return viewThatShows(this.plate.mesh, bone);
  }

  orbit(xPx: number, yPx: number): void {
    this.move((camera) => orbit(camera, -xPx * TURN_PER_PX, yPx * TURN_PER_PX));
  }
  pan(xPx: number, yPx: number): void {
    this.move((camera) => pan(camera, xPx, yPx));
  }
  /** Without a place: about the middle of the picture. */
  zoom(factor: number, x = this.size.width / 2, y = this.size.height / 2): void {
    this.move((camera) => zoomAbout(camera, this.size, factor, x, y));
  }

  pick(x: number, y: number): BoneId | null {
    const ray = this.rayOf(x, y);
    return ray === null ? null : (firstHit(this.plate.mesh, ...ray)?.bone ?? null);
  }
  /** The point of a bone under a place of the picture, where it stays whatever the foot does. */
  pointAt(x: number, y: number): PenPoint | null {
    const ray = this.rayOf(x, y);
    return ray === null ? null : penPointAt(this.plate.mesh, ...ray);
  }

  private rayOf(x: number, y: number): [from: Vec3, along: Vec3] | null {
    if (this.camera === null || this.showing === null) return null;
    const { from, along } = rayAt(this.camera, this.size, x, y);
    const mirror = (v: Vec3): Vec3 => (this.showing?.mirrored === true ? [-v[0], v[1], v[2]] : v);
    return [mirror(from), mirror(along)];
  }

  /** What was drawn by hand; the labels stay where they are. */
  setStrokes(strokes: readonly PenStroke[]): void {
    this.strokes = strokes;
    if (this.frame !== null) this.request(this.frame.atRest);
  }

  /** Once more as it stands: the context came back. */
  redraw(): void {
    this.request(true);
  }

  dispose(): void {
    cancelAnimationFrame(this.waiting);
    clearTimeout(this.rest);
    this.listeners.clear();
    this.plate.dispose();
  }

  /** Where the eye is now; null before the first picture. */
  get eye(): Camera | null {
    return this.camera;
  }
  /** Seen from there, as if by hand: for a picture that turns with another. */
  follow(camera: Camera): void {
    this.move(() => camera);
  }

  /** Lets the canvas go for good: browsers keep only a few. */
  release(): void {
    this.plate.release();
  }

  private move(change: (camera: Camera) => Camera): void {
    if (this.camera === null) return;
    this.motion = null;
    this.turned = true;
    this.wasWhole = null;
    this.camera = keepInside(change(this.camera), this.bounds, this.widest);
    this.request(false);
  }

  private request(atRest: boolean): void {
    this.wantsRest = atRest;
    clearTimeout(this.rest);
    if (this.waiting === 0) this.waiting = requestAnimationFrame((now) => this.tick(now));
  }

  private tick(now: number): void {
    this.waiting = 0;
    if (this.motion !== null) {
      const { from, to, start } = this.motion;
      const share = Math.min(1, Math.max(0, (now - start) / MOTION_MS));
      this.camera = between(from, to, ease(share));
      if (share < 1) {
        this.draw(false);
        this.request(false);
        return;
      }
      this.motion = null;
      this.wantsRest = true;
    }
    this.draw(this.wantsRest);
    if (!this.wantsRest) this.rest = setTimeout(() => this.request(true), REST_MS);
  }

  private draw(atRest: boolean): void {
    const { showing, camera, size } = this;
    if (showing === null || camera === null || size.width === 0) return;
    const { scene, tokens, mirrored } = showing;
    const ring = scene.breakAt !== null && showsRing(scene.breakAt, camera.mmPerPx);
    if (ring !== this.ring) {
      this.ring = ring;
      const broken = scene.breakAt === null || ring ? [] : breakStrokes(scene.breakAt);
      const { chosen, selected, layer, dimOthers } = scene;
      this.plate.setDrawing(
        {
          chosen,
          selected,
          layer,
          dimOthers,
          mirrored,
          contourPx: showing.contourPx,
          strokes: [...scene.borders, ...besideStrokes(scene.beside), ...broken],
          beside: scene.beside?.is === 'ossicle' ? scene.beside.mesh : null,
        },
        tokens,
      );
    }
    const fine = Math.min(3, Math.max(2, globalThis.devicePixelRatio));
    const affordable = Math.sqrt(MOST_PIXELS / (size.width * size.height));
    this.plate.draw(camera, size, Math.min(affordable, atRest ? fine : this.coarse), !atRest);
    const overlay = overlayOf({
      scene,
      mesh: this.plate.mesh,
      camera,
      size,
      mirrored,
      labels: showing.labels,
      mode: this.mode,
      fonts: showing.fonts,
      measure: showing.measure,
      strokes: this.strokes,
      before: this.memory,
      atRest,
    });
    this.memory = overlay.memory;
    this.count += 1;
    const { triangles, calls } = this.plate.counts;
    const view = this.turned ? null : this.view;
    this.frame = { overlay, camera, size, tokens, view, atRest, showing, count: this.count, triangles, calls };
    for (const listener of this.listeners) listener();
  }
}
