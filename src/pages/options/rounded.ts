/** A printed figure with at most one digit behind the point. */
export const rounded = (value: number): string => String(Math.round(value * 10) / 10);
