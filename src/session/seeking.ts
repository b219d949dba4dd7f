/** What a search does to the state: the foot is plain, a card that is opened is looked at, and leaving takes all of it away. */
import type { BoneId, RegionId } from '../ids';
import type { SessionState } from './types';

/** Standing, with nothing measured on it and nothing beside it. */
export const PLAIN_FOOT = { pose: 'standing', angle: null, lookAlike: null, strand: null } as const;

type Seeking = NonNullable<SessionState['seeking']>;
type Change = Partial<Seeking> | null;

/** A bone is chosen: while somebody looks for an injury, with its parts where that was tapped; those of another bone go. */
export const chosen =
  (selectedBone: BoneId | null, parts: readonly RegionId[]) =>
  ({ seeking }: SessionState): Pick<SessionState, 'selectedBone' | 'seeking'> => ({
    selectedBone,
    seeking: seeking === null ? null : { ...seeking, parts },
  });

/** Another card is looked at; the same one, or none, moves nothing. A card that is not in the content opens nothing. */
export const soughtAfter =
  (change: Change) =>
  ({ seeking: before, content, viewTick }: SessionState): Partial<SessionState> => {
    if (change === null) return { seeking: null, ...PLAIN_FOOT, selectedBone: null, near: false };
    const seeking = { words: '', card: null, parts: [], ...before, ...change };
    const card = content.cards.find(({ id }) => id === seeking.card);
    return {
      seeking: { ...seeking, card: card?.id ?? null },
      lookAlike: null,
      strand: null,
      ...(before === null ? { ...PLAIN_FOOT, selectedBone: null, near: false } : {}),
      ...(card === undefined || before?.card === card.id
        ? {}
        : { view: card.view, near: true, viewTick: viewTick + 1 }),
    };
  };
