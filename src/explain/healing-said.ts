/**
 * What the follow-ups say of how the bone grows together: as usual, late, not, or out of place. Only findings of the bone itself count;
 * that walking or pressing does not hurt says nothing of union. The latest one holds, unless a mere report goes against what is
 * confirmed, or two of one day differ: then it is disputed.
 */
import type { Facts } from '../cases/schema';
import type { ClaimId, FollowUpFinding } from '../ids';
import type { IsoDate } from '../units';
import type { ClaimTag } from './messages';

export type Healing = 'usual' | 'delayed' | 'nonunion' | 'malunion';

export interface HealingSaid {
  readonly healing: Healing;
  readonly status: 'confirmed' | 'reported' | 'inferred';
  readonly claims: readonly ClaimId[];
  readonly on: IsoDate;
}

/** Null: says nothing of it, or no more than that it is not there yet. */
const OF_FINDING: Readonly<Record<FollowUpFinding, Healing | null>> = {
  tender: null,
  'not tender': null,
  'line visible': null,
  'two cortices bridged': 'usual',
  united: 'usual',
  'delayed union': 'delayed',
  nonunion: 'nonunion',
  malunion: 'malunion',
  'walking without pain': null,
  training: null,
  'broken again': null,
};

const saidIn = (facts: Facts): readonly HealingSaid[] =>
  [
    ...facts.followUps.flatMap(({ id, status, value }) => {
      const healing = OF_FINDING[value.finding];
      return healing === null || status === 'ruledOut' ? [] : [{ healing, status, claims: [id], on: value.on }];
    }),
    ...facts.outcomes.flatMap(({ id, status, value }) =>
      value.endpoint !== 'union' || value.result !== 'reached' || status === 'ruledOut'
        ? []
        : [{ healing: 'usual' as const, status, claims: [id], on: value.on }],
    ),
  ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));

/** Ruled out on that day or later: what was not there yet in an earlier follow-up denies nothing that a later one found. */
const isDenied = ({ ruledOut }: Facts, { healing, on }: HealingSaid): boolean =>
  ruledOut.some(
    (claim) => claim.subject === 'followUp' && OF_FINDING[claim.value.finding] === healing && claim.value.on >= on,
  );

/** Null: no follow-up speaks of it. */
export const healingSaid = (facts: Facts): HealingSaid | 'disputed' | null => {
  const said = saidIn(facts);
  const last = said.at(-1);
  if (last === undefined) return null;
  const surest = said.filter(({ status }) => status === 'confirmed').at(-1);
  const sameDay = said.some(({ on, healing }) => on === last.on && healing !== last.healing);
  const against = last.status !== 'confirmed' && surest !== undefined && surest.healing !== last.healing;
  return sameDay || against || isDenied(facts, last) ? 'disputed' : last;
};

/**
 * What is confirmed of it, and what a report says otherwise: a report takes back nothing that is confirmed. Without anything confirmed
 * what is said holds as far as somebody says so.
 */
export const surelySaid = (
  facts: Facts,
): { readonly said: HealingSaid | 'disputed' | null; readonly ifReported: Healing | null } => {
  const confirmed = <T extends { readonly status: string }>(claims: readonly T[]): readonly T[] =>
    claims.filter(({ status }) => status === 'confirmed');
  const sure = healingSaid({
    ...facts,
    followUps: confirmed(facts.followUps),
    outcomes: confirmed(facts.outcomes),
  });
  if (sure === null || sure === 'disputed') return { said: sure ?? healingSaid(facts), ifReported: null };
  const against = saidIn(facts).filter(
    ({ status, healing, on }) => status !== 'confirmed' && healing !== sure.healing && on >= sure.on,
  );
  return { said: sure, ifReported: against.at(-1)?.healing ?? null };
};

const isBad = ({ healing }: HealingSaid): boolean => healing === 'delayed' || healing === 'nonunion';

/** What holds for what comes next: the worse of the last confirmed day, which no mere report takes back; else what is reported alone. */
const held = (facts: Facts): HealingSaid | null => {
  const sure = saidIn(facts).filter((each) => each.status === 'confirmed' && !isDenied(facts, each));
  const day = sure.at(-1)?.on;
  if (day !== undefined) return sure.find((each) => each.on === day && isBad(each)) ?? null;
  const told = healingSaid(facts);
  return told === 'disputed' ? null : told;
};

/** Delayed union or nonunion since the treatment in force began: weeks of those who healed as planned are not this person's. */
export const healsBadly = (
  facts: Facts,
  since: IsoDate | null,
): { readonly healing: 'delayed' | 'nonunion'; readonly tag: ClaimTag; readonly on: IsoDate } | null => {
  const said = held(facts);
  if (said === null) return null;
  const { healing, status, claims, on } = said;
  if (healing !== 'delayed' && healing !== 'nonunion') return null;
  return since !== null && on < since ? null : { healing, tag: { status, claims }, on };
};
