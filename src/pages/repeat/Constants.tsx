/** Each constant with its range, how surely it was read, its source and its note; and what the whole cannot say. */
import type { Figure, Repetition } from '../../content/schema';
import { sourceLine } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';

export const CONSTANTS = ['exponent', 'repairDays', 'repairExponent'] as const;
export const WEAR_LIMITS = ['shin', 'powers', 'cracks', 'ratios'] as const;

const Constant = ({ name, figure }: { readonly name: (typeof CONSTANTS)[number]; readonly figure: Figure }) => {
  const { say } = usePages();
  const sources = useSession((state) => state.content.sources);
  const source = sources.find((each) => each.id === figure.evidence.source);
  const { value, low = value, high = value } = figure;
  return (
    <li>
      <b>{say(`repeat.constant.${name}`)}</b>{' '}
      <Known mark={figure.evidence.mark}>{say('repeat.constantValue', { value, low, high })}</Known> (
      {say(markWordKey(figure.evidence.mark))}). {figure.note} {source === undefined ? '' : sourceLine(source)}
    </li>
  );
};

export const Constants = ({ constants }: { readonly constants: Repetition }) => {
  const { say } = usePages();
  return (
    <>
      <ul className="plain small-print">
        {CONSTANTS.map((name) => (
          <Constant key={name} name={name} figure={constants[name]} />
        ))}
      </ul>
      <p className="list-head">{say('repeat.limits')}</p>
      <ul className="criteria small-print">
        {WEAR_LIMITS.map((limit) => (
          <li key={limit}>{say(`repeat.limit.${limit}`)}</li>
        ))}
      </ul>
    </>
  );
};
