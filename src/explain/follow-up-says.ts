/**
 * What a follow-up says of a point that people ask for: that it is reached, that it is not reached yet, or nothing. Our own reading
 * of the words of a follow-up (common practice): a film says nothing of work, walking says nothing of union. Somebody who is back at
 * play would have it written down, so that a follow-up about anything less is taken as not back yet; that is said on screen.
 */
import type { SubjectValue } from '../cases/schema';
import type { Endpoint } from '../ids';

/** `healing`: not there yet, but what was found speaks for healing and raises no odds of trouble. */
export type Says = 'there' | 'notThere' | 'healing' | 'problem';
export type FollowUpFinding = SubjectValue<'followUp'>['finding'];

const PLAY: readonly Endpoint[] = ['release', 'training', 'sport', 'match play', 'performance', 'activity'];
const atPlay = (says: Says, ...more: (readonly [Endpoint, Says])[]): ReadonlyMap<Endpoint, Says> =>
  new Map([...PLAY.map((endpoint) => [endpoint, says] as const), ...more]);

const SAYS: Readonly<Record<FollowUpFinding, ReadonlyMap<Endpoint, Says>>> = {
  tender: atPlay('notThere', ['clinical healing', 'notThere']),
  'line visible': atPlay('notThere', ['union', 'notThere']),
  'not tender': atPlay('healing'),
  'two cortices bridged': atPlay('healing', ['union', 'healing']),
  united: atPlay('healing', ['union', 'there']),
  'delayed union': new Map(),
  nonunion: new Map(),
  // Grown together, though out of place: of play it says nothing.
  malunion: new Map([['union', 'there']]),
  'walking without pain': atPlay('healing', ['clinical healing', 'there']),
  training: atPlay('healing', ['release', 'there'], ['training', 'there'], ['clinical healing', 'there']),
  'broken again': new Map(),
};

/** A break anew, slow healing and none are healing problems on the way to every point. */
const PROBLEMS: ReadonlySet<FollowUpFinding> = new Set(['broken again', 'delayed union', 'nonunion']);

/** Null: the finding says nothing of this point. */
export const followUpSays = (finding: FollowUpFinding, endpoint: Endpoint): Says | null =>
  PROBLEMS.has(finding) ? 'problem' : (SAYS[finding].get(endpoint) ?? null);
