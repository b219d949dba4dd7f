/** A point that studies count to, in the reader's words. */
import type { Endpoint } from '../../ids';
import { usePages, useSession } from '../context';
import { wordKey } from '../words';

export const useEndpointName = (): ((endpoint: Endpoint) => string) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  return (endpoint) => {
    const key = wordKey(endpoint);
    return say(reader === 'patient' ? `endpoint.plain.${key}` : `endpoint.${key}`);
  };
};
