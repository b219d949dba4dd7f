/** Two pictures side by side. Load it when it is asked for. */
export { Pair, type PairProps } from './Pair';
