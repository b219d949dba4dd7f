/** Who feeds which part of a bone, and what a break takes away. */
export { feedingOf, type VesselLike } from './feeding';
export { FEEDING_STATES, type FedPart, type FeedingState, type FeedingTable } from './types';
