/** Places along a margin: least squares to the wanted middles, apart by half sizes and gap, inside the margin (pool adjacent violators). */

export interface Wish {
  readonly want: number;
  readonly size: number;
}

/** Middles in the given order. The sizes and gaps must fit between `from` and `to`. */
export const spread = (wishes: readonly Wish[], gap: number, from: number, to: number): number[] => {
  const offsets: number[] = [];
  let way = 0;
  wishes.forEach(({ size }, i) => {
    way += i === 0 ? 0 : (size + (wishes[i - 1]?.size ?? 0)) / 2 + gap;
    offsets.push(way);
  });
  const blocks: { sum: number; count: number }[] = [];
  wishes.forEach(({ want }, i) => {
    blocks.push({ sum: want - (offsets[i] ?? 0), count: 1 });
    for (;;) {
      const [last, above] = [blocks.at(-1), blocks.at(-2)];
      if (last === undefined || above === undefined || above.sum / above.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: above.sum + last.sum, count: above.count + last.count });
    }
  });
  const low = from + (wishes[0]?.size ?? 0) / 2;
  const high = to - (wishes.at(-1)?.size ?? 0) / 2 - (offsets.at(-1) ?? 0);
  const starts = blocks.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  return starts.map((start, i) => Math.max(low, Math.min(high, start)) + (offsets[i] ?? 0));
};
