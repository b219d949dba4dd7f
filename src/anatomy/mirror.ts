/** A left foot is the mirror of a right one in the sagittal plane (X). */

import type { Vec3 } from '../units';
import { mirrorMesh } from './mesh';
import type { Foot, Joint } from './types';

const flip = (p: Vec3): Vec3 => [-p[0], p[1], p[2]];

const mirrorJoint = (j: Joint): Joint => ({
  ...j,
  centre: flip(j.centre),
  normal: flip(j.normal),
  major: flip(j.major),
});

export const mirrorFoot = (foot: Foot): Foot => ({
  parameters: foot.parameters,
  pose: foot.pose,
  level: foot.level,
  side: foot.side === 'right' ? 'left' : 'right',
  bones: new Map([...foot.bones].map(([id, mesh]) => [id, mirrorMesh(mesh)])),
  leg: new Map([...foot.leg].map(([id, mesh]) => [id, mirrorMesh(mesh)])),
  joints: new Map([...foot.joints].map(([id, joint]) => [id, mirrorJoint(joint)])),
  outline: mirrorMesh(foot.outline),
  reference: foot.reference,
});
