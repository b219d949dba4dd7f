/** Which foot facts and what-if speak of. Apart from the rest, so that a page can ask it without the computation. */
import { footParametersFor } from '../anatomy/parameters';
import type { FootParameters } from '../anatomy/types';
import type { Facts } from '../cases/schema';
import { knownOf } from './resolve';
import type { WhatIf } from './types';

/** What is not known of a foot is the usual foot's. */
export const parametersOf = (facts: Facts, whatIf: WhatIf): FootParameters => {
  const height = knownOf(facts.heightCm)?.value;
  const shape = whatIf.footShape ?? knownOf(facts.footShape)?.value;
  return { ...footParametersFor({ heightCm: height, footShape: shape }), ...whatIf.foot };
};
