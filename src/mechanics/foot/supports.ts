/**
 * Boot, stiff sole and wedge as loads on the frame: pushing off in walking barefoot is what each is held against, draw by draw. None
 * of them is a factor on the stress: nothing read gives one for a metatarsal.
 */
import { type BandedCase, caseOf, type LoadDraw } from './bands';
import type { KeptFrames, LoadedFoot, Person } from './case-draw';
import { STEPS } from './contributors';
import type { Ray } from './landmarks';
import type { LoadCase } from './load-case';
import { type FrameRun, type Pulled, pullChangeOf, pullOf } from './pull';
import { SUPPORTS, type Support, type SupportId } from './types';

/**
 * The push-off of a draw, with a support. A boot is a stand-in, assumed: heel down and toes straight, so the whole-sole contact, the
 * centre of pressure and the muscles of a flat foot, under the whole force of push-off. A wedge tilts the ground: an outer one is
 * higher under the outer edge.
 */
const supported = (id: SupportId, pushOff: FrameRun, flat: LoadCase): FrameRun => {
  const { loadCase, person } = pushOff;
  const { figures } = loadCase;
  const tilted = (deg: number): FrameRun => ({
    ...pushOff,
    loadCase: { ...loadCase, figures: { ...figures, tilt: figures.tilt + deg } },
  });
  switch (id) {
    case 'boot':
      return { ...pushOff, loadCase: { ...flat, figures: { ...flat.figures, total: figures.total } } };
    case 'stiffSole':
      return { ...pushOff, person: { ...person, soleBending: person.soleBending + STEPS.soleBending } };
    case 'outerWedge':
      return tilted(STEPS.tiltDeg);
    case 'innerWedge':
      return tilted(-STEPS.tiltDeg);
  }
};

/** `draws` are made with `flat` as the case and `pushOff` as the reference. A support without an answer is left out. */
export const supportsOf = (
  foot: LoadedFoot,
  draws: readonly LoadDraw[],
  flat: BandedCase,
  pushOff: BandedCase,
  person: Person,
  ray: Ray,
): readonly Support[] => {
  const bases = draws.map(
    (draw): FrameRun => ({ loadCase: caseOf(draw, pushOff, 'reference'), person, form: foot.form }),
  );
  const kept = draws.map((): KeptFrames => new Map());
  const pull = (run: FrameRun, i: number): Pulled | null =>
    pullOf(foot, run, draws[i] as LoadDraw, ray, kept[i] as KeptFrames);
  const pulls = bases.map(pull);
  return SUPPORTS.flatMap((id): Support[] => {
    const after = bases.map((base, i) => pull(supported(id, base, caseOf(draws[i] as LoadDraw, flat, 'case')), i));
    const change = pullChangeOf(pulls, after);
    return change === null ? [] : [{ id, ...change }];
  });
};
