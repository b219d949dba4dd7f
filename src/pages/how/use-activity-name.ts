/** Tasks by their names for the reader. */
import type { ActivityId } from '../../ids';
import { namesFor } from '../../wording';
import { useSession } from '../context';

export const useActivityName = (): ((id: ActivityId) => string) => {
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return namesFor(content, reader).activity;
};
