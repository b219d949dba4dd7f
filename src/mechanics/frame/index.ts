/** Space frames: members, springs, loads given; motions, reactions and end forces found. */
export { chainFlexibility, chainStiffness, type MemberSegment } from './flexible-member';
export { factorLdl, type LdlFactor, solveLdl, solveLdlInto } from './ldl';
export { type FrameProblem, problemText } from './problem';
export { type FrameModel, readFrame } from './schema';
export { type FrameSolution, solveFrame } from './solve';
export { localStiffness, type Prism } from './timoshenko';
