/** 100 people as squares: solid without trouble, half solid after trouble with healing, open for those who are not back. */
import type { ForecastStep } from '../../explain/forecast-steps';
import { usePages } from '../context';

const A_ROW = 25;
const SQUARE = 9;
const STEP = 12;

const at = (person: number): readonly [number, number] => [
  (person % A_ROW) * STEP + 1,
  Math.floor(person / A_ROW) * STEP + 1,
];
const whole = (person: number): string => {
  const [x, y] = at(person);
  return `M${x} ${y}h${SQUARE}v${SQUARE}h${-SQUARE}z`;
};
/** The lower right half of a square. */
const half = (person: number): string => {
  const [x, y] = at(person);
  return `M${x + SQUARE} ${y}v${SQUARE}h${-SQUARE}z`;
};

export const OutcomeSquares = ({ step }: { readonly step: ForecastStep }) => {
  const { say } = usePages();
  const { uneventful, trouble, problem, notBack } = step.people;
  const [width, height] = [A_ROW * STEP, (100 / A_ROW) * STEP];
  const people = Array.from({ length: 100 }, (_, person) => person);
  return (
    <figure className="outcomes">
      <svg
        className="people-squares"
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        aria-hidden="true"
      >
        <path className="person" d={people.map(whole).join('')} />
        <path className="person person-counted" d={people.slice(0, uneventful).map(whole).join('')} />
        <path
          className="person person-counted"
          d={people
            .slice(uneventful, uneventful + problem)
            .map(half)
            .join('')}
        />
      </svg>
      <figcaption>{say('forecast.squares', { uneventful, trouble, problem, notBack })}</figcaption>
    </figure>
  );
};
