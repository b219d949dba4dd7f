/** The bone that a question lights is in sight in the view that the question opens with: counted on a grid of the picture. */
import { describe, expect, it } from 'vitest';
import { BONE_IDS } from '../../../src/ids';
import { basisOf, fitCamera, rayAt } from '../../../src/stage/camera/camera';
import { shownOf } from '../../../src/stage/camera/framing';
import { viewThatShows } from '../../../src/stage/camera/seen-from';
import { anglesOf } from '../../../src/stage/camera/views';
import { firstHit } from '../../../src/stage/draw/pick';
import { plateMesh } from '../../../src/stage/draw/plate-mesh';
import type { Vec3 } from '../../../src/units';
import { drawnFoot as foot } from '../../tools/explained';

const mesh = plateMesh(foot.bones);
const { whole } = shownOf(mesh, foot.outline);
const size = { width: 360, height: 260 };
/** On the plate of a phone: a spot of 5 by 5 px at least, whatever the bone. */
const ENOUGH_PX = 25;
const insets = { left: 20, right: 20, top: 20, bottom: 20 };

describe('the view that a question opens with', () => {
  it.each(BONE_IDS)('shows %s', (bone) => {
    const view = viewThatShows(mesh, bone);
    const angles = anglesOf(view, false);
    const camera = fitCamera(whole, angles, size, insets);
    const range = mesh.ranges.find((each) => each.bone === bone);
    if (range === undefined) throw new Error('no such bone');
    const { right, up } = basisOf(camera);
    const along = (p: Vec3, axis: Vec3): number => p[0] * axis[0] + p[1] * axis[1] + p[2] * axis[2];
    const middle: readonly [number, number] = [
      size.width / 2 + (along(range.centre, right) - along(camera.target, right)) / camera.mmPerPx,
      size.height / 2 - (along(range.centre, up) - along(camera.target, up)) / camera.mmPerPx,
    ];
    const reach = Math.ceil(range.radiusMm / camera.mmPerPx);
    let seen = 0;
    // No more than is asked for below is counted: most of a large bone would be looked at for nothing.
    for (let x = -reach; x <= reach && seen <= ENOUGH_PX; x += 1) {
      for (let y = -reach; y <= reach; y += 1) {
        const ray = rayAt(camera, size, middle[0] + x, middle[1] + y);
        if (firstHit(mesh, ray.from, ray.along)?.bone === bone) seen += 1;
      }
    }
    expect(seen, `${bone} from ${view}`).toBeGreaterThan(ENOUGH_PX);
  });

  it('is the outer side wherever that will do, and another for the two bones under the big toe', () => {
    expect(viewThatShows(mesh, 'metatarsal5')).toBe('outer');
    expect(viewThatShows(mesh, 'calcaneus')).toBe('outer');
    expect(viewThatShows(mesh, 'sesamoidMedial')).not.toBe('outer');
    expect(viewThatShows(mesh, 'sesamoidLateral')).not.toBe('outer');
  });
});
