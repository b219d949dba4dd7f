/** Question 2's plain word on the dark bands: whether the model's largest pull falls where such breaks lie. Belongs in sight. */
import { useMemo } from 'react';
import { wordFinding } from '../../wording';
import type { Sentence } from '../../wording/types';
import { useSession } from '../context';
import { beamAgainstBreaks } from '../findings';

export const useAgainstBreaks = (): Sentence | null => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const asked = useSession((state) => state.question === 'how');
  return useMemo(() => {
    const finding = asked ? beamAgainstBreaks(explanation) : null;
    return explanation === null || finding === null ? null : wordFinding(content, explanation, finding, reader);
  }, [content, explanation, reader, asked]);
};
