/** Findings of questions 2 and 5 that stand in drawings and lists of their own, and would only be read twice in the long list. */
import type { FindingId, Reader } from '../../ids';

const BESIDE = ['loadRatio', 'loadPending', 'loadFails', 'oneStep', 'contributor'];
/** Patients have no fold that says how sure it is. */
const BESIDE_WITH_SURE = [...BESIDE, 'loadSide', 'loadMostOfFive', 'loadSensitivity'];

/** Question 5: what stands in the list of the stages. */
const IN_STAGES = ['stage', 'danger'];
/** And in folds of their own: what goes along with slow healing, what a review would change. */
const IN_FOLDS = ['factor', 'review'];
/** Of any question: troubles of healing, sources that disagree. */
const IN_FOLDS_OF_ALL = ['trouble', 'sourcesDisagree'];

/** Each line of that list has its source beside it. */
export const inStages = (finding: FindingId): boolean => {
  const [question, name, , part] = finding.split('.');
  return question === 'back' && IN_STAGES.some((each) => each === name) && part !== 'load' && part !== 'today';
};

/** `how.contributor.tilt.published.1` is one of the contributors. */
export const toldBeside = (finding: FindingId, reader: Reader): boolean => {
  const [question, name] = finding.split('.');
  if (IN_FOLDS_OF_ALL.some((each) => each === name)) return true;
  if (question === 'back') return [...IN_FOLDS, ...IN_STAGES].some((each) => each === name);
  return question === 'how' && (reader === 'patient' ? BESIDE : BESIDE_WITH_SURE).some((each) => each === name);
};
