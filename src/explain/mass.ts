/** Body mass taken when none is stated; always said to be assumed. Common practice for a reference adult. */
export const ASSUMED_MASS_KG = 70;
