/** The lines that stand on every telling: side, status of the case, demo, what-if, draft. From the explanation alone. */
import type { Explanation } from '../explain/types';
import { fill, statusWord } from '../wording';
import { TELLING_PHRASES as P } from './phrases';

/** The foot is drawn on the side that alone is confirmed, also where another report names the other one. */
const isSideDisputed = ({ questions }: Pick<Explanation, 'questions'>): boolean =>
  questions.some(({ findings }) =>
    findings.some(({ message: { id, args } }) => id === 'contradiction' && args.subject === 'side'),
  );

export const sideLineOf = (explanation: Pick<Explanation, 'side' | 'questions'>): string => {
  const { side } = explanation;
  if (side.state !== 'stated') return P[`side.${side.state}`];
  const status = statusWord(side.status);
  return isSideDisputed(explanation)
    ? fill(P[`side.disputed.${side.side}`], { status })
    : fill(P['side.withStatus'], { side: P[`side.${side.side}`], status });
};

export const statusLineOf = ({ part }: Pick<Explanation, 'part'>): string =>
  part === null ? P['status.none'] : fill(P['status.break'], { status: statusWord(part.status) });

/** How it happened is often only told: a picture of the load carries that standing beside that of the place. */
export const loadStatusLineOf = ({ part, questions }: Pick<Explanation, 'part' | 'questions'>): string => {
  const told = questions.find((each) => each.id === 'how')?.findings.find((finding) => finding.depth === 'sentence');
  const cause = told !== undefined && 'claim' in told.message.args ? told.message.args.claim.status : 'notStated';
  return fill(P['status.both'], { place: statusWord(part?.status ?? 'notStated'), cause: statusWord(cause) });
};

export const isWhatIf = ({ whatIf }: Pick<Explanation, 'whatIf'>): boolean => Object.keys(whatIf).length > 0;

export const whatIfLineOf = (explanation: Pick<Explanation, 'whatIf'>): string | null =>
  isWhatIf(explanation) ? P.whatIf : null;

export const demoLineOf = ({ demo }: Pick<Explanation, 'demo'>): string | null => (demo ? P.demo : null);

export const draftLineOf = ({ draft }: Pick<Explanation, 'draft'>): string | null => (draft ? P.draft : null);
