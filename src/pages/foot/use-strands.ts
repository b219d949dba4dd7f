/** The soft tissue that the content ties to the injury in question; none where no class is known. */
import type { Strand } from '../../content/schema';
import { useSession } from '../context';

const NONE: readonly Strand[] = [];

export const useStrands = (): readonly Strand[] => {
  const content = useSession((state) => state.content);
  const injury = useSession((state) => state.explanation?.injury ?? null);
  const ids = content.injuries.find(({ id }) => id === injury)?.strands;
  return ids === undefined ? NONE : content.strands.filter(({ id }) => ids.includes(id));
};
