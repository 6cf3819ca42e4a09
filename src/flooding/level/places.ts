/** A casualty as one point of the unknowns has it: a row of numbers, see the places below. */
export type Casualty = Float64Array;

/** Cd·A·√(2g) of the hole [m^2.5/s]. */
export const STRENGTH = 0;
/** Factor on the space's areas. */
export const AREA_SHARE = 1;
/** Factor on stated deliveries. */
export const DELIVERY = 2;
/** Hole's height above the floor [m]. */
export const HOLE = 3;
export const START_LEVEL = 4;
export const OUTSIDE = 5;

/** Height of the strainer above the floor [m], where a casualty is given one: below it a pump moves nothing. */
export const STRAINER = 6;

/**
 * Where a casualty is given them: the level at which its area and delivery are those above [m], and by what share of
 * themselves they grow with each metre the water stands higher [1/m]: what stands low in a space takes up room, and a pump
 * moves more the less it has to lift.
 */
export const SEEN_AT = 7;
export const AREA_LEAN = 8;
export const DELIVERY_LEAN = 9;
/** Numbers of such a casualty. */
export const ALL_PLACES = 10;
