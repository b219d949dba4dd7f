/** The scale bar: the longest round length that fits. A parallel projection makes it true everywhere in the picture. */
const ROUND_MM = [1, 2, 5, 10, 20, 50, 100] as const;

export const scaleBar = (mmPerPx: number, mostPx = 110): { readonly mm: number; readonly px: number } => {
  const fitting = ROUND_MM.filter((mm) => mm / mmPerPx <= mostPx);
  const mm = fitting.at(-1) ?? ROUND_MM[0];
  return { mm, px: mm / mmPerPx };
};
