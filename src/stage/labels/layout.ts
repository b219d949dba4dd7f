/**
 * Margin labels with leader lines: a pure function from anchors to places. Labels stand in two opposite margins: left and right
 * ('sides'), or top and bottom ('ends', for plates that are narrow or feet that are wide). Worked in two directions: u runs
 * along the margin, v across the picture. CSS px. No two labels overlap, no two leaders cross, every label lies in its margin;
 * what cannot be kept so is dropped, lowest priority first.
 */
import type { Point } from '../types';
import { cross } from './segments';
import { spread } from './spread';

export interface LabelItem {
  readonly id: string;
  readonly anchor: Point;
  readonly width: number;
  readonly height: number;
  /** The side whose way to the margin runs over less bone; without it the nearer margin. */
  readonly prefer: 'low' | 'high' | null;
  /** Higher stays longer. */
  readonly priority: number;
}

export interface LabelBox {
  readonly mode: 'sides' | 'ends';
  readonly width: number;
  readonly height: number;
  /** Free space kept at the four edges of the picture. */
  readonly pad: number;
}

export interface PlacedLabel {
  readonly id: string;
  readonly side: 'low' | 'high';
  /** Top left corner of the label. */
  readonly x: number;
  readonly y: number;
  /** Label edge, end of the stub, anchor. */
  readonly leader: readonly [Point, Point, Point];
}

const GAP = 8;
const STUB = 10;
/** A label keeps its side until its anchor is this far past the middle. */
const HYSTERESIS = 28;

interface Work {
  readonly item: LabelItem;
  readonly u: number;
  readonly v: number;
  readonly size: number;
  side: 'low' | 'high';
}

type Side = Work['side'];

/** `column`: depth of the margins, from the whole set and not from one side, else the foot would jump. */
interface Frame {
  readonly box: LabelBox;
  readonly along: number;
  readonly across: number;
  readonly column: number;
}

/** The part of the picture that no label can cover: where dots are best set. */
export const openArea = (
  extents: readonly Pick<LabelItem, 'width' | 'height'>[],
  { mode, width, height, pad }: LabelBox,
): { readonly from: Point; readonly to: Point } => {
  const deepest = Math.max(0, ...extents.map((extent) => (mode === 'sides' ? extent.width : extent.height)));
  const column = pad + deepest + STUB + GAP;
  return mode === 'sides'
    ? { from: [column, 0], to: [width - column, height] }
    : { from: [0, column], to: [width, height - column] };
};

const frameOf = (items: readonly LabelItem[], box: LabelBox): Frame => {
  const sides = box.mode === 'sides';
  return {
    box,
    along: sides ? box.height : box.width,
    across: sides ? box.width : box.height,
    column: box.pad + Math.max(0, ...items.map(({ width, height }) => (sides ? width : height))),
  };
};

const chooseSides = (work: Work[], frame: Frame, previous: ReadonlyMap<string, PlacedLabel>): Work[] => {
  const middle = frame.across / 2;
  for (const w of work) {
    const before = previous.get(w.item.id)?.side;
    const nearer: Side = w.v < middle ? 'low' : 'high';
    w.side = w.item.prefer ?? (before !== undefined && Math.abs(w.v - middle) < HYSTERESIS ? before : nearer);
  }
  // A plate lower than its own margins holds no label: never less than none.
  const capacity = Math.max(0, frame.along - 2 * frame.box.pad + GAP);
  const need = (side: Side): number => work.filter((w) => w.side === side).reduce((sum, w) => sum + w.size + GAP, 0);
  const drop = (from: readonly Work[]): void => {
    const least = [...from].sort((a, b) => a.item.priority - b.item.priority)[0];
    if (least !== undefined) work.splice(work.indexOf(least), 1);
  };
  while (need('low') + need('high') > 2 * capacity) drop(work);
  while (need('low') > capacity || need('high') > capacity) {
    const full: Side = need('low') > capacity ? 'low' : 'high';
    const other: Side = full === 'low' ? 'high' : 'low';
    const crowd = work.filter((w) => w.side === full);
    const mover = crowd
      .filter((w) => need(other) + w.size + GAP <= capacity)
      .sort((a, b) => Math.abs(a.v - middle) - Math.abs(b.v - middle))[0];
    if (mover !== undefined) mover.side = other;
    // Room is made by the least important label of all: it may stand where a more important one can then go.
    else drop(work);
  }
  return work;
};

