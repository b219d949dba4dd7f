/** Intervals of shares and of their difference, against the worked example of the paper that gave the method. */
import { differenceOf, wilson } from '../../src/explain/shares';
import { against } from '../tools/against';

const WILSON = {
  source: 'Newcombe 1998, Stat Med 17:857-872',
  where: 'table I, 81 of 263, method 3',
  how: 'from memory',
} as const;
const DIFFERENCE = {
  source: 'Newcombe 1998, Stat Med 17:873-890',
  where: 'table II, 56/70 - 48/80, method 10',
  how: 'from memory',
} as const;
const why = 'printed to four places';

against(WILSON, 'lower end of the interval', () => ({
  expected: 0.2553,
  got: wilson(81, 263).low,
  tolerance: 5e-5,
  why,
}));
against(WILSON, 'upper end of the interval', () => ({
  expected: 0.3662,
  got: wilson(81, 263).high,
  tolerance: 5e-5,
  why,
}));

const example = () => differenceOf(wilson(56, 70), wilson(48, 80));
against(DIFFERENCE, 'lower end of the difference', () => ({
  expected: 0.0524,
  got: example().low,
  tolerance: 5e-5,
  why,
}));
against(DIFFERENCE, 'upper end of the difference', () => ({
  expected: 0.3339,
  got: example().high,
  tolerance: 5e-5,
  why,
}));
