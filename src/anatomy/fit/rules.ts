/** What the project asks of the fit of bones (common practice of this project, not published figures), and what of it is broken. */
import type { Shape } from '../shape';
import type { PoseName } from '../types';
import type { Fit, JointFit } from './fit';

/** 5th to 95th percentile of the gap at an articular joint, mm. */
const GAP_MM = [1.3, 3.7] as const;
/** A facet reaches this share of its tabled area. */
const AREA_SHARE = 0.8;
/** Bones keep clear of each other in standing; turned any further, where cartilage would give, they may overlap as deep as this, mm. */
const OVERLAP_MM = { standing: 0, turned: 0.8 } as const;

const ofJoint = ({ joint, p5Mm, p95Mm, areaShare }: JointFit): string[] => {
  const broken: string[] = [];
  // Asked so that a joint with no facing point, whose gaps are not numbers, breaks the rule.
  if (!(p5Mm >= GAP_MM[0])) broken.push(`${joint}: gap ${p5Mm.toFixed(2)} mm (5 %), below ${GAP_MM[0]}`);
  if (!(p95Mm <= GAP_MM[1])) broken.push(`${joint}: gap ${p95Mm.toFixed(2)} mm (95 %), above ${GAP_MM[1]}`);
  if (areaShare !== null && !(areaShare >= AREA_SHARE))
    broken.push(`${joint}: ${(100 * areaShare).toFixed(0)} % of its tabled area, below ${100 * AREA_SHARE} %`);
  return broken;
};

/** One line for every rule that the fit of a whole foot in this pose breaks; gaps and areas are asked of the standing foot only. */
export const brokenRules = (shape: Shape, fit: Fit, pose: PoseName): string[] => {
  const limit = pose === 'standing' ? OVERLAP_MM.standing : OVERLAP_MM.turned;
  const overlaps = fit.overlaps
    .filter(({ depthMm }) => depthMm > limit)
    .map(({ bones, depthMm }) => `${bones.join(' and ')} overlap by ${depthMm.toFixed(2)} mm, more than ${limit}`);
  if (pose !== 'standing') return overlaps;
  const met = new Set(fit.joints.map(({ joint }) => joint));
  const missed = shape.joints
    .filter(({ id, articular }) => articular && !met.has(id))
    .map(({ id }) => `${id}: its bones do not come near each other`);
  return [...fit.joints.filter(({ articular }) => articular).flatMap(ofJoint), ...missed, ...overlaps];
};
