/** What the stage knows of the other layers, read off the session so that it cannot see more. */
import type { SessionState } from '../session/types';

export type Content = SessionState['content'];
export type Explanation = NonNullable<SessionState['explanation']>;
export type BreakAt = NonNullable<Explanation['breakAt']>;
export type StationTable = NonNullable<Explanation['stations']>;
export type FeedingTable = NonNullable<Explanation['feeding']>;

/** A point of the picture, CSS px from its top left corner. */
export type Point = readonly [x: number, y: number];
