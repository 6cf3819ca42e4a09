/** A pump is not set lower than this: it would stand in the water [m]. */
export const LEAST_LIFT = 1;

/** Until somebody says otherwise: from the water in her to her deck [m]. */
export const USUAL_LIFT = 2;
