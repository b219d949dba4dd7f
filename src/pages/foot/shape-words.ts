/** The measures of a foot's shape in words: the same beside a slider and under a picture. */
import { footLengthOf } from '../../anatomy/parameters';
import type { FootForm, FootParameters } from '../../anatomy/types';
import type { Say } from '../words';

/** In the order of the sliders, each with its step; the arch has words of its own, the others a unit. */
export const FORM_MEASURES: readonly {
  readonly key: keyof FootForm;
  readonly step: number;
  readonly unit: string | null;
}[] = [
  { key: 'arch', step: 0.1, unit: null },
  { key: 'hindfootDeg', step: 1, unit: 'foot.degrees' },
  { key: 'adductusDeg', step: 1, unit: 'foot.degrees' },
  { key: 'halluxDeg', step: 1, unit: 'foot.degrees' },
  { key: 'firstRayMm', step: 0.5, unit: 'foot.millimetres' },
];

const archWord = (arch: number): string =>
  arch <= -0.75
    ? 'foot.arch.flat'
    : arch < -0.15
      ? 'foot.arch.lower'
      : arch <= 0.15
        ? 'foot.arch.usual'
        : arch < 0.75
          ? 'foot.arch.higher'
          : 'foot.arch.high';

export const formText = (say: Say, unit: string | null, value: number): string =>
  unit === null ? say(archWord(value)) : say(unit, { value: Math.round(value * 10) / 10 });

export const lengthText = (say: Say, { heelToSecondHeadMm }: FootParameters): string =>
  say('foot.millimetres', { value: Math.round(footLengthOf(heelToSecondHeadMm)) });

/** Of a foot, what another has otherwise: "Arch: high". */
export const unlike = (say: Say, foot: FootParameters, other: FootParameters): readonly string[] => {
  const named = (what: string, value: string): string => say('pair.measure', { what, value });
  const form = FORM_MEASURES.filter(({ key }) => foot[key] !== other[key]).map(({ key, unit }) =>
    named(say(`foot.${key}`), formText(say, unit, foot[key])),
  );
  return foot.heelToSecondHeadMm === other.heelToSecondHeadMm
    ? form
    : [...form, named(say('foot.length'), lengthText(say, foot))];
};
