/** A support in the reader's words. */
import type { SupportId } from '../../mechanics/foot/types';
import { useSession } from '../context';

export const useFactorName = (): ((id: SupportId) => string) => {
  const factors = useSession((state) => state.content.loadFactors);
  const reader = useSession((state) => state.reader);
  return (id) => {
    const found = factors.find((each) => each.id === id);
    return (reader === 'study' ? found?.term : found?.plain) ?? id;
  };
};
