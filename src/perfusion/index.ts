/** Who feeds which part of a bone, and what a break or a cut vessel takes away. */
export { type FeedingInput, feedingOf } from './feeding';
export { CELLS, type Ground, groundOf } from './ground';
export { FEEDING_STATES, type FedPart, type FeedingBorder, type FeedingState, type FeedingTable } from './types';
export { endsIn, reachedVessels, type VesselEnd, type VesselNode } from './vessel-graph';
