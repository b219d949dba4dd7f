/**
 * The live stage without React: one plate, one camera, one overlay, and the clock of frames. A frame is drawn only when something
 * asked for it: coarse ones while the camera moves, one fine one at rest. Everything else here is bookkeeping of these two.
 */
import type { Foot } from '../anatomy/types';
import type { BoneId } from '../ids';
import type { BreakSign, ViewId } from '../session/types';
import type { Vec3 } from '../units';
import { type Camera, orbit, pan, rayAt, type Size, zoomAbout } from './camera/camera';
import { viewThatShows } from './camera/seen-from';
import { firstHit, type Hit } from './draw/pick';
import { Plate } from './draw/plate';
import type { Tokens } from './draw/tokens';
import { NO_LABELS } from './overlay/labelled';
import type { LabelText } from './overlay/labels';
import { type Overlay, overlayOf } from './overlay/overlay';
import type { Fonts, Measure } from './overlay/shapes';
import { type PenPoint, type PenStroke, penPointAt } from './pen/stroke';
import { besideStrokes } from './scene/aside';
import type { LoadNumber } from './scene/load-path';
import { breakSignOf, breakStrokes, type StageScene, showsRing } from './scene/scene';
import { strandStrokes } from './scene/strand';
import { Viewpoint } from './viewpoint';

export interface Showing {
  readonly scene: StageScene;
  readonly labels: readonly LabelText[];
  readonly fonts: Fonts;
  readonly measure: Measure;
  /** A number of body weights in words. */
  readonly loadText: (number: LoadNumber) => string;
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
  /** How the break is drawn; null without one. */
  readonly breakSign: BreakSign | null;
  /** What this frame shows: ready means that it is what is asked for now. */
  readonly showing: Showing;
  readonly count: number;
  readonly triangles: number;
  readonly calls: number;
}

export type Picked = Pick<Hit, 'bone' | 'point'>;

const REST_MS = 140;
const MOST_PIXELS = 9e6;
/** One pointer pixel turns the foot by this much. */
export const TURN_PER_PX = 0.0085;

export class Engine {
  frame: Frame | null = null;
  private readonly plate: Plate;
  private readonly coarse: number;
  private readonly viewpoint: Viewpoint;
  private readonly listeners = new Set<() => void>();
  private showing: Showing | null = null;
  private strokes: readonly PenStroke[] = [];
  private size: Size = { width: 0, height: 0 };
  private memory = NO_LABELS;
  private waiting = 0;
  private rest: ReturnType<typeof setTimeout> | undefined;
  private wantsRest = false;
  private ring: boolean | null = null;
  private count = 0;

  /** `beside`: another right foot that every view leaves room for. Throws when the browser gives no WebGL 2. */
  constructor(canvas: HTMLCanvasElement, foot: Foot, beside: Foot | null = null) {
    this.plate = new Plate(canvas, foot);
    // Below two device pixels a pixel fine lines flicker while the foot turns; a processor cannot afford them and draws coarse ones.
    this.coarse = this.plate.software ? 0.75 : 2;
    this.viewpoint = new Viewpoint(this.plate.mesh, foot, beside);
  }

  /** Another foot, or another beside it, seen from where one was looking. */
  setFoot(foot: Foot, beside: Foot | null = null): void {
    this.plate.setFoot(foot);
    this.viewpoint.setFoot(this.plate.mesh, foot, beside);
    this.ring = null;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };
  readonly getFrame = (): Frame | null => this.frame;

  setSize(size: Size): void {
    if (size.width === this.size.width && size.height === this.size.height) return;
    this.size = size;
    this.viewpoint.setSize(size);
    this.request(!this.viewpoint.moving);
  }

  show(showing: Showing): void {
    // What another explanation said does not linger on its way out: the case may be shut.
    if (this.showing?.scene.explanation !== showing.scene.explanation) this.memory = { ...this.memory, drawn: [] };
    this.showing = showing;
    this.ring = null;
    this.viewpoint.setShowing(showing);
    this.request(!this.viewpoint.moving);
  }

  fitAgain(animated: boolean): void {
    if (this.viewpoint.fitAgain(animated)) this.request(!this.viewpoint.moving);
  }

  look(view: ViewId, animated: boolean, near = view === 'close'): void {
    this.viewpoint.look(view, animated, near);
    this.request(!this.viewpoint.moving);
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

  /** The bone under a place of the picture, and the point of it as on a right foot. */
  pick(x: number, y: number): Picked | null {
    const ray = this.rayOf(x, y);
    return ray === null ? null : firstHit(this.plate.mesh, ...ray);
  }
  /** The point of a bone under a place of the picture, where it stays whatever the foot does. */
  pointAt(x: number, y: number): PenPoint | null {
    const ray = this.rayOf(x, y);
    return ray === null ? null : penPointAt(this.plate.mesh, ...ray);
  }

  private rayOf(x: number, y: number): [from: Vec3, along: Vec3] | null {
    const { camera } = this.viewpoint;
    if (camera === null || this.showing === null) return null;
    const { from, along } = rayAt(camera, this.size, x, y);
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
    return this.viewpoint.camera;
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
    this.viewpoint.move(change);
    this.request(false);
  }

  private request(atRest: boolean): void {
    this.wantsRest = atRest;
    clearTimeout(this.rest);
    if (this.waiting === 0) this.waiting = requestAnimationFrame((now) => this.tick(now));
  }

  private tick(now: number): void {
    this.waiting = 0;
    if (this.viewpoint.moving) {
      this.viewpoint.advance(now);
      this.wantsRest = !this.viewpoint.moving;
    }
    if (this.viewpoint.moving) {
      this.draw(false);
      this.request(false);
      return;
    }
    this.draw(this.wantsRest);
    if (!this.wantsRest) this.rest = setTimeout(() => this.request(true), REST_MS);
  }

  private draw(atRest: boolean): void {
    const { showing, size } = this;
    const { camera, mode, named } = this.viewpoint;
    if (showing === null || camera === null || size.width === 0) return;
    const { scene, tokens, mirrored } = showing;
    const ring = scene.breakAt !== null && showsRing(scene.breakAt, camera.mmPerPx);
    if (ring !== this.ring) {
      this.ring = ring;
      const broken = scene.breakAt === null || ring ? [] : breakStrokes(scene.breakAt);
      const { chosen, also, selected, layer, dimOthers } = scene;
      this.plate.setDrawing(
        {
          chosen,
          also,
          selected,
          layer,
          dimOthers,
          mirrored,
          contourPx: showing.contourPx,
          strokes: [...scene.borders, ...besideStrokes(scene.beside), ...strandStrokes(scene.strand), ...broken],
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
      mode,
      fonts: showing.fonts,
      measure: showing.measure,
      loadText: showing.loadText,
      strokes: this.strokes,
      before: this.memory,
      atRest,
    });
    this.memory = overlay.memory;
    this.count += 1;
    const { triangles, calls } = this.plate.counts;
    const breakSign = breakSignOf(scene.breakAt, camera.mmPerPx);
    const drawn = { overlay, camera, size, tokens, view: named, atRest, breakSign, showing };
    this.frame = { ...drawn, count: this.count, triangles, calls };
    for (const listener of this.listeners) listener();
  }
}
