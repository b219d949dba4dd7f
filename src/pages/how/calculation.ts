/** Opens the whole calculation from wherever a number of it stands; null where there is none to open. */
import { createContext, useContext } from 'react';

const Opening = createContext<(() => void) | null>(null);
export const CalculationOpener = Opening.Provider;
export const useOpenCalculation = (): (() => void) | null => useContext(Opening);
