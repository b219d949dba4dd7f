/** What the model of the loads cannot say, in short words. */
import { usePages } from '../context';

/** The last one is that all of it is for teaching. */
export const LIMITS = [
  'beams',
  'held',
  'spread',
  'sections',
  'signs',
  'repeats',
  'shin',
  'screws',
  'healing',
  'shape',
  'film',
  'teaching',
] as const;

export const Limits = () => {
  const { say } = usePages();
  return (
    <ol className="limits">
      {LIMITS.map((limit) => (
        <li key={limit}>{say(`limit.${limit}`)}</li>
      ))}
    </ol>
  );
};
