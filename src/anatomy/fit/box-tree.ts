/** Boxes of things in a binary tree, flat: the things of a node are order[from] to order[to - 1]; halved along the longest side. */

/** Things in a leaf. */
const LEAF = 4;

export interface BoxTree {
  /** Six numbers a node: low x, y, z, high x, y, z. */
  readonly box: Float64Array;
  /** First and past-the-last place in `order`. */
  readonly from: Uint32Array;
  readonly to: Uint32Array;
  /** The second child of a node; the first follows the node itself. 0 for a leaf. */
  readonly second: Uint32Array;
  readonly order: Uint32Array;
}

/** `boxes`: six numbers a thing. */
export const boxTree = (boxes: Float64Array): BoxTree => {
  const count = boxes.length / 6;
  const room = Math.max(1, 2 * count);
  const tree = {
    box: new Float64Array(6 * room),
    from: new Uint32Array(room),
    to: new Uint32Array(room),
    second: new Uint32Array(room),
    order: Uint32Array.from({ length: count }, (_, i) => i),
  };
  let used = 0;
  const grow = (from: number, to: number): number => {
    const node = used++;
    tree.from[node] = from;
    tree.to[node] = to;
    const box = tree.box.subarray(6 * node, 6 * node + 6);
    box.fill(Number.POSITIVE_INFINITY, 0, 3).fill(Number.NEGATIVE_INFINITY, 3, 6);
    for (let i = from; i < to; i++) {
      const o = 6 * (tree.order[i] as number);
      for (let k = 0; k < 3; k++) {
        box[k] = Math.min(box[k] as number, boxes[o + k] as number);
        box[k + 3] = Math.max(box[k + 3] as number, boxes[o + k + 3] as number);
      }
    }
    if (to - from <= LEAF) return node;
    const side = (k: number): number => (box[k + 3] as number) - (box[k] as number);
    const k = [0, 1, 2].reduce((best, each) => (side(each) > side(best) ? each : best));
    const middle = (i: number): number => (boxes[6 * i + k] as number) + (boxes[6 * i + k + 3] as number);
    tree.order.subarray(from, to).sort((a, b) => middle(a) - middle(b) || a - b);
    const half = (from + to) >> 1;
    grow(from, half);
    tree.second[node] = grow(half, to);
    return node;
  };
  grow(0, count);
  return tree;
};
