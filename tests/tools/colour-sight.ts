/** Colours as people see them: usual sight and the three dichromacies in full (Machado, Oliveira & Fernandes 2009), by culori. */
import { differenceCiede2000, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from 'culori';
import { type Colour, coloursOf, type Look } from './tokens';

export type Sight = (colour: string) => unknown;
export const SEEN: Readonly<Record<string, Sight>> = {
  usual: (colour) => colour,
  protan: filterDeficiencyProt(1),
  deutan: filterDeficiencyDeuter(1),
  tritan: filterDeficiencyTrit(1),
};
export const difference = differenceCiede2000();

const MEANINGS: readonly Colour[] = ['here', 'blood', 'pulled', 'pressed', 'ink'];
/** CIEDE2000 of the two meanings that are most alike. */
export const separationOf = (look: Look, see: Sight): number => {
  const colours = coloursOf(look);
  const pairs = MEANINGS.flatMap((a, i) =>
    MEANINGS.slice(i + 1).map((b) => difference(see(colours[a]), see(colours[b]))),
  );
  return Math.min(...pairs);
};
