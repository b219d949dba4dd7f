/** What a range counts to, and for which option where several stand together. */
import { usePages, useSession } from '../context';
import { wordKey } from '../words';
import type { RangeRow } from './range-rows';

export const useRowName = (): ((row: RangeRow) => string) => {
  const { say } = usePages();
  const options = useSession((state) => state.content.options);
  const reader = useSession((state) => state.reader);
  return (row) => {
    const key = wordKey(row.endpoint);
    const endpoint = say(reader === 'patient' ? `endpoint.plain.${key}` : `endpoint.${key}`);
    const option = options.find((each) => each.id === row.option);
    if (!row.byOption || option === undefined) return say('back.until', { endpoint });
    return say('back.untilWith', { endpoint, option: reader === 'patient' ? option.plain : option.term });
  };
};
