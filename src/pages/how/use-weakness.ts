/** Where the told run is weak: bounds it passes, and how exactly it was solved. In words. */
import { LARGE_TURN_DEG } from '../../mechanics/foot/types';
import { plainText, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import type { Loads } from './use-loads';

const exponent = (value: number): string => value.toExponential(1).replace('-', '−');

export const useWeakness = ({ explanation, loads, banded }: Loads): readonly string[] => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const { solved, largestTurnRad } = loads.told;
  const flags = findingsOf(explanation, 'loadFlagged').map((finding) =>
    plainText(wordFinding(content, explanation, finding, reader)),
  );
  const unsolved = banded?.loads?.bands?.unsolved ?? null;
  return [
    ...flags,
    say('weak.turn', { degrees: ((largestTurnRad * 180) / Math.PI).toFixed(1), most: LARGE_TURN_DEG }),
    say('weak.solved', {
      residual: exponent(solved.residual),
      pivot: exponent(solved.smallestPivotRatio),
      passes: solved.passes,
      pivots: solved.pivots,
    }),
    ...(unsolved === null ? [] : [say('weak.unsolved', { unsolved })]),
  ];
};
