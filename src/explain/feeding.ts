/** Who feeds which part of the bone, and what a break and cut vessels leave: `src/perfusion` fed from content and the foot. */
import type { Foot } from '../anatomy/types';
import type { Place } from '../cases/schema';
import type { Content, Evidence } from '../content/schema';
import { type BoneId, type VesselEdgeId, type VesselId, vesselEdge } from '../ids';
import { feedingOf } from '../perfusion';
import type { FeedingTable } from '../perfusion/types';
import { type Context, groundOn, regionsOn, zonesOn } from './context';
import { locate, type OnFoot } from './place';
import type { Situation } from './situation';
import { chosenAt, takenBy, tornBy, type VesselChoices } from './vessel-choices';

export interface FeedingRun extends OnFoot {
  readonly bone: BoneId;
  readonly place: Place | null;
  readonly choices: VesselChoices;
  /** Edges that the class of the injury tears; what a choice tears comes on top. */
  readonly cuts: readonly VesselEdgeId[];
  /** Edges that the operation takes. */
  readonly taken: readonly VesselEdgeId[];
}

/** The same bone before any break, tear or operation. */
export const wholeBone = <R extends FeedingRun>(run: R): R => ({ ...run, place: null, cuts: [], taken: [] });

/** More tables than this are not kept for one foot: a break that is dragged makes one a step. */
const KEPT = 64;
const tables = new WeakMap<Foot, { readonly content: Content; readonly kept: Map<string, FeedingTable> }>();

const keptOn = (foot: Foot, content: Content): Map<string, FeedingTable> => {
  const known = tables.get(foot);
  if (known?.content === content) return known.kept;
  const kept = new Map<string, FeedingTable>();
  tables.set(foot, { content, kept });
  return kept;
};

export const feedingFor = (context: Context, run: FeedingRun): FeedingTable => {
  const { content, footFor } = context;
  const { bone, choices, cuts, taken } = run;
  const foot = footFor(run.foot);
  const breakMm = run.place === null ? null : (locate(foot, bone, run.place)?.sMm ?? null);
  const kept = keptOn(foot, content);
  const key = JSON.stringify([bone, breakMm, Object.entries(choices).sort(), cuts, taken]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const { lacking, bare, torn } = chosenAt(content, bone, choices);
  const whole = breakMm === null && cuts.length + taken.length === 0;
  const table = feedingOf(
    {
      bone,
      ground: groundOn(foot, bone),
      places: { zones: zonesOn(foot, bone), regions: regionsOn(foot).filter((r) => r.bone === bone) },
      vessels: content.vessels,
      lacking,
      bare,
      cuts: new Set([...cuts, ...taken, ...torn]),
      joined: content.boneSupplies.some(({ id, noBorder }) => id === bone && noBorder !== undefined),
      breakMm,
    },
    whole ? undefined : feedingFor(context, wholeBone(run)).borders,
  );
  if (kept.size >= KEPT) kept.clear();
  kept.set(key, table);
  return table;
};

/** What one run of an explanation asks of a bone. */
export const feedingRunOf = (s: Situation, bone: BoneId): FeedingRun => ({
  foot: s.parameters,
  bone,
  // Without the line of a break nothing is cut off by one: a joint came apart, or may have.
  place: s.breakAt === null ? null : (s.known.place?.value ?? null),
  choices: s.whatIf.vessels ?? {},
  cuts: tornBy(s).edges,
  taken: takenBy(s, bone)?.edges ?? [],
});

/** Vessels that lose one of these edges: the vessel that goes into a bone, or the one farther from the leg. */
const losing = (content: Content, edges: readonly VesselEdgeId[]): readonly VesselId[] => {
  const names = new Map(content.vessels.map(({ id }) => [String(id), id]));
  return [
    ...new Set(
      edges.flatMap((edge) => {
        const [parent = '', child = ''] = edge.split('>');
        const vessel = names.get(child) ?? names.get(parent);
        return vessel === undefined ? [] : [vessel];
      }),
    ),
  ];
};

/** What the class of the injury and a choice have torn. */
export const tornIn = (content: Content, run: FeedingRun): readonly VesselId[] =>
  losing(content, [...run.cuts, ...chosenAt(content, run.bone, run.choices).torn]);

/** What the operation takes. */
export const takenIn = (content: Content, run: FeedingRun): readonly VesselId[] => losing(content, run.taken);

/** Whether the content knows vessels of a bone. */
export const isFed = (content: Content, bone: BoneId | null): bone is BoneId =>
  content.vessels.some(({ ends }) => ends.some((end) => end.bone === bone));

/** What the feeding of a bone rests on, or what that of a part of it does: ends, what sources say, the patterns chosen. */
export const evidenceOfFeeding = (
  content: Content,
  { bone, choices }: Pick<FeedingRun, 'bone' | 'choices'>,
  only?: readonly VesselId[],
): readonly Evidence[] => {
  const { lacking, evidence } = chosenAt(content, bone, choices);
  const told = content.vessels.filter((v) => only === undefined || only.includes(v.id));
  return [
    ...told.flatMap(({ id, ends, said }) => {
      const here = ends.filter((e) => e.bone === bone && !lacking.has(vesselEdge(id, e.at ?? e.bone)));
      return here.length === 0 ? [] : [...here.map((e) => e.evidence), ...said.map((each) => each.evidence)];
    }),
    ...evidence,
  ];
};
