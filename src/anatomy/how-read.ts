/** How a figure of content/anatomy that people see was read. */
import * as v from 'valibot';

/** common practice: teaching without a study behind it that was seen. */
export const HOW_READ = ['read', 'abstract', 'common practice', 'from memory'] as const;
export const howRead = v.picklist(HOW_READ);
export type HowRead = (typeof HOW_READ)[number];
