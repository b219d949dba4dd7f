/** Labels on the real foot from any side, without a browser: what a frame at rest and frames on the way to the next would show. */
import type { BoneId, Reader } from '../../../../src/ids';
import { type Camera, fitCamera, pan, type Size, zoomAbout } from '../../../../src/stage/camera/camera';
import { labelSpace, NARROW_PX, shownOf } from '../../../../src/stage/camera/framing';
import { plateMesh } from '../../../../src/stage/draw/plate-mesh';
import { capital } from '../../../../src/stage/labels/choose';
import type { LabelBox } from '../../../../src/stage/labels/layout';
import { type LabelMemory, NO_LABELS } from '../../../../src/stage/overlay/labelled';
import { type LabelText, sizeOf } from '../../../../src/stage/overlay/labels';
import { type Overlay, overlayOf } from '../../../../src/stage/overlay/overlay';
import { showingOf } from '../../../../src/stage/showing';
import type { Explanation, Point } from '../../../../src/stage/types';
import { content, demoOnDefaultFoot, explained, drawnFoot as foot } from '../../../tools/explained';
import { plainShowing } from '../plain-showing';
import { type Extent, faultsOf } from './faults';

export const mesh = plateMesh(foot.bones);
export const { whole } = shownOf(mesh, foot.outline);

export interface Looked {
  readonly azimuthRad: number;
  readonly elevationRad: number;
  /** How many times nearer than the whole foot, and how far it was moved then. */
  readonly zoom?: number;
  readonly panPx?: Point;
}

/** A broken bone of a demo case: one more label, the tag "here", which points at its one place. */
export const withBreak = (): Explanation => explained(demoOnDefaultFoot('handball-zone-2'));

/** The names of these bones as a reader has them, the first the most important. */
export const namesOf = (bones: readonly BoneId[], reader: Reader): LabelText[] =>
  bones.flatMap((id, i): LabelText[] => {
    const record = content.bones.find((bone) => bone.id === id);
    if (record === undefined) return [];
    const text = capital(reader === 'study' ? record.term : record.plain);
    return [{ id, text, second: null, tag: null, spot: null, priority: bones.length - i }];
  });

interface PlateWish {
  readonly selectedBone?: BoneId | null;
  readonly explanation?: Explanation | null;
  /** The margins of a wide plate. A narrow one has its labels above and below. */
  readonly wide?: LabelBox['mode'];
}

/** A plate of a size with the labels of a reader; `look` gives the next frame of it. */
export const plateFor = (
  reader: Reader,
  size: Size,
  { selectedBone = 'metatarsal5', explanation = null, wide = 'sides' }: PlateWish = {},
) => {
  const narrow = size.width < NARROW_PX;
  const showing = showingOf({
    ...plainShowing(foot, content),
    explanation,
    reader,
    selectedBone,
    labelPx: narrow ? 14 : 15,
    narrow,
  });
  const mode: LabelBox['mode'] = narrow ? 'ends' : wide;
  const space = labelSpace(showing);
  const inset = mode === 'sides' ? Math.min(size.width / 4, space.widest + 38) : space.tallest + 38;
  const insets =
    mode === 'sides'
      ? { left: inset, right: inset, top: 16, bottom: 16 }
      : { left: 22, right: 22, top: inset, bottom: inset };
  let before: LabelMemory = NO_LABELS;
  const look = ({ azimuthRad, elevationRad, zoom = 1, panPx = [0, 0] }: Looked, atRest: boolean, from = before) => {
    const fitted: Camera = fitCamera(whole, { azimuthRad, elevationRad }, size, insets);
    const camera = pan(zoomAbout(fitted, size, zoom, size.width / 2, size.height / 2), ...panPx);
    const overlay = overlayOf({ ...showing, mesh, camera, size, mode, before: from, atRest });
    before = overlay.memory;
    return overlay;
  };
  const extentOf = (id: string): Extent => {
    const label = showing.labels.find((each) => each.id === id);
    if (label === undefined) throw new Error('a label nobody asked for');
    return sizeOf(label, showing.fonts, showing.measure);
  };
  /** What is wrong with the labels of a rest. */
  const faults = ({ memory }: Overlay) => faultsOf(memory.placed, extentOf, size);
  return { look, faults, showing, size, mode };
};
