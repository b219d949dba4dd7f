/** Labels on the real foot from any side, without a browser: what a frame at rest and frames on the way to the next would show. */
import { readContent } from '../../../../src/cli/read-content';
import type { BoneId, Reader } from '../../../../src/ids';
import { basisOf, type Camera, fitCamera, project, type Size } from '../../../../src/stage/camera/camera';
import { labelSpace, NARROW_PX, shownOf } from '../../../../src/stage/camera/framing';
import { plateMesh } from '../../../../src/stage/draw/plate-mesh';
import { PAPER, tokensFrom } from '../../../../src/stage/draw/tokens';
import type { LabelBox } from '../../../../src/stage/labels/layout';
import { type LabelMemory, NO_LABELS } from '../../../../src/stage/overlay/labelled';
import { overlayOf } from '../../../../src/stage/overlay/overlay';
import { showingOf } from '../../../../src/stage/showing';
import type { Point } from '../../../../src/stage/types';
import { modelFoot } from '../../../tools/model-foot';

const foot = modelFoot();
const mesh = plateMesh(foot.bones);
const content = readContent();
const { whole } = shownOf(mesh, foot.outline);

export interface Looked {
  readonly azimuthRad: number;
  readonly elevationRad: number;
}

/** A plate of a size with the labels of a reader; `look` gives the next frame of it. */
export const plateFor = (reader: Reader, size: Size, selectedBone: BoneId = 'metatarsal5') => {
  const narrow = size.width < NARROW_PX;
  const showing = showingOf({
    foot,
    content,
    explanation: null,
    question: 'where',
    reader,
    selectedBone,
    quiz: null,
    dragMm: null,
    measured: null,
    lookAlike: null,
    tokens: tokensFrom(PAPER),
    measure: (text, { px }) => text.length * px * 0.5,
    labelPx: narrow ? 14 : 15,
    contourPx: 1.9,
    narrow,
  });
  const mode: LabelBox['mode'] = narrow ? 'ends' : 'sides';
  const space = labelSpace(showing);
  const inset = mode === 'sides' ? Math.min(size.width / 4, space.widest + 38) : space.tallest + 38;
  const insets =
    mode === 'sides'
      ? { left: inset, right: inset, top: 16, bottom: 16 }
      : { left: 22, right: 22, top: inset, bottom: inset };
  let before: LabelMemory = NO_LABELS;
  const look = (angles: Looked, atRest: boolean) => {
    const camera: Camera = fitCamera(whole, angles, size, insets);
    const overlay = overlayOf({ ...showing, mesh, camera, size, mode, before, atRest });
    before = overlay.memory;
    const basis = basisOf(camera);
    const dotOf = (id: string): Point | null => {
      const world = overlay.memory.anchors.get(id);
      if (world === undefined) return null;
      const [x, y] = project(camera, basis, size, world);
      return [x, y];
    };
    return { ...overlay, dotOf };
  };
  return { look, showing, size, mode };
};
