/** In one column the plate is far above what was just chosen for it: it is brought back into view. Beside it nothing moves. */
export const bringPlate = (): void => {
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  document.querySelector('.plate')?.scrollIntoView({ block: 'nearest', behavior: calm ? 'auto' : 'smooth' });
};
