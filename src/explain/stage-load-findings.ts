/** What the share of body weight of a stage does to the bone: on a scale, in a soft shoe, in a boot, on a stiff sole. */
import type { StageId } from '../ids';
import { CASE_FIGURES, SHARE_WAYS } from '../mechanics';
import { find } from './build';
import { activityIn, REFERENCE_ACTIVITY, rayOf } from './loads';
import { ASSUMED_MASS_KG } from './mass';
import type { Situation } from './situation';
import { loadsOfWay, type ShareBand, stageLoad, stageLoadPending, stageNoLoad } from './stage-computes';
import { STANDING_ACTIVITY } from './stage-loads';
import { FLAT_ACTIVITY } from './support-loads';
import type { Finding } from './types';

export interface StageShare {
  readonly stage: StageId;
  /** What its findings are called by. */
  readonly id: string;
  readonly band: ShareBand;
  /** Ends of the bands of all stages, rising. */
  readonly shares: readonly number[];
  readonly own: boolean;
  readonly bands: boolean;
}

export const stageLoadFindings = (s: Situation, asked: StageShare): readonly Finding[] => {
  const { context, breakAt } = s;
  const { stage, id, band, own } = asked;
  const bone = s.known.bone?.value;
  // The pull on a bone says nothing of a joint beside it.
  if (s.ofJoint || bone === undefined || rayOf(bone) === null) return [];
  if (band.high === 0)
    return [
      find(context, 'back', {
        id: `${id}.noLoad`,
        depth: 'more',
        compute: stageNoLoad,
        inputs: { stage, own },
        models: ['frame'],
      }),
    ];
  if (!asked.bands)
    return [
      find(context, 'back', {
        id: `${id}.loadPending`,
        depth: 'more',
        compute: stageLoadPending,
        inputs: { stage },
        models: ['frame'],
      }),
    ];
  const { content } = context;
  const at = breakAt !== null && breakAt.bone === bone ? breakAt : null;
  const run = {
    foot: s.parameters,
    bone,
    // Ratios hardly hang on it; who is not weighed is taken as somebody usual.
    massKg: s.known.massKg?.value ?? ASSUMED_MASS_KG,
    sMm: at?.sMm ?? null,
    band,
    shares: asked.shares,
  };
  const evidence = [
    ...content.frame.map((record) => record.figure.evidence),
    ...[REFERENCE_ACTIVITY, FLAT_ACTIVITY, STANDING_ACTIVITY].flatMap((activity) => {
      const { figures } = activityIn(content, activity);
      return CASE_FIGURES.map((name) => figures[name].evidence);
    }),
  ];
  return SHARE_WAYS.filter((way) => loadsOfWay(context, { ...run, way }).length > 0).map((way) =>
    find(context, 'back', {
      id: `${id}.load.${way}`,
      depth: 'more',
      compute: stageLoad,
      inputs: { ...run, stage, way, own },
      evidence,
      claims: at === null || at.whatIf ? [] : [s.breakTag],
      models: ['frame', 'drawnFoot'],
      whatIf: s.shapeWhatIf || s.whatIf.massKg !== undefined || (at?.whatIf ?? false),
    }),
  );
};
