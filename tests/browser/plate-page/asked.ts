/**
 * What the reference pictures show: the invented cases on the shipped foot, framed as the stage frames them where nothing is
 * labelled, so that no letter's width moves the camera. Made here, drawn by the plate's page.
 */
import { buildFoot, DEFAULT_FOOT, encodeGlb, type Foot, prepareAnatomy } from '../../../src/anatomy';
import { factsOf } from '../../../src/cases';
import { readShape } from '../../../src/cli/read-shape';
import { explain, NO_WHAT_IF } from '../../../src/explain';
import type { QuestionId } from '../../../src/ids';
import type { ViewId } from '../../../src/session/types';
import { frameView, shownOf } from '../../../src/stage/camera/framing';
import { plateMesh } from '../../../src/stage/draw/plate-mesh';
import { breakStrokes, sceneOf, showsRing } from '../../../src/stage/scene/scene';
import { isMirrored } from '../../../src/stage/showing';
import { bodyNotes } from '../../../src/wording';
import { content, type Demo, demoOnDefaultFoot, drawnFoot as shipped } from '../../tools/explained';
import type { Asked } from './drawn';

export interface Plan {
  readonly look: 'paper' | 'slate' | 'contrast' | 'print';
  readonly demo: Demo;
  readonly question: QuestionId;
  readonly view: ViewId;
  readonly pose?: 'pushOff';
}

/** Small enough to be kept in the repository, large enough that a zone is wider than its hatch. */
const SIZE = { width: 480, height: 360 };
const CONTOUR_PX = 1.9;

const pushingOff = async (): Promise<{ foot: Foot; glb: string }> => {
  await prepareAnatomy();
  const foot = buildFoot(readShape(), DEFAULT_FOOT, 'pushOff');
  return { foot, glb: Buffer.from(await encodeGlb(foot, bodyNotes(content))).toString('base64') };
};

export const askedFor = async (plan: Plan, otherwise: Asked['otherwise'] = []): Promise<Asked> => {
  const { foot, glb } = plan.pose === undefined ? { foot: shipped, glb: null } : await pushingOff();
  // Zones and stations of the foot that is drawn: the pictures are of how they are drawn.
  const explanation = explain(content, factsOf(demoOnDefaultFoot(plan.demo)), NO_WHAT_IF, shipped);
  const { layer, ...scene } = sceneOf(foot, {
    content,
    reader: 'study',
    narrow: false,
    explanation,
    question: plan.question,
    selectedBone: null,
    quiz: null,
    lit: null,
    dragMm: null,
    contourPx: CONTOUR_PX,
    measured: null,
    lookAlike: null,
    strand: null,
    card: null,
  });
  const mirrored = isMirrored(explanation);
  const noLabels = { widest: 0, tallest: 0, totalWidth: 0 };
  const shown = shownOf(plateMesh(foot.bones), foot.outline);
  const { camera } = frameView(shown, plan.view, scene.chosen, mirrored, SIZE, noLabels);
  const { breakAt } = scene;
  const broken = breakAt === null || showsRing(breakAt, camera.mmPerPx) ? [] : breakStrokes(breakAt);
  const { chosen, also, selected, dimOthers, borders } = scene;
  const drawing = {
    chosen,
    also,
    selected,
    dimOthers,
    mirrored,
    contourPx: CONTOUR_PX,
    strokes: [...borders, ...broken],
  };
  const field = 'field' in layer ? [...layer.field] : null;
  return { look: plan.look, drawing: { ...drawing, layer }, field, camera, size: SIZE, glb, otherwise };
};
