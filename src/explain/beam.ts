/** The beam of `src/mechanics` fed from content: which inputs, which load, and where their figures come from. */
import type { Foot } from '../anatomy/types';
import type { Activity, BeamInputs, Content, Evidence } from '../content/schema';
import type { ActivityId } from '../ids';
import { fifthMetatarsalBeam } from '../mechanics';
import type { StationTable } from '../mechanics/types';
import { type Context, ZONED_BONE } from './context';
import type { BoneFace } from './messages';
import type { OnFoot } from './place';

export interface BeamRun extends OnFoot {
  readonly activity: ActivityId;
  readonly massKg: number;
  /** By hand, to see what follows: the held end reaches to this share of the bone. */
  readonly heldToShare?: number;
}

const recordsFor = (content: Content, activity: ActivityId): { inputs: BeamInputs; load: Activity } => {
  const inputs = content.beams.find((b) => b.bone === ZONED_BONE);
  const load = content.activities.find((a) => a.id === activity);
  if (inputs === undefined) throw new RangeError(`the content has no beam inputs for ${ZONED_BONE}`);
  if (load === undefined) throw new RangeError(`the content has no activity ${activity}`);
  return { inputs, load };
};

/** Tables of a foot by what else they depend on: a beam costs about a hundred cuts through the mesh. */
const kept = new WeakMap<Foot, Map<string, StationTable>>();

export const beamOf = (context: Context, run: BeamRun): { readonly foot: Foot; readonly table: StationTable } => {
  const foot = context.footFor(run.foot);
  const { inputs, load } = recordsFor(context.content, run.activity);
  const tables = kept.get(foot) ?? new Map<string, StationTable>();
  kept.set(foot, tables);
  const options = run.heldToShare === undefined ? {} : { heldToShare: run.heldToShare };
  const key = JSON.stringify([inputs, load, run.massKg, options]);
  const table = tables.get(key) ?? fifthMetatarsalBeam(foot, inputs, load, run.massKg, options);
  tables.set(key, table);
  return { foot, table };
};

export const evidenceOfBeam = (content: Content, activity: ActivityId): readonly Evidence[] => {
  const { inputs, load } = recordsFor(content, activity);
  return [inputs, load].flatMap((record) =>
    Object.values(record).flatMap((value) =>
      typeof value === 'object' && 'evidence' in value ? [value.evidence] : [],
    ),
  );
};

const FACES: readonly BoneFace[] = ['top', 'outer', 'sole', 'inner'];

/** Which face of the bone an angle points to: 0 up, a quarter turn outwards. */
export const faceOf = (rad: number): BoneFace => {
  const quarter = Math.round(rad / (Math.PI / 2));
  return FACES[((quarter % 4) + 4) % 4] ?? 'top';
};

export const faceAt = (table: StationTable, sMm: number, angle: 'tensionAtRad' | 'compressionAtRad'): BoneFace => {
  const nearest = table.stations.reduce((a, b) => (Math.abs(b.sMm - sMm) < Math.abs(a.sMm - sMm) ? b : a));
  return faceOf(nearest[angle]);
};