const place = (orders: Readonly<Record<Side, readonly Work[]>>, frame: Frame): Map<Work, PlacedLabel> => {
  const placed = new Map<Work, PlacedLabel>();
  const { box, across, along, column } = frame;
  for (const side of ['low', 'high'] as const) {
    const order = orders[side];
    const centres = spread(
      order.map(({ u, size }) => ({ want: u, size })),
      GAP,
      box.pad,
      along - box.pad,
    );
    order.forEach((w, i) => {
      const u = centres[i] ?? w.u;
      const edge = side === 'low' ? column : across - column;
      const elbow = side === 'low' ? column + STUB : across - column - STUB;
      const { width, height } = w.item;
      const sides = box.mode === 'sides';
      const point = (pu: number, pv: number): Point => (sides ? [pv, pu] : [pu, pv]);
      placed.set(w, {
        id: w.item.id,
        side,
        x: sides ? (side === 'low' ? column - width : across - column) : u - width / 2,
        y: sides ? u - height / 2 : side === 'low' ? column - height : across - column,
        leader: [point(u, edge), point(u, elbow), w.item.anchor],
      });
    });
  }
  return placed;
};

const leadersCross = (a: PlacedLabel, b: PlacedLabel): boolean => {
  const [a0, a1, a2] = a.leader;
  const [b0, b1, b2] = b.leader;
  return cross(a1, a2, b1, b2) || cross(a0, a1, b1, b2) || cross(a1, a2, b0, b1);
};

/** Swaps two labels in the orders, across sides too: with the places fixed each such swap shortens the leaders. */
const swap = (orders: Record<Side, Work[]>, a: Work, b: Work): void => {
  const [sideA, sideB] = [a.side, b.side];
  const [i, j] = [orders[sideA].indexOf(a), orders[sideB].indexOf(b)];
  orders[sideA][i] = b;
  orders[sideB][j] = a;
  a.side = sideB;
  b.side = sideA;
};

const firstCrossing = (placed: ReadonlyMap<Work, PlacedLabel>): readonly [Work, Work] | null => {
  const all = [...placed];
  for (const [i, [a, pa]] of all.entries()) {
    for (const [b, pb] of all.slice(i + 1)) if (leadersCross(pa, pb)) return [a, b];
  }
  return null;
};

/** Drops the least of each side until the side holds the rest. */
const makeRoom = (orders: Record<Side, Work[]>, frame: Frame): void => {
  // A plate lower than its own margins holds no label: never less than none.
  const capacity = Math.max(0, frame.along - 2 * frame.box.pad + GAP);
  for (const side of ['low', 'high'] as const) {
    const order = orders[side];
    while (order.reduce((sum, w) => sum + w.size + GAP, 0) > capacity) {
      const least = order.reduce((a, b) => (b.item.priority < a.item.priority ? b : a));
      order.splice(order.indexOf(least), 1);
    }
  }
};

export const layout = (
  items: readonly LabelItem[],
  box: LabelBox,
  previous: readonly PlacedLabel[] = [],
): PlacedLabel[] => {
  const before = new Map(previous.map((label) => [label.id, label]));
  const frame = frameOf(items, box);
  const sides = box.mode === 'sides';
  const work = chooseSides(
    items.map((item) => ({
      item,
      u: sides ? item.anchor[1] : item.anchor[0],
      v: sides ? item.anchor[0] : item.anchor[1],
      size: sides ? item.height : item.width,
      side: 'low' as const,
    })),
    frame,
    before,
  );
  // The previous order is kept; new labels come in by their anchor.
  const lastU = (w: Work): number => {
    const old = before.get(w.item.id);
    return old === undefined || old.side !== w.side ? w.u : sides ? old.leader[0][1] : old.leader[0][0];
  };
  const orders: Record<Side, Work[]> = { low: [], high: [] };
  for (const side of ['low', 'high'] as const) {
    orders[side] = work.filter((w) => w.side === side).sort((a, b) => lastU(a) - lastU(b));
  }
  let placed = place(orders, frame);
  for (let round = 0; ; round += 1) {
    const pair = firstCrossing(placed);
    if (pair === null) break;
    const [a, b] = pair;
    // Different widths can make a swap cross anew; after enough rounds the lesser label goes.
    if (round < 3 * work.length) swap(orders, a, b);
    else {
      const least = a.item.priority <= b.item.priority ? a : b;
      orders[least.side] = orders[least.side].filter((w) => w !== least);
    }
    makeRoom(orders, frame);
    placed = place(orders, frame);
  }
  return [...placed.values()];
};
