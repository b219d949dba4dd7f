/** The small marks along the edge of one division of the foot-rule. */
const TICKS = [1, 2, 3, 4, 5, 6, 7] as const;

export const RuleTicks = () => (
  <svg className="rule-ticks" viewBox="0 0 8 1" preserveAspectRatio="none" aria-hidden="true" focusable="false">
    {TICKS.map((x) => (
      <path key={x} d={`M${x} 0V1`} vectorEffect="non-scaling-stroke" />
    ))}
  </svg>
);
