/** Sections of bones: cut, measured, and made of more than one material. */
export { cutsAlong, evenShares, type SectionCut, type SectionStation, sectionsAlong } from './along';
export { type Composite, compositeOf, type Part, type PartStress, partStressesOf, strainOf } from './composite';
export { SectionError, type SectionFault } from './figure';
export { bendingSectionOf, sectionOf } from './properties';
export { isSlenderAt } from './slender';
