/**
 * The people of one study as squares, one each, or a hundred of them; those who were counted are solid. Drawn only where the study
 * printed both numbers and had twenty people or more: below that one square is over five in a hundred, and a picture looks surer than the study is.
 * A drawing beside the same two numbers in words, so nothing of it is read aloud.
 */
const LEAST_PEOPLE = 20;
const A_ROW = 20;
const SQUARE = 9;
const STEP = 12;

interface Properties {
  readonly count: number;
  readonly of: number;
  /** How many were studied, where the squares stand for a hundred of them. */
  readonly people?: number;
}

const squareOf = (person: number): string =>
  `M${(person % A_ROW) * STEP + 1} ${Math.floor(person / A_ROW) * STEP + 1}h${SQUARE}v${SQUARE}h${-SQUARE}z`;

export const PeopleSquares = ({ count, of, people = of }: Properties) => {
  if (people < LEAST_PEOPLE) return null;
  const squares = Array.from({ length: of }, (_, person) => squareOf(person));
  const [width, height] = [A_ROW * STEP, Math.ceil(of / A_ROW) * STEP];
  return (
    <svg className="people-squares" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path className="person" d={squares.join('')} />
      <path className="person person-counted" d={squares.slice(0, count).join('')} />
    </svg>
  );
};
