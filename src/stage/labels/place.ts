/**
 * Labels at rest: places in the margins (layout.ts), and for every label that one of its bone's visible points which keeps leaders
 * clear of foreign dots and of marks, and texts off dots and leaders. Pure; CSS px.
 */
import type { Point } from '../types';
import { type Conflict, conflictsIn, costOf, type KeepClear, NOTHING_THERE } from './conflicts';
import { type LabelBox, type LabelItem, layout, type PlacedLabel } from './layout';

export interface LabelWish extends Omit<LabelItem, 'anchor'> {
  /** Where its leader may end; the first is the best liked. */
  readonly anchors: readonly Point[];
}

export interface Placing {
  readonly placed: readonly PlacedLabel[];
  /** Index of the anchor chosen for each label. */
  readonly chosen: ReadonlyMap<string, number>;
  /** Ids for which there was no room, the most important first. */
  readonly left: readonly string[];
}

const ROUNDS = 6;

/** What was decided for one label: which of its anchors, and which side it asks for. */
interface Choice {
  readonly anchor: number;
  readonly prefer: LabelWish['prefer'];
}
type Choices = ReadonlyMap<string, Choice>;

interface Tried {
  readonly choices: Choices;
  readonly placed: readonly PlacedLabel[];
  readonly conflicts: readonly Conflict[];
  readonly cost: number;
}

/** Its other points first; the other margin where none of them helps. */
const othersOf = ({ anchors }: LabelWish, { anchor, prefer }: Choice, side: PlacedLabel['side']): Choice[] => [
  ...[...anchors.keys()].filter((index) => index !== anchor).map((index) => ({ anchor: index, prefer })),
  ...[...anchors.keys()].map((index): Choice => ({ anchor: index, prefer: side === 'low' ? 'high' : 'low' })),
];

/** The first change of one label that leaves less to regret and no label fewer. */
const stepAside = (
  now: Tried,
  wishes: ReadonlyMap<string, LabelWish>,
  attempt: (choices: Choices) => Tried,
): Tried | null => {
  for (const { ids } of now.conflicts) {
    for (const id of new Set([ids[1], ids[0]])) {
      const [wish, choice] = [wishes.get(id), now.choices.get(id)];
      const side = now.placed.find((label) => label.id === id)?.side;
      if (wish === undefined || choice === undefined || side === undefined) continue;
      for (const other of othersOf(wish, choice, side)) {
        const next = attempt(new Map(now.choices).set(id, other));
        if (next.placed.length >= now.placed.length && next.cost < now.cost) return next;
      }
    }
  }
  return null;
};

export const placeLabels = (
  wishes: readonly LabelWish[],
  box: LabelBox,
  previous: readonly PlacedLabel[] = [],
  keepClear: KeepClear = NOTHING_THERE,
): Placing => {
  const byId = new Map(wishes.map((wish) => [wish.id, wish]));
  const attempt = (choices: Choices): Tried => {
    const items = wishes.flatMap(({ anchors, ...item }): LabelItem[] => {
      const choice = choices.get(item.id);
      const anchor = choice === undefined ? undefined : anchors[choice.anchor];
      return choice === undefined || anchor === undefined ? [] : [{ ...item, anchor, prefer: choice.prefer }];
    });
    const placed = layout(items, box, previous);
    const conflicts = conflictsIn(placed, byId, keepClear);
    return { choices, placed, conflicts, cost: costOf(conflicts) };
  };
  let now = attempt(new Map(wishes.map(({ id, prefer }) => [id, { anchor: 0, prefer }])));
  for (;;) {
    for (let round = 0; round < ROUNDS && now.conflicts.length > 0; round += 1) {
      const better = stepAside(now, byId, attempt);
      if (better === null) break;
      now = better;
    }
    // A name whose leader cannot be seen says nothing: the lesser of the two goes to the list. On its own bone a text may lie.
    const clash = now.conflicts.find(({ ids, kind }) => kind === 'hidden' && ids[0] !== ids[1]);
    if (clash === undefined) break;
    const lesser = [...clash.ids].sort((a, b) => (byId.get(a)?.priority ?? 0) - (byId.get(b)?.priority ?? 0))[0];
    now = attempt(new Map([...now.choices].filter(([id]) => id !== lesser)));
  }
  const { placed, choices } = now;
  const there = new Set(placed.map(({ id }) => id));
  const left = wishes
    .filter(({ id }) => !there.has(id))
    .sort((a, b) => b.priority - a.priority)
    .map(({ id }) => id);
  return { placed, chosen: new Map([...choices].map(([id, { anchor }]) => [id, anchor])), left };
};
