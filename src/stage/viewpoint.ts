/**
 * From where the foot is seen: a named view or a hand's own, what it is fitted to, and the way from one to the next. Draws nothing
 * and asks for no frame.
 */
import type { Foot } from '../anatomy/types';
import type { ViewId } from '../session/types';
import { type Bounds, between, boundsOf, type Camera, keepInside, type Size } from './camera/camera';
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
import { type PlateMesh, plateMesh } from './draw/plate-mesh';
import type { Showing } from './engine';
import type { LabelBox } from './labels/layout';

const MOTION_MS = 380;

const ease = (t: number): number => 1 - (1 - t) ** 3;

/** This foot with room for the one beside it. */
const besides = (mesh: PlateMesh, { outline }: Foot, beside: Foot | null): Shown => {
  const own = shownOf(mesh, outline);
  if (beside === null) return own;
  const other = shownOf(plateMesh(beside.bones), beside.outline);
  return { mesh, whole: Float32Array.from([...own.whole, ...other.whole]) };
};

export class Viewpoint {
  /** Null before there is something to look at. */
  camera: Camera | null = null;
  mode: LabelBox['mode'] = 'ends';
  private shown: Shown;
  private bounds: Bounds;
  private showing: Showing | null = null;
  private size: Size = { width: 0, height: 0 };
  private view: ViewId = 'outer';
  private near = false;
  private turned = false;
  private widest = 1;
  private motion: { from: Camera; to: Camera; start: number } | null = null;
  /** Whether the whole foot was on the plate before the foot changed; null when nothing has changed since it was fitted. */
  private wasWhole: boolean | null = null;

  /** `beside`: another right foot that every view leaves room for. */
  constructor(mesh: PlateMesh, foot: Foot, beside: Foot | null) {
    this.shown = besides(mesh, foot, beside);
    this.bounds = boundsOf(mesh.positions);
  }

  /** The named view, or null once a hand has turned it. */
  get named(): ViewId | null {
    return this.turned ? null : this.view;
  }
  get moving(): boolean {
    return this.motion !== null;
  }

  /** Another foot, or another beside it, seen from where one was looking. */
  setFoot(mesh: PlateMesh, foot: Foot, beside: Foot | null): void {
    this.wasWhole ??= this.showsWhole();
    this.shown = besides(mesh, foot, beside);
    this.bounds = boundsOf(mesh.positions);
  }

  /** A view that no hand has turned fits its plate. */
  setSize(size: Size): void {
    this.size = size;
    if (!this.turned || this.camera === null) this.look(this.view, false, this.near);
  }

  /** What is shown from now on; a mirror image is looked at anew. */
  setShowing(showing: Showing): void {
    const mirrorChanged = this.showing !== null && this.showing.mirrored !== showing.mirrored;
    this.showing = showing;
    if (this.camera === null || mirrorChanged) this.look(this.view, false, this.near);
  }

  /** `near`: from that side, but no more than the bone in question and what lies around it. */
  look(view: ViewId, animated: boolean, near: boolean): void {
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

  /**
   * After the foot has changed, or what is drawn on it: fitted again where it has left the plate or looks lost on it. Where a hand
   * has turned it, it is seen from there on, and only made whole again where it was whole. False where it stays as it is.
   */
  fitAgain(animated: boolean): boolean {
    const { showing, size, wasWhole } = this;
    const camera = this.motion?.to ?? this.camera;
    this.wasWhole = null;
    if (showing === null || camera === null || size.width === 0) return false;
    if (!this.turned) {
      const linesLost = showing.scene.measured !== null && !this.showsWhole();
      if (!linesLost && !isOff(camera, this.framed(showing).camera, size)) return false;
      this.look(this.view, animated, this.near);
    } else {
      if (wasWhole !== true || this.showsWhole()) return false;
      const shown = this.shownNow(showing);
      this.goTo(frameAsTurned(shown, camera, showing.mirrored, size, this.mode, labelSpace(showing)), animated);
    }
    return true;
  }

  /** By hand: from wherever it was on its way. */
  move(change: (camera: Camera) => Camera): void {
    if (this.camera === null) return;
    this.motion = null;
    this.turned = true;
    this.wasWhole = null;
    this.camera = keepInside(change(this.camera), this.bounds, this.widest);
  }

  /** On the way at that moment, ms. */
  advance(now: number): void {
    if (this.motion === null) return;
    const { from, to, start } = this.motion;
    const share = Math.min(1, Math.max(0, (now - start) / MOTION_MS));
    this.camera = between(from, to, ease(share));
    if (share === 1) this.motion = null;
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

  private goTo(camera: Camera, animated: boolean): void {
    this.motion =
      this.camera === null || !animated ? null : { from: this.camera, to: camera, start: performance.now() };
    if (this.motion === null) this.camera = camera;
  }
}
