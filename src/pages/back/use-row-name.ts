/** What a range counts to, for which option where several stand together, and in whom where studies count class by class. */
import { usePages, useSession } from '../context';
import { wordKey } from '../words';
import { classesOfRow, type RangeRow } from './range-rows';

export const useRowName = (): ((row: RangeRow) => string) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (row) => {
    const key = wordKey(row.endpoint);
    const endpoint = say(reader === 'patient' ? `endpoint.plain.${key}` : `endpoint.${key}`);
    const option = content.options.find((each) => each.id === row.option);
    const name =
      !row.byOption || option === undefined
        ? say('back.until', { endpoint })
        : say('back.untilWith', { endpoint, option: reader === 'patient' ? option.plain : option.term });
    const counted = classesOfRow(content, row);
    if (counted === null) return name;
    return counted === 'not stated'
      ? say('back.classNotStated', { row: name })
      : say('back.inClass', { row: name, class: counted.join('; ') });
  };
};
