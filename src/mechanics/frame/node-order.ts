/**
 * An order of the nodes in which neighbours stand near each other, so that the matrix keeps its zeros: breadth first from a node at
 * the edge, few neighbours first, then reversed (Cuthill and McKee 1969, George's reversal; from memory).
 */

const spread = (start: number, neighbours: readonly (readonly number[])[], done: Set<number>): number[] => {
  const order = [start];
  done.add(start);
  for (let at = 0; at < order.length; at++) {
    const next = (neighbours[order[at] as number] ?? []).filter((node) => !done.has(node));
    next.sort((a, b) => (neighbours[a]?.length ?? 0) - (neighbours[b]?.length ?? 0));
    for (const node of next)
      if (!done.has(node)) {
        done.add(node);
        order.push(node);
      }
  }
  return order;
};

/** All nodes 0..count-1, each once. `pairs` are the nodes that a member joins. */
export const nodeOrder = (count: number, pairs: readonly (readonly [number, number])[]): number[] => {
  const sets = Array.from({ length: count }, () => new Set<number>());
  for (const [i, j] of pairs) {
    sets[i]?.add(j);
    sets[j]?.add(i);
  }
  const neighbours = sets.map((set) => [...set]);
  const done = new Set<number>();
  const order: number[] = [];
  for (let node = 0; node < count; node++) {
    if (done.has(node)) continue;
    // The last node reached from anywhere lies at an edge.
    const edge = spread(node, neighbours, new Set(done)).at(-1) ?? node;
    order.push(...spread(edge, neighbours, done));
  }
  return order.reverse();
};
