/** Lines of one visit at most: what a line of the log holds, and more than anybody looks at in a day. */
export const MOST_DRAWN = 300;
/** Kits that one visit draws from at most. */
export const MOST_VISITED = 200;
/** Faults in one plant at most; so many that none is lost, so few that a device never waits for them. */
export const MOST_FAULTS = 20;
