/**
 * Standard acceleration of free fall [m/s²].
 *
 * @source 3rd CGPM, 1901; NIST SP 811, 2008, appendix B.8
 */
export const STANDARD_GRAVITY = 9.80665;

/** Kelvin at 0 °C. */
export const KELVIN_OF_ICE = 273.15;
