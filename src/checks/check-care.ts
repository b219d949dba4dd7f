/**
 * What stands beside the claims of a case, against the content: injury and treatment of a kept forecast, stages of the clinic's
 * own protocol. The studies of a kept forecast and the exercises a clinic struck may have gone from the content since: they are
 * read as they were kept.
 */
import type { CaseFile } from '../cases';
import type { Content } from '../content';
import { type CheckProblem, checkProblem } from './problems';

type Listed = Pick<Content, 'injuries' | 'options' | 'stages'>;
type Known = readonly { readonly id: string }[];

const isIn = (known: Known, id: string): boolean => known.some((each) => each.id === id);
const listed = (known: Known): string => known.map(({ id }) => id).join(', ');

const forecastProblems = ({ forecasts }: CaseFile, content: Listed): CheckProblem[] =>
  forecasts.flatMap(({ injury, option }, i) => {
    const named = [
      { key: 'injury', code: 'forecastUnknownInjury', found: injury, known: content.injuries },
      { key: 'option', code: 'forecastUnknownOption', found: option, known: content.options },
    ] as const;
    return named.flatMap(({ key, code, found, known }) =>
      isIn(known, found)
        ? []
        : [checkProblem(code, `forecasts[${i}].${key}`, { nth: String(i + 1), found, known: listed(known) })],
    );
  });

const stageProblems = ({ clinic }: CaseFile, { stages }: Listed): CheckProblem[] => {
  if (clinic === undefined) return [];
  const named = [
    ...(clinic.stage === null ? [] : [{ path: 'clinic.stage', found: clinic.stage as string }]),
    ...Object.keys(clinic.stages).map((found) => ({ path: `clinic.stages.${found}`, found })),
  ];
  return named
    .filter(({ found }) => !isIn(stages, found))
    .map(({ path, found }) => checkProblem('unknownStage', path, { found, known: listed(stages) }));
};

export const checkCare = (file: CaseFile, content: Listed): readonly CheckProblem[] => [
  ...forecastProblems(file, content),
  ...stageProblems(file, content),
];
