/**
 * Which foot the stage shows, and what is measured on it. The usual foot comes ready-made as a file; any other is built in a worker,
 * and until it is there the one before stays. A right foot always: the left is its mirror image, made while drawing.
 */
import * as v from 'valibot';
import { DEFAULT_FOOT, previewFoot, type Shape, shapeSchema } from '../anatomy';
import type { Angle } from '../anatomy/angles';
import type { Foot, FootParameters, PoseName } from '../anatomy/types';
import type { Measures } from '../pages';
import { latestOnly } from '../session';
import type { Session, SessionState } from '../session/types';
import type { FootMakers } from './foot-makers';
import { kept, type Wanted, wantedOf } from './kept';

export interface Feet {
  readonly getFoot: () => Foot | null;
  readonly subscribe: (listener: () => void) => () => void;
  /** The exact foot that is asked for now, never a preview of it. */
  readonly exact: () => Promise<Foot>;
  /** The standing foot of these parameters: what explanations and every telling of them are made on. */
  readonly standing: (parameters: FootParameters) => Promise<Foot>;
  /** What is measured on it, whichever foot the picture shows. */
  readonly film: (parameters: FootParameters) => Promise<readonly Angle[]>;
  /** Taken only while somebody follows them. */
  readonly measures: {
    readonly get: () => Measures;
    readonly follow: (listener: () => void) => () => void;
  };
}

/** Films are measured on standing people: in no other pose do the usual values mean anything. */
const FILMED: PoseName = 'standing';

const parametersOf = ({ explanation, whatIf }: SessionState): FootParameters => ({
  ...(explanation?.foot ?? DEFAULT_FOOT),
  ...whatIf.foot,
});

export const followFoot = (session: Session, usual: Promise<Foot>, makers: FootMakers): Feet => {
  const listeners = new Set<() => void>();
  const followers = new Set<() => void>();
  const usualOne = wantedOf(DEFAULT_FOOT, 'standing');
  const footFor = kept((asked) => (asked.key === usualOne.key ? usual : makers.build(asked.parameters, asked.pose)));
  const anglesFor = kept(({ parameters, pose }) => makers.measure(parameters, pose));
  // What is overtaken while another is made is never made.
  const newestFoot = latestOnly(footFor);
  const newestAngles = latestOnly(anglesFor);
  let shown: Foot | null = null;
  let wanted = usualOne;
  /** The one whose exact foot is shown; another while a preview is. */
  let exact: Wanted | null = null;
  /** Could not be built: the picture is still of the one before. */
  let failed: Wanted | null = null;
  let measured: { readonly of: string; readonly angles: Measures['angles'] } | null = null;
  let measures: Measures = { angles: [], state: 'coming' };
  let shape: Shape | null = null;

  const tellMeasures = (): void => {
    const current = measured?.of === wanted.key && exact === wanted;
    const angles = measured?.angles ?? [];
    if (failed === wanted) measures = { angles: [], state: 'failed' };
    else if (wanted.pose !== FILMED) measures = { angles: [], state: 'posed' };
    else measures = { angles, state: !current ? 'coming' : angles.length === 0 ? 'none' : 'current' };
    for (const listener of followers) listener();
  };
  const measure = async () => {
    const target = wanted;
    if (followers.size === 0 || exact !== target || measured?.of === target.key || target.pose !== FILMED) return;
    const angles = await newestAngles(target).catch((failure: unknown) => {
      // Bones that no longer meet have no measures.
      console.warn(failure);
      return [];
    });
    if (angles === null) return;
    measured = { of: target.key, angles };
    tellMeasures();
  };
  const show = (foot: Foot): void => {
    shown = foot;
    for (const listener of listeners) listener();
  };
  const fetchWanted = async () => {
    const target = wanted;
    try {
      const foot = await newestFoot(target);
      if (foot === null || wanted !== target) return;
      exact = target;
      show(foot);
      tellMeasures();
      void measure();
    } catch (failure) {
      // Tried again when it is asked for next; the pages work without the picture.
      console.error(failure);
      if (wanted !== target) return;
      failed = target;
      tellMeasures();
    }
  };
  const want = (parameters: FootParameters, pose: PoseName): void => {
    const next = wantedOf(parameters, pose);
    if (next.key === wanted.key) return;
    wanted = next;
    tellMeasures();
    void fetchWanted();
  };
  /** Follows a hand on a slider at once with a foot whose surfaces are nearly right; the exact one takes its place. */
  const preview = async (parameters: FootParameters) => {
    const from = await usual;
    if (wantedOf(parameters, 'standing').key !== wanted.key || exact === wanted) return;
    shape ??= v.parse(shapeSchema, session.getState().content.shape);
    show(previewFoot(shape, from, parameters));
  };
  void fetchWanted();
  session.subscribe((state, previous) => {
    const { whatIf, pose, explanation } = state;
    const tried = whatIf.foot !== previous.whatIf.foot && whatIf.foot !== undefined;
    if (!tried && explanation?.foot === previous.explanation?.foot && pose === previous.pose) return;
    const parameters = parametersOf(state);
    want(parameters, pose);
    if (tried && pose === 'standing') void preview(parameters);
  });
  return {
    getFoot: () => shown,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    exact: () => footFor(wanted),
    standing: (parameters) => footFor(wantedOf(parameters, 'standing')),
    film: (parameters) => anglesFor(wantedOf(parameters, FILMED)),
    measures: {
      get: () => measures,
      follow: (listener) => {
        followers.add(listener);
        void measure();
        return () => followers.delete(listener);
      },
    },
  };
};
